/** The door of dates: opening times, chains of work, when parts come. Pure. */
export {
  type LocalTime,
  localTime,
  type OpenSpan,
  type WorkAxis,
  type WorkCalendar,
  workAxis,
} from "./calendar.js";
export type {
  Activity,
  Gate,
  Hold,
  LiftBlock,
  LiftUse,
  PartDay,
  PartGain,
  PartNeed,
  PartOrder,
  Planned,
  Schedule,
  ScheduleInput,
} from "./contract.js";
export { type CriticalPath, criticalPath, type PathActivity, type PathRow } from "./critical-path.js";
export type { ShutDays } from "./days.js";
export { arrivesOn, orderBefore, orderBy, type Supplier } from "./lead-time.js";
export { schedule } from "./schedule.js";
