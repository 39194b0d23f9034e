/** Whether a reading lies in its plausible window. Outside it the app asks again; it never refuses. */

/** Where `value` lies; `window` and `value` in one unit, ends included. */
export function plausible(value: number, window: readonly [number, number]): "inside" | "below" | "above" {
  if (value < window[0]) return "below";
  return value > window[1] ? "above" : "inside";
}
