/**
 * What entries tell of the owner's word on the work list: decisions, answers to what was asked, signatures. Types only.
 * Money is whole minor units with tax, days are calendar days. Judges no decision.
 */
import type { IsoDate } from "../terms/index.js";

/** Yes now, yes by a day or an odometer, no because, tell me more. */
export const DECISION_WORDS = ["yes-now", "yes-by", "no", "tell-me-more"] as const;
export type DecisionWord = (typeof DECISION_WORDS)[number];
/** Whose word it is: the owner's own, or of somebody who speaks for the owner. */
export const DECIDERS = ["owner", "for-the-owner"] as const;
export type Decider = (typeof DECIDERS)[number];
/** How it was told. */
export const TOLD_HOW = ["in-person", "by-phone", "in-writing", "passed-on"] as const;
export type ToldHow = (typeof TOLD_HOW)[number];

/** The price as it was shown to whoever decided, tax included; one that was not known is absent. */
export interface PriceShown {
  readonly likely: number;
  readonly p80: number;
  readonly high: number;
  /** ISO 4217. */
  readonly currency: string;
}

/** One thing that was shown before somebody decided against it, in the very words. */
export interface Warned {
  readonly of: "caution" | "finding" | "due";
  /** Caution, `fault@place`, or the due class. */
  readonly id: string;
  readonly words: string;
}
/** What was shown, and when somebody said that it was read. */
export interface WarningShown {
  readonly shown: readonly Warned[];
  /** Date and time with offset. */
  readonly acknowledged: string;
}

/** Somebody's word on one job. */
export interface Decision {
  readonly word: DecisionWord;
  /** With `yes-by`: a day or an odometer, or both. */
  readonly by?: IsoDate;
  readonly odometer?: { readonly value: number; readonly unit: "km" | "[mi_i]" };
  /** With `no`: why. */
  readonly because?: string;
  /** With `tell-me-more`: what. */
  readonly what?: string;
  readonly who: string;
  readonly role: Decider;
  readonly how: ToldHow;
  readonly on: IsoDate;
  readonly price?: PriceShown;
  /** Id of the entry of the first estimate, where one was given. */
  readonly estimate?: string;
  /** Of what is dangerous or may not be driven, when it is refused or put off. */
  readonly warning?: WarningShown;
}

/** A signature as it was drawn: each stroke as x, y, x, y … in whole units of a box of this size. */
export interface DrawnSignature {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly (readonly number[])[];
}

type JobAt = { readonly job: string; readonly place: string };
type Replaces = { readonly replaces: readonly string[] };

/** Bodies of the kinds that tell the owner's word. */
export interface DecisionBodies {
  /** Null takes back what it names: nobody has decided then. */
  decision: Replaces & JobAt & { readonly said: Decision | null };
  /** The answer to what was asked; `question` is the entry that asked. */
  "decision.answer": Replaces & {
    readonly question: string;
    readonly answer: { readonly words: string; readonly on: IsoDate } | null;
  };
  /** Whoever signed, for which entries; drawn, or agreed to in person under a typed name. Only ever undone. */
  "decision.signed": {
    readonly decisions: readonly string[];
    readonly who: string;
    readonly on: IsoDate;
    readonly drawn?: DrawnSignature;
  };
}
