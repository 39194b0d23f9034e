// Urgency order against outside figures. The matrix: MIL-STD-882D (US government, public domain) Table A-III,
// read in a reproduction in a process-safety handbook; bands of Table A-IV and MIL-STD-882E Table III from memory,
// the latter agreeing with two public cell-for-cell transcriptions. The eight-finding list is a case of our own,
// worked by hand from the rules of urgency; the 40/10/1 weights are COM(2012)382 Annex I (rating haulage firms).
import { expect, test } from "vitest";
import {
  bandOf,
  type Consequence,
  compareKeys,
  type Likelihood,
  rankOf,
  urgencyOf,
  whyKeys,
} from "../../src/core/plan/index.js";
import { EIGHT, EIGHT_IN_ORDER, EIGHT_TOLD_BY, SUM_OF_WEIGHTS, TABLE_A_III } from "./facts/urgency.js";

// MIL-STD-882E (2012) Table III, columns 1–4: H high, S serious, M medium, L low
const TABLE_III_882E: Readonly<Record<Likelihood, string>> = { A: "HHSM", B: "HHSM", C: "HSML", D: "SMML", E: "MMML" };
const LETTER = { high: "H", serious: "S", medium: "M", low: "L" };
const cells = (["A", "B", "C", "D", "E"] as const).flatMap((p) => ([1, 2, 3, 4] as const).map((s) => [s, p] as const));

test.each(cells)("cell %i%s is the number and band of MIL-STD-882D", (s: Consequence, p: Likelihood) => {
  expect(rankOf(s, p)).toBe(TABLE_A_III[p][s - 1]);
  expect(LETTER[bandOf(rankOf(s, p))]).toBe(TABLE_III_882E[p][s - 1]);
});

test("five cells are high, four serious, eight medium, three low", () => {
  const counts = { high: 0, serious: 0, medium: 0, low: 0 };
  for (const [s, p] of cells) counts[bandOf(rankOf(s, p))] += 1;
  expect(counts).toEqual({ high: 5, serious: 4, medium: 8, low: 3 });
});

// Public copies of the 882E matrix contradict each other; these four slips, all too mild, are the usual ones.
const WRONG_COPIES = [
  [3, "B", "medium"],
  [3, "D", "low"],
  [3, "E", "low"],
  [4, "B", "low"],
] as const;
test.each(WRONG_COPIES)("cell %i%s is not the %s of the wrong copies", (s, p, wrong) => {
  expect(bandOf(rankOf(s, p))).not.toBe(wrong);
});

const urgencies = EIGHT.map((row) => {
  const { immobilise = false, dueKm, nextVisitKm, exposure = 0, order, id, grade, consequence, likelihood } = row;
  const left = dueKm !== undefined && nextVisitKm !== undefined ? { left: dueKm / nextVisitKm } : {};
  const said = { id, grade, consequence, likelihood, exposure, ...left };
  return urgencyOf({ ...said, mustStand: immobilise, position: order, close: false });
}).sort((a, b) => compareKeys(a.key, b.key).sign);

test("eight findings of one car come out in the order worked by hand, each with its rank, band and due class", () => {
  const got = urgencies.map((u) => ({
    id: u.key.id,
    sev: u.severity,
    p: u.likelihood,
    rank: u.key.rank,
    band: u.band,
    due: u.key.due,
    regrade: u.lookAgain,
  }));
  expect(got).toEqual(EIGHT_IN_ORDER);
});

test("why each stands above the next is the first part of the key that differs", () => {
  const got = urgencies.slice(1).map((u, i) => whyKeys((urgencies[i] ?? u).key, u.key).code);
  expect(got).toEqual(EIGHT_TOLD_BY.map((by) => `above.${by}`));
});

test("forty-one minor findings never come before one dangerous, though weights of 40 and 1 would put them there", () => {
  const { minors, minorSum, dangerous } = SUM_OF_WEIGHTS;
  expect(minorSum).toBeGreaterThan(dangerous);
  const base = { consequence: 1, likelihood: "A", mustStand: false, exposure: 1, close: true, position: 0 } as const;
  const list = [
    ...Array.from({ length: minors }, (_, i) => urgencyOf({ ...base, id: `m${i}`, grade: "minor" })),
    urgencyOf({
      ...base,
      id: "z",
      grade: "dangerous",
      consequence: 4,
      likelihood: "E",
      exposure: -1,
      close: false,
      position: 99,
    }),
  ].sort((a, b) => compareKeys(a.key, b.key).sign);
  expect(list[0]?.key.id).toBe("z");
});
