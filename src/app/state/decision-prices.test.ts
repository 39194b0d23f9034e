// What jobs come to where the owner decides: each by its own work, opening up once, both together. 60 an hour, no tax.
import { expect, test } from "vitest";
import { planWork, type WorkInput, type WorkJob } from "../../core/plan/index.js";
import { openingOf, pricesOf, sumOf } from "./decision-prices.js";

const TERMS = {
  currency: "EUR",
  labourRates: [{ id: "shop", name: "Workshop", perHour: 6000 }],
  tax: {
    label: "None",
    groups: [{ id: "none", name: "None", basisPoints: 0 }],
    labourGroup: "none",
    partsGroup: "none",
    rounding: "half-up",
    level: "invoice",
  },
} as const;
const job = (id: string, more: Partial<WorkJob> = {}): WorkJob => ({
  id,
  key: { gate: 1, due: 3, rank: 12, grade: "minor", left: null, position: 1, id },
  grade: "minor",
  minutes: [60, 60, 60],
  access: ["wheel"],
  follows: [],
  parts: [],
  ...more,
});
const input: WorkInput = {
  today: "2027-03-01",
  jobs: [job("pads"), job("hose"), job("lamp", { access: [] })],
  openings: [{ id: "wheel", parents: [], setUp: [10, 10, 10], putBack: [20, 20, 20] }],
  terms: TERMS,
};
const on = { input, plan: planWork(input) };

test("a job's own sum is the same alone and among others; what is opened stands beside it and is paid once", () => {
  expect([pricesOf(on, ["pads"])?.likely, pricesOf(on, ["pads", "hose"])?.likely]).toEqual([6000, 12_000]);
  expect([openingOf(on, ["pads"])?.likely, openingOf(on, ["pads", "hose"])?.likely]).toEqual([3000, 3000]);
  expect(sumOf(on, ["pads", "hose"])?.likely).toBe(15_000);
  expect(openingOf(on, ["lamp"])).toBeUndefined();
});

test("the sum of everything planned is the plan's own estimate", () => {
  expect(sumOf(on, ["pads", "hose", "lamp"])?.likely).toBe(on.plan.estimate?.gross.likely);
});

test("a job without hours makes the sum too low, and says so", () => {
  const { minutes: _minutes, ...untold } = job("pads");
  expect(pricesOf({ ...on, input: { ...input, jobs: [untold] } }, ["pads"])?.isTooLow).toBe(true);
});
