/** Compression and leak-down of an engine's cylinders; what height above the sea takes off. Judges no engine. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { ARITHMETIC, published } from "./sources.js";

/** Standard atmosphere: pressure falls as (1 − L h / T₀)^(g M / R L). */
const LAPSE_PER_M = 2.25577e-5;
const EXPONENT = 5.25588;
const ISA = published(
  "ISO 2533, standard atmosphere",
  undefined,
  "constants from memory, agreeing with the table checked",
);
const LEAK = published("FAA AC 43.13-1B", "8-14, differential compression test");

const cylinders = {
  name: "cylinders",
  says: "Compression of each cylinder; a dead one shows 0",
  kind: "pressure",
  from: 0,
  to: 60,
  atLeast: 2,
} as const;
const metres = { name: "height", says: "Height above the sea, m", kind: "number", from: -500, to: 5000 } as const;

/** Air pressure at a height as a share of that at the sea. */
export const pressureShare = (height: number): number => (1 - LAPSE_PER_M * height) ** EXPONENT;

export const COMPRESSION = [
  row({
    name: "compression_spread",
    says: "Spread between highest and lowest cylinder",
    arguments: [cylinders],
    gives: "percent",
    formula: "100 · (max − min) / max",
    source: ARITHMETIC,
    work: (all) => (100 * (Math.max(...all) - Math.min(...all))) / Math.max(...all),
  }),
  row({
    name: "lowest_over_highest",
    says: "Lowest cylinder against the highest; manuals ask 70 or 75 %",
    arguments: [cylinders],
    gives: "percent",
    formula: "100 · min / max",
    source: published("Workshop manuals", "compression test", "75 % in one, 70 % and at least 6.9 bar in another"),
    work: (all) => (100 * Math.min(...all)) / Math.max(...all),
  }),
  row({
    name: "lowest_cylinder",
    says: "Number of the lowest cylinder",
    arguments: [cylinders],
    gives: "number",
    formula: "position of the lowest, counted from 1",
    source: ARITHMETIC,
    work: (all) => all.indexOf(Math.min(...all)) + 1,
  }),
  row({
    name: "wet_gain",
    says: "Gain after oil was put in",
    arguments: [
      { name: "dry", says: "Compression dry", kind: "pressure", over: 0, to: 60 },
      { name: "wet", says: "Compression with oil in", kind: "pressure", over: 0, to: 80 },
    ],
    gives: "percent",
    formula: "100 · (wet − dry) / dry; the oil's own volume lifts a sound cylinder too, so compare with a good one",
    source: ARITHMETIC,
    work: (dry, wet) => (100 * (wet - dry)) / dry,
  }),
  row({
    name: "leak_down",
    says: "Leak of a cylinder under air",
    arguments: [
      { name: "supply", says: "Pressure in", kind: "pressure", over: 0, to: 20 },
      { name: "cylinder", says: "Pressure held", kind: "pressure", from: 0, to: 20 },
    ],
    gives: "percent",
    formula: "100 · (p(in) − p(held)) / p(in)",
    source: LEAK,
    work: (supply, held) =>
      held > supply
        ? refusal("over-argument", { argument: "cylinder", most: supply })
        : (100 * (supply - held)) / supply,
  }),
  row({
    name: "pressure_share_at_height",
    says: "Air pressure at a height against that at the sea",
    arguments: [metres],
    gives: "ratio",
    formula: "(1 − 2.25577·10⁻⁵ · h)^5.25588",
    source: ISA,
    work: pressureShare,
  }),
  row({
    name: "compression_at_sea",
    says: "Compression it would show at the sea",
    arguments: [{ name: "shown", says: "Compression shown", kind: "pressure", over: 0, to: 60 }, metres],
    gives: "pressure",
    formula: "p(shown) / (p(height) / p(sea))",
    source: ISA,
    work: (shown, height) => shown / pressureShare(height),
  }),
];
