/** Brake figures: efficiency, imbalance, least efficiency by law, disc spread and run-out, pad taper. Grades nothing. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { ARITHMETIC, practice, published } from "./sources.js";

/** Standard acceleration of free fall, m/s² (exact by definition). */
export const STANDARD_GRAVITY = 9.80665;
const METRES_PER_SECOND_IN_KMH = 3.6;

const TEST_MANUAL = published("UK car test inspection manual", "3.7 and 3.8 (brake performance)", "2012 text");
const IMBALANCE = published(
  "Directive 2010/48/EU",
  "brake effort at a wheel under 70 % of the highest on the axle",
  "the same rule as 30 % imbalance",
);

/** Least service brake efficiency, per cent, by country and first use. */
const SERVICE_MINIMUM = {
  /** First used from this year on, the newer figure. The UK's is 1 September 2010: give 2010.67 or later. */
  newerFrom: { EU: 2012, UK: 2010 + 8 / 12 },
  newer: 58,
  older: 50,
  /** UK cars first used before 1968; from memory, unverified. */
  before1968: 40,
} as const;
/** Least parking brake efficiency, per cent. */
const PARKING_MINIMUM = { "split-circuits": 16, "single-circuit": 25 } as const;

const effort = { kind: "force", from: 0, to: 50_000 } as const;
const mass = { name: "mass", says: "Mass the brakes must stop", kind: "mass", over: 0, to: 5000 } as const;
const thicknesses = {
  name: "thicknesses",
  says: "Thickness round the disc",
  kind: "length",
  over: 0,
  to: 100,
  atLeast: 2,
} as const;

export const BRAKES = [
  row({
    name: "brake_efficiency",
    says: "Brake efficiency from the efforts of all wheels",
    arguments: [{ name: "efforts", says: "Brake effort of each wheel", ...effort, atLeast: 1 }, mass],
    gives: "percent",
    formula: "100 · ΣF / (m · g)",
    source: TEST_MANUAL,
    work: (efforts, kg) => (100 * efforts.reduce((sum, one) => sum + one, 0)) / (kg * STANDARD_GRAVITY),
  }),
  row({
    name: "efficiency_by_deceleration",
    says: "Brake efficiency from the deceleration",
    arguments: [{ name: "deceleration", says: "Mean deceleration, m/s²", kind: "number", from: 0, to: 20 }],
    gives: "percent",
    formula: "100 · a / g",
    source: TEST_MANUAL,
    work: (a) => (100 * a) / STANDARD_GRAVITY,
  }),
  row({
    name: "deceleration_of_stop",
    says: "Mean deceleration from speed and stopping distance, m/s²",
    arguments: [
      { name: "speed", says: "Speed when the brake was pressed", kind: "speed", over: 0, to: 300 },
      { name: "distance", says: "Distance to standstill, m", kind: "number", over: 0, to: 1000 },
    ],
    gives: "number",
    formula: "a = v² / (2 s)",
    source: ARITHMETIC,
    work: (kmh, metres) => (kmh / METRES_PER_SECOND_IN_KMH) ** 2 / (2 * metres),
  }),
  row({
    name: "dive_error",
    says: "What a nose-down tilt adds to a deceleration gauge",
    arguments: [{ name: "tilt", says: "Nose-down tilt while braking", kind: "angle", from: 0, under: 45 }],
    gives: "percent",
    formula: "100 · sin(tilt)",
    source: ARITHMETIC,
    work: (degrees) => 100 * Math.sin((degrees * Math.PI) / 180),
  }),
  row({
    name: "brake_imbalance",
    says: "Imbalance across an axle",
    arguments: [
      { name: "left", says: "Left effort", ...effort },
      { name: "right", says: "Right effort", ...effort },
    ],
    gives: "percent",
    formula: "100 · (higher − lower) / higher",
    source: IMBALANCE,
    work: (left, right) => {
      const higher = Math.max(left, right);
      return higher === 0 ? refusal("both-zero") : (100 * (higher - Math.min(left, right))) / higher;
    },
  }),
  row({
    name: "service_brake_minimum",
    says: "Least efficiency of the service brake",
    arguments: [
      { name: "country", says: "Country", kind: "word", words: ["EU", "UK"] },
      {
        name: "first_used",
        says: "Year of first use, with the part of the year",
        kind: "number",
        from: 1900,
        to: 2100,
      },
    ],
    gives: "percent",
    formula: "by country and date of first use",
    source: published(
      "Directive 2014/45/EU, Annex I, and UK car test inspection manual",
      "1.2.2",
      "local rules differ: ask the test station; UK before 1968 from memory, unverified",
    ),
    work: (country, year) => {
      if (year >= SERVICE_MINIMUM.newerFrom[country]) return SERVICE_MINIMUM.newer;
      return country === "UK" && year < 1968 ? SERVICE_MINIMUM.before1968 : SERVICE_MINIMUM.older;
    },
  }),
  row({
    name: "parking_brake_minimum",
    says: "Least efficiency of the parking brake",
    arguments: [
      { name: "circuits", says: "Service brake circuits", kind: "word", words: ["split-circuits", "single-circuit"] },
    ],
    gives: "percent",
    formula: "by kind of circuit",
    source: TEST_MANUAL,
    work: (circuits) => PARKING_MINIMUM[circuits],
  }),
  row({
    name: "disc_spread",
    says: "Thickness variation round a disc",
    arguments: [thicknesses],
    gives: "length",
    formula: "max − min",
    source: ARITHMETIC,
    work: (values) => Math.max(...values) - Math.min(...values),
  }),
  row({
    name: "disc_run_out_own",
    says: "The disc's own run-out at the least, the hub's taken off",
    arguments: [
      { name: "disc", says: "Run-out at the disc", kind: "length", from: 0, to: 10 },
      { name: "hub", says: "Run-out of the hub face at the same radius", kind: "length", from: 0, to: 10 },
    ],
    gives: "length",
    formula: "at least |disc − hub|: the two may add or cancel, so turn the disc on the hub and measure again",
    source: practice("a disc is turned on its hub and measured again; the highest and lowest give hub and disc"),
    work: (disc, hub) => Math.abs(disc - hub),
  }),
  row({
    name: "pad_taper",
    says: "Taper of a pad",
    arguments: [
      { name: "one_end", says: "Lining at one end", kind: "length", from: 0, to: 50 },
      { name: "other_end", says: "Lining at the other end", kind: "length", from: 0, to: 50 },
    ],
    gives: "length",
    formula: "|a − b|",
    source: ARITHMETIC,
    work: (a, b) => Math.abs(a - b),
  }),
];
