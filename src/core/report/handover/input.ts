/**
 * What a hand-over is made from: one visit as folded, judged and planned, in plain data. Trade words (faults, places,
 * points, jobs, cautions) come in the voice of who reads; figures stay figures. Types only; knows no sheet, no record.
 */
import type { Audience, Grade, IsoDate } from "../../terms/index.js";
import type { PlaceLook, PlanKind, PlanSide } from "../plan-terms.js";
import type { Drawing } from "../tree.js";
import type { ClaimTold } from "./input-claims.js";
import type { ComplaintTold, FaultRef, FaultTold, Figure, NotSeen } from "./input-findings.js";
import type { CautionTold, GateTold, LookedTold, ReadingTold, SheetTold } from "./input-looked.js";
import type {
  DateTold,
  DoneTold,
  FirstUntold,
  JobTold,
  LookTold,
  LooseTold,
  MoneyTold,
  ReleaseTold,
  SignatureTold,
} from "./input-work.js";

export type * from "./input-claims.js";
export type * from "./input-findings.js";
export type * from "./input-looked.js";
export type * from "./input-work.js";

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
  /** What was claimed of the car; in a buyer's version alone. */
  readonly claims?: readonly ClaimTold[] | undefined;
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
  /** All that is looked at again, wear with the rest; absent: not worked out, and wear stands by itself. */
  readonly looks?: readonly LookTold[] | undefined;
  /** How many earlier visits of the car could not be read or judged: what they found and ask for is not here. Absent: none. */
  readonly visitsUnread?: number | undefined;
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
  /** Put away, or looked at while it lies: it was looked over for its rest, not for the road. */
  readonly laidUp?: boolean | undefined;
  readonly who: Audience;
  /** Names of who looked. */
  readonly lookers?: readonly string[] | undefined;
  readonly odometer?: Figure | undefined;
  readonly closed?: boolean | undefined;
  /** The day the car comes next, as somebody planned it. */
  readonly next?: IsoDate | undefined;
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
