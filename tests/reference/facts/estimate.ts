// Three points: Introduction to Management Science (Cengage 2014) ch. 9, table 9.4, pages 383 to 386, opened (0.9656 of
// its path from memory), and a web textbook's example, opened. Five jobs: computed by formula. Tax: worked by hand.

/** Low, likely, high, then mean and variance as printed. */
export const CENGAGE = {
  A: [4, 5, 12, 6, 1.78],
  B: [1, 1.5, 5, 2, 0.44],
  C: [2, 3, 4, 3, 0.11],
  D: [3, 4, 11, 5, 1.78],
  E: [2, 3, 4, 3, 0.11],
  F: [1.5, 2, 2.5, 2, 0.03],
  G: [1.5, 3, 4.5, 3, 0.25],
  H: [2.5, 3.5, 7.5, 4, 0.69],
  I: [1.5, 2, 2.5, 2, 0.03],
  J: [1, 2, 3, 2, 0.11],
} as const;

/** Path A-E-H-I-J of the table, weeks. */
export const CENGAGE_PATH = {
  path: "AEHIJ",
  mean: 17,
  var: 2.7222,
  sd: 1.6499,
  deadline: 20,
  z: 1.8183,
  p_normal: 0.9655,
  p80_normal: 18.389,
} as const;
export const WEB_PATH = {
  src: "a web textbook's example, P(x<=28)=.9633 by table",
  acts: { 1: [5, 8, 17], 3: [3, 5, 7], 5: [4, 6, 8], 7: [3, 4, 5] },
  path: "1357",
  mean: 24,
  var: 5,
  z: 1.7889,
  p: 0.9632,
} as const;

/** Hours. */
export const FIVE_JOBS = [
  [0.8, 1, 2],
  [4, 5, 9],
  [0.5, 0.6, 1.5],
  [1, 1.5, 4],
  [0.3, 0.4, 0.5],
] as const;

export const FIVE_JOBS_EACH = {
  means: [1.1333, 5.5, 0.7333, 1.8333, 0.4],
  vars: [0.04, 0.69444, 0.02778, 0.25, 0.00111],
} as const;
export const FIVE_JOBS_TOGETHER = {
  mean: 9.6,
  var: 1.0133,
  sd: 1.0066,
  p80_normal: 10.447,
  beta_var: 1.0762,
  p80_normal_betavar: 10.473,
  normal_p95: 11.256,
  single: { p80_normal: 6.201, beta_exact_p80: 6.2513 },
} as const;

// net, basis points, then half-up, half-even, down, up
export const TAX = [
  [1050, 500, 53, 52, 52, 53],
  [50, 500, 3, 2, 2, 3],
  [-1050, 500, -53, -52, -52, -53],
  [999, 2000, 200, 200, 199, 200],
  [10, 2500, 3, 2, 2, 3],
  [1234, 2000, 247, 247, 246, 247],
] as const;
/** Three lines of 0.99. */
export const TAX_LEVELS_HAND = { lines: [99, 99, 99], bp: 1900, perLineHalfUp: 57, onTotalHalfUp: 56 } as const;
