/** Numbers that carry their quantity in the type, so that millimetres and bar cannot be added. Knows no unit. */
import type { Quantity } from "./quantities.js";

declare const quantity: unique symbol;
/** A number in the canonical unit of quantity Q. Opaque: `+` on it does not compile, not even with its like. */
export interface Amount<Q extends Quantity> {
  readonly [quantity]: Q;
}
/** Quantities whose zero is nothing; a temperature's is not, so two of them have no sum. */
export type Additive = Exclude<Quantity, "temperature">;

// The only place where a number becomes an Amount: at run time it stays the number it is.
const made = <Q extends Quantity>(canonical: number): Amount<Q> => canonical as unknown as Amount<Q>;

/** A canonical number as an amount of that quantity. */
export const amount = <Q extends Quantity>(_of: Q, canonical: number): Amount<Q> => made(canonical);
/** The canonical number of an amount. */
export const numberOf = (a: Amount<Quantity>): number => a as unknown as number;
/** Sum of two amounts of one quantity. */
export const plus = <Q extends Additive>(a: Amount<Q>, b: Amount<NoInfer<Q>>): Amount<Q> =>
  made(numberOf(a) + numberOf(b));
/** Difference of two amounts of one quantity. */
export const minus = <Q extends Additive>(a: Amount<Q>, b: Amount<NoInfer<Q>>): Amount<Q> =>
  made(numberOf(a) - numberOf(b));
/** An amount times a plain number. */
export const times = <Q extends Additive>(a: Amount<Q>, factor: number): Amount<Q> => made(numberOf(a) * factor);
/** How many times b goes into a. */
export const ratioOf = <Q extends Additive>(a: Amount<Q>, b: Amount<NoInfer<Q>>): number => numberOf(a) / numberOf(b);
/** How much warmer a is than b. */
export const warmerBy = (a: Amount<"temperature">, b: Amount<"temperature">): Amount<"temperature_difference"> =>
  made(numberOf(a) - numberOf(b));
/** A temperature raised by a difference. */
export const warmed = (a: Amount<"temperature">, by: Amount<"temperature_difference">): Amount<"temperature"> =>
  made(numberOf(a) + numberOf(by));
