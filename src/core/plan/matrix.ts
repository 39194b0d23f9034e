/**
 * Severity against likelihood: which of the twenty cells, and which band. Knows nothing of cars or grades.
 * Source of the numbers: MIL-STD-882D (US government, public domain) Table A-III, as reproduced in a
 * process-safety handbook; the bands of Table A-IV are from memory.
 */

export const LIKELIHOODS = ["A", "B", "C", "D", "E"] as const;
/** A frequent, B probable, C occasional, D remote, E improbable: before the next planned visit. */
export type Likelihood = (typeof LIKELIHOODS)[number];

/** 1 loss of brakes, steering, wheel, fire, restraint; 2 loss of drive in traffic; 3 stranding, secondary damage; 4 comfort. */
export type Consequence = 1 | 2 | 3 | 4;

/** MIL-STD-882D Table A-III: rows A–E, columns severity 1–4; every number 1..20 once, 1 the worst. */
const CELLS: Readonly<Record<Likelihood, readonly [number, number, number, number]>> = {
  A: [1, 3, 7, 13],
  B: [2, 5, 9, 16],
  C: [4, 6, 11, 18],
  D: [8, 10, 14, 19],
  E: [12, 15, 17, 20],
};

export type Band = "high" | "serious" | "medium" | "low";

/** Last rank of each band: MIL-STD-882D Table A-IV, from memory. */
const LAST_HIGH = 5;
const LAST_SERIOUS = 9;
const LAST_MEDIUM = 17;

/** The cell of the matrix: 1 (worst) to 20. */
export function rankOf(severity: Consequence, likelihood: Likelihood): number {
  const row = CELLS[likelihood];
  return severity === 1 ? row[0] : severity === 2 ? row[1] : severity === 3 ? row[2] : row[3];
}

/** The band of a rank. */
export function bandOf(rank: number): Band {
  if (rank <= LAST_HIGH) return "high";
  if (rank <= LAST_SERIOUS) return "serious";
  return rank <= LAST_MEDIUM ? "medium" : "low";
}
