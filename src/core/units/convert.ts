/** Conversion between units of one quantity. A unit that is not in the table is our own mistake: it throws. */
import { canonicalUnit, type Quantity } from "./quantities.js";
import { type Unit, unitOf } from "./table.js";

/** Decimals of up to so many digits are what people and gauges give. */
const DIGITS = 12;
/** Share of a number that a few binary roundings may have moved it by. */
const NOISE = 4e-15;
/** Decimals kept where a zero point is shifted (°F, K): far below any thermometer's step. */
const SHIFT_DECIMALS = 9;

/** The decimal a number stands for: binary noise beside a short decimal is dropped, any other number stays as it is. */
export function tidy(value: number): number {
  if (!Number.isFinite(value)) return value;
  const short = Number(value.toPrecision(DIGITS));
  return Math.abs(short - value) <= NOISE * Math.abs(value) ? short : value;
}

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
