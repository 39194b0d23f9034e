// The matrix: MIL-STD-882D Table A-III, read in a reproduction in a process-safety handbook; bands of Table A-IV from
// memory. The list is a case of our own, worked by hand from the rules of urgency. Weights 40 and 1: COM(2012)382
// Annex I (rating haulage firms), opened.

/** Ranks by likelihood A to E, columns severity 1 to 4. */
export const TABLE_A_III = {
  A: [1, 3, 7, 13],
  B: [2, 5, 9, 16],
  C: [4, 6, 11, 18],
  D: [8, 10, 14, 19],
  E: [12, 15, 17, 20],
} as const;
/** First and last rank of each band. */
export const BANDS = { high: [1, 5], serious: [6, 9], medium: [10, 17], low: [18, 20] } as const;

interface Listed {
  readonly id: string;
  readonly what: string;
  readonly grade: "advisory" | "minor" | "major" | "dangerous";
  readonly consequence: 1 | 2 | 3 | 4;
  readonly likelihood: "A" | "B" | "C" | "D" | "E";
  readonly immobilise?: boolean;
  readonly exposure?: 0;
  readonly dueKm?: number;
  readonly nextVisitKm?: number;
  /** Place on the way round the car. */
  readonly order: number;
}
export const EIGHT: readonly Listed[] = [
  {
    id: "f1",
    what: "brake hose bulging",
    grade: "dangerous",
    consequence: 1,
    likelihood: "A",
    immobilise: true,
    order: 9,
  },
  { id: "f2", what: "tyre cord in view", grade: "dangerous", consequence: 1, likelihood: "C", exposure: 0, order: 4 },
  { id: "f3", what: "brake pipe heavily rusted", grade: "major", consequence: 1, likelihood: "C", order: 12 },
  { id: "f4", what: "exhaust leak", grade: "major", consequence: 3, likelihood: "B", order: 20 },
  {
    id: "f5",
    what: "pads wearing",
    grade: "minor",
    consequence: 2,
    likelihood: "D",
    dueKm: 3000,
    nextVisitKm: 10_000,
    order: 3,
  },
  { id: "f6", what: "oil mist", grade: "advisory", consequence: 4, likelihood: "C", order: 30 },
  { id: "f7", what: "belt webbing frayed", grade: "minor", consequence: 1, likelihood: "C", order: 2 },
  { id: "f8", what: "dangerous but remote", grade: "dangerous", consequence: 1, likelihood: "D", order: 1 },
];

/** In urgency order. */
export const EIGHT_IN_ORDER = [
  { id: "f1", sev: 1, p: "A", rank: 1, band: "high", due: 0, regrade: false },
  { id: "f2", sev: 1, p: "C", rank: 4, band: "high", due: 0, regrade: false },
  { id: "f8", sev: 1, p: "D", rank: 8, band: "serious", due: 1, regrade: false },
  { id: "f3", sev: 1, p: "C", rank: 4, band: "high", due: 1, regrade: true },
  { id: "f7", sev: 1, p: "C", rank: 4, band: "high", due: 1, regrade: true },
  { id: "f4", sev: 3, p: "B", rank: 9, band: "serious", due: 2, regrade: false },
  { id: "f5", sev: 2, p: "D", rank: 10, band: "medium", due: 2, regrade: false },
  { id: "f6", sev: 4, p: "C", rank: 18, band: "low", due: 4, regrade: false },
] as const;
/** What tells each from the next. */
export const EIGHT_TOLD_BY = ["rank", "due", "dangerous", "grade", "due", "rank", "due"] as const;

export const SUM_OF_WEIGHTS = { minors: 41, minorSum: 41, dangerous: 40 };
