/** Whether a reading lies in its plausible window. Outside it the app asks again; it never refuses. */

/** Where `value` lies; `window` and `value` in one unit, ends included. */
export function plausible(value: number, window: readonly [number, number]): "inside" | "below" | "above" {
  return value < window[0] ? "below" : value > window[1] ? "above" : "inside";
}
