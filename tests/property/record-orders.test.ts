/** Every order of small logs: each prefix is a valid state, every step equals folding anew, all orders end alike. */
import { expect, test } from "vitest";
import {
  type Draft,
  draftErase,
  draftNote,
  draftReply,
  draftSettle,
  draftUndo,
  draftVisit,
  type Entry,
  foldStep,
  foldVisit,
  idText,
  type Logged,
  type VisitState,
} from "../../src/core/record/index.js";
import { act, emptyVisit, key, notReached, opening, words } from "../store/sample.js";
import { modelReplies } from "./record-model.js";
import { chanceFrom, shuffled, World } from "./record-phones.js";
import { stateText } from "./record-state-text.js";

const VISIT = "visit:v";

/** Writes a log in which each draft is made in view of everything before it. */
class Log {
  readonly entries: Logged[] = [];
  get state(): VisitState {
    return this.entries.length === 0 ? emptyVisit(VISIT) : foldVisit(this.entries);
  }
  add(draft: Draft | readonly Draft[], writer = "w1", seq?: number): string {
    const [one] = [draft].flat();
    if (!one) throw new Error("no draft");
    const last = this.state.ledger.writers.get(`${VISIT}/${writer}`)?.last ?? 0;
    const entry: Entry = { ...one, stream: VISIT, writer, seq: seq ?? last + 1 };
    this.entries.push(entry);
    return idText(entry);
  }
  reply(point: string, said: string, writer?: string, seq?: number): string {
    return this.add(draftReply(act(), this.state, key(point), words(said)), writer, seq);
  }
}

const stubOf = ({ stream, writer, seq, nonce, at }: Logged): Logged => ({ stream, writer, seq, nonce, at });

const LOGS: Readonly<Record<string, () => readonly Logged[]>> = {
  "a reply corrected, the correction undone and redone": () => {
    const log = new Log();
    log.reply("spin", "smooth");
    const second = log.reply("spin", "rough");
    const undo = log.add(draftUndo(act(), log.state, [second]));
    const redo = log.add(draftUndo(act(), log.state, [undo]));
    log.add(draftUndo(act(), log.state, [redo]));
    log.reply("spin", "notchy");
    return log.entries;
  },
  "two people differ and one settles, the other undoes": () => {
    const log = new Log();
    log.reply("spin", "smooth", "w1");
    log.add({ ...draftReply(act(), emptyVisit(VISIT), key("spin"), words("rough")) }, "w2");
    const chosen = [...log.state.replies.values()][0]?.standing[1]?.id ?? "";
    const settled = log.add(draftSettle(act(), log.state, key("spin"), chosen), "w1");
    log.add(draftUndo(act(), log.state, [settled]), "w2");
    log.add(draftReply(act(), emptyVisit(VISIT), key("spin"), notReached), "w3");
    log.reply("spin", "notchy", "w2");
    return log.entries;
  },
  "a non-answer over fields, a field after all, and an erasure in between": () => {
    const log = new Log();
    const first = log.reply("spin", "smooth");
    log.add(draftReply(act(), log.state, key("spin", "heat"), words("hot")));
    const none = log.add(draftReply(act(), log.state, key("spin"), notReached));
    log.reply("spin", "rough");
    log.add(draftErase(act(), log.state, [none]));
    log.add(draftErase(act(), log.state, [first]));
    return log.entries;
  },
  "a fork, its twin erased, a stub and the body it was": () => {
    const log = new Log();
    const one = log.reply("spin", "smooth", "w1", 1);
    log.reply("spin", "rough", "w1", 1);
    log.add(draftErase(act(), log.state, [one]), "w1");
    const [body] = log.entries;
    if (body) log.entries.push(stubOf(body));
    log.reply("spin", "notchy", "w2");
    return log.entries;
  },
  "an opening, notes, a later version and a gap": () => {
    const log = new Log();
    log.add(draftVisit(act(), VISIT, opening("car:c")));
    const note = log.add(draftNote(act(), log.state, { text: "wet inside" }));
    log.add(draftNote(act(), log.state, { text: "dry inside" }, [note]));
    log.add({ ...draftNote(act(), log.state, { text: "x" }), v: 2 }, "w1", 9);
    log.add({ ...draftNote(act(), log.state, { text: "x" }), kind: "from.later" }, "w2", 3);
    log.add({ ...draftNote(act(), log.state, { text: "x" }), body: { text: 7, replaces: [] } }, "w2", 1);
    return log.entries;
  },
  "words that replace each other in a ring": () => {
    const log = new Log();
    const [a, b, c] = ["smooth", "rough", "notchy"].map((said) =>
      draftReply(act(), emptyVisit(VISIT), key("spin"), words(said)),
    );
    if (!a || !b || !c) throw new Error("no drafts");
    const id = (draft: Draft, seq: number): string => idText({ ...draft, writer: "w1", seq });
    const naming = (draft: Draft, ...replaces: string[]): Draft => ({
      ...draft,
      body: { key: key("spin"), value: words(draft === a ? "smooth" : "rough"), replaces },
    });
    log.add(naming(a, id(b, 2)), "w1", 1);
    log.add(naming(b, id(a, 1)), "w1", 2);
    log.add(c, "w1", 3);
    return log.entries;
  },
  "undos in a ring": () => {
    const log = new Log();
    log.reply("spin", "smooth");
    const [one] = log.entries;
    if (!one) throw new Error("no entry");
    const undo = (nonce: string, ...of: string[]): Draft => ({
      ...draftNote(act(), log.state, { text: "x" }),
      nonce,
      kind: "undo",
      body: { of },
    });
    const id = (seq: number, nonce: string): string => idText({ stream: VISIT, writer: "w1", seq, nonce });
    log.add(undo("u1", id(3, "u2"), idText(one)), "w1", 2);
    log.add(undo("u2", id(2, "u1")), "w1", 3);
    return log.entries;
  },
};

/** Orders that begin alike share their beginning: each is gone through once, every order to its end. */
function expectAllOrdersAlike(log: readonly Logged[]): void {
  const whole = stateText(foldVisit(log));
  const goOn = (before: VisitState, order: readonly Logged[], rest: readonly Logged[]): void => {
    for (const [at, logged] of rest.entries()) {
      const now = [...order, logged];
      const i = order.length;
      const once = foldStep(before, [logged]);
      // Once more, and one from before: copies change nothing.
      const state = foldStep(once, [logged, now[i >> 1] ?? logged]);
      const left = rest.toSpliced(at, 1);
      const looked = i % 2 === 1 || left.length === 0;
      const text = looked ? stateText(state) : "";
      if (i % 2 === 1) expect(text).toBe(stateText(foldVisit(now)));
      if (left.length === 0) expect(text).toBe(whole);
      goOn(state, now, left);
    }
  };
  goOn(emptyVisit(VISIT), [], log);
}

for (const [what, make] of Object.entries(LOGS)) {
  test(`[RC9] [RC13] [RC32] [RC33] every order of ${what}`, { timeout: 180_000 }, () => {
    const log = make();
    expect(log.length).toBeLessThanOrEqual(6);
    expectAllOrdersAlike(log);
    if (!what.includes("ring")) {
      const shown = Object.fromEntries(
        [...foldVisit(log).replies].map(([k, { standing }]) => [k, standing.map(({ id }) => id).sort()]),
      );
      expect(shown).toEqual(modelReplies(log));
    }
  });
}

test("[RC32] every order of twenty random logs of five", { timeout: 180_000 }, () => {
  for (let seed = 1; seed <= 20; seed++) {
    const chance = chanceFrom(seed);
    const world = new World(chance);
    for (let i = 0; i < 60; i++) world.step();
    const [phone] = world.phones;
    if (!phone) throw new Error("no phone");
    expectAllOrdersAlike(shuffled([...phone.log.values()], chance).slice(0, 5));
  }
});
