/** Two rules that hold at the very same moment may not grade one fault differently. Compares plans; proves nothing more. */
import type { Plan } from "../../expr/run.js";
import { canonicalText } from "../edition.js";
import type { Rule } from "../schema-types.js";
import type { Checking } from "./known.js";

export function checkRulesAgree(plans: Readonly<Record<string, Plan>>, c: Checking): void {
  const first = new Map<string, Rule>();
  c.look.part.rules.forEach((rule, i) => {
    const plan = plans[`rules/${rule.id}/when`];
    if (!plan || rule.fault === undefined) return;
    const when = canonicalText([rule.scope, rule.at ?? "here", rule.fault, plan.code]);
    const other = first.get(when);
    if (!other) first.set(when, rule);
    else if (gradeOf(other) !== gradeOf(rule))
      c.report.problem("rules-disagree", ["rules", i, "grade"], {
        rule: rule.id,
        other: other.id,
        fault: rule.fault,
        grades: [gradeText(other), gradeText(rule)],
      });
  });
}

const gradeOf = ({ grade, worse }: Rule): string => canonicalText([grade ?? null, worse ?? null]);
const gradeText = ({ grade }: Rule): string =>
  typeof grade === "object" ? `the limit of ${grade["limit-of"]}` : (grade ?? "nothing");
