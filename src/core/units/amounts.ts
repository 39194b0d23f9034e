/** Numbers that carry their quantity in the type, so that millimetres and bar cannot be added. */
import type { Quantity } from "./quantities.js";

declare const quantity: unique symbol;
/** A number in the canonical unit of quantity Q. Opaque: `+` on it does not compile, not even with its like. */
export interface Amount<Q extends Quantity> {
  readonly [quantity]: Q;
}

/** A canonical number as an amount of that quantity. */
export const amount = <Q extends Quantity>(_quantity: Q, canonical: number): Amount<Q> => canonical as unknown as Amount<Q>;
/** The canonical number of an amount. */
export const numberOf = (a: Amount<Quantity>): number => a as unknown as number;
/** Sum of two amounts of one quantity. Two temperatures have none: add a temperature difference with `warmer`. */
export const plus = <Q extends Exclude<Quantity, "temperature">>(a: Amount<Q>, b: Amount<NoInfer<Q>>): Amount<Q> =>
  (numberOf(a) + numberOf(b)) as unknown as Amount<Q>;
/** Difference of two amounts of one quantity. */
export const minus = <Q extends Exclude<Quantity, "temperature">>(a: Amount<Q>, b: Amount<NoInfer<Q>>): Amount<Q> =>
  (numberOf(a) - numberOf(b)) as unknown as Amount<Q>;
/** An amount times a plain number. */
export const times = <Q extends Exclude<Quantity, "temperature">>(a: Amount<Q>, factor: number): Amount<Q> =>
  (numberOf(a) * factor) as unknown as Amount<Q>;
