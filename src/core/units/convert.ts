/** Conversion between units of one quantity. A unit that is not in the table is our own mistake: it throws. */
import { canonicalUnit, type Quantity } from "./quantities.js";
import { type Unit, unitOf } from "./table.js";

/** Digits kept: every decimal of up to 15 digits survives binary storage, so 0.004 in is 0.1016 mm exactly. */
const DIGITS = 15;
/** Decimals kept where a zero point is shifted (°F, K): far below any thermometer's step. */
const SHIFT_DECIMALS = 9;

/** The number free of binary noise: the nearest one with 15 significant digits. Not finite stays as it is. */
export const tidy = (value: number): number => (Number.isFinite(value) ? Number(value.toPrecision(DIGITS)) : value);

const shifted = (value: number, by: number): number =>
  by === 0 ? value : Number((value + by).toFixed(SHIFT_DECIMALS));

const known = (code: string, quantity: Quantity): Unit => {
  const unit = unitOf(code, quantity);
  if (unit === undefined) throw new Error(`${code} is no unit of ${quantity}.`);
  return unit;
};

/** A number of unit `from` in unit `to`, both of `quantity`; throws where one is not. */
export function convert(value: number, from: string, to: string, quantity: Quantity): number {
  const a = known(from, quantity);
  const b = known(to, quantity);
  if (a === b) return value;
  return shifted(tidy((shifted(value, a.before) * a.over * b.under) / (a.under * b.over)), -b.before);
}

/** A number in `unit` in the canonical unit of its quantity. */
export const toCanonical = (value: number, unit: string, quantity: Quantity): number =>
  convert(value, unit, canonicalUnit(quantity), quantity);

/** A canonical number in `unit`. */
export const fromCanonical = (value: number, unit: string, quantity: Quantity): number =>
  convert(value, canonicalUnit(quantity), unit, quantity);

/** A step, error or uncertainty of unit `from` in unit `to`: size only, zero points left out. */
export function convertStep(value: number, from: string, to: string, quantity: Quantity): number {
  const a = known(from, quantity);
  const b = known(to, quantity);
  return tidy((value * a.over * b.under) / (a.under * b.over));
}

/** A step, error or uncertainty in `unit` in canonical size. */
export const toCanonicalStep = (value: number, unit: string, quantity: Quantity): number =>
  convertStep(value, unit, canonicalUnit(quantity), quantity);
