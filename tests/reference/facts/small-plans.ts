// Small plans whose shortest finish is known, and a car on the only lift that waits for a part.

type Row = readonly [duration: number, preds: readonly number[], people: number, lift: number, release: number];
/** Computed: full enumeration of orders and branch and bound agree. Two people, one lift. */
export const CASES: readonly (readonly [optimum: number, rows: readonly Row[]])[] = [
  [
    18,
    [
      [1, [], 1, 0, 0],
      [4, [], 1, 1, 0],
      [5, [], 1, 0, 0],
      [4, [], 2, 1, 0],
      [4, [0], 1, 0, 0],
      [1, [4], 2, 1, 6],
      [8, [4], 1, 0, 0],
    ],
  ],
  [
    20,
    [
      [5, [], 1, 0, 0],
      [5, [], 1, 1, 12],
      [7, [], 1, 1, 0],
      [6, [], 1, 0, 0],
      [2, [], 1, 0, 3],
      [6, [3], 1, 1, 0],
      [2, [0, 1, 2], 2, 0, 0],
    ],
  ],
  [
    23,
    [
      [8, [], 1, 1, 0],
      [1, [], 2, 1, 7],
      [7, [], 1, 1, 0],
      [6, [1], 1, 0, 10],
      [8, [1, 2], 1, 0, 0],
      [7, [2], 1, 0, 0],
    ],
  ],
  [
    29,
    [
      [5, [], 1, 0, 0],
      [1, [], 1, 1, 0],
      [5, [0], 1, 0, 6],
      [8, [], 2, 0, 0],
      [5, [], 1, 0, 0],
      [6, [0, 3], 2, 0, 4],
      [5, [], 2, 0, 0],
    ],
  ],
  [
    20,
    [
      [3, [], 1, 1, 0],
      [6, [], 1, 0, 3],
      [1, [0, 1], 2, 0, 8],
      [4, [1], 1, 0, 0],
      [6, [1, 3], 1, 1, 0],
      [4, [2], 1, 1, 0],
    ],
  ],
];

/** By hand, in working hours: gearbox out 6, fit 1, in 6; the part comes at hour 72. */
export const STRANDED = {
  early: { start: 0, finish: 79, liftHeld: 79, liftIdle: 66 },
  kitFirst: { start: 72, finish: 85, liftHeld: 13, liftIdle: 0 },
  justInTime: { start: 66, finish: 79, liftHeld: 13, liftIdle: 0 },
} as const;
