/** The door of units: quantities, units, what a person types, how it is shown, money. */
export {
  type Additive,
  type Amount,
  amount,
  minus,
  numberOf,
  plus,
  ratioOf,
  times,
  warmed,
  warmerBy,
} from "./amounts.js";
export { convert, convertStep, fromCanonical, tidy, toCanonical, toCanonicalStep } from "./convert.js";
export { isCurrencyCode, minorDigitsOf } from "./currencies.js";
export { UNIT_MESSAGES } from "./messages.js";
export { less, type Money, minorOf, money, share, split, sum } from "./money.js";
export { plausible } from "./plausible.js";
export { canonicalUnit, isQuantity, QUANTITIES, type Quantity } from "./quantities.js";
export { type Reading, type ReadOptions, readTyped } from "./read-typed.js";
export { ROUNDINGS, type Rounding, roundedQuotient } from "./rounding.js";
export { decimalsOf, rounded, show, showTyped } from "./show.js";
export { canonicalUnitOf, type Unit, unitOf, unitsOf } from "./table.js";
