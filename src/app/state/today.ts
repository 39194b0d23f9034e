/** The calendar day it is where the phone is. The one place that turns a clock into a day. */
import type { IsoDate } from "../../core/terms/index.js";

/** The local day of a moment, `YYYY-MM-DD`; `offsetMin` east of Greenwich. */
export const dayOf = (wall: number, offsetMin = -new Date(wall).getTimezoneOffset()): IsoDate =>
  new Date(wall + offsetMin * 60_000).toISOString().slice(0, 10);

/** The same moment with its local time and offset: `2027-03-01T09:30:00+01:00`. */
export function momentOf(wall: number, offsetMin = -new Date(wall).getTimezoneOffset()): string {
  const two = (value: number): string => String(Math.floor(value)).padStart(2, "0");
  const local = new Date(wall + offsetMin * 60_000).toISOString().slice(0, 19);
  const [sign, off] = [offsetMin < 0 ? "-" : "+", Math.abs(offsetMin)];
  return `${local}${sign}${two(off / 60)}:${two(off % 60)}`;
}
