/** Whom a hand-over asks what things are called: the app and the terminal look them up in the open sheets. Types only. */
import type { FactValue, Why } from "../../assess/contract.js";
import type { ReplyKey, ReplyValue } from "../../terms/index.js";

/** All in the voice of who reads. What is not known comes back as its id: nothing is left out for want of a word. */
export interface HandoverNames {
  /** The rule's own wording where one rule alone found it; for an owner that of a rule that reached the grade. */
  readonly fault: (
    fault: string,
    rules: readonly string[],
    /** Of the rules, those that reached its grade. */
    worst?: readonly string[],
  ) => { readonly says: string; readonly cause?: string | undefined };
  readonly rule: (rule: string) => string;
  /** Published item a rule answers to. */
  readonly answersTo: (rule: string) => string | undefined;
  /** Empty for the car as a whole. */
  readonly place: (place: string) => string;
  /** What kind of place it is, as a heading; undefined for the car as a whole. */
  readonly kind: (place: string) => string | undefined;
  readonly point: (point: string) => string;
  /** What a point is looked at with, as its sheet says; empty: the eye. */
  readonly tool: (point: string) => string;
  readonly state: (state: string) => string;
  readonly reply: (key: ReplyKey, value: ReplyValue) => string;
  readonly fact: (name: string, value: FactValue) => { readonly name: string; readonly value: string };
  readonly derived: (id: string) => string;
  readonly limitDirection: (limit: string) => "over" | "at-or-over" | "under" | "at-or-under" | undefined;
  readonly caution: (caution: string) => {
    readonly not: string;
    readonly why: string;
    readonly can: string;
    readonly do: string;
  };
  readonly gate: (gate: string) => { readonly name: string; readonly tripped: string; readonly first: string };
  readonly job: (job: string) => { readonly name: string; readonly does: string };
  readonly sheet: (sheet: string) => string;
  /** A reason of planning in words; undefined where there are none. */
  readonly why: (why: Why) => string | undefined;
}
