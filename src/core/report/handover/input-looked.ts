/** Sheets, checks before a step, cautions and readings, as a hand-over is given them. Types only. */
import type { Forbids, IsoDate } from "../../terms/index.js";
import type { FaultRef, LimitTold } from "./input-findings.js";

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
  /** It stands before leaving, or before a car state in which the car drives. */
  readonly drives: boolean;
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
