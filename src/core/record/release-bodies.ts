/**
 * What entries of a plan's stream say about handing a car back: answers to complaints, what the owner was told on the
 * way, second looks, checks after some distance, the release itself. Types only. Knows no reason and refuses nothing.
 */
import type { IsoDate } from "../terms/index.js";

type Replaces = { readonly replaces: readonly string[] };
type JobAt = { readonly job: string; readonly place: string };

/** `found`: it comes from there · `not-heard`: not heard, seen or felt today · `needs`: something else first. */
export const ANSWERS = ["found", "not-heard", "needs"] as const;
export type AnswerWord = (typeof ANSWERS)[number];
export const NEEDS = ["road-test", "measuring", "taking-apart", "part"] as const;
export type AnswerNeeds = (typeof NEEDS)[number];

/** What was found out about a complaint. */
export interface ComplaintAnswer {
  readonly word: AnswerWord;
  /** With `found`: faults of the visit it was answered in. Empty where it is said in words only. */
  readonly findings: readonly { readonly fault: string; readonly place: string }[];
  /** With `needs`, always. */
  readonly needs?: AnswerNeeds;
  /** What was found; how it was tried; what it needs. */
  readonly words: string;
  readonly who: string;
  readonly on: IsoDate;
}

export const HANDED = ["driven", "not-driven"] as const;
/** `not-driven`: on a trailer, or left standing: not to be driven. */
export type HandedBack = (typeof HANDED)[number];

/** A car handed back. */
export interface Release {
  readonly who: string;
  readonly on: IsoDate;
  readonly odometer?: { readonly value: string; readonly unit: string };
  readonly how: HandedBack;
  /** What stood against it or was told with it, in the words that were shown. */
  readonly told: readonly string[];
  /** With `not-driven`, always: that it must not be driven was shown to whoever took it. */
  readonly warned?: true;
}

export interface ReleaseBodies {
  /** `complaint`: id of the entry that tells it, of this visit or an earlier one of the car. */
  "complaint.answered": Replaces & { readonly complaint: string; readonly answer: ComplaintAnswer | null };
  /** The text as it was sent; never replaced, only undone. */
  "progress.sent": { readonly text: string; readonly who: string; readonly how: string; readonly on: IsoDate };
  /** Somebody looked at a job that is done. `same`: it was who had done it, after a break. Never replaced. */
  "second-look": JobAt & {
    readonly who: string;
    readonly on: IsoDate;
    readonly words: string;
    readonly same: boolean;
  };
  /** `recheck` names what was due, as planning names it. Never replaced. */
  "recheck.done": { readonly recheck: string; readonly who: string; readonly on: IsoDate; readonly words: string };
  /** Null takes the car back; then it says why. */
  "plan.release": Replaces & { readonly release: Release | null; readonly reason?: string };
}
export type ReleaseKind = keyof ReleaseBodies;
