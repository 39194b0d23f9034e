/** The calendar day it is where the phone is. The one place that turns a clock into a day. */
import type { IsoDate } from "../../core/terms/index.js";

/** The local day of a moment, `YYYY-MM-DD`; `offsetMin` east of Greenwich. */
export const dayOf = (wall: number, offsetMin = -new Date(wall).getTimezoneOffset()): IsoDate =>
  new Date(wall + offsetMin * 60_000).toISOString().slice(0, 10);
