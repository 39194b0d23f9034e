/** Jobs, parts, decisions, money, what is done, loose or due, as a hand-over is given them. Types only. */
import type { ByWhen, UrgencyKey } from "../../assess/contract.js";
import type { Grade, IsoDate, Three } from "../../terms/index.js";
import type { Drawing } from "../tree.js";
import type { FaultRef, Figure } from "./input-findings.js";

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

/** A day somebody has to think of that stands in no job: tightening again, a promised part, a second look. */
export interface DateTold {
  readonly id: string;
  readonly is: "re-torque" | "look-again" | "part" | "other";
  readonly words: string;
  readonly on?: IsoDate | undefined;
  readonly distance?: Figure | undefined;
}

/** What is to be looked at again in one visit, at the earliest of it. */
export interface LookTold {
  /** Stable over hand-overs of one visit. */
  readonly id: string;
  readonly on?: IsoDate | undefined;
  /** What the odometer then shows; from the day of the visit on, where nobody read it. */
  readonly odometer?: Figure | undefined;
  readonly distance?: Figure | undefined;
  /** The day is one the distance comes to by the car's own use. */
  readonly isByUse?: true | undefined;
  /** A stated day has gone by, or the odometer is past the distance. */
  readonly isOverdue?: true | undefined;
  readonly of: readonly LookAtTold[];
}
export interface LookAtTold {
  readonly is: "finding" | "job" | "recheck" | "wear";
  readonly title: string;
  readonly where: string;
  /** Of a finding. */
  readonly fault?: FaultRef | undefined;
  /** Stands among the days by itself, under this id. */
  readonly date?: string | undefined;
}

/** What somebody said after a last look at the finished work. */
export interface ReleaseTold {
  readonly is: "released" | "not-released";
  readonly who?: string | undefined;
  readonly on?: IsoDate | undefined;
  readonly words?: string | undefined;
}
