/**
 * What a fault is called for whom it is told. An owner hears the wording of a rule that reached the grade, and never one
 * meant for a milder rule: the workshop's grade and the owner's words say the same. Pure; the texts are handed in.
 */
import type { Finding } from "../../assess/contract.js";
import { type Audience, levelOf } from "../../terms/index.js";

export interface FaultWords {
  readonly says: string;
  readonly owner?: string | undefined;
  readonly cause?: string | undefined;
}

export interface FaultWording {
  /** A rule's own wording. */
  readonly ofRule: (rule: string) => FaultWords | undefined;
  readonly ofFault: FaultWords | undefined;
}

/** The rules whose findings are the gravest of one fault. */
export function worstRules(findings: readonly Pick<Finding, "rule" | "grade">[]): readonly string[] {
  const worst = Math.max(...findings.map(({ grade }) => levelOf(grade)));
  return findings.filter(({ grade }) => levelOf(grade) === worst).map(({ rule }) => rule);
}

/** Undefined where nobody has words for it. `worst`: of the rules, those that reached its grade. */
export function faultWords(
  { ofRule, ofFault }: FaultWording,
  rules: readonly string[],
  worst: readonly string[],
  who: Audience,
): { readonly says: string; readonly cause?: string | undefined } | undefined {
  const [only] = rules.length === 1 ? rules : [];
  const found = (only === undefined ? undefined : ofRule(only)) ?? ofFault;
  if (who !== "owner" || found === undefined) return found && { says: found.says, cause: found.cause };
  const own = worst.map((rule) => ofRule(rule)?.owner).find((one) => one !== undefined);
  return { says: own ?? ofFault?.owner ?? found.owner ?? found.says, cause: found.cause };
}
