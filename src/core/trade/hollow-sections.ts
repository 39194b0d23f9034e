/**
 * Round, square and rectangular tubes as sections: area, second moment, section modulus, and how much of them a rusted
 * tube still has. Corner radii as in EN 10219-2 up to 6 mm wall. Refuses a wall that leaves no hole.
 */
import { refusal } from "./calculate.js";
import { type FigureArgument, row, type Source } from "./contract.js";
import { ARITHMETIC, published } from "./sources.js";

const TABLES = published(
  "EN 10219-2 and EN 10210-2, hollow sections: dimensions and sectional properties",
  "annexes A (formulae) and B (tables)",
  "checked against reprinted tables",
);
const MM2_PER_CM2 = 100;
const MM3_PER_CM3 = 1000;
const MM4_PER_CM4 = 10_000;

const diameter = { name: "diameter", says: "Outside diameter", kind: "length", over: 0, to: 1000 } as const;
const height = {
  name: "height",
  says: "Outside height, in the direction it bends",
  kind: "length",
  over: 0,
  to: 1000,
} as const;
const width = { name: "width", says: "Outside width", kind: "length", over: 0, to: 1000 } as const;
const wall = { name: "wall", says: "Wall", kind: "length", over: 0, to: 50 } as const;
const make = { name: "make", says: "How it was made", kind: "word", words: ["cold-formed", "hot-finished"] } as const;
const loss = { name: "loss", says: "Wall lost", kind: "length", from: 0, to: 50 } as const;
const side = { name: "side", says: "Which face rusted", kind: "word", words: ["outside", "inside"] } as const;

const arc = { name: "arc", says: "How far round it is thinned", kind: "angle", over: 0, to: 360 } as const;
const THIN_SEGMENT: Source = {
  basis: "arithmetic",
  note: "thin-wall model of one-sided loss or of a local patch: what is gone is taken as an arc of even depth",
};

const noHole = (of: number, argument: FigureArgument) =>
  refusal("wall-too-thick", { argument: argument.name, most: of / 2 });
const allGone = (wallLeft: number) => refusal("wall-gone", { argument: "loss", most: wallLeft });

/** Area (mm²), second moment (mm⁴) and modulus (mm³) of a section. */
interface Section {
  readonly area: number;
  readonly secondMoment: number;
  readonly modulus: number;
}

/** A round tube by its outside and inside diameter, mm. */
export function roundTube(outside: number, inside: number): Section {
  const secondMoment = (Math.PI * (outside ** 4 - inside ** 4)) / 64;
  return { area: (Math.PI * (outside ** 2 - inside ** 2)) / 4, secondMoment, modulus: (2 * secondMoment) / outside };
}

/** A rectangle with rounded corners, mm; bends about the axis square to `h`. */
function roundedRectangle(h: number, b: number, radius: number): Omit<Section, "modulus"> {
  const gap = (1 - Math.PI / 4) * radius ** 2;
  const arm = h / 2 - ((10 - 3 * Math.PI) / (12 - 3 * Math.PI)) * radius;
  const own = (1 / 3 - Math.PI / 16 - 1 / (3 * (12 - 3 * Math.PI))) * radius ** 4;
  return { area: b * h - 4 * gap, secondMoment: (b * h ** 3) / 12 - 4 * (own + gap * arm ** 2) };
}

/** Outside corner radius in walls, to 6 mm wall: cold formed as EN 10219-2, hot finished as EN 10210-2. Inside it is one wall. */
const CORNER = { "cold-formed": 2, "hot-finished": 1.5 } as const;
type Make = keyof typeof CORNER;

/** A rectangular tube with the corners of its make, mm. */
export function rectangularTube(h: number, b: number, t: number, make: Make): Section {
  const outer = roundedRectangle(h, b, CORNER[make] * t);
  const inner = roundedRectangle(h - 2 * t, b - 2 * t, t);
  const secondMoment = outer.secondMoment - inner.secondMoment;
  return { area: outer.area - inner.area, secondMoment, modulus: (2 * secondMoment) / h };
}

/** A round tube that lost wall evenly all round on one face. */
export function rustedTube(outside: number, t: number, lost: number, face: "outside" | "inside"): Section {
  return face === "outside"
    ? roundTube(outside - 2 * lost, outside - 2 * t)
    : roundTube(outside, outside - 2 * (t - lost));
}

/**
 * A round tube whose wall is thinner over one arc, as where mud lies: thin ring segments of the mean radius summed
 * about their own centre of area. `arc` in degrees.
 */
export function oneSidedTube(outside: number, t: number, lost: number, arc: number): Section {
  const half = (arc / 2) * (Math.PI / 180);
  const whole = roundTube(outside, outside - 2 * t);
  // What is taken away: a segment of thickness `lost` on the outside, its middle at radius r, centred on the bottom.
  const r = (outside - lost) / 2;
  const gone = 2 * half * r * lost;
  const firstMoment = 2 * Math.sin(half) * r ** 2 * lost;
  const goneAboutCentre = lost * r ** 3 * (half + Math.sin(2 * half) / 2);
  const area = whole.area - gone;
  const shift = firstMoment / area;
  const secondMoment = whole.secondMoment - goneAboutCentre - area * shift ** 2;
  const radius = outside / 2;
  const isAllRound = half >= Math.PI;
  const top = isAllRound ? radius - lost : radius - shift;
  // Below, either the thinned wall or the sound wall at the arc's ends stands out furthest.
  const bottom = Math.max(radius - lost, radius * Math.cos(half)) + shift;
  return { area, secondMoment, modulus: secondMoment / Math.max(top, bottom) };
}

type Property = keyof Section;
const PROPERTIES: readonly (readonly [Property, string, string, number, string])[] = [
  ["area", "area", "Area of metal", MM2_PER_CM2, "A"],
  ["secondMoment", "second_moment", "Second moment of area", MM4_PER_CM4, "I"],
  ["modulus", "section_modulus", "Section modulus", MM3_PER_CM3, "W"],
];
const GIVES = { area: "area", secondMoment: "second_moment", modulus: "section_modulus" } as const;
const ROUND: Readonly<Record<Property, string>> = {
  area: "A = π (D² − d²) / 4, d = D − 2 t",
  secondMoment: "I = π (D⁴ − d⁴) / 64, d = D − 2 t",
  modulus: "W = 2 I / D",
};
const RECTANGULAR: Readonly<Record<Property, string>> = {
  area: "A = 2 t (B + H − 2 t) − (4 − π)(rₒ² − rᵢ²), rₒ = 2 t cold formed, 1.5 t hot finished, rᵢ = t",
  secondMoment: "I = [B H³ − (B − 2t)(H − 2t)³] / 12, less the four rounded corners outside, plus those inside",
  modulus: "W = 2 I / H",
};

export const HOLLOW_SECTIONS = [
  ...PROPERTIES.map(([property, name, says, per]) =>
    row({
      name: `round_tube_${name}`,
      says: `${says}, round tube`,
      arguments: [diameter, wall],
      gives: GIVES[property],
      formula: ROUND[property],
      source: TABLES,
      work: (d, t) => (2 * t >= d ? noHole(d, wall) : roundTube(d, d - 2 * t)[property] / per),
    }),
  ),
  ...PROPERTIES.map(([property, name, says, per]) =>
    row({
      name: `rectangular_tube_${name}`,
      says: `${says}, square or rectangular tube`,
      arguments: [height, width, { ...wall, to: 6 }, make],
      gives: GIVES[property],
      formula: RECTANGULAR[property],
      source: TABLES,
      work: (h, b, t, made) =>
        4 * t >= Math.min(h, b) ? noHole(Math.min(h, b) / 2, wall) : rectangularTube(h, b, t, made)[property] / per,
    }),
  ),
  ...PROPERTIES.map(([property, name, says, , sign]) =>
    row({
      name: `${name}_left`,
      says: `${says} left of a round tube rusted evenly`,
      arguments: [diameter, wall, loss, side],
      gives: "percent",
      formula: `100 · ${sign}(rusted) / ${sign}(new); outside: D − 2x, t − x; inside: D, t − x`,
      source: ARITHMETIC,
      work: (d, t, x, face) => {
        if (2 * t >= d) return noHole(d, wall);
        if (x >= t) return allGone(t);
        return (100 * rustedTube(d, t, x, face)[property]) / roundTube(d, d - 2 * t)[property];
      },
    }),
  ),
  ...(["area", "modulus"] as const).map((property) =>
    row({
      name: `${property === "area" ? "area" : "section_modulus"}_left_one_sided`,
      says: `${property === "area" ? "Area of metal" : "Section modulus"} left of a round tube thinned over one arc`,
      arguments: [diameter, wall, loss, arc],
      gives: "percent",
      formula:
        property === "area"
          ? "100 · (A − arc · r · x) / A, r the mean radius of what is gone"
          : "I less the thinned segment, about the new centre of area; W = I / outermost fibre, bending towards the thin side",
      source: THIN_SEGMENT,
      work: (d, t, x, round) => {
        if (2 * t >= d) return noHole(d, wall);
        if (x >= t) return allGone(t);
        return (100 * oneSidedTube(d, t, x, round)[property]) / roundTube(d, d - 2 * t)[property];
      },
    }),
  ),
  row({
    name: "arc_of_patch",
    says: "How far round a tube a thin patch reaches",
    arguments: [
      diameter,
      { name: "patch", says: "Width of the patch, measured round the tube", kind: "length", over: 0 },
    ],
    gives: "angle",
    formula: "360 · patch / (π D)",
    source: ARITHMETIC,
    work: (d, patch) =>
      patch > Math.PI * d
        ? refusal("over-argument", { argument: "patch", most: Math.PI * d })
        : (360 * patch) / (Math.PI * d),
  }),
];
