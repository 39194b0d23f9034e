/**
 * Water out of a hole: how long a well takes to empty, and what the measured time says of the hole. Free outlet,
 * vented top. Refuses the flat-tank formula for other shapes: each shape has its own.
 */

import { STANDARD_GRAVITY } from "./brakes.js";
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { fromMemory, published } from "./sources.js";

const ORIFICE = published(
  "Encyclopaedia Britannica, 11th ed. (1911), Hydraulics",
  "sections 17 to 20, 37 and the cylindrical mouthpiece",
  "checked against worked textbook problems",
);
/** Flow against the ideal by the edge of the hole. */
const DISCHARGE = { "sharp-edge": 0.62, "short-tube": 0.82, "rounded-entry": 0.97, "inward-pipe": 0.5 } as const;
const EDGES = ["sharp-edge", "short-tube", "rounded-entry", "inward-pipe"] as const;
const MM_PER_M = 1000;
const LITRES_PER_M3 = 1000;

const hole = { name: "hole", says: "Diameter of the hole", kind: "length", over: 0, to: 500 } as const;
const start = { name: "start", says: "Water over the hole at the start", kind: "length", over: 0, to: 30_000 } as const;
const end = { name: "end", says: "Water over the hole at the end", kind: "length", from: 0, to: 30_000 } as const;
const discharge = { name: "discharge", says: "Discharge coefficient", kind: "ratio", over: 0, to: 1 } as const;
const seconds = { name: "took", says: "Time it really took", kind: "duration", over: 0 } as const;
const expected = { name: "expected", says: "Time a clear hole would take", kind: "duration", over: 0 } as const;

const metres = (mm: number): number => mm / MM_PER_M;
const circle = (mm: number): number => (Math.PI * metres(mm) ** 2) / 4;
const ROOT_2G = Math.sqrt(2 * STANDARD_GRAVITY);
const rising = (from: number) => refusal("over-argument", { argument: "end", most: from });

export const DRAINAGE = [
  row({
    name: "discharge_coefficient",
    says: "Flow of a hole against the ideal, by its edge",
    arguments: [{ name: "edge", says: "Edge of the hole", kind: "word", words: EDGES }],
    gives: "ratio",
    formula: "by kind of edge",
    source: {
      ...ORIFICE,
      note: "0.62, 0.82 and 0.97 by experiment; the inward pipe 0.5 by theory, 0.51 to 0.55 by experiment",
    },
    work: (edge) => DISCHARGE[edge],
  }),
  row({
    name: "outflow",
    says: "Flow out of a hole, litres a second",
    arguments: [hole, { ...start, name: "head", says: "Water over the hole" }, discharge],
    gives: "number",
    formula: "Q = C · a · √(2 g h)",
    source: ORIFICE,
    work: (d, h, c) => c * circle(d) * ROOT_2G * Math.sqrt(metres(h)) * LITRES_PER_M3,
  }),
  row({
    name: "drain_time_straight",
    says: "Time to empty a well with straight sides",
    arguments: [
      { name: "surface", says: "Area of the water's surface, m²", kind: "number", over: 0, to: 1000 },
      hole,
      start,
      end,
      discharge,
    ],
    gives: "duration",
    formula: "t = 2 A (√h₁ − √h₂) / (C a √(2 g))",
    source: ORIFICE,
    work: (area, d, from, to, c) =>
      to > from
        ? rising(from)
        : (2 * area * (Math.sqrt(metres(from)) - Math.sqrt(metres(to)))) / (c * circle(d) * ROOT_2G),
  }),
  row({
    name: "drain_time_tapered",
    says: "Time to empty a round well that tapers to the hole",
    arguments: [
      { name: "top", says: "Diameter of the water's surface at the start", kind: "length", over: 0, to: 30_000 },
      hole,
      start,
      discharge,
    ],
    gives: "duration",
    formula: "∫ A(h) dh / (C a √(2 g h)), A(h) of a cone cut off at the hole",
    source: ORIFICE,
    work: (top, d, from, c) => {
      if (top < d) return refusal("under-argument", { argument: "top", least: d });
      // Diameter grows evenly from the hole up: A(h) = π/4 (d + s h)²; the integral of each power of h is exact.
      const [depth, bottom] = [metres(from), metres(d)];
      const slope = (metres(top) - bottom) / depth;
      const root = Math.sqrt(depth);
      const integral =
        (Math.PI / 4) *
        (2 * bottom ** 2 * root + (4 / 3) * bottom * slope * root ** 3 + (2 / 5) * slope ** 2 * root ** 5);
      return integral / (c * circle(d) * ROOT_2G);
    },
  }),
  row({
    name: "drain_time_round_bottom",
    says: "Time to empty a well shaped as the bottom of a ball",
    arguments: [
      { name: "radius", says: "Radius of the ball", kind: "length", over: 0, to: 30_000 },
      hole,
      start,
      discharge,
    ],
    gives: "duration",
    formula: "∫ π (2 R h − h²) dh / (C a √(2 g h)) = π (4/3 R h^1.5 − 2/5 h^2.5) / (C a √(2 g))",
    source: published("Textbook chapter on tank drainage and variable head flow", "example 6.4", "hemisphere"),
    work: (ball, d, from, c) => {
      if (from > 2 * ball) return refusal("over-argument", { argument: "start", most: 2 * ball });
      const [r, h] = [metres(ball), metres(from)];
      return (Math.PI * ((4 / 3) * r * h ** 1.5 - (2 / 5) * h ** 2.5)) / (c * circle(d) * ROOT_2G);
    },
  }),
  row({
    name: "time_by_starting_flow",
    says: "Time to empty a straight well from its volume and the flow at the start",
    arguments: [
      { name: "volume", says: "Water in it", kind: "volume", over: 0 },
      { name: "flow", says: "Flow at the start, litres a second", kind: "number", over: 0 },
    ],
    gives: "duration",
    formula: "t = 2 V / Q, since the flow falls evenly to nothing",
    source: ORIFICE,
    work: (litres, flow) => (2 * litres) / flow,
  }),
  row({
    name: "hole_open",
    says: "Share of a drain hole that is open",
    arguments: [seconds, expected],
    gives: "percent",
    formula: "100 · t(clear) / t(measured), at most 100",
    source: fromMemory(
      "follows from the outflow formula: time goes as one over the open area; dirt and capillarity are left out",
    ),
    work: (took, clear) => Math.min(100, (100 * clear) / took),
  }),
];
