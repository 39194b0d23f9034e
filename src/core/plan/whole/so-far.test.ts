// What work has taken so far, and what is done beside what is still to do. Figures worked by hand in the comments.
import { expect, test } from "vitest";
import type { WorkInput, WorkJob, WorkOpening } from "./contract.js";
import { addedWork, doneWork, spentSoFar } from "./so-far.js";

/** 90 an hour, a fifth of tax on everything. */
const TERMS = {
  currency: "EUR",
  labourRates: [{ id: "shop", name: "Workshop", perHour: 9000 }],
  tax: {
    label: "Example",
    groups: [{ id: "full", name: "Full rate", basisPoints: 2000 }],
    labourGroup: "full",
    partsGroup: "full",
    rounding: "half-up",
    level: "invoice",
  },
} as const;
const opening = (id: string, parents: readonly string[]): WorkOpening => ({
  id,
  parents,
  setUp: [10, 10, 10],
  putBack: [20, 20, 20],
});
const job = (id: string, more: Partial<WorkJob> = {}): WorkJob => ({
  id,
  key: { gate: 1, due: 3, rank: 12, grade: "minor", left: null, position: 1, id },
  grade: "minor",
  minutes: [30, 60, 90],
  access: ["wheel"],
  follows: [],
  parts: [],
  ...more,
});
const input = (jobs: readonly WorkJob[], more: Partial<WorkInput> = {}): WorkInput => ({
  today: "2027-03-01",
  jobs,
  openings: [opening("lift", []), opening("wheel", ["lift"])],
  terms: TERMS,
  ...more,
});
const DISC = { id: "disc", count: 2, price: [5000, 6000, 9000] } as const;

test("told minutes and the parts that are ordered or here are spent, at the rate and with tax", () => {
  const jobs = [
    job("brake", { parts: [{ ...DISC, inHand: true }] }),
    job("seal", { parts: [{ id: "seal", count: 1, price: [100, 200, 300] }] }),
  ];
  const got = spentSoFar(input(jobs), new Map([["brake", 40]]));
  // 40 min at 90 an hour is 60; two discs at 60 are 120; 180 and a fifth is 216. The seal is not ordered.
  expect(got).toEqual({ minutes: 40, money: 21_600, untimed: [], unpriced: [], problems: [] });
});

test("a job nobody timed and a part nobody priced are named and never counted as nothing", () => {
  const jobs = [job("brake", { parts: [{ id: "hose", count: 1, orderedOn: "2027-02-20" }] }), job("seal")];
  const got = spentSoFar(
    input(jobs),
    new Map([
      ["brake", undefined],
      ["gone", 60],
    ]),
  );
  expect(got).toMatchObject({ minutes: 60, money: 10_800, untimed: ["brake"], unpriced: ["brake/hose"] });
});

test("without the house's terms minutes are known and money is not", () => {
  const got = spentSoFar(input([job("brake")], { terms: undefined }), new Map([["brake", 15]]));
  expect(got.minutes).toBe(15);
  expect(got.money).toBeUndefined();
});

test("a done job stands with the minutes told of it, way in and all", () => {
  const got = doneWork(input([job("brake", { isDone: true }), job("seal")]), new Map([["brake", 120]]), new Set());
  // two hours at 90 and a fifth
  expect(got.estimate?.gross.likely).toBe(21_600);
  expect(got.estimate?.gross.low).toBe(21_600);
  expect(got.untimed).toEqual([]);
});

test("a done job nobody timed stands with planned minutes and its way in, unless the rest pays for that", () => {
  const work = input([job("brake", { isDone: true }), job("seal")]);
  const alone = doneWork(work, new Map([["brake", undefined]]), new Set());
  // 60 of its own, 30 for the lift, 30 for the wheel: two hours
  expect(alone.estimate?.gross.likely).toBe(21_600);
  expect(alone.untimed).toEqual(["brake"]);
  const shared = doneWork(work, new Map(), new Set(["lift", "wheel"]));
  expect(shared.estimate?.gross.likely).toBe(10_800);
});

test("nothing done comes to nothing, which is no estimate", () => {
  expect(doneWork(input([job("brake")]), new Map([["brake", 30]]), new Set()).estimate).toBeUndefined();
});

test("added work is priced by its own minutes and price", () => {
  const got = addedWork(TERMS, "2027-03-01", { id: "a1", minutes: [0, 20, 40], price: [8000, 10_000, 12_000] });
  // a third of an hour is 30; with the part 130; and a fifth
  expect(got?.gross.likely).toBe(15_600);
  expect(
    addedWork({ ...TERMS, currency: "euro" }, "2027-03-01", { id: "a1", minutes: [0, 0, 0], price: [1, 1, 1] }),
  ).toBeUndefined();
});
