/** Rolling bearings: end float, side difference, heat rise, rotation and defect frequencies. Judges nothing. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { ARITHMETIC, practice, published } from "./sources.js";

const KINEMATICS = published(
  "Bearing data sets of two universities, with the kinematic formulae of the textbooks",
  "FTF, BPFO, BPFI, BSF",
  "real bearings slip 1 to 3 % from these",
);
/** `outer` turns as in a wheel hub on a fixed stub axle; `inner` as on a driven shaft. */
const RINGS = ["inner", "outer"] as const;

const balls = {
  name: "balls",
  says: "Rolling elements in a row",
  kind: "number",
  from: 3,
  to: 60,
  whole: true,
} as const;
const ball = { name: "ball", says: "Diameter of a rolling element", kind: "length", over: 0, to: 200 } as const;
const pitch = { name: "pitch", says: "Pitch diameter of the row", kind: "length", over: 0, to: 1000 } as const;
const contact = { name: "contact", says: "Contact angle", kind: "angle", from: 0, under: 90 } as const;
const turns = { name: "turns", says: "Turns of the ring", kind: "frequency", over: 0, to: 1000 } as const;
const ring = { name: "ring", says: "Which ring turns", kind: "word", words: RINGS } as const;

/** (d / D) · cos α, or why there is no such bearing. */
function share(d: number, pitchDiameter: number, degrees: number): number | undefined {
  const k = (d / pitchDiameter) * Math.cos((degrees * Math.PI) / 180);
  return d < pitchDiameter ? k : undefined;
}
const tooLarge = (pitchDiameter: number) => refusal("over-argument", { argument: "ball", most: pitchDiameter });

export const BEARINGS = [
  row({
    name: "turns_by_speed",
    says: "Turns of a wheel at a road speed",
    arguments: [
      { name: "speed", says: "Road speed", kind: "speed", over: 0, to: 400 },
      { name: "circumference", says: "Rolling circumference", kind: "length", over: 500, to: 4000 },
    ],
    gives: "frequency",
    formula: "f = v / C",
    source: ARITHMETIC,
    work: (kmh, circumference) => kmh / 3.6 / (circumference / 1000),
  }),
  row({
    name: "cage_frequency",
    says: "Cage turns (FTF)",
    arguments: [ball, pitch, contact, turns, ring],
    gives: "frequency",
    formula: "f / 2 · (1 − k) with the inner ring turning, f / 2 · (1 + k) with the outer; k = d / D · cos α",
    source: KINEMATICS,
    work: (d, pitchDiameter, degrees, hz, turning) => {
      const k = share(d, pitchDiameter, degrees);
      if (k === undefined) return tooLarge(pitchDiameter);
      return (hz / 2) * (turning === "inner" ? 1 - k : 1 + k);
    },
  }),
  row({
    name: "outer_race_frequency",
    says: "Rolling elements passing a spot on the outer race (BPFO)",
    arguments: [balls, ball, pitch, contact, turns],
    gives: "frequency",
    formula: "n · f / 2 · (1 − k), whichever ring turns",
    source: KINEMATICS,
    work: (n, d, pitchDiameter, degrees, hz) => {
      const k = share(d, pitchDiameter, degrees);
      return k === undefined ? tooLarge(pitchDiameter) : ((n * hz) / 2) * (1 - k);
    },
  }),
  row({
    name: "inner_race_frequency",
    says: "Rolling elements passing a spot on the inner race (BPFI)",
    arguments: [balls, ball, pitch, contact, turns],
    gives: "frequency",
    formula: "n · f / 2 · (1 + k), whichever ring turns",
    source: KINEMATICS,
    work: (n, d, pitchDiameter, degrees, hz) => {
      const k = share(d, pitchDiameter, degrees);
      return k === undefined ? tooLarge(pitchDiameter) : ((n * hz) / 2) * (1 + k);
    },
  }),
  row({
    name: "rolling_element_frequency",
    says: "Turns of a rolling element (BSF); a spot on it strikes twice as often",
    arguments: [ball, pitch, contact, turns],
    gives: "frequency",
    formula: "f · D / (2 d) · (1 − k²)",
    source: KINEMATICS,
    work: (d, pitchDiameter, degrees, hz) => {
      const k = share(d, pitchDiameter, degrees);
      return k === undefined ? tooLarge(pitchDiameter) : ((hz * pitchDiameter) / (2 * d)) * (1 - k ** 2);
    },
  }),
  row({
    name: "heat_rise",
    says: "Heat over the air",
    arguments: [
      { name: "part", says: "Temperature of the part", kind: "temperature", from: -40, to: 800 },
      { name: "air", says: "Temperature of the air", kind: "temperature", from: -40, to: 60 },
    ],
    gives: "temperature_difference",
    formula: "T(part) − T(air)",
    source: ARITHMETIC,
    work: (part, air) => part - air,
  }),
  row({
    name: "side_difference",
    says: "How much worse one side is than the other, in units of the uncertainty of the difference",
    arguments: [
      { name: "one", says: "This side", kind: "length", from: 0, to: 100 },
      { name: "other", says: "The other side", kind: "length", from: 0, to: 100 },
      { name: "error_one", says: "Uncertainty of this side", kind: "length", over: 0, to: 10 },
      { name: "error_other", says: "Uncertainty of the other side", kind: "length", over: 0, to: 10 },
    ],
    gives: "ratio",
    formula: "(a − b) / √(uₐ² + u_b²); under 2 it is no difference",
    source: practice("the usual rule for the difference of two readings"),
    work: (a, b, ea, eb) => (a - b) / Math.hypot(ea, eb),
  }),
];
