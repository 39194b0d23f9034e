// Published critical-path tables: every earliest and latest start and finish, and both floats.

type Row = readonly [
  id: string,
  duration: number,
  preds: string,
  es: number,
  ef: number,
  ls: number,
  lf: number,
  total: number,
  free: number,
];

/** Each with how far its source was seen. */
export const TABLES: readonly (readonly [source: string, finish: number, critical: string, rows: readonly Row[]])[] = [
  [
    "opened: a lecture example, 16 hours, with its full table",
    16,
    "A B D E G",
    [
      ["A", 6, "", 0, 6, 0, 6, 0, 0],
      ["B", 2, "A", 6, 8, 6, 8, 0, 0],
      ["C", 2, "A", 6, 8, 7, 9, 1, 0],
      ["D", 3, "B", 8, 11, 8, 11, 0, 0],
      ["F", 2, "C", 8, 10, 9, 11, 1, 1],
      ["E", 4, "D F", 11, 15, 11, 15, 0, 0],
      ["G", 1, "E", 15, 16, 15, 16, 0, 0],
    ],
  ],
  [
    "opened: OR-Notes, Brunel University, network of the 1990 exam, 22 weeks",
    22,
    "2 5 8 9",
    [
      ["1", 2, "", 0, 2, 10, 12, 10, 0],
      ["2", 3, "", 0, 3, 0, 3, 0, 0],
      ["3", 2, "", 0, 2, 3, 5, 3, 0],
      ["4", 3, "1", 2, 5, 12, 15, 10, 5],
      ["5", 7, "2", 3, 10, 3, 10, 0, 0],
      ["6", 5, "3", 2, 7, 5, 10, 3, 3],
      ["7", 4, "4 5", 10, 14, 15, 19, 5, 5],
      ["8", 9, "5 6", 10, 19, 10, 19, 0, 0],
      ["9", 3, "7 8", 19, 22, 19, 22, 0, 0],
    ],
  ],
  [
    "opened: Introduction to Management Science (Cengage 2014), p. 386, figure 9.12, 17 weeks",
    17,
    "A E H I J",
    [
      ["A", 6, "", 0, 6, 0, 6, 0, 0],
      ["B", 2, "", 0, 2, 7, 9, 7, 7],
      ["C", 3, "A", 6, 9, 10, 13, 4, 0],
      ["D", 5, "A", 6, 11, 7, 12, 1, 0],
      ["E", 3, "A", 6, 9, 6, 9, 0, 0],
      ["F", 2, "C", 9, 11, 13, 15, 4, 4],
      ["G", 3, "D", 11, 14, 12, 15, 1, 1],
      ["H", 4, "B E", 9, 13, 9, 13, 0, 0],
      ["I", 2, "H", 13, 15, 13, 15, 0, 0],
      ["J", 2, "F G I", 15, 17, 15, 17, 0, 0],
    ],
  ],
  [
    "opened: an example with two critical paths, 19 days, every slack nought",
    19,
    "A B C D E F",
    [
      ["A", 4, "", 0, 4, 0, 4, 0, 0],
      ["B", 3, "A", 4, 7, 4, 7, 0, 0],
      ["C", 5, "A", 4, 9, 4, 9, 0, 0],
      ["D", 2, "B", 7, 9, 7, 9, 0, 0],
      ["E", 6, "C D", 9, 15, 9, 15, 0, 0],
      ["F", 4, "E", 15, 19, 15, 19, 0, 0],
    ],
  ],
  [
    "question opened (OR-Notes, 1997 exam); the figures computed only",
    19,
    "A B C D E G H",
    [
      ["A", 2, "", 0, 2, 0, 2, 0, 0],
      ["B", 3, "", 0, 3, 0, 3, 0, 0],
      ["C", 4, "A", 2, 6, 2, 6, 0, 0],
      ["D", 3, "A B", 3, 6, 3, 6, 0, 0],
      ["E", 8, "C D", 6, 14, 6, 14, 0, 0],
      ["F", 3, "C", 6, 9, 13, 16, 7, 7],
      ["G", 2, "E", 14, 16, 14, 16, 0, 0],
      ["H", 3, "F G", 16, 19, 16, 19, 0, 0],
    ],
  ],
];
