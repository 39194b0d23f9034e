/**
 * Data version 1 as it was first written: a log with every kind of entry, a fork, undo, erasures, entries from a later
 * version, a gap and a clock ten years ahead. The files are never changed; what they fold to may only gain.
 */
import "fake-indexeddb/auto";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { ALL_KINDS } from "../../src/core/record/all-kinds.js";
import {
  foldCar,
  foldHouse,
  foldVisit,
  isEntry,
  type Logged,
  readJournal,
  type Store,
  writeJournal,
} from "../../src/core/record/index.js";
import { stateJson } from "../property/record-state-text.js";
import { indexedDbSubject } from "../store/indexeddb-subject.js";
import { memorySubject } from "../store/memory-subject.js";

const read = (name: string): string => readFileSync(new URL(`./v1/${name}`, import.meta.url), "utf8");
const text = read("record.jsonl");
/** Kinds that came later, each frozen when it came. */
const added = readJournal(read("added.jsonl"));
const later: readonly Logged[] = added.ok ? added.value : [];
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];
const VISIT = "visit:Zp81aTn0";
const OTHER = "visit:b7Rr5eUc";
/** Kinds added after the first file was frozen, and the file of their own. */
const ADDED: Readonly<Record<string, string>> = { sound: "sound" };
/** Kinds added after that; v3.test.ts, v5.test.ts, marks.test.ts and limits.test.ts hold them. */
const LATER: ReadonlySet<string> = new Set([
  ...["house.draft", "house.draft-item", "house.draft-order"],
  "finding",
  "visit.clock",
  "house.terms",
  "house.calendar",
  "house.supplier",
  "picture.mark",
  "picture.after",
  "limit.told",
  "limit.looked",
]);
const isPlanned = (kind: string): boolean =>
  ALL_KINDS[kind as keyof typeof ALL_KINDS].streams.every((of) => of === "plan");
const of = (...streams: string[]): readonly Logged[] => log.filter(({ stream }) => streams.includes(stream));

test("every line of version 1 is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
});

test("the files hold every kind of version 1, a stub, and what a later version wrote", () => {
  expect(added.ok ? [] : added.problems).toEqual([]);
  const kinds = new Set([...log, ...later].filter(isEntry).map(({ kind, v }) => `${kind} ${v}`));
  for (const kind of Object.keys(ALL_KINDS)) {
    if (!(kind in ADDED) && !LATER.has(kind) && !isPlanned(kind)) expect(kinds, kind).toContain(`${kind} 1`);
  }
  expect([...kinds].filter((kind) => !((kind.split(" ")[0] ?? "") in ALL_KINDS) || !kind.endsWith(" 1"))).toHaveLength(
    2,
  );
  expect(log.filter((one) => !isEntry(one))).toHaveLength(1);
});

test("kinds that came later fold to what they folded to when they came", () => {
  const car = foldCar([...log, ...later]);
  expect([...car.placeNames].map(([place, [name]]) => `${place}: ${name?.value}`)).toEqual(["axle-R: Rear end"]);
  const [gauge] = foldHouse([...log, ...later]).gauges.get("g-red") ?? [];
  expect(gauge?.value).toMatchObject({ name: "Dial, red box", resolution: 0.01, error: 0.02, checked: "2025-11-30" });
});

test("version 1 folds to what it always folded to, and what was added stays apart", () => {
  const folded = {
    car: stateJson(foldCar(log)),
    visit: stateJson(foldVisit(of(VISIT))),
    occasion: stateJson(foldVisit(of(VISIT, OTHER))),
    house: stateJson(foldHouse(log)),
  };
  // What they fold to may only gain: kinds added since give each state lists of their own.
  expect(JSON.parse(JSON.stringify(folded))).toMatchObject(JSON.parse(read("folded.json")));
});

test.each(Object.entries(ADDED))("%s, added later, is read, written and folded as it first was", (kind, name) => {
  const added = readJournal(read(`${name}.jsonl`));
  const entries = added.ok ? added.value : [];
  expect(added.ok ? [] : added.problems).toEqual([]);
  expect(writeJournal(entries)).toBe(read(`${name}.jsonl`));
  expect(entries.filter(isEntry).map((one) => `${one.kind} ${one.v}`)).toContain(`${kind} 1`);
  expect(JSON.parse(JSON.stringify(stateJson(foldVisit(entries))))).toMatchObject(
    JSON.parse(read(`${name}-folded.json`)),
  );
});

for (const subject of [memorySubject, indexedDbSubject("on a stand-in for IndexedDB")]) {
  test(`version 1 goes into a store and comes out whole, ${subject.name}`, async () => {
    const bench = await subject.bench();
    const store: Store = bench.open();
    const received = await store.receive(log);
    expect(received.ok && received.value.added).toBe(log.length - 2);
    const streams = await store.streams();
    const out: Logged[] = [];
    for (const stream of streams.ok ? streams.value : []) {
      const entries = await store.entries(stream);
      if (entries.ok) out.push(...entries.value);
    }
    // The reply whose erasure came along with its body is a stub now; nothing else may differ.
    expect(stateJson(foldVisit(out.filter(({ stream }) => stream === VISIT)))).toEqual(stateJson(foldVisit(of(VISIT))));
    expect(writeJournal(out).split("\n")).toHaveLength(text.split("\n").length);
    await bench.close();
  });
}
