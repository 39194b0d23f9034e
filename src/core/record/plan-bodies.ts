/**
 * What entries of a plan's stream say: what was decided, ordered, promised, done and left loose after a visit. Types
 * only. Dates are calendar days, money is whole minor units, minutes are whole. Knows no order and no sum.
 */
import type { IsoDate, Three } from "../terms/index.js";
import type { DecisionBodies } from "./decision-bodies.js";
import type { ReleaseBodies } from "./release-bodies.js";
import type { ViewingBodies } from "./viewing-bodies.js";
import type { WearBodies } from "./wear-bodies.js";

type Replaces = { readonly replaces: readonly string[] };

/** One job of the work list. */
export interface JobAt {
  readonly job: string;
  readonly place: string;
}
/** One part of one job: of the sheet, or added by hand under a name made up for it. */
export interface PartAt extends JobAt {
  readonly part: string;
}

/** How the car is used until the next visit. */
export type PlanUse = "laid-up" | "normal" | "hard";

/** What may be spent, tax included. */
export interface Budget {
  readonly minor: number;
  readonly gross: true;
}

/** What is known of a part to be bought. */
export interface PartFigures {
  /** Words of a part added by hand, or in place of the sheet's. */
  readonly name?: string;
  readonly count: number;
  /** Of one. */
  readonly price?: Three;
  /** Given back when the old part comes back. */
  readonly deposit?: number;
  readonly carriage?: number;
  /** Id of a supplier of the house. */
  readonly supplier?: string;
  /** Working days of the supplier. */
  readonly leadDays?: number;
  /** When the price was asked for. */
  readonly pricedOn?: IsoDate;
  /** Id of another part of the same job this one runs against or is bought with, or words for it. */
  readonly counterpart?: string;
  /** Why one of a pair or set is bought alone. */
  readonly aloneBecause?: string;
}

/** What was looked at when a part came: is it the right one, does it fit its counterpart, are all there, is it whole. */
export interface PartChecks {
  readonly right: boolean;
  /** Absent where the part has no counterpart. */
  readonly counterpart?: boolean;
  readonly count: boolean;
  readonly condition: boolean;
}

export const PART_STEPS = ["ordered", "promised", "chased", "arrived", "checked", "fitted", "sent-back"] as const;
export type PartStepName = (typeof PART_STEPS)[number];
export const JOB_STEPS = ["begun", "waiting", "done", "measured-again"] as const;
export type JobStepName = (typeof JOB_STEPS)[number];
export const LOOSE = ["loose", "drained", "off", "unplugged"] as const;
export const USES = ["laid-up", "normal", "hard"] as const;

/** Who agreed to something, how, and when. */
export interface Agreed {
  readonly who: string;
  readonly how: string;
  readonly on: IsoDate;
}

/** What the owner lets the workshop take apart to look, and how far it may go. */
export interface PlanScope {
  /** Access states that may be opened. */
  readonly apart: readonly string[];
  readonly capMinutes?: number;
  readonly capMinor?: number;
  readonly leftOut: readonly { readonly what: string; readonly why: string }[];
}

/** Bodies of a plan's own kinds. Steps and estimates name nothing they replace: they are only ever undone. */
export interface PlanBodies extends ReleaseBodies, DecisionBodies, WearBodies, ViewingBodies {
  "plan.begun": { readonly visit: string };
  /** The earliest day the car can be worked on. */
  "plan.begins": Replaces & { readonly on: IsoDate | null };
  "plan.use": Replaces & { readonly use: PlanUse | null };
  "plan.budget": Replaces & { readonly budget: Budget | null };
  "plan.wanted": Replaces & JobAt & { readonly wanted: "in" | "out" | null; readonly reason?: string };
  "plan.minutes": Replaces & JobAt & { readonly minutes: Three | null; readonly why?: string };
  "plan.part": Replaces & PartAt & { readonly figures: PartFigures | null };
  "part.step": PartAt & {
    readonly step: PartStepName;
    readonly on: IsoDate;
    /** The day the supplier promised. */
    readonly promised?: IsoDate;
    /** When to ask again. */
    readonly next?: IsoDate;
    /** With `checked` only. */
    readonly checks?: PartChecks;
    readonly words?: string;
  };
  "job.step": JobAt & {
    readonly step: JobStepName;
    readonly on: IsoDate;
    /** Always with `waiting`: the day to take it up again. */
    readonly next?: IsoDate;
    readonly minutes?: number;
    readonly words?: string;
  };
  /** `loose` is the name it keeps however often its words are mended. */
  "left-loose": Replaces & {
    readonly loose: string;
    readonly what: (typeof LOOSE)[number];
    readonly words: string;
    readonly place?: string;
    readonly on: IsoDate;
  };
  "left-loose.cleared": { readonly loose: string; readonly on: IsoDate; readonly words: string };
  /** As planning froze it; the first one given is never given again. */
  "estimate.given": { readonly estimate: unknown; readonly on: IsoDate };
  "estimate.addition": Replaces & {
    readonly addition: string;
    readonly words: string;
    readonly minutes: Three;
    readonly price: Three;
    readonly reason: string;
    /** What it came to with tax when somebody agreed: rates that change later do not change that. */
    readonly gross?: number;
    /** Null: asked, and agreed to by nobody yet. */
    readonly agreed: Agreed | null;
  };
  "plan.scope": Replaces & { readonly scope: PlanScope | null };
  "plan.intake": Replaces & { readonly item: string; readonly says: string | null };
}
export type PlanKind = keyof PlanBodies;
