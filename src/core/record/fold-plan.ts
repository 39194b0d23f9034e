/** What a plan is after all its entries: decided, ordered, promised, done and left loose. Refuses to plan. */
import type { Ledger, Logged, Stands } from "./contract.js";
import { fold, type Own, type Parts, setOrDrop } from "./fold.js";
import type { Known } from "./kinds.js";
import type { PlanState } from "./plan-contract.js";
import { PLAN_KINDS } from "./plan-kinds.js";
import { standsIn } from "./standing.js";

type Plan = Own<PlanState>;
type Value<M> = M extends ReadonlyMap<string, readonly Stands<infer T>[]> ? T : never;
type Maps = { readonly [F in keyof Plan]: Plan[F] extends ReadonlyMap<string, unknown> ? F : never }[keyof Plan];

/** Fills one list of a map: what stands under the rest of the slot's text. */
const each =
  <F extends Maps>(field: F, value: (entry: Known) => Value<Plan[F]> | null) =>
  (plan: Plan, ledger: Ledger, slot: string, rest: string): void =>
    // The field names the map whose values `value` gives; the compiler cannot follow the pair.
    setOrDrop(plan[field] as Map<string, readonly Stands<Value<Plan[F]>>[]>, rest, standsIn(ledger, slot, value));

const FILL: Parts<PlanState>["fill"] = {
  begun: (plan, ledger, slot) => {
    plan.begun = standsIn(ledger, slot, (e) => (e.kind === "plan.begun" ? e.body : null));
  },
  begins: (plan, ledger, slot) => {
    plan.begins = standsIn(ledger, slot, (e) => (e.kind === "plan.begins" ? e.body.on : null));
  },
  use: (plan, ledger, slot) => {
    plan.use = standsIn(ledger, slot, (e) => (e.kind === "plan.use" ? e.body.use : null));
  },
  budget: (plan, ledger, slot) => {
    plan.budget = standsIn(ledger, slot, (e) => (e.kind === "plan.budget" ? e.body.budget : null));
  },
  scope: (plan, ledger, slot) => {
    plan.scope = standsIn(ledger, slot, (e) => (e.kind === "plan.scope" ? e.body.scope : null));
  },
  estimate: (plan, ledger, slot) => {
    plan.estimates = standsIn(ledger, slot, (e) => (e.kind === "estimate.given" ? e.body : null));
  },
  wanted: each("wanted", (e) => {
    if (e.kind !== "plan.wanted" || e.body.wanted === null) return null;
    return { ...e.body, wanted: e.body.wanted };
  }),
  minutes: each("minutes", (e) => {
    if (e.kind !== "plan.minutes" || e.body.minutes === null) return null;
    return { ...e.body, minutes: e.body.minutes };
  }),
  part: each("parts", (e) => {
    if (e.kind !== "plan.part" || e.body.figures === null) return null;
    return { ...e.body, figures: e.body.figures };
  }),
  "part-step": each("partSteps", (e) => (e.kind === "part.step" ? e.body : null)),
  "job-step": each("jobSteps", (e) => (e.kind === "job.step" ? e.body : null)),
  loose: each("loose", (e) => (e.kind === "left-loose" ? e.body : null)),
  cleared: each("cleared", (e) => (e.kind === "left-loose.cleared" ? e.body : null)),
  addition: each("additions", (e) => (e.kind === "estimate.addition" ? e.body : null)),
  intake: each("intake", (e) => (e.kind === "plan.intake" ? e.body.says : null)),
  answer: each("answers", (e) => (e.kind === "complaint.answered" ? e.body.answer : null)),
  progress: (plan, ledger, slot) => {
    plan.progressSent = standsIn(ledger, slot, (e) => (e.kind === "progress.sent" ? e.body : null));
  },
  second: each("secondLooks", (e) => (e.kind === "second-look" ? e.body : null)),
  recheck: each("rechecked", (e) => (e.kind === "recheck.done" ? e.body : null)),
  release: (plan, ledger, slot) => {
    plan.release = standsIn(ledger, slot, (e) => (e.kind === "plan.release" ? e.body.release : null));
  },
  decision: each("decisions", (e) => (e.kind === "decision" ? e.body.said : null)),
  "owner-answer": each("ownerAnswers", (e) => {
    if (e.kind !== "decision.answer" || e.body.answer === null) return null;
    return { ...e.body, answer: e.body.answer };
  }),
  signed: (plan, ledger, slot) => {
    plan.signed = standsIn(ledger, slot, (e) => (e.kind === "decision.signed" ? e.body : null));
  },
  claim: each("claims", (e) => (e.kind === "claim" ? e.body.says : null)),
  "claim-seen": each("claimsSeen", (e) => (e.kind === "claim.seen" ? e.body.seen : null)),
  "papers-until": (plan, ledger, slot) => {
    plan.papersUntil = standsIn(ledger, slot, (e) => (e.kind === "papers.until" ? e.body.until : null));
  },
  wear: each("wear", (e) => (e.kind === "wear.said" ? e.body.says : null)),
};

const PLAN: Parts<PlanState> = {
  of: "plan",
  kinds: PLAN_KINDS,
  begins: "begun|",
  empty: () => ({
    of: "plan",
    begun: [],
    begins: [],
    use: [],
    budget: [],
    wanted: new Map(),
    minutes: new Map(),
    parts: new Map(),
    partSteps: new Map(),
    jobSteps: new Map(),
    loose: new Map(),
    cleared: new Map(),
    estimates: [],
    additions: new Map(),
    scope: [],
    intake: new Map(),
    answers: new Map(),
    progressSent: [],
    secondLooks: new Map(),
    rechecked: new Map(),
    release: [],
    decisions: new Map(),
    ownerAnswers: new Map(),
    signed: [],
    wear: new Map(),
    claims: new Map(),
    claimsSeen: new Map(),
    papersUntil: [],
  }),
  copy: (plan) => ({
    ...plan,
    wanted: new Map(plan.wanted),
    minutes: new Map(plan.minutes),
    parts: new Map(plan.parts),
    partSteps: new Map(plan.partSteps),
    jobSteps: new Map(plan.jobSteps),
    loose: new Map(plan.loose),
    cleared: new Map(plan.cleared),
    additions: new Map(plan.additions),
    intake: new Map(plan.intake),
    answers: new Map(plan.answers),
    secondLooks: new Map(plan.secondLooks),
    rechecked: new Map(plan.rechecked),
    decisions: new Map(plan.decisions),
    ownerAnswers: new Map(plan.ownerAnswers),
    wear: new Map(plan.wear),
    claims: new Map(plan.claims),
    claimsSeen: new Map(plan.claimsSeen),
  }),
  fill: FILL,
  join: (own, folded) => ({ ...own, ...folded }),
};

/** The plan these entries tell of, in whatever order, however often. Of no entries: a plan in which nothing is said. */
export const foldPlan = (entries: Iterable<Logged>): PlanState => fold(PLAN, entries);
