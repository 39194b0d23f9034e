/** Every word ever said on a job, and which of them was signed: nothing of it is ever overwritten. Pure. */
import type { Bodies, IdText, Stamp, Stands } from "./contract.js";
import type { Decision } from "./decision-bodies.js";
import { everIn } from "./fold.js";
import { compareShown, idText } from "./identity.js";
import type { PlanState } from "./plan-contract.js";
import { standingIn } from "./standing.js";

/** One word in the line of a job. */
export interface DecisionSaid {
  readonly id: IdText;
  /** Null: every word before was taken back. */
  readonly said: Decision | null;
  readonly at: Stamp;
  /** Id of the person who entered it. */
  readonly by: string;
  /** `undone`: entered by mistake and taken back by whoever entered it. */
  readonly is: "stands" | "replaced" | "undone";
}

/** The line of words on a job (`job@place`), oldest first. */
export function decisionLine({ ledger }: Pick<PlanState, "ledger">, job: string): readonly DecisionSaid[] {
  const slot = `decision|${job}`;
  const standing = new Set(standingIn(ledger, slot).map(idText));
  return [...everIn(ledger, slot)].sort(compareShown).flatMap((entry): readonly DecisionSaid[] => {
    if (entry.kind !== "decision") return [];
    const id = idText(entry);
    const is = standing.has(id) ? "stands" : ledger.dead.has(id) ? "undone" : "replaced";
    return [{ id, said: entry.body.said, at: entry.at, by: entry.by, is }];
  });
}

/** A signature as far as it goes for one job. */
export interface SignedFor {
  readonly signed: Stands<Bodies["decision.signed"]>;
  /** The word it was given for. */
  readonly word: DecisionSaid;
  /** That word stands no longer: the signature is not one for what stands now. */
  readonly isForEarlier: boolean;
}

/** The signatures given for any word on a job, oldest first; for each the last word of the job it names. */
export function signaturesFor(plan: Pick<PlanState, "ledger" | "signed">, job: string): readonly SignedFor[] {
  const line = decisionLine(plan, job);
  return plan.signed.flatMap((signed): readonly SignedFor[] => {
    const word = line.findLast(({ id }) => signed.value.decisions.includes(id));
    return word ? [{ signed, word, isForEarlier: word.is !== "stands" }] : [];
  });
}
