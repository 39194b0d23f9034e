/** The door of dates: opening times, chains of work, when parts come. Pure. */
export {
  type LocalTime,
  localTime,
  type OpenSpan,
  type WorkAxis,
  type WorkCalendar,
  workAxis,
} from "./calendar.js";
export { type CriticalPath, criticalPath, type PathActivity, type PathRow } from "./critical-path.js";
export type { ShutDays } from "./days.js";
export { arrivesOn, orderBefore, orderBy, type Supplier } from "./lead-time.js";
