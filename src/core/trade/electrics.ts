/** A 12 V lead-acid battery and its wiring: charge, how long a drain takes, drop in a joint. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { ARITHMETIC, published } from "./sources.js";

/**
 * Open-circuit voltage and state of charge. Of two public tables, which differ by up to 0.15 V, the one that tells less
 * charge for the same voltage; the empty battery stands only in the other.
 */
const REST_VOLTAGE: readonly (readonly [volts: number, percent: number])[] = [
  [11.6, 0],
  [12.15, 25],
  [12.3, 50],
  [12.45, 75],
  [12.66, 100],
];
const TABLES = published(
  "Two public tables of rest voltage of 12 V lead-acid batteries",
  undefined,
  "they differ by up to 0.15 V: the one that tells less charge is taken; after 8 h at rest; glass-mat batteries read 0.1 to 0.2 V higher",
);
const HOURS_PER_DAY = 24;
/** Starter circuit while cranking, V. */
const CRANKING_DROP = { feed: 0.5, earth: 0.3, both: 0.8 } as const;

/** Straight line between the rows of a table sorted by its first column; outside it the end rows. */
export function between(table: readonly (readonly [number, number])[], x: number): number {
  const above = table.findIndex(([at]) => at >= x);
  const [first, last] = [table[0], table[table.length - 1]];
  if (!first || !last) return Number.NaN;
  if (above === 0) return first[1];
  const [low, high] = [table[above - 1], table[above]];
  if (!low || !high) return last[1];
  return low[1] + ((high[1] - low[1]) * (x - low[0])) / (high[0] - low[0]);
}

export const ELECTRICS = [
  row({
    name: "battery_charge",
    says: "Charge of a rested 12 V battery",
    arguments: [{ name: "rest_voltage", says: "Voltage after 8 h at rest", kind: "voltage", from: 8, to: 13.5 }],
    gives: "percent",
    formula: "straight line between the rows of the table",
    source: TABLES,
    work: (volts) => between(REST_VOLTAGE, volts),
  }),
  row({
    name: "drain_days",
    says: "Days a drain takes to use a share of the battery",
    arguments: [
      { name: "capacity", says: "Capacity", kind: "charge", over: 0, to: 500 },
      { name: "usable", says: "Share that may be used", kind: "percent", over: 0, to: 100 },
      { name: "drain", says: "Drain at rest", kind: "current", from: 0, to: 100 },
    ],
    gives: "number",
    formula: "Ah · share / (I · 24)",
    source: ARITHMETIC,
    work: (ampHours, share, amps) =>
      amps === 0 ? refusal("no-drain", { argument: "drain" }) : (ampHours * share) / 100 / (amps * HOURS_PER_DAY),
  }),
  row({
    name: "voltage_drop_allowed",
    says: "Voltage drop allowed while cranking",
    arguments: [{ name: "part", says: "Which part of the circuit", kind: "word", words: ["feed", "earth", "both"] }],
    gives: "voltage",
    formula: "by part of the starter circuit",
    source: published("Starter circuit test manual", "voltage drop"),
    work: (part) => CRANKING_DROP[part],
  }),
  row({
    name: "joint_heat",
    says: "Heat made in a joint",
    arguments: [
      { name: "drop", says: "Voltage drop across it", kind: "voltage", from: 0, to: 50 },
      { name: "current", says: "Current through it", kind: "current", from: 0, to: 1000 },
    ],
    gives: "power",
    formula: "P = U · I",
    source: ARITHMETIC,
    work: (volts, amps) => (volts * amps) / 1000,
  }),
  row({
    name: "current_by_shunt",
    says: "Current through a known resistance",
    arguments: [
      { name: "drop", says: "Voltage across it", kind: "voltage", from: 0, to: 50 },
      { name: "resistance", says: "Resistance", kind: "resistance", over: 0, to: 1000 },
    ],
    gives: "current",
    formula: "I = U / R",
    source: ARITHMETIC,
    work: (volts, ohms) => volts / ohms,
  }),
];
