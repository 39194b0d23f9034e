/** What a rule does, in one sentence as a person would say it. Pure; runs nothing. */
import type { Condition } from "../../core/expr/work.js";
import type { Effect, Rule } from "../../core/sheet/run.js";
import { t as shared } from "../texts/index.js";
import { relationWords } from "../texts/relations.js";
import { t } from "../texts/sheet-rules.js";
import { sayCondition } from "./condition-say.js";
import { kindWords, type SheetNames } from "./sheet-names.js";

/** Reads a condition into rows; it needs the parser, so it is handed in. */
type Reads = (cel: string) => Condition | undefined;

/** `At each corner: when …, then …`; a condition of no usual shape is said as it is written. */
export function sayRule(names: SheetNames, rule: Rule, read: Reads): string {
  const cel = (text: string): string => {
    const rows = read(text);
    return rows ? sayCondition(names, rows) : text;
  };
  const where = rule.scope === "car" ? t("rule.says.car") : t("rule.says.each", { kind: kindWords(rule.scope) });
  const parts = [
    t("rule.says", { where, when: cel(rule.when), so: sayEffect(names, rule) }),
    rule.worse && t("rule.says.worse", { grade: shared(`grade.${rule.worse.grade}`), when: cel(rule.worse.when) }),
    sayAt(rule, cel),
    rule.supports?.length && t("rule.says.surer", { when: rule.supports.map(cel).join("; ") }),
    rule["must-stand"] && t("rule.says.stand"),
    listed("rule.says.jobs", rule.jobs, names.job),
    listed("rule.says.opens", rule.opens, (one) => names.point(one.split("@")[0] ?? one)),
    rule.provisional && t("rule.says.provisional"),
  ];
  return `${parts.filter((part) => typeof part === "string" && part !== "").join("; ")}.`;
}

const listed = (
  key: "rule.says.jobs" | "rule.says.opens",
  ids: readonly string[] | undefined,
  words: (id: string) => string,
): string => (ids && ids.length > 0 ? t(key, { list: ids.map(words).join(", ") }) : "");

/** One place: the axle or the side itself, not what lies on it. */
const placeAt = (at: string): string => (at === "axle" || at === "side" ? `the ${at}` : relationWords(at));

function sayAt({ at }: Rule, cel: (text: string) => string): string {
  if (at === undefined) return "";
  if (typeof at === "string") return t("rule.says.at", { at: placeAt(at) });
  return t("rule.says.at.each", { kind: kindWords(at.each), where: cel(at.where), otherwise: placeAt(at.else) });
}

function sayEffect(names: SheetNames, { effect, fault, grade, sure }: Rule): string {
  if (effect !== "finding") return sayOther(names, effect);
  const said = fault === undefined ? t("rule.says.no-fault") : `“${names.fault(fault)}”`;
  const graded =
    grade === undefined
      ? ""
      : typeof grade === "string"
        ? shared(`grade.${grade}`)
        : t(grade["at-least"] ? "rule.says.by-limit.least" : "rule.says.by-limit", {
            of: names.spoken.name(grade["limit-of"].replaceAll("-", "_")),
            grade: grade["at-least"] ? shared(`grade.${grade["at-least"]}`) : "",
          });
  return [t("rule.says.finding", { fault: said }), graded, sure ? shared(`sure.${sure}`) : ""]
    .filter((part) => part !== "")
    .join(", ");
}

function sayOther(names: SheetNames, effect: Exclude<Effect, "finding">): string {
  const points = (ids: readonly string[]): string => ids.map(names.point).join(", ");
  if ("raise" in effect) return t("rule.says.raise", { fault: names.fault(effect.raise) });
  if ("lower-sure" in effect) return t("rule.says.lower-sure", { points: points(effect["lower-sure"]) });
  if ("not-checked" in effect) return t("rule.says.not-checked", { points: points(effect["not-checked"]) });
  if ("discard-reading" in effect) return t("rule.says.discard", { point: names.point(effect["discard-reading"]) });
  if ("open" in effect) return t("rule.says.open", { points: points(effect.open) });
  return t("rule.says.order", { before: names.job(effect.order.before), after: names.job(effect.order.after) });
}
