/** Checks of what planning works with: calendar days, figures in three, times of day. Knows no kind of entry. */
import { type Check, count, isPlainObject, listOf, matches } from "./shape.js";

export const date = matches("a date, like 2026-03-14", /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/);

const MINUTES_OF_A_DAY = 24 * 60;
const counts = listOf(count);

/** Low, likely, high: none above the next, none below nothing. */
export const three: Check = (value, path) =>
  counts(value, path) ??
  (ascends(value as readonly number[], 3)
    ? undefined
    : { path, expected: "low, likely and high, none above the next" });

/** From opening to closing, in minutes of one day. */
export const span: Check = (value, path) => {
  const fault = counts(value, path);
  if (fault) return fault;
  const [open = 0, close = 0, ...more] = value as readonly number[];
  return open < close && close <= MINUTES_OF_A_DAY && more.length === 0
    ? undefined
    : { path, expected: "opening before closing, in minutes of one day" };
};

/** Days from–to, both included, in this order. */
export const inOrder: Check = (value, path) =>
  isPlainObject(value) && String(value["from"]) > String(value["to"])
    ? { path: `${path}.to`, expected: "a day not before the first" }
    : undefined;

function ascends(list: readonly number[], length: number): boolean {
  return list.length === length && list.every((one, at) => at === 0 || one >= Number(list[at - 1]));
}
