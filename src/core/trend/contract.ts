/** What comparing visits takes and gives. Readonly data; knows no sheet, no record and no screen. Rules: SPEC.md. */
import type { Basis, Grade } from "../terms/index.js";

/** What brings a value towards its limit: use (the odometer), age (the calendar), or either. */
export type Wears = "use" | "age" | "either";
export type Axis = "use" | "age";
/** Which way a value goes as it wears. */
export type Way = "down" | "up";

/** An edge of a limit in force, in the unit of the reading. */
export interface Edge {
  readonly limit: string;
  readonly grade: Grade;
  readonly at: number;
  readonly basis: Basis;
  readonly source: string;
  readonly isDefault: boolean;
}

/** One value at one visit. */
export interface Seen {
  readonly visit: string;
  /** Days since 1970. */
  readonly day: number;
  /** Absent where the odometer was not read, or can't be. */
  readonly km?: number;
  readonly value: number;
  /** ±U, about 95 of 100. */
  readonly uncertainty: number;
  /** What it was made of: the points and fields typed. Another list is another way of measuring. */
  readonly method: readonly string[];
  readonly gauges: readonly string[];
  /** Limits in force at that visit. */
  readonly edges: readonly Edge[];
}

/** What a person says of the reading of one visit. */
export type WearWord = "renewed" | "doubtful" | "same";

/** One part's readings over all visits, and what is known of the part between them. */
export interface SeriesInput {
  readonly way: Way;
  readonly wears: Wears;
  readonly seen: readonly Seen[];
  /** By visit. */
  readonly words: ReadonlyMap<string, WearWord>;
  /** Jobs that would better this reading, done at this place: days since 1970. */
  readonly done: readonly { readonly day: number; readonly job: string }[];
  /** Days on which the part was found not fitted. */
  readonly away: readonly number[];
}

/** Why a new series begins with the reading of `visit`. */
export interface Break {
  readonly visit: string;
  readonly kind: "said-renewed" | "job-done" | "not-fitted" | "method" | "unsaid";
  /** How far the value came back against the wear; negative where it did not. */
  readonly back: number;
  readonly job?: string;
}
/** What changed at the reading of `visit` without a new series. */
export interface Mark {
  readonly visit: string;
  readonly kind: "gauge" | "limit" | "same";
}

/** When a limit is reached along one axis; figures in km of odometer or days since 1970. */
export interface Along {
  readonly axis: Axis;
  /** Towards the limit, per 1000 km or per year. */
  readonly rate: number;
  readonly likely?: number;
  readonly earliest?: number;
  /** Absent: no latest can be told. */
  readonly latest?: number;
  /** It lies further ahead than twice the stretch measured over. */
  readonly far: boolean;
  /** The same as days since 1970; by distance, at the pace of these visits. */
  readonly days: { readonly earliest?: number; readonly likely?: number; readonly latest?: number };
  /** Half of what is left at the earliest, capped. */
  readonly look?: { readonly day?: number; readonly km?: number };
}
/** Why a part that wears by use is told by the calendar. */
export type NoOdometer = "missing" | "back" | "still";

export interface Reach {
  readonly edge: Edge;
  /** `not-yet`: wear can't be told from the uncertainty yet · `alone`: nothing to compare with. */
  readonly is: "past" | "reaches" | "not-yet" | "alone";
  /** The edge lies within the uncertainty of the newest reading. */
  readonly close: boolean;
  readonly along?: Along;
  /** Of a part that wears by either: the other axis, which reaches it later. */
  readonly later?: Along;
  readonly noOdometer?: NoOdometer;
}

export interface Series {
  readonly way: Way;
  /** Readings that belong together, oldest first; a new list begins at every break. */
  readonly runs: readonly (readonly Seen[])[];
  readonly breaks: readonly Break[];
  readonly marks: readonly Mark[];
  /** Said to be doubtful: in no list. */
  readonly doubtful: readonly Seen[];
  /**
   * Of the newest list, in the order they are met: of major and of dangerous the edge passed last and the next one ahead;
   * of limits with neither, the same of the gravest grade.
   */
  readonly reaches: readonly Reach[];
  /** The milder edge the newest reading is past, while every one told of is still ahead. */
  readonly within?: Edge;
}
