// Estimates: what is charged, what is set aside, what every line rests on, tax by rate.
import { expect, test } from "vitest";
import type { HouseTerms as KeptTerms } from "../../record/house-bodies.js";
import { type EstimateInput, estimate, type HouseTerms, tellPlan } from "../index.js";

// as the record keeps them: what is kept is what is worked with
const KEPT: KeptTerms = {
  currency: "EUR",
  labourRates: [
    { id: "bench", name: "Bench", perHour: 9000 },
    { id: "weld", name: "Welding", perHour: 12_000 },
  ],
  tax: {
    label: "Somewhere",
    groups: [
      { id: "full", name: "Full", basisPoints: 2000 },
      { id: "none", name: "None", basisPoints: 0 },
    ],
    labourGroup: "full",
    partsGroup: "full",
    rounding: "half-up",
    level: "group",
  },
};
const TERMS: HouseTerms = KEPT;
const INPUT: EstimateInput = {
  terms: TERMS,
  asOf: "2026-03-31",
  jobs: [
    { id: "clutch", own: [50, 60, 100] },
    { id: "seal", own: [30, 35, 60], rate: "weld" },
  ],
  opened: [{ id: "gearbox", setUp: [150, 180, 260], putBack: [180, 210, 300] }],
  parts: [
    {
      id: "plate",
      count: 1,
      price: [18_000, 21_000, 26_000],
      deposit: 5000,
      carriage: 1200,
      supplier: "North Parts",
      pricedOn: "2026-03-20",
    },
    { id: "seal-ring", count: 2, price: [800, 900, 900], carriage: [0, 0, 500], pricedOn: "2026-03-01" },
  ],
};
const made = (more: Partial<EstimateInput> = {}) => {
  const result = estimate({ ...INPUT, ...more });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const refused = (more: Partial<EstimateInput>) => {
  const result = estimate({ ...INPUT, ...more });
  return result.ok ? [] : result.problems.map(({ code, where }) => `${code} ${where.path}`);
};
const told = (more: Partial<EstimateInput>) => made(more).problems.map(({ code, where }) => `${code} ${where.path}`);
const house = (more: Partial<HouseTerms>): HouseTerms => ({ ...TERMS, ...more });
const tax = (more: Partial<HouseTerms["tax"]>): HouseTerms => house({ tax: { ...TERMS.tax, ...more } });

test("[PE5] clutch and seal with the gearbox out: 470 minutes and 35, the gearbox once", () => {
  const { labour, lines } = made();
  expect(labour.minutes).toMatchObject({ low: 410, likely: 485, high: 720 });
  expect(lines.map(({ id, kind, net }) => [id, kind, net.likely])).toEqual([
    ["clutch", "job", 9000],
    ["seal", "job", 7000],
    ["gearbox", "access", 58_500],
    ["allowance", "allowance", 0],
    ["plate", "part", 21_000],
    ["plate", "carriage", 1200],
    ["plate", "deposit", 5000],
    ["seal-ring", "part", 1800],
    ["seal-ring", "carriage", 0],
  ]);
  // (50+240+100)/6 + (30+140+60)/6 + (330+1560+560)/6 = 511.67; root of 50² + 30² + 230² over 6 = 39.55
  expect(labour.figures.mean).toBeCloseTo(511.667, 3);
  expect(labour.figures.sd).toBeCloseTo(39.546, 3);
  expect([labour.minutes.p50, labour.minutes.p80]).toEqual([512, 545]);
});

test("[PE6] money of mixed rates is worked out exactly and rounded once: 65 and 408.33 minutes at 90.00, 38.33 at 120.00", () => {
  const { labour, lines } = made();
  expect(labour.net).toEqual({ low: 63_000, likely: 74_500, p50: 78_667, p80: 83_690, high: 111_000 });
  expect(lines.slice(0, 4).map(({ net }) => net.p80)).toEqual([9750, 7667, 61_250, 5023]);
});

test("[PE8] parts in plain sums, carriage and deposit apart; the deposit is in no total but what is laid out", () => {
  const { parts, carriage, deposits, net, gross, outlay, labour } = made();
  expect(parts).toEqual({ low: 19_600, likely: 22_800, p50: 22_800, p80: 27_800, high: 27_800 });
  expect(carriage).toEqual({ low: 1200, likely: 1200, p50: 1200, p80: 1700, high: 1700 });
  expect(deposits).toBe(5000);
  expect(net.likely).toBe(labour.net.likely + 24_000);
  expect(gross.likely).toBe(118_200);
  expect(outlay.likely).toBe(123_200);
});

test("[PE9] a price a month old is told by its line, one without a day too; neither changes a sum", () => {
  const [plate, ring] = INPUT.parts;
  if (plate === undefined || ring === undefined) throw new Error("two parts");
  const aged = (pricedOn: string, more: Partial<EstimateInput> = {}) =>
    made({ parts: [{ ...plate, pricedOn }], ...more }).remarks.map(({ code, params }) => [code, params["days"]]);
  expect(made().remarks).toEqual([]);
  expect(aged("2026-02-28")).toEqual([["estimate.price-old", 31]]);
  expect(aged("2026-03-20", { staleAfterDays: 10 })).toEqual([["estimate.price-old", 11]]);
  expect(aged("2026-04-01").flat()).toContain("estimate.price-ahead");
  expect(aged("last month").flat()).toContain("estimate.price-date");
  const { pricedOn: _, ...undated } = plate;
  const without = made({ parts: [undated, ring] });
  expect(without.remarks).toMatchObject([{ code: "estimate.price-undated", where: { path: "parts[0].pricedOn" } }]);
  expect(without.net).toEqual(made().net);
});

test("[PE7] a job without one of its three figures is told and set aside, the rest worked out", () => {
  const jobs = [...INPUT.jobs, { id: "disc", own: [20, null, 40] }, { id: "mount" }];
  const got = made({ jobs });
  expect(got.setAside).toEqual(["disc", "mount"]);
  expect(got.problems.map(({ params }) => [params["id"], params["figure"]])).toEqual([
    ["disc", "likely"],
    ["mount", "low"],
    ["mount", "likely"],
    ["mount", "high"],
  ]);
  expect(got.net).toEqual(made().net);
});

test("[PE7] negative, broken, disordered, far too large, twice: told with the place where it stands", () => {
  const jobs = (own: (number | null)[]) => ({ jobs: [{ id: "a", own }] });
  expect(told(jobs([-1, 2, 3]))).toEqual(["estimate.negative jobs[0].own"]);
  expect(told(jobs([1, 2.5, 3]))).toEqual(["estimate.not-whole jobs[0].own"]);
  expect(told(jobs([3, 2, 1]))).toEqual(["estimate.order jobs[0].own"]);
  expect(told(jobs([1, 2, 100_001]))).toEqual(["estimate.too-large jobs[0].own"]);
  expect(told({ jobs: [...INPUT.jobs, ...INPUT.jobs.slice(0, 1)] })).toEqual(["estimate.twice jobs[2]"]);
  expect(told({ jobs: [{ id: "a", own: [1, 2, 3], rate: "night" }] })).toEqual(["estimate.rate jobs[0].rate"]);
  expect(told({ opened: [{ id: "gearbox", setUp: [1, 2, 3] }] })[0]).toBe("estimate.missing opened[0].putBack");
});

test("[PE7] a price below zero is refused with its line; so are no pieces, and a deposit or carriage below zero", () => {
  const part = (more: object) => told({ parts: [{ id: "hub", count: 1, price: [1, 2, 3], ...more }] });
  expect(part({ price: [-500, 100, 200] })).toEqual(["estimate.negative parts[0].price"]);
  expect(part({ count: 0 })).toEqual(["estimate.no-pieces parts[0].count"]);
  expect(part({ count: 1.5 })).toEqual(["estimate.not-whole parts[0].count"]);
  expect(part({ deposit: -1 })).toEqual(["estimate.negative parts[0].deposit"]);
  expect(part({ carriage: -1 })).toHaveLength(3);
  expect(made({ parts: [{ id: "hub", count: 1 }] }).setAside).toEqual(["hub"]);
});

test("[PE2] a worn condition draws every hour alike: longer, and wider than jobs on their own would be", () => {
  const usual = made().labour;
  const rusted = made({ condition: [100, 120, 180] }).labour;
  expect(rusted.minutes.likely).toBe(582);
  expect(rusted.figures.mean).toBeCloseTo(usual.figures.mean * (760 / 600), 9);
  expect(rusted.figures.sd).toBeGreaterThan(usual.figures.sd * (760 / 600));
  expect(rusted.minutes.p80).toBeLessThan(rusted.minutes.high);
});

test("[PE3] the spread of the implied beta distribution can be asked for", () => {
  expect(made({ spread: "beta" }).labour.figures.mean).toBe(made().labour.figures.mean);
  expect(made({ spread: "beta" }).labour.figures.sd).not.toBeCloseTo(made().labour.figures.sd, 2);
});

test("nothing to do costs nothing and has no line", () => {
  const got = made({ jobs: [], opened: [], parts: [] });
  expect([got.lines, got.tax, got.gross.high]).toEqual([[], [], 0]);
});

test("[PE11] without a currency, a rate or a rate of tax nothing is worked out, and each is told", () => {
  expect(refused({ terms: house({ currency: "euro" }) })).toEqual(["terms.currency currency"]);
  expect(refused({ terms: house({ currency: "XTS" }) })).toEqual(["terms.minor-digits-missing digits"]);
  expect(refused({ terms: house({ digits: 3 }) })).toEqual(["terms.minor-digits digits"]);
  expect(refused({ terms: house({ currency: "XTS", digits: 5 }) })).toEqual(["terms.minor-digits digits"]);
  expect(refused({ terms: house({ labourRates: [] }) })).toEqual(["terms.no-rate labourRates"]);
  expect(refused({ terms: house({ labourRates: [{ id: "a", name: "A", perHour: -1 }] }) })).toEqual([
    "estimate.negative labourRates[0].perHour",
  ]);
  expect(refused({ terms: tax({ labourGroup: "half" }) })).toEqual(["terms.tax-group tax.labourGroup"]);
  expect(refused({ terms: tax({ digits: 5 }) })).toEqual(["terms.digits tax.digits"]);
  expect(refused({ asOf: "31.3.2026" })).toEqual(["estimate.day asOf"]);
  expect(refused({ asOf: "2026-02-30" })).toEqual(["estimate.day asOf"]);
  expect(refused({ condition: [120, 100, 180] })).toEqual(["estimate.order condition"]);
});

test("[PE11] what a file may hold and no type stops: unknown ways to round, to spread, to level", () => {
  const profile = { ...TERMS.tax, ...JSON.parse('{"rounding": "nearest", "level": "page"}') };
  expect(refused({ terms: house({ tax: profile }) })).toEqual(["terms.rounding tax.rounding", "terms.level tax.level"]);
  expect(refused(JSON.parse('{"spread": "wide"}'))).toEqual(["estimate.spread spread"]);
});

test("[PE11] a currency the table does not know is worked with once its digits are told", () => {
  expect(made({ terms: house({ currency: "XTS", digits: 4 }) }).minorDigits).toBe(4);
});

test("[PE11] yen have no smaller coin, dinars a thousand: the same figures, tax in the coin each has", () => {
  const priced = (currency: string) =>
    made({
      terms: { ...tax({ groups: [{ id: "full", name: "Full", basisPoints: 1050 }] }), currency },
      jobs: [],
      opened: [],
      parts: [{ id: "a", count: 3, price: [333, 333, 333] }],
    });
  expect([priced("JPY").minorDigits, priced("KWD").minorDigits]).toEqual([0, 3]);
  expect([priced("JPY").gross.likely, priced("KWD").gross.likely]).toEqual([1104, 1104]);
});

test("parts and labour under rates of their own, each with its tax", () => {
  const got = made({ terms: tax({ partsGroup: "none" }) });
  expect(got.tax.map(({ group, net, tax: of }) => [group, net.likely, of.likely])).toEqual([
    ["full", 74_500, 14_900],
    ["none", 24_000, 0],
  ]);
});

test("a sum beyond any car is told as a slip", () => {
  const dear = (count: number) => ({ parts: [{ id: "a", count, price: [1, 1, 1e11] }] });
  expect(made(dear(999)).gross.high).toBeGreaterThan(1e14);
  expect(refused(dear(1000))).toEqual(["estimate.beyond "]);
});

test("every problem told here has words that name the job or part and leave no gap open", () => {
  const { problems, remarks } = made({
    jobs: [{ id: "disc", own: [-1, 2.5, null] }],
    parts: [{ id: "hub", count: 1, price: [1, 2, 3] }],
  });
  const words = [...problems, ...remarks].map(tellPlan);
  expect(words.map((text) => text.slice(0, 4))).toEqual(["disc", "disc", "disc", "hub:"]);
  for (const text of words) expect(text).not.toMatch(/[{}]|undefined/);
});
