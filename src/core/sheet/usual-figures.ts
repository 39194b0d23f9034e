/**
 * Between what figures a limit usually lies, and which slip would explain one that does not: the wrong unit, a decimal
 * mark, a sign. It asks and refuses nothing: what a source says is kept. Knows no record and no words.
 *
 * Three windows hold together. That of the quantity is coarse and stands as data below; that of the reading the limit
 * judges comes from its sheet (`window` of the field); that of the default is worked out from the default's own edges.
 */
import { GRADES, type Grade } from "../terms/index.js";
import { fromCanonical, isQuantity, type Quantity, toCanonical } from "../units/index.js";
import { fieldOf, findField } from "./names.js";
import type { Limit, Point } from "./schema-types.js";

/** Canonical units, ends included. */
export interface UsualWindow {
  readonly of: "quantity" | "reading" | "default";
  readonly low: number;
  readonly high: number;
}

/** Every figure of the two tables and the spans below. */
export const USUAL_BASIS = "common practice, no source";

/** Any limit of a quantity on a car, in canonical units. */
const OF_QUANTITY: Readonly<Record<Quantity, readonly [low: number, high: number]>> = {
  // From a liner under its block face to a wheelbase.
  length: [-50, 6000],
  distance: [0, 1_000_000],
  temperature: [-60, 1200],
  temperature_difference: [-200, 1000],
  // From a joint's turning torque to a centre-lock nut, which passes 700 N·m.
  torque: [0, 2000],
  force: [-50_000, 50_000],
  // From full vacuum to injection and brake lines.
  pressure: [-1, 400],
  voltage: [-60, 60_000],
  current: [-1500, 1500],
  charge: [0, 400],
  resistance: [0, 1e8],
  power: [0, 1500],
  speed: [0, 400],
  angle: [-180, 720],
  duration: [0, 30 * 86_400],
  age: [0, 150],
  volume: [0, 500],
  mass: [0, 5000],
  percent: [-100, 200],
  // What has no unit here is told as a ratio too, up to parts per million times minutes.
  ratio: [-10, 10_000],
  frequency: [0, 20_000],
  area: [0, 100_000],
  section_modulus: [0, 100_000],
  second_moment: [0, 1_000_000],
};

/** A maker's figure lies within these parts of the default's mildest and severest edges. */
const LEAST_PART = 0.2;
const MOST_PART = 5;
/** Where parts say nothing (a temperature's nought, edges on both sides of it): so far beyond, in canonical units. */
const KELVINS_BEYOND = 60;

/** Units of one quantity that are taken for one another when a figure is copied off a page. */
const MISTAKEN: Readonly<Partial<Record<Quantity, readonly (readonly string[])[]>>> = {
  length: [["mm", "[in_i]", "[mil_i]", "um"]],
  distance: [["km", "[mi_i]"]],
  temperature: [["Cel", "[degF]", "K"]],
  temperature_difference: [["K", "[degF]"]],
  torque: [
    ["N.m", "[ft_i].[lbf_av]", "[in_i].[lbf_av]", "kgf.m"],
    ["N.m", "N.cm", "kgf.cm"],
  ],
  force: [["N", "kN", "daN", "kgf", "[lbf_av]"]],
  pressure: [["bar", "[psi]", "kPa", "mbar", "MPa"]],
  voltage: [["V", "mV"]],
  current: [["A", "mA"]],
  charge: [["A.h", "mA.h"]],
  resistance: [["Ohm", "mOhm", "kOhm"]],
  power: [["kW", "[HP]", "75.kgf.m/s"]],
  speed: [["km/h", "[mi_i]/h"]],
  angle: [["deg", "'"]],
  duration: [["s", "min", "h"]],
  age: [["a", "mo"]],
  volume: [["L", "mL", "[gal_br]", "[pt_br]"]],
  mass: [["kg", "g", "[lb_av]"]],
  frequency: [["Hz", "/min"]],
};

/** Where the decimal mark may have gone: read as so many times too much, or too little. */
const FACTORS = [10, 0.1, 100, 0.01] as const;
/** More than these help nobody. */
const MOST_SLIPS = 3;

/** The windows a figure over this limit usually lies in; `points` of its own sheet. */
export function usualWindows(limit: Limit, points: readonly Point[]): readonly UsualWindow[] {
  const { quantity } = limit;
  if (!isQuantity(quantity)) return [];
  const [low, high] = OF_QUANTITY[quantity];
  return [{ of: "quantity", low, high }, ...ofReading(limit, quantity, points), ...ofDefault(limit, quantity)];
}

function ofReading(limit: Limit, quantity: Quantity, points: readonly Point[]): readonly UsualWindow[] {
  const ref = findField(points, limit.of);
  const point = points.find(({ id }) => id === ref?.point);
  const field = point && ref && fieldOf(point, ref.field);
  // What lies between readings is no reading.
  if (!field || !("quantity" in field) || field.quantity !== quantity || limit.aggregate === "spread") return [];
  const [from, to] = field.window.map((edge) => toCanonical(edge, field.unit, quantity));
  return from === undefined || to === undefined ? [] : [windowOf("reading", from, to)];
}

function ofDefault(limit: Limit, quantity: Quantity): readonly UsualWindow[] {
  const edges = GRADES.flatMap((grade) => {
    const edge = limit.bands[grade];
    return edge === undefined ? [] : [toCanonical(edge, limit.unit, quantity)];
  });
  const [least, most] = [Math.min(...edges), Math.max(...edges)];
  if (edges.length === 0) return [];
  if (quantity === "temperature") return [windowOf("default", least - KELVINS_BEYOND, most + KELVINS_BEYOND)];
  if (least > 0) return [windowOf("default", least * LEAST_PART, most * MOST_PART)];
  if (most < 0) return [windowOf("default", least * MOST_PART, most * LEAST_PART)];
  const size = Math.max(-least, most);
  return size === 0 ? [] : [windowOf("default", -size * MOST_PART, size * MOST_PART)];
}

const windowOf = (of: UsualWindow["of"], a: number, b: number): UsualWindow => ({
  of,
  low: Math.min(a, b),
  high: Math.max(a, b),
});

/** What may have happened to a figure on its way from the page into the box. */
export type Slip =
  /** The number is right and belongs to another unit. */
  | { readonly is: "unit"; readonly unit: string }
  /** The number is so many times too much (10, 100) or too little (0.1, 0.01). */
  | { readonly is: "factor"; readonly factor: number }
  | { readonly is: "sign" };

/** A figure outside what is usual. */
export interface OddFigure {
  /** What every window allows, in the unit the figure was typed in. */
  readonly low: number;
  readonly high: number;
  /** The likeliest first: what would bring the figure nearest to the default. */
  readonly slips: readonly Slip[];
}

interface Typed {
  readonly value: number;
  readonly unit: string;
  readonly canonical: number;
}

/**
 * Whether a figure lies outside what is usual, and how that could have come; undefined where it lies inside. Nought is
 * never odd: no slip makes one, and a maker may well allow no play at all.
 */
export function oddFigure(typed: Typed, limit: Limit, points: readonly Point[], grade: Grade): OddFigure | undefined {
  const { quantity } = limit;
  if (!isQuantity(quantity) || typed.canonical === 0) return undefined;
  const windows = usualWindows(limit, points);
  const inside = (value: number): boolean => windows.every(({ low, high }) => value >= low && value <= high);
  if (inside(typed.canonical)) return undefined;
  const narrow = [Math.max(...windows.map(({ low }) => low)), Math.min(...windows.map(({ high }) => high))];
  const [low = 0, high = 0] = narrow.map((edge) => shownIn(edge, typed.unit, quantity)).sort((a, b) => a - b);
  const near = nearest(limit, grade, quantity);
  const far = (value: number): number =>
    near === undefined || value * near <= 0 ? Number.POSITIVE_INFINITY : Math.abs(Math.log(value / near));
  const slips = slipsOf(typed, quantity)
    .filter(({ value }) => inside(value))
    .sort((a, b) => far(a.value) - far(b.value));
  return { low, high, slips: slips.slice(0, MOST_SLIPS).map(({ slip }) => slip) };
}

/** Figures that stand for 'about' are told with so many digits. */
const DIGITS = 3;
const shownIn = (value: number, unit: string, quantity: Quantity): number =>
  Number(fromCanonical(value, unit, quantity).toPrecision(DIGITS));

/** The figure the default has for this grade, else the next one it has. */
function nearest(limit: Limit, grade: Grade, quantity: Quantity): number | undefined {
  const edge = limit.bands[grade] ?? GRADES.map((one) => limit.bands[one]).find((one) => one !== undefined);
  return edge === undefined ? undefined : toCanonical(edge, limit.unit, quantity);
}

interface Explained {
  readonly slip: Slip;
  /** What the figure would be without it. */
  readonly value: number;
}

function slipsOf({ value, unit, canonical }: Typed, quantity: Quantity): readonly Explained[] {
  const others = new Set((MISTAKEN[quantity] ?? []).filter((group) => group.includes(unit)).flat());
  others.delete(unit);
  return [
    ...[...others].map(
      (other): Explained => ({ slip: { is: "unit", unit: other }, value: toCanonical(value, other, quantity) }),
    ),
    ...FACTORS.map(
      (factor): Explained => ({ slip: { is: "factor", factor }, value: toCanonical(value / factor, unit, quantity) }),
    ),
    { slip: { is: "sign" }, value: -canonical },
  ];
}
