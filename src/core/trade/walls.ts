/** Wall thickness by ultrasound: which reading counts, what a reading may hide, what it has lost. Knows no limit. */
import { row } from "./contract.js";
import { ARITHMETIC, published } from "./sources.js";

const GAUGE_MANUAL = published(
  "Ultrasonic thickness gauge operating manuals",
  "sections on sound speed, temperature and minimum thickness",
  "text seen in stored copies",
);
const VELOCITIES = published("Tutorial table of sound speeds in materials, maker of non-destructive testing gauges");
/** Share a steel wall seems thicker per kelvin it is hotter than where the gauge was set. */
const PER_KELVIN = 0.00018;
/** A probe that can't tell two echoes apart shows a thin wall as twice itself. */
const ECHOES = 2;

const thickness = { kind: "length", over: 0, to: 200 } as const;
const readings = { name: "readings", says: "Readings at one place", ...thickness, atLeast: 1 } as const;
const reading = { name: "reading", says: "Reading", ...thickness } as const;
const reference = { name: "reference", says: "Sound wall to compare with", ...thickness } as const;
const speed = { kind: "number", over: 500, to: 10_000 } as const;

const lowestOf = (values: readonly number[]): number => Math.min(...values);

export const WALLS = [
  row({
    name: "lowest_reading",
    says: "Lowest of several readings: the one a limit is held against",
    arguments: [readings],
    gives: "length",
    formula: "min(t₁ … tₙ)",
    source: ARITHMETIC,
    work: lowestOf,
  }),
  row({
    name: "mean_reading",
    says: "Mean of several readings",
    arguments: [readings],
    gives: "length",
    formula: "Σt / n",
    source: ARITHMETIC,
    work: (values) => values.reduce((sum, value) => sum + value, 0) / values.length,
  }),
  row({
    name: "wall_left",
    says: "Wall left at the worst place",
    arguments: [readings, reference],
    gives: "percent",
    formula: "100 · min(t₁ … tₙ) / t(sound)",
    source: ARITHMETIC,
    work: (values, sound) => (100 * lowestOf(values)) / sound,
  }),
  row({
    name: "wall_lost",
    says: "Wall lost at the worst place",
    arguments: [readings, reference],
    gives: "percent",
    formula: "100 · (t(sound) − min(t₁ … tₙ)) / t(sound)",
    source: ARITHMETIC,
    work: (values, sound) => (100 * (sound - lowestOf(values))) / sound,
  }),
  row({
    name: "may_be_doubled",
    says: "Whether a reading may be a thin wall shown twice",
    arguments: [reading, { name: "probe_minimum", says: "Thinnest wall the probe can tell", ...thickness }],
    gives: "yes",
    formula: "t < 2 · t(probe minimum)",
    source: GAUGE_MANUAL,
    work: (value, minimum) => value < ECHOES * minimum,
  }),
  row({
    name: "wall_by_echo",
    says: "Wall from sound speed and echo time",
    arguments: [
      { name: "sound_speed", says: "Sound speed, m/s", ...speed },
      { name: "echo", says: "Time there and back, millionths of a second", kind: "number", over: 0, to: 1000 },
    ],
    gives: "length",
    formula: "t = v · τ / 2",
    source: GAUGE_MANUAL,
    work: (metresPerSecond, microseconds) => (metresPerSecond * microseconds) / 2 / 1000,
  }),
  row({
    name: "wall_at_true_speed",
    says: "Wall when the gauge was set to another sound speed",
    arguments: [
      reading,
      { name: "true_speed", says: "Sound speed of the metal, m/s", ...speed },
      { name: "set_speed", says: "Sound speed the gauge was set to, m/s", ...speed },
    ],
    gives: "length",
    formula: "t = t(shown) · v(true) / v(set)",
    source: VELOCITIES,
    work: (shown, right, set) => (shown * right) / set,
  }),
  row({
    name: "wall_when_hot",
    says: "Wall when the metal was hotter than where the gauge was set",
    arguments: [
      reading,
      { name: "metal", says: "Metal temperature", kind: "temperature", from: -40, to: 500 },
      { name: "set_at", says: "Temperature the gauge was set at", kind: "temperature", from: -40, to: 100 },
    ],
    gives: "length",
    formula: "t = t(shown) · (1 − 0.00018 · (T − T₀))",
    source: GAUGE_MANUAL,
    work: (shown, metal, set) => shown * (1 - PER_KELVIN * (metal - set)),
  }),
  row({
    name: "paint_as_wall",
    says: "How much paint adds to a reading",
    arguments: [
      { name: "paint", says: "Paint thickness", kind: "length", from: 0, to: 10 },
      { name: "paint_speed", says: "Sound speed in the paint, m/s", ...speed },
      { name: "set_speed", says: "Sound speed the gauge was set to, m/s", ...speed },
    ],
    gives: "length",
    formula: "extra = paint · v(set) / v(paint)",
    source: GAUGE_MANUAL,
    work: (paint, inPaint, set) => (paint * set) / inPaint,
  }),
  row({
    name: "wall_floor",
    says: "Thinnest wall that keeps a share of a sound one",
    arguments: [reference, { name: "share", says: "Share that must be left", kind: "percent", over: 0, to: 100 }],
    gives: "length",
    formula: "t = t(sound) · share / 100",
    source: ARITHMETIC,
    work: (sound, share) => (sound * share) / 100,
  }),
];
