/** Coolant: where it freezes by its strength, and how much to swap. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { between } from "./electrics.js";
import { ARITHMETIC, published } from "./sources.js";

/** Propylene glycol, per cent by volume, and freezing point, °C. */
const PROPYLENE: readonly (readonly [number, number])[] = [
  [0, 0],
  [5, -1.1],
  [10, -2.2],
  [15, -3.9],
  [20, -6.7],
  [25, -8.9],
  [30, -12.8],
  [35, -16.1],
  [40, -20.6],
  [45, -26.7],
  [50, -33.3],
];
/** Ethylene glycol, per cent by mass; 35, 40 and 60 seen, the others from memory, unverified. */
const ETHYLENE: readonly (readonly [number, number])[] = [
  [0, 0],
  [10, -3.2],
  [20, -7.8],
  [30, -14.1],
  [35, -18.8],
  [40, -23.8],
  [50, -33.8],
  [60, -51.2],
];
const strength = { kind: "percent", from: 0, to: 100 } as const;
const volume = { name: "volume", says: "Coolant in the system", kind: "volume", over: 0, to: 100 } as const;
const now = { name: "now", says: "Strength now", ...strength } as const;
const wanted = { name: "wanted", says: "Strength wanted", ...strength } as const;

export const COOLANT = [
  row({
    name: "freezing_propylene",
    says: "Freezing point of propylene glycol and water, by volume",
    arguments: [{ ...now, name: "strength", says: "Share of glycol by volume", to: 50 }],
    gives: "temperature",
    formula: "straight line between the rows of the table",
    source: published(
      "Handbook of chemistry, 15th edition",
      "table 5.13",
      "pure glycol; a coolant's own table comes first",
    ),
    work: (percent) => between(PROPYLENE, percent),
  }),
  row({
    name: "freezing_ethylene",
    says: "Freezing point of ethylene glycol and water, by mass",
    arguments: [{ ...now, name: "strength", says: "Share of glycol by mass", to: 60 }],
    gives: "temperature",
    formula: "straight line between the rows of the table",
    source: published(
      "Freezing point table of ethylene glycol solutions",
      undefined,
      "rows at 35, 40 and 60 % seen; handbooks differ by 1 to 3 K",
    ),
    work: (percent) => between(ETHYLENE, percent),
  }),
  row({
    name: "coolant_to_strengthen",
    says: "Coolant to let out and replace with concentrate",
    arguments: [volume, { name: "now", says: "Strength now", kind: "percent", from: 0, under: 100 }, wanted],
    gives: "volume",
    formula: "x = V (c(wanted) − c(now)) / (1 − c(now))",
    source: ARITHMETIC,
    work: (litres, have, want) =>
      want < have
        ? refusal("under-argument", { argument: "wanted", least: have })
        : (litres * (want - have)) / (100 - have),
  }),
  row({
    name: "coolant_to_thin",
    says: "Coolant to let out and replace with water",
    arguments: [volume, { name: "now", says: "Strength now", kind: "percent", over: 0, to: 100 }, wanted],
    gives: "volume",
    formula: "x = V (c(now) − c(wanted)) / c(now)",
    source: ARITHMETIC,
    work: (litres, have, want) =>
      want > have ? refusal("over-argument", { argument: "wanted", most: have }) : (litres * (have - want)) / have,
  }),
  row({
    name: "glycol_for_mass_share",
    says: "Volume of glycol in a mix of a given share by mass",
    arguments: [
      { ...volume, to: 100_000 },
      { name: "share", says: "Share by mass", kind: "percent", over: 0, to: 100 },
      { name: "density", says: "Density of the glycol against water", kind: "ratio", over: 0.5, to: 2 },
    ],
    gives: "volume",
    formula: "V / (1 + ρ (1 − P) / P)",
    source: ARITHMETIC,
    work: (total, percent, density) => total / (1 + (density * (100 - percent)) / percent),
  }),
];
