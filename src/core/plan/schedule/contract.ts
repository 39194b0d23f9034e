/** What goes into a plan with dates and what comes out. Types only. */
import type { Problem } from "../../terms/index.js";
import type { IsoDate } from "../terms.js";
import type { LocalTime, WorkCalendar } from "./calendar.js";
import type { ShutDays } from "./days.js";
import type { ClockChange } from "./elapsed.js";
import type { Follows } from "./follow.js";
import type { Supplier } from "./lead-time.js";

/** One piece of work: a job, an opening or a putting back. */
export interface Activity extends Follows {
  /** Of hands on it, whole; nought for work sent out. */
  readonly minutes: number;
  /** One unless said; nobody where it has no minutes. */
  readonly people?: number | undefined;
  /** Needs a lift of its own, also through its `wall`. Inside a block the block's lift serves. */
  readonly lift?: boolean | undefined;
  /** A special tool, of which there is one. */
  readonly tool?: string | undefined;
  /** Not before this day. */
  readonly release?: IsoDate | undefined;
  /** Minutes of the real clock after the work that need nobody: glue, paint, soak, days away. */
  readonly wall?: number | undefined;
  /** Due class of its job: what is due sooner is done first where that costs nothing. */
  readonly due?: number | undefined;
}

export const GATES = ["parts-in-hand", "just-in-time", "at-once"] as const;
/** When the car may be made immovable: with every part here; so that it just fits a confirmed day; whatever comes. */
export type Gate = (typeof GATES)[number];

/** Opening, jobs and putting back during which the car cannot be moved: it holds the lift throughout. */
export interface LiftBlock {
  readonly id: string;
  readonly open: string;
  readonly jobs: readonly string[];
  readonly close: string;
  /** Parts in hand unless chosen otherwise. */
  readonly gate?: Gate | undefined;
}

/** A part a job waits for: here, told to come on a day, or to be ordered. */
export interface PartNeed {
  readonly id: string;
  readonly job: string;
  readonly inHand?: boolean | undefined;
  readonly comes?: IsoDate | undefined;
  /** The supplier has confirmed `comes`. */
  readonly confirmed?: boolean | undefined;
  readonly supplier?: string | undefined;
  /** Day of the order; today where it is still to be ordered. */
  readonly ordered?: IsoDate | undefined;
  /** Goes before the supplier's own. */
  readonly leadDays?: number | undefined;
}

export interface ScheduleInput {
  readonly today: IsoDate;
  /** When the car can first be worked on. */
  readonly from: LocalTime;
  readonly calendar: WorkCalendar;
  readonly activities: readonly Activity[];
  readonly blocks?: readonly LiftBlock[];
  readonly parts?: readonly PartNeed[];
  readonly suppliers?: readonly Supplier[];
  /** When the clocks change in the workshop's zone, for processes that run on the real clock. */
  readonly clockChanges?: readonly ClockChange[];
  /** The order of the plan before an edit: tried too, so that an edit is not worse than it must be. */
  readonly before?: readonly string[];
  readonly seed?: number;
  /** Orders tried by chance; 200 unless said. */
  readonly passes?: number;
  /** Steps of the exact search; 200 000 unless said. */
  readonly nodeCap?: number;
  /** Asked now and then; false stops with the best so far, which is then not proven. */
  readonly goOn?: () => boolean;
}

export interface Planned {
  readonly id: string;
  readonly start: LocalTime;
  /** End of the work. */
  readonly end: LocalTime;
  /** End of its process too, on the real clock. */
  readonly ready: LocalTime;
}

export interface LiftUse {
  /** Block, or a job outside one. */
  readonly by: string;
  readonly from: LocalTime;
  readonly to: LocalTime;
  /** Working minutes the lift is taken, and of those without anybody at work on it. */
  readonly held: number;
  readonly idle: number;
  /** The gate that was kept; not the chosen one where a part's day is not confirmed. */
  readonly gate?: Gate;
}

/** Why a job does not start earlier. `by`: the job or block that holds it up. */
export type Hold =
  | { readonly job: string; readonly cause: "start" }
  | { readonly job: string; readonly cause: "day"; readonly date: IsoDate }
  | { readonly job: string; readonly cause: "job" | "process" | "person" | "lift" | "tool"; readonly by: string }
  | ({ readonly job: string; readonly cause: "part"; readonly block?: string } & PartDay)
  | { readonly job: string; readonly cause: "calendar"; readonly closed: ShutDays };

/** When a part comes, and why then. */
export interface PartDay {
  readonly part: string;
  readonly comes: IsoDate;
  readonly supplier?: string;
  readonly ordered?: IsoDate;
  readonly leadDays?: number;
  readonly carriageDays?: number;
  /** Shut-downs of the supplier it waits through. */
  readonly through?: readonly ShutDays[];
}

/** Until when to order. `late`: it is past already. */
export interface PartOrder {
  readonly part: string;
  readonly neededOn: IsoDate;
  readonly orderBy: IsoDate;
  readonly late: boolean;
  /** The supplier's next shut-down, and the last day whose order is sent before it. */
  readonly beats?: { readonly closed: ShutDays; readonly orderBy: IsoDate };
}

/** What it would gain if a part came today. */
export interface PartGain {
  readonly part: string;
  readonly finish: LocalTime;
  readonly days: number;
  /** Working minutes. */
  readonly minutes: number;
}

export interface Schedule {
  /** Absent where nothing can be planned. */
  readonly finish?: LocalTime;
  /** No plan ends earlier: the bound is met or every order was looked at. */
  readonly proven: boolean;
  readonly bound?: LocalTime;
  /** By start. */
  readonly activities: readonly Planned[];
  readonly lifts: readonly LiftUse[];
  /** From the last finish back to the first cause. */
  readonly holds: readonly Hold[];
  readonly orders: readonly PartOrder[];
  /** Most days first. */
  readonly gained: readonly PartGain[];
  /** Jobs without a date, told one by one in `problems`. */
  readonly leftOut: readonly string[];
  readonly problems: readonly Problem[];
  /** The order to hand in as `before` next time. */
  readonly order: readonly string[];
  /** Stopped before all was tried. */
  readonly stopped: boolean;
}
