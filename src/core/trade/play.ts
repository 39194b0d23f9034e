/** Play by geometry: what is felt at the rim or the steering wheel, brought back to where it comes from. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { ARITHMETIC, published } from "./sources.js";

/** Steering wheel diameter the published play limits are given for, mm. */
const REFERENCE_WHEEL = 380;
/** Free play allowed at the rim of such a wheel, mm. */
const STEERING_PLAY = { rack: 13, "rack-several-joints": 48, box: 75 } as const;
const GEARS = ["rack", "rack-several-joints", "box"] as const;

const movement = { kind: "length", from: 0, to: 500 } as const;
const wheel = { name: "wheel", says: "Diameter of the steering wheel", kind: "length", from: 200, to: 600 } as const;

export const PLAY = [
  row({
    name: "joint_play_from_rim",
    says: "Play between two joints or bearings that rocks the rim so far",
    arguments: [
      { name: "rim", says: "Movement at the tyre or rim", ...movement },
      { name: "radius", says: "Radius where it was measured", kind: "length", from: 50, to: 600 },
      { name: "apart", says: "Distance between the two joints or bearings", kind: "length", from: 10, to: 600 },
    ],
    gives: "length",
    formula: "play = rim · apart / radius",
    source: ARITHMETIC,
    work: (rim, radius, apart) => (rim * apart) / radius,
  }),
  row({
    name: "rim_movement_from_play",
    says: "Movement at the rim that so much play gives",
    arguments: [
      { name: "play", says: "Play at the joint", ...movement },
      { name: "radius", says: "Radius at the rim", kind: "length", from: 50, to: 600 },
      { name: "apart", says: "Distance between the two joints or bearings", kind: "length", from: 10, to: 600 },
    ],
    gives: "length",
    formula: "rim = play · radius / apart",
    source: ARITHMETIC,
    work: (play, radius, apart) => (play * radius) / apart,
  }),
  row({
    name: "steering_play_angle",
    says: "Steering play as an angle",
    arguments: [{ name: "play", says: "Play at the steering wheel's rim", ...movement }, wheel],
    gives: "angle",
    formula: "2 · asin(play / diameter)",
    source: ARITHMETIC,
    work: (play, diameter) =>
      play > diameter
        ? refusal("over-argument", { argument: "play", most: diameter })
        : (2 * Math.asin(play / diameter) * 180) / Math.PI,
  }),
  row({
    name: "steering_play_on_reference",
    says: "Steering play as it would be on a 380 mm wheel",
    arguments: [{ name: "play", says: "Play at the steering wheel's rim", ...movement }, wheel],
    gives: "length",
    formula: "play · 380 / diameter",
    source: ARITHMETIC,
    work: (play, diameter) => (play * REFERENCE_WHEEL) / diameter,
  }),
  row({
    name: "steering_play_allowed",
    says: "Steering play allowed on a wheel of this size",
    arguments: [{ name: "gear", says: "Kind of steering", kind: "word", words: GEARS }, wheel],
    gives: "length",
    formula: "limit for 380 mm · diameter / 380",
    source: published(
      "UK car test inspection manual",
      "2.1, steering free play",
      "edition of 2012: 13, 48 and 75 mm at 380 mm",
    ),
    work: (gear, diameter) => (STEERING_PLAY[gear] * diameter) / REFERENCE_WHEEL,
  }),
  row({
    name: "toe_angle",
    says: "Toe in degrees",
    arguments: [
      { name: "toe", says: "Toe measured", kind: "length", from: -50, to: 50 },
      { name: "diameter", says: "Diameter it was measured on", kind: "length", from: 200, to: 1000 },
    ],
    gives: "angle",
    formula: "asin(toe / diameter)",
    source: ARITHMETIC,
    work: (toe, diameter) => (Math.asin(toe / diameter) * 180) / Math.PI,
  }),
];
