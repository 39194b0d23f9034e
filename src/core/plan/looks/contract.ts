/** What looking again takes and gives. Readonly data; knows no sheet, no record and no screen. Rules: SPEC.md, LA. */
import type { Grade } from "../../terms/index.js";
import type { PointAt } from "../release/works.js";
import type { IsoDate } from "../terms.js";

/** Figures by which to look again; of one with a distance and a time, whichever comes first. */
export interface LookRow {
  /** What the row was stated for. */
  readonly names: "fault" | "grade" | "job" | "reading";
  readonly basis: "practice" | "trend";
  /** Kilometres from where it counts. */
  readonly km?: number | undefined;
  readonly months?: number | undefined;
  readonly on?: IsoDate | undefined;
}

/** Something to be looked at again: a finding left standing, work done, a check after some way, a reading that wears. */
export interface LookWanted {
  readonly id: string;
  readonly is: "finding" | "job" | "recheck" | "wear";
  /** Fault, job or reading. */
  readonly of: string;
  readonly place: string;
  readonly grade?: Grade | undefined;
  /** From when its figures count, and what the odometer showed then. */
  readonly from: { readonly on: IsoDate; readonly km?: number | undefined };
  readonly rows: readonly LookRow[];
  /** Where to look. */
  readonly points: readonly PointAt[];
}

/** How far the car goes in a day; `least` and `most` of its stretches, absent where there is only one. */
export interface Pace {
  readonly likely: number;
  readonly least?: number;
  readonly most?: number;
}

/** The odometer in whole kilometres on a day. */
export interface KmOn {
  readonly on: IsoDate;
  readonly km: number;
}

export interface CarUse {
  readonly today: IsoDate;
  /** The day of the newest visit: what falls together is reckoned from it, so that it stays together. */
  readonly since: IsoDate;
  /** The newest reading. */
  readonly odometer?: KmOn | undefined;
  /** Absent: not known, and no day is made of a distance. */
  readonly pace?: Pace | undefined;
}

/** A day made of a distance: at the fastest, as usual, at the slowest it was ever driven. */
export interface ByUse {
  readonly earliest?: IsoDate;
  readonly likely: IsoDate;
  readonly latest?: IsoDate;
}

/** `now`: due today, or by its use it may have gone so far since anybody read the odometer. */
export type LookStands = "ahead" | "now" | "overdue";

export interface LookDue extends LookWanted {
  readonly after?: number;
  /** What the odometer then shows. */
  readonly at?: number;
  /** The nearest day that is stated. */
  readonly by?: IsoDate;
  readonly byUse?: ByUse;
  /** The nearer of both; by use the earliest that is known. */
  readonly day?: IsoDate;
  readonly stands: LookStands;
  /** The rows these figures come from. */
  readonly why: readonly LookRow[];
}

/** Looks that fall together: one visit, at the earliest of them. */
export interface LookVisit {
  /** Stable while the newest visit stays the same. */
  readonly id: string;
  /** Nearest first. */
  readonly looks: readonly LookDue[];
  readonly at?: number;
  /** Of those of which nobody knows what the odometer showed: the least way, and from when it counts. */
  readonly after?: { readonly km: number; readonly from: IsoDate };
  readonly by?: IsoDate;
  readonly byUse?: ByUse;
  readonly day?: IsoDate;
  readonly stands: LookStands;
}

export interface LooksAgain {
  /** Nearest first. */
  readonly visits: readonly LookVisit[];
  /** To be looked at again, and nothing says when. */
  readonly unsaid: readonly LookWanted[];
}
