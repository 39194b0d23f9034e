/**
 * Phones that write into one visit with bad clocks, copies, forks, undo and erasing, and pass their logs around in
 * bits. Everything comes from one seed. Refuses to judge the outcome.
 */
import {
  type Act,
  type Draft,
  draftErase,
  draftNote,
  draftOdometer,
  draftReply,
  draftSettle,
  draftUndo,
  draftVisit,
  type Entry,
  foldStep,
  foldVisit,
  idText,
  isEntry,
  type Logged,
  latestFollowed,
  redoable,
  stampNext,
  undoable,
  type VisitState,
} from "../../src/core/record/index.js";
import type { ReplyKey, ReplyValue } from "../../src/core/terms/index.js";
import { opening } from "../store/sample.js";

/** Numbers in [0, 1) from a seed (mulberry32, public domain). */
export function chanceFrom(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export function shuffled<T>(list: readonly T[], chance: () => number): T[] {
  const copy = [...list];
  for (let i = copy.length - 1; i > 0; i--) {
    const j = Math.floor(chance() * (i + 1));
    const [a, b] = [copy[i], copy[j]];
    if (a !== undefined && b !== undefined) [copy[i], copy[j]] = [b, a];
  }
  return copy;
}

const VISIT = "visit:v";
const DAY = 86_400_000;
/** One clock a day behind, one right, one ten years ahead. */
const CLOCKS = [-DAY, 0, 3650 * DAY];

export interface Phone {
  readonly writer: string;
  readonly clock: number;
  log: ReadonlyMap<string, Logged>;
  state: VisitState;
}

export class World {
  readonly phones: Phone[];
  readonly did: Record<string, number> = {};
  #now = 1_770_000_000_000;
  #nonces = 0;

  constructor(readonly chance: () => number) {
    this.phones = CLOCKS.map((clock, i) => ({
      writer: `w${i}`,
      clock,
      log: new Map(),
      state: { ...foldVisit([]), stream: VISIT },
    }));
    const [first] = this.phones;
    if (first) this.#write(first, [draftVisit(this.#act(first), VISIT, opening("car:c"))]);
    for (const phone of this.phones) if (first) this.#take(phone, [...first.log.values()]);
  }

  /** One thing happens to one phone. */
  step(): void {
    const phone = this.#pick(this.phones);
    this.#now += Math.floor(this.chance() * 60_000);
    const roll = this.chance();
    if (roll < 0.5) this.#reply(phone);
    else if (roll < 0.62) this.#undo(phone);
    else if (roll < 0.68) this.#redo(phone);
    else if (roll < 0.71) this.#undoAnything(phone);
    else if (roll < 0.745) this.#erase(phone);
    else if (roll < 0.76) this.#fork(phone);
    else if (roll < 0.78) this.#other(phone);
    else this.#exchange(phone, this.#pick(this.phones));
  }

  /** Everybody gets everything, in bits, out of order, repeatedly. */
  settle(): void {
    for (const from of this.phones) {
      for (const to of this.phones) this.#take(to, shuffled([...from.log.values()], this.chance));
    }
    for (const from of this.phones)
      for (const to of this.phones) this.#take(to, shuffled([...from.log.values()], this.chance));
  }

  #count(what: string): void {
    this.did[what] = (this.did[what] ?? 0) + 1;
  }

  #pick<T>(list: readonly T[]): T {
    const one = list[Math.floor(this.chance() * list.length)];
    if (one === undefined) throw new Error("nothing to pick from");
    return one;
  }

  #nonce(): string {
    this.#nonces += 1;
    return `n${this.#nonces.toString(36)}`;
  }

  #act(phone: Phone): Act {
    // A clock also jumps now and then.
    const wall = this.#now + phone.clock + (this.chance() < 0.05 ? Math.floor((this.chance() - 0.5) * 4 * DAY) : 0);
    const previous = latestFollowed(
      [...phone.log.values()].map(({ at }) => at),
      wall,
    );
    return { id: this.#nonce(), by: `p-${phone.writer}`, at: stampNext(previous, wall), nonce: () => this.#nonce() };
  }

  #key(): ReplyKey {
    return {
      point: this.#pick(["spin", "rock", "float"]),
      place: this.#pick(["FL", "FR"]),
      state: "w7",
      field: this.#pick(["feel", "play"]),
    };
  }

  #value(): ReplyValue | null {
    const roll = this.chance();
    if (roll < 0.08) return null;
    if (roll < 0.25) return { type: "non-answer", nonAnswer: this.#pick(["not-reached", "could-not-tell"]) };
    return { type: "words", words: [this.#pick(["smooth", "rough", "notchy"])] };
  }

  #write(phone: Phone, drafts: readonly Draft[]): void {
    for (const draft of drafts) {
      const last = phone.state.ledger.writers.get(`${VISIT}/${phone.writer}`)?.last ?? 0;
      const entry: Entry = { ...draft, writer: phone.writer, seq: last + 1 };
      this.#take(phone, [entry]);
    }
  }

  #take(phone: Phone, entries: readonly Logged[]): void {
    phone.state = foldStep(phone.state, entries);
    phone.log = phone.state.ledger.log;
  }

  #reply(phone: Phone): void {
    const act = this.#act(phone);
    const disputed = [...phone.state.replies.values()].filter(({ differ }) => differ);
    if (disputed.length > 0 && this.chance() < 0.15) {
      const { key, standing } = this.#pick(disputed);
      this.#count("settled");
      this.#write(phone, [draftSettle(act, phone.state, key, this.#pick(standing).id)]);
      return;
    }
    this.#count("replied");
    // Several at once now and then: one act.
    const many = this.chance() < 0.1 ? 3 : 1;
    const drafts = Array.from({ length: many }, () => draftReply(act, phone.state, this.#key(), this.#value()));
    this.#write(phone, drafts);
  }

  #undo(phone: Phone): void {
    const [step] = undoable(phone.state, phone.writer);
    if (!step) return;
    this.#count("undone");
    this.#write(phone, draftUndo(this.#act(phone), phone.state, step.ids));
  }

  #redo(phone: Phone): void {
    const [step] = redoable(phone.state, phone.writer);
    if (!step) return;
    this.#count("redone");
    this.#write(phone, draftUndo(this.#act(phone), phone.state, step.ids));
  }

  /** Undo of any entry by anybody, undos included. */
  #undoAnything(phone: Phone): void {
    const ids = [...phone.log].filter(([, one]) => isEntry(one) && one.kind !== "visit.opened").map(([id]) => id);
    if (ids.length === 0) return;
    this.#count("undone at will");
    this.#write(phone, draftUndo(this.#act(phone), phone.state, [this.#pick(ids)]));
  }

  #erase(phone: Phone): void {
    const ids = [...phone.log].filter(([, one]) => isEntry(one) && one.kind !== "visit.opened").map(([id]) => id);
    if (ids.length === 0) return;
    this.#count("erased");
    const id = this.#pick(ids);
    this.#write(phone, draftErase(this.#act(phone), phone.state, [id]));
    // Some phones leave the stub alone, as a store does; others still hold the body.
    const logged = phone.log.get(id);
    if (logged && isEntry(logged) && logged.kind !== "erase" && this.chance() < 0.7) {
      const { stream, writer, seq, nonce, at } = logged;
      this.#take(phone, [{ stream, writer, seq, nonce, at }]);
    }
  }

  /** A copy restored from an old backup writes on under the same writer. */
  #fork(phone: Phone): void {
    const own = [...phone.log.values()].filter(({ writer }) => writer === phone.writer);
    const twin = this.#pick(own.length > 0 ? own : [...phone.log.values()]);
    this.#count("forked");
    const draft = draftReply(this.#act(phone), phone.state, this.#key(), this.#value());
    this.#take(phone, [{ ...draft, writer: twin.writer, seq: twin.seq }]);
  }

  #other(phone: Phone): void {
    const act = this.#act(phone);
    const roll = this.chance();
    this.#count("said otherwise");
    if (roll < 0.4) this.#write(phone, [draftNote(act, phone.state, { text: `note ${act.id}` })]);
    else if (roll < 0.7)
      this.#write(phone, [
        draftOdometer(act, phone.state, { value: String(Math.floor(this.chance() * 9e4)), unit: "km" }),
      ]);
    else {
      const later = draftNote(act, phone.state, { text: "x" });
      this.#write(phone, [{ ...later, ...(roll < 0.85 ? { kind: "from.later", body: { x: 1 } } : { v: 2 }) }]);
    }
  }

  /** A part of one phone's log comes to another: out of order, some twice, some lost on the way. */
  #exchange(from: Phone, to: Phone): void {
    this.#count("exchanged");
    const share = this.chance();
    const some = shuffled([...from.log.values()], this.chance).slice(0, 1 + Math.floor(share * 30));
    const twice = some.filter(() => this.chance() < 0.2);
    this.#take(to, shuffled([...some, ...twice], this.chance));
    if (idText(some[0] ?? { stream: "", writer: "", seq: 1, nonce: "" }) === "") throw new Error("an empty log");
  }
}
