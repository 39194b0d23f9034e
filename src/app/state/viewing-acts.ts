/** What is said at a viewing beside replies, each as one act in the plan of its visit. Judges no claim. */
import { type Claim, type ClaimSeen, draftClaim, draftClaimSeen, draftPapersUntil } from "../../core/record/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import type { Journal } from "./journal.js";
import { planAct } from "./plan-acts.js";

type Kept = Promise<boolean>;

/** Typed or pasted words as claims: one a line, blanks and marks of a list before it taken off. */
export const claimTexts = (typed: string): readonly string[] =>
  typed
    .split(/\r?\n/)
    .map((line) => line.replace(/^[\s•*·–—-]+/, "").trim())
    .filter((line) => line !== "");

/** Claims not there yet, in one act. */
export const addClaims = (journal: Journal, visit: string, typed: string, from: Claim["from"]): Kept =>
  planAct(journal, visit, (act, plan) => {
    const there = new Set([...plan.claims.values()].flat().map(({ value }) => value.text));
    return [...new Set(claimTexts(typed))]
      .filter((text) => !there.has(text))
      .map((text) => draftClaim(act, plan, act.nonce(), { text, from }));
  });

export const putClaim = (journal: Journal, visit: string, claim: string, says: Claim | null): Kept =>
  planAct(journal, visit, (act, plan) => [draftClaim(act, plan, claim, says)]);

/** Whether it was shown; null: not asked for yet. */
export const seeClaim = (journal: Journal, visit: string, claim: string, seen: ClaimSeen | null): Kept =>
  planAct(journal, visit, (act, plan) => [draftClaimSeen(act, plan, claim, seen)]);

export const papersUntil = (journal: Journal, visit: string, until: IsoDate | null): Kept =>
  planAct(journal, visit, (act, plan) => [draftPapersUntil(act, plan, until)]);
