/** Drafts what a viewing adds to the plan of its visit. Refuses to judge a claim. */
import type { IsoDate } from "../terms/index.js";
import type { Act, Draft } from "./contract.js";
import { standingIds } from "./draft.js";
import { draftBy } from "./draft-later.js";
import type { PlanState } from "./plan-contract.js";
import type { Claim, ClaimSeen } from "./viewing-bodies.js";
import { VIEWING_ROWS } from "./viewing-kinds.js";

/** What is claimed of the car; null takes it back, and what was said of it with it. */
export const draftClaim = (act: Act, plan: PlanState, claim: string, says: Claim | null): Draft =>
  draftBy(VIEWING_ROWS, act, plan.stream, "claim", { claim, says, replaces: standingIds(plan, `claim|${claim}`) });

export const draftClaimSeen = (act: Act, plan: PlanState, claim: string, seen: ClaimSeen | null): Draft =>
  draftBy(VIEWING_ROWS, act, plan.stream, "claim.seen", {
    claim,
    seen,
    replaces: standingIds(plan, `claim-seen|${claim}`),
  });

/** The day from which pictures of other people's papers are to go; null keeps them. */
export const draftPapersUntil = (act: Act, plan: PlanState, until: IsoDate | null): Draft =>
  draftBy(VIEWING_ROWS, act, plan.stream, "papers.until", { until, replaces: standingIds(plan, "papers-until|") });
