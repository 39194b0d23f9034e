/**
 * How fast a wall is rusting and how long it lasts, by the method of plant inspection codes: long and short rate, the
 * faster rules, next look at half the life left. Refuses to divide by a rate nobody measured.
 */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { published } from "./sources.js";

const API_570 = published(
  "API 570, Piping Inspection Code",
  "7.1 (rates, remaining life), 6.3 (interval)",
  "as taught in public study guides; the code itself not opened",
);
/** The next look comes when half of what is left has gone. */
const HALF = 2;

const thickness = { kind: "length", over: 0, to: 200 } as const;
const before = { name: "before", says: "Wall then", ...thickness } as const;
const now = { name: "now", says: "Wall now", ...thickness } as const;
const years = { name: "years", says: "Time between", kind: "age", over: 0, to: 100 } as const;
const rate = { name: "rate", says: "Loss a year, mm", kind: "number", from: 0 } as const;
const required = { name: "required", says: "Wall that must be left", ...thickness } as const;

export const CORROSION_LIFE = [
  row({
    name: "loss_per_year",
    says: "Wall lost a year, mm",
    arguments: [before, now, years],
    gives: "number",
    formula: "(t(then) − t(now)) / years; long term from the first wall measured, short term from the last",
    source: API_570,
    work: (then, today, apart) => (today > then ? refusal("no-loss", { argument: "now" }) : (then - today) / apart),
  }),
  row({
    name: "governing_rate",
    says: "The faster of long and short rate, mm a year",
    arguments: [
      { ...rate, name: "long_rate", says: "Loss a year since the first wall measured, mm" },
      { ...rate, name: "short_rate", says: "Loss a year since last time, mm" },
    ],
    gives: "number",
    formula: "max(long, short)",
    source: API_570,
    work: (long, short) => Math.max(long, short),
  }),
  row({
    name: "remaining_life",
    says: "Years until the wall reaches what must be left",
    arguments: [now, required, rate],
    gives: "age",
    formula: "(t(now) − t(required)) / rate; none where it is reached already",
    source: API_570,
    work: (today, least, perYear) => {
      if (today <= least) return 0;
      return perYear === 0 ? refusal("no-loss", { argument: "rate" }) : (today - least) / perYear;
    },
  }),
  row({
    name: "next_look",
    says: "Years until it should be looked at again",
    arguments: [
      { name: "life", says: "Life left", kind: "age", from: 0 },
      { name: "longest", says: "Never later than", kind: "age", over: 0 },
    ],
    gives: "age",
    formula: "min(life / 2, longest)",
    source: API_570,
    work: (life, longest) => Math.min(life / HALF, longest),
  }),
];
