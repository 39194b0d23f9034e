/**
 * What a hand-over is made from: one visit as folded, judged and planned, in plain data. Trade words (faults, places,
 * points, jobs, cautions) come in the voice of who reads; figures stay figures. Types only; knows no sheet, no record.
 */
import type { ByWhen, UrgencyKey } from "../../assess/contract.js";
import type { Audience, Basis, Forbids, Grade, IsoDate, NonAnswer, Reason, Sure, Three } from "../../terms/index.js";
import type { PlaceLook, PlanKind, PlanSide } from "../plan-terms.js";
import type { Drawing } from "../tree.js";

export interface HandoverInput {
  /** Who it is made for; all words below are in this voice. */
  readonly for: Audience;
  /** ISO date-time at which it is made, with offset; nothing here asks a clock. */
  readonly madeAt: string;
  /** Version of the rules of assessing. */
  readonly engine: string;
  readonly visit: VisitTold;
  readonly car: CarTold;
  readonly complaints: readonly ComplaintTold[];
  readonly faults: readonly FaultTold[];
  /** Points of this look that nobody answered, with why. */
  readonly notSeen: readonly NotSeen[];
  readonly looked: LookedTold;
  readonly sheets: readonly SheetTold[];
  readonly gates: readonly GateTold[];
  /** All that are due; which give way to a harder one is seen once it is known what still stands. */
  readonly cautions: readonly CautionTold[];
  readonly readings: readonly ReadingTold[];
  /** In urgency order. */
  readonly jobs: readonly JobTold[];
  /** Work that is done, whether or not its finding still stands; in the order of the days. */
  readonly done?: readonly DoneTold[] | undefined;
  readonly money?: MoneyTold | undefined;
  readonly firstUntold?: FirstUntold | undefined;
  readonly loose?: readonly LooseTold[] | undefined;
  /** What was told of the work while it went on cannot be worked out: what is loose and waited for is not known. */
  readonly isProgressUnread?: boolean | undefined;
  readonly trends?: readonly TrendTold[] | undefined;
  readonly dates?: readonly DateTold[] | undefined;
  readonly pictures?: readonly PictureTold[] | undefined;
  /** What is seen on pictures that no form can hold, because they cannot be read here. */
  readonly picturesLeft?: readonly string[] | undefined;
  readonly plan?: PlanTold | undefined;
  readonly release?: ReleaseTold | undefined;
  /** Oldest first; never in a buyer's version. */
  readonly signatures?: readonly SignatureTold[] | undefined;
  /** How many entries of visit, plan and car cannot be read here: they may say anything. Absent: none. */
  readonly unread?: number | undefined;
  /** Names, numbers and the like of people other than who looked: never in a buyer's version, wherever they stand. */
  readonly personal?: readonly string[] | undefined;
}

export interface VisitTold {
  /** Stable name of the visit: dates for a calendar are known again by it. */
  readonly id: string;
  /** ISO date or date-time, as the car was looked at. */
  readonly at: string;
  readonly purpose?: "workshop" | "viewing" | "season" | undefined;
  readonly who: Audience;
  /** Names of who looked. */
  readonly lookers?: readonly string[] | undefined;
  readonly odometer?: Figure | undefined;
  readonly closed?: boolean | undefined;
  /** The day the car comes next, as somebody planned it. */
  readonly next?: IsoDate | undefined;
}

/** A value as typed or worked out, with its UCUM unit. */
export interface Figure {
  readonly value: string | number;
  readonly unit: string;
}

export interface CarTold {
  readonly name: string;
  readonly facts: readonly {
    readonly name: string;
    readonly value: string;
    /** Leads to a person (a plate, who owns it): left out of the buyer's version. */
    readonly personal?: boolean | undefined;
  }[];
}

/** A finding by the id of its fault and its place. */
export interface FaultRef {
  readonly fault: string;
  readonly place: string;
}

export interface ComplaintTold {
  readonly id: string;
  /** As spoken. */
  readonly words: string;
  /** Absent: open. */
  readonly answer?: ComplaintAnswer | undefined;
}
export type ComplaintAnswer =
  | { readonly is: "found"; readonly faults: readonly FaultRef[]; readonly words?: string | undefined }
  /** Looked and listened for, and not met this time. */
  | { readonly is: "not-met"; readonly words?: string | undefined }
  /** Cannot be answered before something is done. */
  | { readonly is: "needs"; readonly what: string }
  /** What was said to it is still being read, or cannot be read: nobody knows whether it is answered. */
  | { readonly is: "not-read" };

export interface FaultTold extends FaultRef {
  readonly title: string;
  /** Place in words; empty for the car as a whole. */
  readonly where: string;
  readonly grade: Grade;
  readonly sure: Sure;
  /** A reading too close to a major or dangerous edge. */
  readonly close: boolean;
  readonly provisional: boolean;
  readonly atLeast?: boolean | undefined;
  /** Two people's replies differ. */
  readonly differ?: boolean | undefined;
  readonly byHand?: { readonly was: Grade; readonly reason: string } | undefined;
  readonly consequence: 1 | 2 | 3 | 4;
  readonly mustStand: boolean;
  readonly rules: readonly string[];
  /** Items of a published document the rules answer to, as `EU 2014/45 6.1.1(c)`. */
  readonly answersTo: readonly string[];
  readonly cause?: string | undefined;
  readonly because: readonly StepTold[];
  /** What would settle it, where it is below certain or too close. */
  readonly settle?: readonly string[] | undefined;
  /** Ids of jobs in `jobs` that put it right. */
  readonly jobs: readonly string[];
  /** Put right; `checked`: looked at or measured again afterwards by somebody, and found right. */
  readonly mended?: { readonly on: IsoDate; readonly checked: boolean } | undefined;
}

export const STEP_KINDS = [
  "seen",
  "heard",
  "felt",
  "told",
  "measured",
  "fact",
  "worked-out",
  "earlier",
  "found",
  "raised",
] as const;
/** One step of the because. */
export type StepTold =
  | {
      readonly is: (typeof STEP_KINDS)[number];
      readonly words: string;
      /** Raises how sure it is, decides nothing. */
      readonly supports?: boolean | undefined;
      readonly on?: IsoDate | undefined;
    }
  | ({ readonly is: "limit"; readonly value: number; readonly uncertainty: number } & LimitTold);

export interface LimitTold {
  readonly limit: string;
  readonly direction: "over" | "at-or-over" | "under" | "at-or-under";
  readonly edge: number;
  readonly unit: string;
  readonly grade: Grade;
  readonly basis: Basis;
  readonly source: string;
  /** Not this car's own figure. */
  readonly isDefault: boolean;
}

export interface NotSeen {
  readonly point: string;
  readonly place: string;
  readonly title: string;
  readonly where: string;
  /** Car state in words. */
  readonly state: string;
  readonly is: "not-looked" | "cannot-reach";
  readonly nonAnswer?: NonAnswer | undefined;
  readonly reason?: Reason | undefined;
  /** The reason in a person's own words. */
  readonly words?: string | undefined;
  /** Worst grade a look at it could have led to; absent where nobody has worked that out: it then counts as the worst. */
  readonly couldDecide?: Grade | "nothing" | undefined;
}

export interface LookedTold {
  /** Points answered with no rule over them firing and all of them known. */
  readonly sound: number;
}

export interface SheetTold {
  readonly id: string;
  readonly name: string;
  /** Label for people, and the content hash. */
  readonly label?: string | undefined;
  readonly edition: string;
  readonly answered: number;
  readonly of: number;
  readonly notFitted: number;
  readonly notChecked: number;
  /** Not asked of who looked. */
  readonly notForThisLook: number;
  /** False: more than 30 % unseen. */
  readonly enough: boolean;
}

export interface GateTold {
  readonly gate: string;
  readonly title: string;
  /** An act (`drive-away`, `lift`, `touch`, `spark`) or a car state's id (`w4-road`). */
  readonly guards: string;
  readonly state: "tripped" | "cleared" | "not cleared";
  /** What it says as it stands. */
  readonly says: string;
  /** What to do first. */
  readonly first: readonly string[];
  /** Findings that trip it; `onlyThose`: nothing else does. */
  readonly faults: readonly FaultRef[];
  readonly onlyThose: boolean;
  /** What it would be without them. */
  readonly otherwise: "tripped" | "cleared" | "not cleared";
  /** Sheets by name that were not open and that it needs. */
  readonly missing: readonly string[];
  /** Done unproven all the same, and why. */
  readonly unproven?: string | undefined;
}

export type SignalWord = "danger" | "warning" | "caution" | "notice";
export interface CautionTold {
  readonly caution: string;
  readonly signal: SignalWord;
  /** What not to do, why, what can happen, what to do. */
  readonly not: string;
  readonly why: string;
  readonly can: string;
  readonly todo: string;
  readonly places: readonly string[];
  /** Says that the car must not be driven, or no farther than to a workshop. */
  readonly forbids?: Forbids | undefined;
  /** Findings it comes from; none: it stands by itself. */
  readonly faults: readonly FaultRef[];
  /** When the owner was told, ISO date-time. */
  readonly toldAt?: string | undefined;
}

export interface ReadingTold {
  readonly point: string;
  readonly place: string;
  readonly title: string;
  readonly where: string;
  /** As typed, decimal point, in `typedUnit`; empty for what was worked out. */
  readonly typed: readonly string[];
  /** Absent: `unit`. */
  readonly typedUnit?: string | undefined;
  /** As judged, with k = 2. */
  readonly value: number;
  readonly uncertainty: number;
  readonly unit: string;
  readonly gauge?: string | undefined;
  readonly limits: readonly (LimitTold & {
    readonly state: "clear" | "too close" | "past" | "inside";
    readonly applies: "yes" | "not known";
  })[];
  readonly last?: { readonly on: IsoDate; readonly value: string; readonly unit: string } | undefined;
}

export interface JobTold {
  /** `job@place`. */
  readonly id: string;
  readonly title: string;
  readonly where: string;
  /** What is done. */
  readonly does: string;
  readonly grade: Grade;
  readonly byWhen: ByWhen;
  readonly key?: UrgencyKey | undefined;
  readonly faults: readonly FaultRef[];
  /** In the plan as it stands; absent where nothing is planned yet. */
  readonly chosen?: boolean | undefined;
  readonly minutes?: Three | undefined;
  /** Minor units with tax, of its own work and parts: what is opened for it is a line of its own. Absent: not known. */
  readonly cost?: Three | undefined;
  /** Not passed four times in five. */
  readonly most?: number | undefined;
  /** As told first, never changed. */
  readonly first?:
    | { readonly on: IsoDate; readonly cost: Three /** As it is kept: without tax. */; readonly isNet?: boolean }
    | undefined;
  readonly parts: readonly PartTold[];
  readonly why: readonly string[];
  readonly doneOn?: IsoDate | undefined;
  readonly decision?: DecisionTold | undefined;
}

/** Work that is done: who did it, what was read before and after, who looked at it a second time. */
export interface DoneTold {
  /** `job@place`. */
  readonly id: string;
  readonly title: string;
  readonly where: string;
  readonly on: IsoDate;
  /** Absent where nobody said who. */
  readonly by?: string | undefined;
  /** What its points said last before the work and first after it, as it was typed or said. */
  readonly readings: readonly {
    readonly title: string;
    readonly where: string;
    readonly before?: SaidOn | undefined;
    /** Absent: nobody has looked again since. */
    readonly after?: SaidOn | undefined;
  }[];
  /** Points the work asks to be looked at afterwards and nobody has, in words. */
  readonly unseen: readonly string[];
  readonly look: {
    /** A life hangs on it: somebody else than who did it has to look. */
    readonly needed: boolean;
    /** `same`: only who had done it, after a break. */
    readonly is: "other" | "same" | "none";
    readonly who: readonly string[];
  };
}
export interface SaidOn {
  readonly says: string;
  readonly on: IsoDate;
}

export interface PartTold {
  readonly title: string;
  readonly count: number;
  /** Of one, minor units without tax. */
  readonly price?: Three | undefined;
  /** Had together with. */
  readonly set?: string | undefined;
  readonly leadDays?: number | undefined;
  /** Where it stands, in words. */
  readonly stands?: string | undefined;
}

export interface DecisionTold {
  readonly is: "now" | "by" | "no" | "more";
  /** A day, a reading of the odometer, or whichever comes first. */
  readonly by?: { readonly date?: IsoDate; readonly odometer?: Figure } | undefined;
  readonly reason?: string | undefined;
  readonly who?: string | undefined;
  /** How they told, in words: face to face, by telephone, in writing. */
  readonly how?: string | undefined;
  readonly on?: IsoDate | undefined;
  /** Given for this word as it stands. */
  readonly signed?: SignedTold | undefined;
  /** The warning shown before a no was taken: its words, and when. */
  readonly warned?: { readonly words: string; readonly at: string } | undefined;
}

/** Who signed and when; not drawn: agreed to in person under a typed name. */
export interface SignedTold {
  readonly who: string;
  readonly on: IsoDate;
  readonly isDrawn: boolean;
}

/** A signature given for decisions. */
export interface SignatureTold {
  readonly id: string;
  readonly who: string;
  readonly on: IsoDate;
  /** How many decisions it was given for, and how many of them stand as they were signed. */
  readonly of: number;
  readonly standing: number;
  /** Absent: agreed to in person under a typed name. */
  readonly drawing?: Drawing | undefined;
}

/** Minor units, tax included. */
export interface MoneyTold {
  readonly currency: string;
  readonly minorDigits: number;
  readonly total?: Three | undefined;
  /** Not passed four times in five. */
  readonly most?: number | undefined;
  readonly budget?: number | undefined;
  readonly spent?: number | undefined;
  /** Jobs without hours and parts without a price: no sum holds them. */
  readonly missing: number;
  /** What is opened for the work, each paid once however many jobs need it. */
  readonly openings?: readonly OpeningTold[] | undefined;
  readonly first?: { readonly on: IsoDate; readonly total: Three } | undefined;
}

export interface OpeningTold {
  readonly id: string;
  /** With its place, in words. */
  readonly title: string;
  readonly minutes?: Three | undefined;
  readonly cost: Three;
  /** Ids of the jobs that need it, as far as that is known. */
  readonly jobs: readonly string[];
}

/** A first estimate was told and does not stand here beside what is now. */
export interface FirstUntold {
  readonly on: IsoDate;
  /** `currency`: told in another one · `newer`: kept by a newer version · `no-rates`: nothing to set it beside. */
  readonly why: "currency" | "newer" | "no-rates";
}

export interface LooseTold {
  readonly words: string;
  readonly where?: string | undefined;
  readonly is: "loose" | "drained" | "off" | "unplugged";
  readonly on: IsoDate;
}

export interface TrendTold {
  readonly id: string;
  readonly title: string;
  readonly where: string;
  readonly unit: string;
  readonly readings: readonly { readonly on: IsoDate; readonly value: number; readonly uncertainty?: number }[];
  readonly edge: number;
  readonly grade: Grade;
  /** The gravest edge passed already; where it is `edge` itself, nothing graver lies ahead. */
  readonly passed?: { readonly edge: number; readonly grade: Grade } | undefined;
  /** Absent: nothing can be said yet. `to` absent: no latest date. */
  readonly reaches?: { readonly from: IsoDate; readonly to?: IsoDate | undefined } | undefined;
  readonly lookAgain?: IsoDate | undefined;
}

/** A day somebody has to think of that stands in no job: tightening again, a promised part, a second look. */
export interface DateTold {
  readonly id: string;
  readonly is: "re-torque" | "look-again" | "part" | "other";
  readonly words: string;
  readonly on?: IsoDate | undefined;
  readonly distance?: Figure | undefined;
}

export interface PictureTold {
  readonly hash: string;
  readonly caption: string;
  readonly width: number;
  readonly height: number;
  readonly place?: string | undefined;
  readonly fault?: FaultRef | undefined;
  /** Marks drawn on it, in its own pixels. */
  readonly marks?: Drawing | undefined;
}

export interface PlanTold {
  readonly kind: PlanKind;
  readonly side: PlanSide;
  readonly places: readonly {
    readonly id: string;
    readonly look: Exclude<PlaceLook, "here">;
    readonly at?: readonly [number, number] | undefined;
  }[];
}

/** What somebody said after a last look at the finished work. */
export interface ReleaseTold {
  readonly is: "released" | "not-released";
  readonly who?: string | undefined;
  readonly on?: IsoDate | undefined;
  readonly words?: string | undefined;
}
