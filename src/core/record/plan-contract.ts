/** What folding a plan's stream gives. Types only; loaded by nobody who only replies. Rules: SPEC.md. */
import type { IsoDate } from "../terms/index.js";
import type { CarState, FoldedState, HouseState, Stands, VisitState } from "./contract.js";
import type { Decision } from "./decision-bodies.js";
import type { Budget, PlanBodies, PlanScope, PlanUse } from "./plan-bodies.js";
import type { ComplaintAnswer, Release } from "./release-bodies.js";
import type { Claim, ClaimSeen } from "./viewing-bodies.js";
import type { WearSaid } from "./wear-bodies.js";

type Said<K extends keyof PlanBodies> = Stands<PlanBodies[K]>;
type Valued<K extends keyof PlanBodies, Field extends keyof PlanBodies[K]> = Stands<
  PlanBodies[K] & { readonly [F in Field]: NonNullable<PlanBodies[K][F]> }
>;

/**
 * Everything that stands of a plan; several where people differ. Steps and estimates are never replaced: all that are
 * not undone stand, in the order of showing.
 */
export interface PlanState extends FoldedState {
  readonly of: "plan";
  /** The visit this plan is of; several where two phones began it. */
  readonly begun: readonly Said<"plan.begun">[];
  readonly begins: readonly Stands<string>[];
  readonly use: readonly Stands<PlanUse>[];
  readonly budget: readonly Stands<Budget>[];
  /** By `jobKey` (job@place). */
  readonly wanted: ReadonlyMap<string, readonly Valued<"plan.wanted", "wanted">[]>;
  /** By `jobKey` (job@place). */
  readonly minutes: ReadonlyMap<string, readonly Valued<"plan.minutes", "minutes">[]>;
  /** By `partKey` (job@place/part). */
  readonly parts: ReadonlyMap<string, readonly Valued<"plan.part", "figures">[]>;
  /** By `partKey` (job@place/part). */
  readonly partSteps: ReadonlyMap<string, readonly Said<"part.step">[]>;
  /** By `jobKey` (job@place). */
  readonly jobSteps: ReadonlyMap<string, readonly Said<"job.step">[]>;
  /** By the name it keeps; what was cleared stays here. */
  readonly loose: ReadonlyMap<string, readonly Said<"left-loose">[]>;
  /** By the same name. */
  readonly cleared: ReadonlyMap<string, readonly Said<"left-loose.cleared">[]>;
  /** Oldest first. */
  readonly estimates: readonly Said<"estimate.given">[];
  /** By the addition's name. */
  readonly additions: ReadonlyMap<string, readonly Said<"estimate.addition">[]>;
  readonly scope: readonly Stands<PlanScope>[];
  /** By item. */
  readonly intake: ReadonlyMap<string, readonly Stands<string>[]>;
  /** By the id of the entry that tells the complaint. */
  readonly answers: ReadonlyMap<string, readonly Stands<ComplaintAnswer>[]>;
  /** What the owner was sent, oldest first. */
  readonly progressSent: readonly Said<"progress.sent">[];
  /** By `jobKey` (job@place). */
  readonly secondLooks: ReadonlyMap<string, readonly Said<"second-look">[]>;
  /** By what was due, as planning names it. */
  readonly rechecked: ReadonlyMap<string, readonly Said<"recheck.done">[]>;
  readonly release: readonly Stands<Release>[];
  /** By `jobKey` (job@place); several where people wish differently. */
  readonly decisions: ReadonlyMap<string, readonly Stands<Decision>[]>;
  /** By the entry that asked. */
  readonly ownerAnswers: ReadonlyMap<string, readonly Valued<"decision.answer", "answer">[]>;
  /** Oldest first; each names the entries it is for. */
  readonly signed: readonly Said<"decision.signed">[];
  /** By `wearKey` (of.field@place): what is said of readings of this visit; several where people differ. */
  readonly wear: ReadonlyMap<string, readonly Stands<WearSaid>[]>;
  /** By the name a claim keeps. */
  readonly claims: ReadonlyMap<string, readonly Stands<Claim>[]>;
  /** By the same: whether it was shown; several where people differ. */
  readonly claimsSeen: ReadonlyMap<string, readonly Stands<ClaimSeen>[]>;
  readonly papersUntil: readonly Stands<IsoDate>[];
}

export type RecordState = CarState | VisitState | HouseState | PlanState;
