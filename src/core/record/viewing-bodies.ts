/** What a viewing adds to a plan: what is claimed of the car and whether it was shown, how long papers are kept. Types and words only. */
import type { IsoDate } from "../terms/index.js";

type Replaces = { readonly replaces: readonly string[] };

/** Who said it, or where it stood. */
export const CLAIM_FROM = ["advert", "seller", "papers"] as const;
/** `shown`: seen on the car or in a paper · `not-shown`: asked for and not shown · `otherwise`: the car or a paper says otherwise. */
export const CLAIM_WORDS = ["shown", "not-shown", "otherwise"] as const;

/** As it was said or stood, in its own words. */
export interface Claim {
  readonly text: string;
  readonly from: (typeof CLAIM_FROM)[number];
}
export interface ClaimSeen {
  readonly word: (typeof CLAIM_WORDS)[number];
  /** What was shown, or what says otherwise; may be empty. */
  readonly words: string;
  readonly on: IsoDate;
}

/** Null takes it back. `claim` is the name a claim keeps however often its words are mended. */
export interface ViewingBodies {
  claim: Replaces & { readonly claim: string; readonly says: Claim | null };
  "claim.seen": Replaces & { readonly claim: string; readonly seen: ClaimSeen | null };
  /** From this day on, pictures of other people's papers are asked to be deleted; null: they are kept. */
  "papers.until": Replaces & { readonly until: IsoDate | null };
}
export type ViewingKind = keyof ViewingBodies;
