// The first estimate kept as told, what came on top, how far over it goes, and when to stop and ask.
import { expect, test } from "vitest";
import {
  type Addition,
  type Amounts,
  type Estimate,
  estimate,
  type FirstEstimate,
  forecast,
  freezeEstimate,
  scopeCap,
} from "../index.js";

const PROFILE = {
  label: "Somewhere",
  groups: [{ id: "full", name: "Full", basisPoints: 2000 }],
  labourGroup: "full",
  partsGroup: "full",
  rounding: "half-up",
  level: "invoice",
} as const;

function estimated(): Estimate {
  const result = estimate({
    terms: { currency: "EUR", labourRates: [{ id: "a", name: "Bench", perHour: 6000 }], tax: PROFILE },
    asOf: "2026-03-31",
    jobs: [{ id: "pads", own: [60, 90, 120] }, { id: "hose" }],
    opened: [],
    parts: [],
  });
  if (!result.ok) throw new Error("an estimate");
  return result.value;
}
const same = (of: number): Amounts => ({ low: of, likely: of, p50: of, p80: of, high: of });
const FIRST: FirstEstimate = {
  kind: "first-estimate/1",
  at: "2026-03-31",
  told: "p80",
  currency: "EUR",
  minorDigits: 2,
  lines: [],
  net: same(0),
  gross: { ...same(0), p80: 100_000 },
  deposits: 0,
  setAside: [],
};
const yes = { who: "the owner", on: "2026-04-02" };
const stands = (present: number, additions: readonly Addition[] = [], first: Partial<FirstEstimate> = {}) => {
  const now = { currency: "EUR", gross: same(present), setAside: [] };
  const result = forecast({ ...FIRST, ...first }, now, additions);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

test("[PE12] the frozen first estimate is plain data, names what it never held, and shares nothing with what goes on", () => {
  const now = estimated();
  const first = freezeEstimate(now, "2026-04-01");
  if (!first.ok) throw new Error("a frozen estimate");
  expect(JSON.parse(JSON.stringify(first.value))).toEqual(first.value);
  expect(first.value).toMatchObject({ told: "p80", gross: { likely: 10_800 }, setAside: ["hose"] });
  expect([first.value.gross === now.gross, first.value.lines[0]?.net === now.lines[0]?.net]).toEqual([false, false]);
  expect(freezeEstimate(now, "yesterday").ok).toBe(false);
});

test("[PE13] agreed: first and agreed additions; what nobody agreed to is in the forecast only", () => {
  const got = stands(118_000, [
    { id: "hose", gross: 15_000, agreed: yes },
    { id: "pipe", gross: 4000, agreed: null },
    { id: "clip", gross: 500, agreed: { who: " ", on: "2026-04-02" } },
    { id: "bolt", gross: 100, agreed: { who: "the owner", on: "soon" } },
  ]);
  expect(got).toMatchObject({ first: 100_000, agreedAdditions: 15_000, agreed: 115_000, present: 118_000 });
  expect(got.notAgreed.map(({ id }) => id)).toEqual(["pipe", "clip", "bolt"]);
  expect(got).toMatchObject({
    notAgreedSum: 4600,
    forecast: 122_600,
    over: 7600,
    overBasisPoints: 661,
    mark: "within",
  });
});

test("[PE14] marks a tenth and a fifth over, each reached exactly and missed by the smallest coin", () => {
  const mark = (present: number) => stands(present).mark;
  expect([109_999, 110_000, 119_999, 120_000].map(mark)).toEqual(["within", "over-10", "over-10", "over-20"]);
  expect([stands(109_999).overBasisPoints, stands(110_000).overBasisPoints]).toEqual([1000, 1000]);
  expect(stands(80_000)).toMatchObject({ over: -20_000, overBasisPoints: -2000, mark: "within" });
});

test("[PE14] over nothing agreed there is no per cent, and everything is over", () => {
  const none = { gross: same(0) };
  expect(stands(1, [], none)).toMatchObject({ overBasisPoints: null, mark: "over-20" });
  expect(stands(0, [], none)).toMatchObject({ overBasisPoints: null, mark: "within" });
});

test("[PE13] work left out is an addition below zero", () => {
  expect(stands(70_000, [{ id: "hub", gross: -30_000, agreed: yes }])).toMatchObject({ agreed: 70_000, over: 0 });
});

test("[PE13] the first figure that the owner was told is the one that counts", () => {
  expect(stands(90_000, [], { told: "likely", gross: { ...same(0), likely: 60_000 } })).toMatchObject({
    first: 60_000,
    mark: "over-20",
  });
});

test("[PE13] two currencies or broken additions cannot be compared; what no figure holds is told", () => {
  const now = { currency: "CHF", gross: same(1), setAside: ["hose"] };
  const codes = (result: ReturnType<typeof forecast>) =>
    result.ok ? result.value.remarks.map(({ params }) => params["ids"]) : result.problems.map(({ code }) => code);
  expect(codes(forecast(FIRST, now, [{ id: "a", gross: 0.5 }]))).toEqual(["forecast.currency", "forecast.addition"]);
  expect(codes(forecast(FIRST, { ...now, currency: "EUR" }, [{ id: "a", gross: 1e12 }]))).toEqual([
    "forecast.addition",
  ]);
  expect(codes(forecast({ ...FIRST, setAside: ["hose", "disc"] }, { ...now, currency: "EUR" }, []))).toEqual([
    ["hose", "disc"],
  ]);
});

test("[PE15] stop and ask at exactly four fifths of the minutes, stop when all are spent", () => {
  const state = (spent: number) => scopeCap({ minutes: { cap: 240, spent } }).state;
  expect([191, 192, 239, 240, 300].map(state)).toEqual(["within", "ask", "ask", "reached", "reached"]);
  expect(scopeCap({ minutes: { cap: 240, spent: 300 } }).caps[0]?.left).toBe(-60);
});

test("[PE15] of two caps the graver decides and is named", () => {
  const caps = scopeCap({ minutes: { cap: 600, spent: 100 }, money: { cap: 50_000, spent: 40_000 } });
  expect(caps).toMatchObject({ state: "ask", by: ["money"], ask: true });
  expect(caps.caps.map(({ what, left }) => [what, left])).toEqual([
    ["minutes", 500],
    ["money", 10_000],
  ]);
  expect(scopeCap({ minutes: { cap: 10, spent: 9 }, money: { cap: 10, spent: 8 } }).by).toEqual(["minutes", "money"]);
});

test("[PE15] spent so far not known is never nothing: it asks; a cap of nothing is reached; no cap never asks", () => {
  expect(scopeCap({ money: { cap: 50_000 } })).toMatchObject({ state: "not-known", ask: true });
  expect(scopeCap({ money: { cap: 50_000 } }).problems).toMatchObject([
    { code: "estimate.missing", where: { path: "money.spent" } },
  ]);
  expect(scopeCap({ money: { cap: -1, spent: 0 } })).toMatchObject({ state: "not-known", ask: true });
  expect(scopeCap({ minutes: { cap: 0, spent: 0 } }).state).toBe("reached");
  expect(scopeCap({})).toMatchObject({ state: "within", ask: false, caps: [], by: [] });
});
