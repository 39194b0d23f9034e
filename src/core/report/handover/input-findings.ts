/** Figures, findings with their because, what nobody looked at, complaints with their answers, as a hand-over is given them. Types only. */
import type { Basis, Grade, IsoDate, NonAnswer, Reason, Sure } from "../../terms/index.js";

/** A value as typed or worked out, with its UCUM unit. */
export interface Figure {
  readonly value: string | number;
  readonly unit: string;
}

/** A finding by the id of its fault and its place. */
export interface FaultRef {
  readonly fault: string;
  readonly place: string;
}

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
  /** Name of the sheet that asks for it. */
  readonly sheet?: string | undefined;
  /** What kind of place it is, as a heading (`Wheels`); absent for the car as a whole. */
  readonly kind?: string | undefined;
  /** A complaint, a finding or a check waits for it, or a reply to it could stop the car being started or driven. */
  readonly awaited?: true | undefined;
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
