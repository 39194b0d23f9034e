/**
 * What assessing takes and gives. Readonly data in, readonly data out; no clock, no storage.
 */

import type { CarLimit, PlaceChange } from "../sheet/car.js";
import type {
  Audience,
  Basis,
  GaugeUsed,
  Grade,
  NonAnswer,
  Problem,
  Reason,
  ReplyKey,
  ReplyValue,
  Sure,
} from "../terms/index.js";

/** One reply that stands. Two standing on one key differ (record), and both are here. */
export interface StandingReply {
  readonly key: ReplyKey;
  readonly value: ReplyValue;
  /** Identity to point back to (entry id, or index in a visit file). */
  readonly id: string;
}

export interface CarInput {
  readonly firstUsed?: string;
  readonly country?: string;
  readonly seat?: "left" | "right";
  /** Added and removed places; the tree of common/places.yaml otherwise. */
  readonly places?: readonly PlaceChange[];
  readonly facts: Readonly<Record<string, FactValue>>;
  /** Further standing values of a fact when people differ about it; `facts` holds one of them. */
  readonly otherFacts?: Readonly<Record<string, readonly FactValue[]>>;
  /** Two figures on one limit and place both stand: the worse grade rules. */
  readonly limits: readonly CarLimit[];
}

export type FactValue = string | number | boolean;

/** A visit to the same car before this one. */
export interface EarlierVisit {
  /** ISO date or date-time. */
  readonly at: string;
  readonly odometer?: { readonly value: number; readonly unit: string };
  readonly replies: readonly StandingReply[];
}

export interface AssessInput {
  /** ISO date-time of the visit. */
  readonly at: string;
  readonly odometer?: { readonly value: number; readonly unit: string };
  readonly who: Audience;
  readonly car: CarInput;
  /** Sheets open in this visit, by id. */
  readonly sheets: readonly string[];
  readonly complaints: readonly string[];
  readonly replies: readonly StandingReply[];
  readonly earlier: readonly EarlierVisit[];
  /** −1 laid up, 0 normal, +1 hard use. */
  readonly exposure: -1 | 0 | 1;
  /** Next planned visit, ISO date. */
  readonly nextVisit?: string;
}

/** One step of the because: what deciding or supporting reply, which limit, what was concluded. */
export type Because =
  | {
      readonly kind: "reply";
      readonly key: ReplyKey;
      readonly value: ReplyValue;
      readonly id: string;
      readonly supports: boolean;
    }
  | { readonly kind: "fact"; readonly name: string; readonly value: FactValue }
  | {
      readonly kind: "limit";
      readonly limit: string;
      readonly place: string;
      /** The reading or derived value judged: point (or derived) id and field (derived: empty). */
      readonly of: string;
      readonly field: string;
      /** The value judged: aggregate and ±U (k = 2), in `unit`. */
      readonly value: number;
      readonly uncertainty: number;
      readonly unit: string;
      /** The edge passed (or touched), its grade, and where it comes from. */
      readonly edge: number;
      readonly grade: Grade;
      readonly basis: Basis;
      readonly source: string;
      readonly isDefault: boolean;
    }
  | {
      readonly kind: "derived";
      readonly id: string;
      readonly place: string;
      readonly value: number;
      readonly uncertainty: number;
      readonly unit: string /** As CEL text; absent for `prefer`. */;
      readonly formula?: string;
      readonly from: readonly ReplyKey[] /** Of `prefer`: the one used, and those named before it that were not known. */;
      readonly used?: string;
      readonly insteadOf: readonly string[];
    }
  /** What the same was at the newest earlier visit that has an answer. */
  | {
      readonly kind: "earlier";
      readonly at: string;
      readonly odometer?: EarlierVisit["odometer"];
      readonly key: ReplyKey;
      readonly value: ReplyValue;
    }
  | { readonly kind: "found"; readonly fault: string; readonly place: string }
  | { readonly kind: "raised"; readonly rule: string }
  /** In a person's own words, off the list; `id` is the entry. */
  | {
      readonly kind: "own-words";
      readonly words: string;
      readonly reason: string;
      readonly by: string;
      readonly at: number;
      readonly id: string;
    };

/** A point to look at next and why. */
export interface Opened {
  readonly point: string;
  readonly place: string;
  readonly because: string;
  /** Measured already, but too close to an edge: again with more care. */
  readonly again?: true;
}
export interface Settle extends Opened {
  /** Rules (ids) this reply would decide, most telling first. */
  readonly decides: readonly string[];
  /** It was measured, but too close to an edge: measure again with more care. */
  readonly closer: boolean;
}

export interface Finding {
  readonly rule: string;
  readonly fault: string | null;
  readonly place: string;
  /** null for an effect other than finding. */
  readonly grade: Grade | null;
  readonly effect?: string;
  readonly sure: Sure;
  readonly provisional: boolean;
  /** A reading too close to a major or dangerous edge; the grade is the worse end. */
  readonly close: boolean;
  /** 'at least': several limits may still apply. */
  readonly atLeast: boolean;
  /** Fires under only some of the differing replies; names which. */
  readonly differ: readonly string[];
  readonly because: readonly Because[];
  readonly jobs: readonly string[];
  readonly cautions: readonly string[];
  readonly opens: readonly Opened[];
}

/** Findings of one fault at one place merged. */
export interface Fault {
  readonly fault: string;
  readonly place: string;
  readonly grade: Grade;
  readonly sure: Sure;
  readonly close: boolean;
  readonly provisional: boolean;
  readonly rules: readonly string[];
  readonly jobs: readonly string[];
  readonly cautions: readonly string[];
  readonly consequence: 1 | 2 | 3 | 4;
  readonly likelihood: "A" | "B" | "C" | "D" | "E";
  readonly mustStand: boolean;
  /** Where its first deciding point stands in the walk round the car; breaks ties of urgency. */
  readonly position: number;
  /** When below certain: the check that would settle it. */
  readonly settle: readonly Opened[];
  /** Set by hand: what the rules had said, and why it was changed. */
  readonly byHand?: { readonly was: Grade; readonly reason: string; readonly id: string };
}

/**
 * Why a gate is tripped: one of its own conditions, with the places at which it holds; a dangerous fault; or a rule's
 * caution not to drive.
 */
export type TripCause =
  | { readonly kind: "condition"; readonly path: string; readonly places: readonly string[] }
  | { readonly kind: "dangerous"; readonly fault: string; readonly place: string }
  | { readonly kind: "caution"; readonly rule: string; readonly place: string };

export interface GateState {
  readonly gate: string;
  readonly guards: string;
  /** It stands before leaving, or before a car state in which the car drives. */
  readonly drives: boolean;
  readonly state: "tripped" | "cleared" | "not cleared";
  /** What to do first: points of the set not yet answered clear, or the replies that tripped it. */
  readonly first: readonly Opened[];
  /** What tripped it; empty when not tripped. */
  readonly trippedBy: readonly TripCause[];
  /** What it would be without dangerous faults and `cau.dont-drive`. */
  readonly otherwise: "tripped" | "cleared" | "not cleared";
  /** Sheets not open in this visit whose points the gate's set needs. */
  readonly missingSheets: readonly string[];
  /** Told while it is not cleared; due while it is tripped. */
  readonly cautions: readonly string[];
  /** Signal word of each of `cautions`. */
  readonly signals: readonly CautionDue["signal"][];
}
export interface CautionDue {
  readonly caution: string;
  readonly signal: "danger" | "warning" | "caution" | "notice";
  readonly places: readonly string[];
  readonly because: readonly string[];
}

export interface Coverage {
  readonly sheet: string;
  readonly answered: number;
  readonly of: number;
  readonly nonAnswers: Readonly<Partial<Record<NonAnswer, number>>>;
  /** Answered, but a rule says it cannot count. */
  readonly notChecked: number;
  /** Points this person is not asked in this look. */
  readonly notForThisLook: number;
  /** 'not enough seen' when more than 30 % unseen. */
  readonly enough: boolean;
}
/** Whether a point at a place is sound: really answered, every limit and rule over it known, none fired. */
export interface PointState {
  readonly point: string;
  readonly place: string;
  readonly state: string;
  readonly is: "sound" | Grade | "not-looked-at" | "cannot-get-at" | "not-fitted" | "answered";
  readonly reason?: Reason;
}

/** A point asked of this person, in walking order; `when` false hides it until opened. */
export interface Asked {
  readonly point: string;
  readonly place: string;
  readonly state: string;
  readonly fields: readonly string[];
  /** Points answered in the same entry. */
  readonly with: readonly string[];
  readonly safetyCritical: boolean;
  /** Opened by a rule or a complaint, with its words. */
  readonly openedBy: readonly string[];
}

/** A reading as judged for the screen: aggregate, uncertainty and the limits over it. */
export interface JudgedReading {
  readonly point: string;
  readonly field: string;
  readonly place: string;
  readonly value: number;
  readonly uncertainty: number;
  readonly unit: string;
  readonly limits: readonly JudgedLimit[];
}
export interface JudgedLimit {
  readonly limit: string;
  readonly direction: "over" | "at-or-over" | "under" | "at-or-under";
  readonly bands: Readonly<Partial<Record<Grade, number>>>;
  readonly unit: string;
  readonly basis: Basis;
  readonly source: string;
  readonly isDefault: boolean;
  readonly state: "clear" | "too close" | "past" | "inside";
  readonly grade: Grade | null;
  /** Why it may or may not apply, when that is not known. */
  readonly applies: "yes" | "not known";
}

/** One part of the reason a thing stands where it stands: a code with its figures, told in words by the catalogue. */
export interface Why {
  readonly code: string;
  readonly params: Readonly<Record<string, string | number>>;
}

/** What urgency is compared by, first part first (planning: gate, due class, rank, grade, way to the limit, walk, id). */
export interface UrgencyKey {
  /** 0 dangerous, 1 the rest. */
  readonly gate: 0 | 1;
  readonly due: 0 | 1 | 2 | 3 | 4;
  /** 1 worst … 20. */
  readonly rank: number;
  readonly grade: Grade;
  /** Share of the way to the next visit left before the limit; null when not known. */
  readonly left: number | null;
  readonly position: number;
  readonly id: string;
}

/** When a job is due: class, and figures when known. Never later than what is known allows. */
export interface ByWhen {
  /** 0 before the car is moved, 1 before the next drive, 2 within a stated distance or time, 3 next visit, 4 watch. */
  readonly class: 0 | 1 | 2 | 3 | 4;
  readonly distance?: { readonly value: number; readonly unit: string };
  readonly date?: string;
}

/** A job with the reasons it stands where it stands. */
export interface JobDue {
  readonly job: string;
  readonly place: string;
  readonly grade: Grade;
  readonly faults: readonly { readonly fault: string; readonly place: string }[];
  readonly rank: number;
  readonly byWhen: ByWhen;
  /** The key of its most urgent fault; its id is that fault's. */
  readonly key: UrgencyKey;
  readonly why: readonly Why[];
  /** Jobs its work contains at this place, which were due as well. */
  readonly includes: readonly string[];
}

/** Jobs a rule wants in this order at this place. */
export interface JobOrder {
  readonly before: string;
  readonly after: string;
  readonly place: string;
  readonly rule: string;
}

/** Something a person saw that no point asks for, graded by hand. */
export interface OffList {
  /** The name it keeps however often it is mended. */
  readonly name: string;
  readonly place: string;
  readonly words: string;
  readonly grade: Grade;
  readonly reason: string;
  readonly mustStand: boolean;
  /** Whether it calls for a job; the words of that job are the record's. */
  readonly hasJob: boolean;
  /** Name of who saw it, when (ms since 1970), and the entry it comes from. */
  readonly by: string;
  readonly at: number;
  readonly id: string;
}

/** A grade a person gave a fault by hand. */
export interface Regrade {
  readonly fault: string;
  readonly place: string;
  readonly grade: Grade;
  /** Empty: no reason given; then it can only go up. */
  readonly reason: string;
  /** Entry it comes from. */
  readonly id: string;
}

export interface Assessment {
  /** Version of the rules of assessing (SPEC.md) that made this. */
  readonly engine: string;
  readonly findings: readonly Finding[];
  readonly faults: readonly Fault[];
  readonly gates: readonly GateState[];
  readonly cautions: readonly CautionDue[];
  readonly settle: readonly Settle[];
  readonly open: readonly Opened[];
  readonly coverage: readonly Coverage[];
  readonly points: readonly PointState[];
  readonly asked: readonly Asked[];
  /** Points the complaints put first, likeliest first. */
  readonly suggested: readonly Opened[];
  readonly orders: readonly JobOrder[];
  readonly readings: readonly JudgedReading[];
  readonly problems: readonly Problem[];
}

export type { GaugeUsed };
