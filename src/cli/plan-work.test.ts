// Planning on the command line: jobs, money and days, each section worked out anew.
import { expect, test } from "vitest";
import { GARAGE, NESTED, OFFERS } from "../../tests/reference/facts/access.js";
import { TABLES } from "../../tests/reference/facts/critical-path.js";
import {
  CENGAGE,
  CENGAGE_PATH,
  FIVE_JOBS,
  FIVE_JOBS_EACH,
  FIVE_JOBS_TOGETHER,
  TAX,
  TAX_LEVELS_HAND,
  WEB_PATH,
} from "../../tests/reference/facts/estimate.js";
import { ARRIVALS } from "../../tests/reference/facts/lead-time.js";
import { CASES, STRANDED } from "../../tests/reference/facts/small-plans.js";
import { CHOICES, HAND, problemOf } from "../../tests/reference/plan-choice-facts.js";
import { type Asked, askedFor, expectCase, expectWorkedOut } from "../../tests/support/plan-asked.js";

const splits = NESTED.map(([nestedCosts, shares, times]) => ({
  nestedCosts,
  [times === 1 ? "expectedShares" : "expectedSharesTimes6"]: shares,
  recomputed: shares.map((share) => Number((share / times).toFixed(4))),
}));

const ids = (text: string): readonly string[] => text.split(" ").filter(Boolean);
const choices = CHOICES.map((facts) => ({
  ...problemOf(facts),
  expected: {
    value: facts.worthBeyond,
    minCost: facts.leastCost,
    oneBestSet: ids(facts.best),
    open: ids(facts.open),
    mandatoryCost: facts.mandatory,
    proven: true,
  },
}));
const hand = { ...HAND, expected: { value: 18, set: ["a", "b"], cost: 100 } };

const acts = Object.fromEntries(Object.entries(CENGAGE).map(([id, [low, likely, high]]) => [id, [low, likely, high]]));
const labour = { jobs: FIVE_JOBS, ...FIVE_JOBS_EACH, ...FIVE_JOBS_TOGETHER };
const tax = TAX.map(([net, bp, halfUp, halfEven, down, up]) => ({ net, bp, halfUp, halfEven, down, up }));

const paths = TABLES.map(([src, T, critical, rows]) => ({
  src,
  acts: rows.map(([id, dur, preds]) => ({ id, dur, pred: ids(preds) })),
  expected: {
    T,
    critical: ids(critical),
    table: Object.fromEntries(
      rows.map(([id, , , ES, EF, LS, LF, TF, FF]) => [id, { ES, EF, LS, LF, TF, FF }] as const),
    ),
  },
}));
const small = CASES.map(([optimum, rows]) => ({
  cap: [2, 1],
  acts: rows.map(([dur, pred, people, lift, release]) => ({ dur, pred, req: [people, lift], release })),
  optimum,
  proven: true,
}));
const leads = ARRIVALS.map(([ordered, leadDays, closed, arrives]) => ({
  ordered,
  leadDays,
  closed: closed.map(({ from, to }) => [from, to]),
  arrives,
}));

const SECTIONS: readonly Asked[] = [
  { section: "access", given: ["states", "jobs", "job", "given"], facts: GARAGE },
  { section: "shared_split", given: ["nestedCosts"], facts: splits },
  {
    section: "opportunity",
    given: ids("job standAloneMin marginalMin ratePerHourMinor partPriceMinor remainingLife"),
    facts: { cases: OFFERS },
  },
  { section: "choice", given: ["budget", "states", "jobs"], facts: { cases: choices, hand } },
  {
    section: "pert",
    given: ["acts", "path", "deadline", "src"],
    facts: [{ acts, ...CENGAGE_PATH }, WEB_PATH],
  },
  { section: "labour_sum", given: ["jobs"], facts: labour },
  { section: "tax_rounding", given: ["net", "bp", "lines"], facts: { cases: tax, level: TAX_LEVELS_HAND } },
  { section: "cpm", given: ["acts", "src"], facts: paths },
  { section: "rcpsp_small", given: ["cap", "acts"], facts: { cases: small } },
  { section: "lead_time", given: ["ordered", "leadDays", "closed"], facts: { cases: leads } },
  { section: "stranding", given: [], facts: STRANDED },
];
test.each(SECTIONS)("$section: every field as worked out outside, none read from the file", expectWorkedOut);

test.each([
  ["shares of what is nested", splits[2]],
  ["a job while it is apart", OFFERS[1]],
  ["a choice", choices[1]],
  ["a path in weeks", { acts, ...CENGAGE_PATH }],
  ["tax", tax[2]],
  ["tax line by line", TAX_LEVELS_HAND],
  ["a critical path", paths[3]],
  ["a small plan", small[0]],
  ["when a part comes", leads[3]],
])("one bare case: %s", (_, facts) => expectCase(facts));

test("a car on the only lift: other hours than the usual, by hand", async () => {
  const { exit, answer } = await askedFor({ partAt: 20, out: 2, fit: 3, in: 4 });
  expect(exit).toBe(0);
  expect(answer).toEqual({
    partAt: 20,
    out: 2,
    fit: 3,
    in: 4,
    early: { start: 0, finish: 27, liftHeld: 27, liftIdle: 18 },
    kitFirst: { start: 20, finish: 29, liftHeld: 9, liftIdle: 0 },
    justInTime: { start: 18, finish: 27, liftHeld: 9, liftIdle: 0 },
  });
});

test("results of benchmarks without an instance are refused by name, the rest is answered", async () => {
  const reference = { instances: [{ name: "one", optimum: 43 }] };
  const { exit, answer, err } = await askedFor({ rcpsp_reference: reference, lead_time: { cases: leads.slice(0, 1) } });
  expect(exit).toBe(1);
  expect(answer).toMatchObject({ rcpsp_reference: null, lead_time: { cases: leads.slice(0, 1) } });
  expect(err).toContain("FILE: rcpsp_reference: holds results of benchmarks");
});

const [first] = paths;
test.each([
  ["a circle", { acts: [{ id: "A", dur: 1, pred: ["A"] }] }, "wait for the next: A"],
  ["a job nobody knows", { ...GARAGE, total: [{ jobs: ["clutsch"] }] }, "total[0].jobs[0]: “clutsch” does not fit"],
  ["minutes that are none", { ...GARAGE, jobs: [{ id: "a", own: -5 }] }, "jobs[0].own: -5 does not fit"],
  ["an opening without minutes", { ...GARAGE, states: [{ id: "lift", setup: 3 }] }, "states[0].putback: is missing"],
  ["a negative budget", { ...HAND, budget: -1 }, "budget: -1 does not fit"],
  ["an access nobody knows", { ...HAND, states: [] }, "a needs g"],
  ["nested costs that fall", { nestedCosts: [3, 2] }, "none is below the one before it"],
  ["a step off the path", { acts, path: "AZ" }, "path: “Z” does not fit"],
  ["likely above high", { acts: { A: [1, 9, 3] } }, "acts.A: [1,9,3] does not fit"],
  ["two lifts for one job", { cap: [1, 1], acts: [{ dur: 1, req: [1, 2] }] }, "acts[0].req[1]: 2 does not fit"],
  ["a day that is none", { ordered: "2025-02-30", leadDays: 1 }, "2025-02-30"],
  ["work without end", { ...first, acts: [{ id: "A", dur: 1.5 }] }, "acts[0].dur: 1.5 does not fit"],
])("%s is told", async (_, value, told) => {
  const { exit, err } = await askedFor(value);
  expect(exit).toBe(1);
  expect(err).toContain(told);
});

/** An invented car: pads and discs on one corner, an oil leak behind the gearbox. */
const LIST = {
  faults: [
    { id: "leak", grade: "minor", consequence: 3, likelihood: "C", order: 2, jobs: ["seal"] },
    { id: "pads", grade: "dangerous", consequence: 1, likelihood: "B", order: 1, jobs: ["pads"] },
  ],
  jobs: [
    { id: "seal", own: 35, access: ["gearbox"], parts: [{ id: "seal", price: 1800, leadDays: 3, supplier: "s" }] },
    { id: "pads", minutes: [20, 30, 60], access: ["wheel"], parts: [{ id: "pads", price: 6000, inHand: true }] },
  ],
  access: [
    { id: "lift", parents: [], setup: 10, putback: 10 },
    { id: "wheel", parents: ["lift"], setUp: [5, 10, 15], putBack: 10 },
    { id: "gearbox", parents: ["lift"], setup: 180, putback: 210 },
  ],
  budget: 40_000,
  calendar: { today: "2026-03-02", week: [...Array.from({ length: 5 }, () => [["08:00", "17:00"]]), [], []] },
  rates: { currency: "EUR", perHour: 9000, tax: { basisPoints: 1900 } },
  people: 1,
  lifts: ["two-post"],
  suppliers: [{ id: "s", leadDays: 3 }],
};

test("a whole work list: order, choice within the budget, estimate and dates in one plan", async () => {
  const { exit, answer, err } = await askedFor(LIST);
  expect({ exit, err }).toEqual({ exit: 0, err: "" });
  expect(answer).toMatchObject({
    order: { detail: [{ id: "pads", due: 0 }, { id: "leak" }], reasons: [{ above: "pads", below: "leak" }] },
    chosen: ["pads"],
    minutes: [55, 70, 105],
    choice: { chosen: ["pads"], proven: true },
    estimate: { currency: "EUR" },
    schedule: { finish: { date: "2026-03-02" } },
    problems: [],
  });
});

test("a whole work list with faults in it: each told with its path, the rest planned", async () => {
  const { exit, answer, err } = await askedFor({
    ...LIST,
    faults: [...LIST.faults, { id: "x", grade: "bad" }],
    jobs: [...LIST.jobs, { id: "pads" }, { id: "seat", own: -1 }],
    rates: { currency: "EUR", tax: 1900 },
  });
  expect(exit).toBe(1);
  expect(answer).toMatchObject({ chosen: ["pads", "seal"], order: { detail: [{ id: "pads" }, { id: "leak" }] } });
  for (const told of ["faults[2].grade", "“pads” stands twice", "jobs[3].own: -1", "rates.perHour: is missing"])
    expect(err).toContain(told);
  expect((await askedFor({ ...LIST, calendar: undefined })).err).toContain("today: is missing; expected text");
});
