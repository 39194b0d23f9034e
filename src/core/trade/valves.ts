/** Valve clearance: shims, what lapping takes, what a rocker multiplies. Picks from sizes that can be had. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { ARITHMETIC, practice, published } from "./sources.js";

const SHIM = published("Workshop manuals of two makers, valve clearance", "new = old + measured − wanted");
/** Beyond this a shim so different points to a wrong reading. */
const SUSPICIOUS_STEP = 0.4;

const shim = { name: "shim", says: "Shim fitted", kind: "length", over: 0, to: 10 } as const;
const measured = { name: "measured", says: "Clearance measured", kind: "length", from: 0, to: 5 } as const;
const wanted = { name: "wanted", says: "Clearance wanted", kind: "length", over: 0, to: 5 } as const;
const sizes = {
  name: "sizes",
  says: "Shims that can be had",
  kind: "length",
  over: 0,
  to: 10,
  atLeast: 1,
} as const;

const needed = (old: number, gap: number, target: number): number => old + gap - target;

export const VALVES = [
  row({
    name: "shim_needed",
    says: "Shim that gives the clearance wanted",
    arguments: [shim, measured, wanted],
    gives: "length",
    formula: "S = S(old) + C(measured) − C(wanted)",
    source: SHIM,
    work: (old, gap, target) => {
      const exact = needed(old, gap, target);
      return exact <= 0 ? refusal("no-shim", { argument: "wanted" }) : exact;
    },
  }),
  row({
    name: "shim_to_fit",
    says: "Nearest shim that can be had; of two as near, the thinner",
    arguments: [shim, measured, wanted, sizes],
    gives: "length",
    formula: "the size nearest to S(old) + C(measured) − C(wanted)",
    source: SHIM,
    work: (old, gap, target, all) => {
      const exact = needed(old, gap, target);
      const [nearest] = [...all].sort((a, b) => Math.abs(a - exact) - Math.abs(b - exact) || a - b);
      return nearest ?? refusal("no-shim", { argument: "sizes" });
    },
  }),
  row({
    name: "clearance_with_shim",
    says: "Clearance another shim would leave",
    arguments: [shim, measured, { ...shim, name: "new_shim", says: "Shim to be fitted" }],
    gives: "length",
    formula: "C = C(measured) + S(old) − S(new)",
    source: SHIM,
    work: (old, gap, fitted) => gap + old - fitted,
  }),
  row({
    name: "shim_step_suspicious",
    says: "Whether a shim differs so much that the reading wants repeating",
    arguments: [shim, { ...shim, name: "new_shim", says: "Shim to be fitted" }],
    gives: "yes",
    formula: "|S(new) − S(old)| > 0.40 mm",
    source: practice("common practice, no source"),
    work: (old, fitted) => Math.abs(fitted - old) > SUSPICIOUS_STEP,
  }),
  row({
    name: "valve_rise_by_lapping",
    says: "How far the stem rises when metal is taken square to the seat",
    arguments: [
      { name: "removed", says: "Metal taken off, square to the seat face", kind: "length", from: 0, to: 2 },
      { name: "seat_angle", says: "Seat angle from the plane square to the stem", kind: "angle", from: 0, to: 60 },
    ],
    gives: "length",
    formula: "s = n / cos(angle)",
    source: ARITHMETIC,
    work: (metal, degrees) => metal / Math.cos((degrees * Math.PI) / 180),
  }),
  row({
    name: "clearance_after_lapping",
    says: "Clearance after lapping; below zero the valve hangs open",
    arguments: [
      { name: "before", says: "Clearance before", kind: "length", from: 0, to: 5 },
      { name: "rise", says: "Rise of the stem", kind: "length", from: 0, to: 5 },
    ],
    gives: "length",
    formula: "C − s",
    source: ARITHMETIC,
    work: (before, rise) => before - rise,
  }),
  row({
    name: "clearance_at_valve",
    says: "Clearance at the valve from one measured at the cam",
    arguments: [
      { name: "at_cam", says: "Clearance at the cam", kind: "length", from: 0, to: 5 },
      { name: "rocker_ratio", says: "Rocker ratio", kind: "ratio", over: 0.5, to: 3 },
    ],
    gives: "length",
    formula: "C(valve) = C(cam) · ratio",
    source: ARITHMETIC,
    work: (gap, ratio) => gap * ratio,
  }),
];
