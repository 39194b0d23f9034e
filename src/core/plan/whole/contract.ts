/**
 * What planning a whole work list takes and gives: jobs with all that is known of them in, everything the screens and
 * the command line show out. Types only.
 */
import type { UrgencyKey } from "../../assess/contract.js";
import type { Grade, Problem } from "../../terms/index.js";
import type { AccessState, Bundle, BundleJob, ChosenWay, Opportunity } from "../access/index.js";
import type { ChoiceResult, NextStep } from "../choice/door.js";
import type { Alone, Doing } from "../doing/index.js";
import type { Estimate, HouseTerms } from "../estimate/index.js";
import type { Schedule, Supplier, WorkCalendar } from "../schedule/door.js";
import type { IsoDate, Three } from "../terms.js";

/** A part as far as it is known: price and lead may be missing, and then no sum and no date is made up. */
export interface WorkPart {
  readonly id: string;
  readonly count: number;
  /** Of one, minor units, without tax. */
  readonly price?: Three | undefined;
  readonly deposit?: number;
  readonly carriage?: number;
  readonly supplier?: string;
  /** Working days of the supplier; its own where nothing is said. */
  readonly leadDays?: number;
  readonly pricedOn?: IsoDate;
  /** Parts of one set are had together. */
  readonly set?: string | undefined;
  /** What it runs against: another part of this job by id, or words. */
  readonly counterpart?: string | undefined;
  readonly aloneBecause?: string | undefined;
  /** Ordered, and on which day. */
  readonly orderedOn?: IsoDate | undefined;
  /** Promised for this day. */
  readonly promised?: IsoDate | undefined;
  /** Here, and not found wanting. */
  readonly inHand?: boolean | undefined;
}

export interface WorkJob {
  /** `job@place`. */
  readonly id: string;
  readonly key: UrgencyKey;
  readonly grade: Grade;
  /** Own minutes; missing where nobody has said: the job is set aside and told. */
  readonly minutes?: Three | undefined;
  readonly access: readonly string[];
  readonly ways?: readonly (readonly string[])[] | undefined;
  /** Jobs of this list that come before it. */
  readonly follows: readonly string[];
  /** What sort of job it is, where the same is done at several places. */
  readonly kind?: string | undefined;
  /** Once, and after everything else: geometry. */
  readonly last?: boolean | undefined;
  /** Kinds of jobs it cannot do without afterwards, done once for all: a bleed. */
  readonly endsIn?: readonly string[] | undefined;
  /** Kinds of jobs whose work it contains: a change of fluid is a bleed. */
  readonly contains?: readonly string[] | undefined;
  readonly parts: readonly WorkPart[];
  /** `in`: to be done whatever the budget. `out`: not to be done; counts for optional work only. */
  readonly wanted?: "in" | "out" | undefined;
  /** The owner said no: neither planned nor charged, whatever its class; it stays on the list. */
  readonly declined?: boolean | undefined;
  /** Of the labour rates of the house; its first where nothing is said. */
  readonly rate?: string | undefined;
  /** How many people it takes; one where nothing is said. */
  readonly people?: number | undefined;
  /** Real minutes after it in which nobody is needed: glue, paint, soak. */
  readonly standing?: number | undefined;
  /** Done already: neither planned nor charged again. */
  readonly isDone?: boolean | undefined;
}

/** An opening, and whether the car stands on the lift while it is open. */
export interface WorkOpening extends AccessState {
  readonly onLift?: boolean | undefined;
  /** The car cannot be moved while it is open. */
  readonly isImmovable?: boolean | undefined;
}

/** A supplier of parts, or somebody who takes the car's own parts in: grinding, coating, lining. */
export interface WorkSupplier extends Supplier {
  readonly outwork?: boolean | undefined;
}

export interface WorkInput {
  /** Orders go out from this day on. */
  readonly today: IsoDate;
  /** The earliest day the car can be worked on; today where nothing is said. */
  readonly begins?: IsoDate | undefined;
  /** In urgency order. */
  readonly jobs: readonly WorkJob[];
  readonly openings: readonly WorkOpening[];
  /** With tax, minor units. */
  readonly budget?: number | undefined;
  readonly terms?: HouseTerms | undefined;
  readonly calendar?: WorkCalendar | undefined;
  readonly suppliers?: readonly WorkSupplier[] | undefined;
  /** Per cent of the usual hours this car asks for. */
  readonly condition?: Three | undefined;
}

/** What one job adds to the rest of the plan. */
export interface JobInPlan {
  readonly id: string;
  readonly isMandatory: boolean;
  readonly isChosen: boolean;
  /** On top of the other chosen jobs, and on a visit of its own. */
  readonly added: Three;
  readonly standAlone: Three;
  /** With its equal part of what it shares; chosen jobs only. */
  readonly share?: Three | undefined;
}

export interface WorkPlan {
  readonly jobs: readonly JobInPlan[];
  readonly chosen: readonly string[];
  readonly ways: readonly ChosenWay[];
  readonly bundles: readonly (Bundle | BundleJob)[];
  readonly doing: Doing;
  /** All chosen jobs in one visit. */
  readonly minutes: Three;
  /** With a budget and the house's terms. */
  readonly choice?: ChoiceResult | undefined;
  readonly nextStep?: NextStep | undefined;
  readonly estimate?: Estimate | undefined;
  readonly schedule?: Schedule | undefined;
  /** Jobs left out that pay while it is apart, those worth it first. */
  readonly offers: readonly Opportunity[];
  readonly alone: readonly Alone[];
  /** What the jobs that are done took of the budget, likely, with tax: it is not there for the rest. */
  readonly spent: number;
  /** Parts of chosen jobs (`job@place/part`) whose price nobody has said: no sum of money holds them. */
  readonly unpriced: readonly string[];
  /** Jobs no sum holds: their minutes or what they need open is not known. */
  readonly setAside: readonly string[];
  readonly problems: readonly Problem[];
  readonly remarks: readonly Problem[];
}
