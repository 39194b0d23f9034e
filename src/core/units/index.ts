/** The door of units: quantities, units, what a person types, how it is shown, money. */
export type { Quantity } from "./quantities.js";
export { canonicalUnit, isQuantity, QUANTITIES } from "./quantities.js";
export type { Amount } from "./amounts.js";
export { amount, numberOf, plus, minus, times } from "./amounts.js";
export type { Unit } from "./table.js";
export { unitOf, unitsOf } from "./table.js";
export { convert, fromCanonical, toCanonical, toCanonicalStep } from "./convert.js";
export type { Reading, ReadOptions } from "./read-typed.js";
export { readTyped } from "./read-typed.js";
export { plausible } from "./plausible.js";
export { decimalsOf, show } from "./show.js";
