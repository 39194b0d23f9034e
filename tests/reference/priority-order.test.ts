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
  type Urgent,
  urgencyOf,
  whyKeys,
} from "../../src/core/plan/index.js";

const TABLE_A_III: Readonly<Record<Likelihood, readonly number[]>> = {
  A: [1, 3, 7, 13],
  B: [2, 5, 9, 16],
  C: [4, 6, 11, 18],
  D: [8, 10, 14, 19],
  E: [12, 15, 17, 20],
};
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

interface Row extends Pick<Urgent, "id" | "grade" | "consequence" | "likelihood" | "position"> {
  readonly mustStand?: boolean;
  readonly dueKm?: number;
  readonly nextVisitKm?: number;
}
const LIST: readonly Row[] = [
  { id: "f1", grade: "dangerous", consequence: 1, likelihood: "A", mustStand: true, position: 9 }, // brake hose bulging
  { id: "f2", grade: "dangerous", consequence: 1, likelihood: "C", position: 4 }, // tyre cord in view
  { id: "f3", grade: "major", consequence: 1, likelihood: "C", position: 12 }, // brake pipe heavily rusted
  { id: "f4", grade: "major", consequence: 3, likelihood: "B", position: 20 }, // exhaust leak
  { id: "f5", grade: "minor", consequence: 2, likelihood: "D", dueKm: 3000, nextVisitKm: 10_000, position: 3 }, // pads
  { id: "f6", grade: "advisory", consequence: 4, likelihood: "C", position: 30 }, // oil mist
  { id: "f7", grade: "minor", consequence: 1, likelihood: "C", position: 2 }, // belt webbing frayed
  { id: "f8", grade: "dangerous", consequence: 1, likelihood: "D", position: 1 }, // dangerous but remote
];
const EXPECTED = [
  { id: "f1", severity: 1, likelihood: "A", rank: 1, band: "high", due: 0, lookAgain: false },
  { id: "f2", severity: 1, likelihood: "C", rank: 4, band: "high", due: 0, lookAgain: false },
  { id: "f8", severity: 1, likelihood: "D", rank: 8, band: "serious", due: 1, lookAgain: false },
  { id: "f3", severity: 1, likelihood: "C", rank: 4, band: "high", due: 1, lookAgain: true },
  { id: "f7", severity: 1, likelihood: "C", rank: 4, band: "high", due: 1, lookAgain: true },
  { id: "f4", severity: 3, likelihood: "B", rank: 9, band: "serious", due: 2, lookAgain: false },
  { id: "f5", severity: 2, likelihood: "D", rank: 10, band: "medium", due: 2, lookAgain: false },
  { id: "f6", severity: 4, likelihood: "C", rank: 18, band: "low", due: 4, lookAgain: false },
];
const REASONS = ["above.rank", "above.due", "above.dangerous", "above.grade", "above.due", "above.rank", "above.due"];

const urgencies = LIST.map((row) => {
  const { mustStand = false, dueKm, nextVisitKm, ...rest } = row;
  const left = dueKm !== undefined && nextVisitKm !== undefined ? { left: dueKm / nextVisitKm } : {};
  return urgencyOf({ ...rest, ...left, mustStand, exposure: 0, close: false });
}).sort((a, b) => compareKeys(a.key, b.key).sign);

test("eight findings of one car come out in the order worked by hand, each with its rank, band and due class", () => {
  const got = urgencies.map((u) => ({
    id: u.key.id,
    severity: u.severity,
    likelihood: u.likelihood,
    rank: u.key.rank,
    band: u.band,
    due: u.key.due,
    lookAgain: u.lookAgain,
  }));
  expect(got).toEqual(EXPECTED);
});

test("why each stands above the next is the first part of the key that differs", () => {
  const got = urgencies.slice(1).map((u, i) => whyKeys((urgencies[i] ?? u).key, u.key).code);
  expect(got).toEqual(REASONS);
});

test("forty-one minor findings never come before one dangerous, though weights of 40 and 1 would put them there", () => {
  const minors = 41;
  const minorSum = minors * 1;
  const dangerousWeight = 40;
  expect(minorSum).toBeGreaterThan(dangerousWeight);
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
