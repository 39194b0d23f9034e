/**
 * Stores of three phones under random appending, erasing, passing on and failing storage: nothing said to be kept is
 * ever missing, and in the end all hold one log. A failing seed is in the failure's name.
 */
import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import {
  type Draft,
  draftPicture,
  draftReply,
  draftUndo,
  foldVisit,
  idText,
  isEntry,
  isStub,
  type Logged,
  type Store,
  undoable,
  type VisitState,
} from "../../src/core/record/index.js";
import { indexedDbSubject } from "../store/indexeddb-subject.js";
import { memorySubject } from "../store/memory-subject.js";
import { act, bytesOf, emptyVisit, key, words } from "../store/sample.js";
import type { Bench } from "../store/subject.js";
import { chanceFrom, shuffled } from "./record-phones.js";
import { stateText } from "./record-state-text.js";

const RUNS = (process.env["LEADLAMP_SEEDS"] ?? "3:250 11:250").split(" ").map((run) => run.split(":").map(Number));
const VISIT = "visit:v";
const ERRORS = ["QuotaExceededError", "InvalidStateError", "UnknownError", "AbortError"];

const read = async (store: Store): Promise<readonly Logged[]> => {
  const entries = await store.entries(VISIT);
  if (!entries.ok) throw new Error(JSON.stringify(entries.problems));
  return entries.value;
};
const stateOf = (log: readonly Logged[]): VisitState => (log.length === 0 ? emptyVisit(VISIT) : foldVisit(log));

class Phones {
  /** Ids a store said it keeps, per phone. */
  readonly kept: Set<string>[];
  failures = 0;
  constructor(
    readonly benches: readonly Bench[],
    readonly stores: readonly Store[],
    readonly chance: () => number,
  ) {
    this.kept = stores.map(() => new Set());
  }

  async step(): Promise<void> {
    const i = Math.floor(this.chance() * this.stores.length);
    const store = this.stores[i];
    const from = this.stores[Math.floor(this.chance() * this.stores.length)];
    if (!store || !from) return;
    const roll = this.chance();
    const log = await read(store);
    const passed = shuffled([...(await read(from))], this.chance).slice(0, 1 + Math.floor(this.chance() * 8));
    const target = shuffled(
      log.filter((one) => isEntry(one) && one.kind !== "erase"),
      this.chance,
    )[0];
    const undo = undoable(stateOf(log), log.at(-1)?.writer ?? "")[0]?.ids ?? [];
    const erasing = act();
    const again = { ...erasing, nonce: () => `${erasing.id}-e` };
    const picture = await bytesOf(`picture ${this.chance()}`);
    const drafts: readonly Draft[] =
      roll < 0.15
        ? draftUndo(act(), stateOf(log), undo)
        : this.#said(stateOf(log), roll < 0.25 ? picture.hash : undefined);
    await this.#whileFailing(i, async () => {
      if (roll < 0.5) {
        const result = await store.append(drafts, roll >= 0.15 && roll < 0.25 ? [picture] : []);
        if (result.ok) for (const entry of result.value) this.kept[i]?.add(idText(entry));
        return result.ok;
      }
      if (roll < 0.58 && target) return (await store.eraseForGood(again, { ids: [idText(target)] })).ok;
      const result = await store.receive(passed);
      if (result.ok) for (const one of passed) this.kept[i]?.add(idText(one));
      return result.ok;
    });
  }

  #said(state: VisitState, blob: string | undefined): readonly Draft[] {
    const at = key(`whl.p${Math.floor(this.chance() * 6)}`);
    const value = words(this.chance() < 0.5 ? "smooth" : "rough");
    if (blob !== undefined)
      return [draftPicture(act(), state, { blob, thumb: blob, type: "image/jpeg", width: 1, height: 1 })];
    return [draftReply(act(), state, at, value)];
  }

  /** Does it with storage failing now and then, until it is done. */
  async #whileFailing(i: number, work: () => Promise<boolean>): Promise<void> {
    const bench = this.benches[i];
    if (this.chance() < 0.3) {
      const error = ERRORS[Math.floor(this.chance() * ERRORS.length)] ?? "";
      bench?.order({ at: 1 + Math.floor(this.chance() * 12), error, forEver: this.chance() < 0.5 });
    }
    const isDone = await work();
    bench?.order(undefined);
    if (isDone) return;
    this.failures += 1;
    expect(await work(), "again, with storage well").toBe(true);
  }
}

for (const [seed = 0, operations = 0] of RUNS) {
  test(`[RC9] [RC39] [RC40] three stores, ${operations} operations, seed ${seed}: one log, nothing kept is missing`, {
    timeout: 300_000,
  }, async () => {
    const subjects = [memorySubject, indexedDbSubject("idb"), indexedDbSubject("idb")];
    const benches = await Promise.all(subjects.map((subject) => subject.bench()));
    const stores = benches.map((bench) => bench.open());
    const phones = new Phones(benches, stores, chanceFrom(seed));
    for (let done = 0; done < operations; done++) await phones.step();
    for (const [i, store] of stores.entries()) {
      const here = new Set((await read(store)).map(idText));
      expect(
        [...(phones.kept[i] ?? [])].filter((id) => !here.has(id)),
        "kept and missing",
      ).toEqual([]);
    }
    for (let round = 0; round < 2; round++) {
      for (const from of stores) for (const to of stores) expect((await to.receive(await read(from))).ok).toBe(true);
    }
    const logs = await Promise.all(stores.map(read));
    const outline = logs.map((log) => log.map((one) => `${idText(one)}${isStub(one) ? " stub" : ""}`));
    expect(outline[1]).toEqual(outline[0]);
    expect(outline[2]).toEqual(outline[0]);
    expect(new Set(logs.map((log) => stateText(foldVisit(log)))).size).toBe(1);
    expect(foldVisit(logs[0] ?? []).trouble).toMatchObject({ forks: [], gaps: [], unknown: [] });
    expect(phones.failures).toBeGreaterThan(operations / 50);
    expect(foldVisit(logs[0] ?? []).trouble.erased).toBeGreaterThan(operations / 50);
    for (const bench of benches) await bench.close();
  });
}
