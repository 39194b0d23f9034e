/**
 * The door of terms for whoever reads what people write: which known word was meant, which range a figure must lie in.
 * The app's first screens go without.
 */
export { nearest } from "./nearest.js";
export { type FigureRange, isWithin, rangeText } from "./range.js";
