// Worked by hand: whole minor units shared out by largest remainder, equals by position.

export const SHARED_OUT = [
  { total: 1000, weights: [1, 1, 1], shares: [334, 333, 333] },
  { total: 100, weights: [3, 3, 1], shares: [43, 43, 14] },
  { total: 5, weights: [1, 1, 1, 1, 1, 1, 1], shares: [1, 1, 1, 1, 1, 0, 0] },
] as const;
