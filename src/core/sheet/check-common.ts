/** Checks the shared files: places, car states, gauges, access, facts, complaints, gates and cross rules. */
import { PLAN_VERSION } from "../expr/run.js";
import { fail, ok, type Problem, type Result } from "../terms/index.js";
import { withBrought } from "./brings.js";
import type { Plans } from "./built.js";
import { checkCases } from "./checks/cases.js";
import { checkConditions } from "./checks/conditions.js";
import { checkRulesFire } from "./checks/fires.js";
import { checkPrefix, checkUnique } from "./checks/ids.js";
import { type Checking, checking, each } from "./checks/known.js";
import { checkRules } from "./checks/rules.js";
import { checkShared } from "./checks/shared.js";
import { checkCommonTexts } from "./checks/texts.js";
import { declarationsFor, type Surroundings } from "./declare.js";
import { CROSS, lookupFor, partOfCommon, partOfSheet } from "./lookup.js";
import { capped, reporting } from "./reporting.js";
import type { Common, Sheet } from "./schema-types.js";
import { parseCommon } from "./shape.js";
import type { SpotOf } from "./source.js";

export interface CheckedCommon {
  readonly common: Common;
  readonly plans: Plans;
  readonly planVersion: number;
  readonly notes: readonly Problem[];
}

/** `sheets` are those loaded: what gates and cross rules name in others is a note and has no plan. */
export function checkCommon(
  value: unknown,
  sheets: readonly Sheet[],
  spotOf: SpotOf,
  around: Surroundings = {},
): Result<CheckedCommon> {
  const shaped = parseCommon(value, spotOf);
  if (!shaped.ok) return fail(...capped(shaped.problems));
  const common = shaped.value;
  const report = reporting(spotOf);
  const whole = { ...common, places: withBrought(common, sheets).places };
  const look = lookupFor(partOfCommon(common), whole, sheets.map(partOfSheet));
  const c = checking(look, report);
  checkIds(common, c);
  if (report.problems().some((p) => p.code === "duplicate-id")) return fail(...report.problems());
  if (!common.places.some((p) => p.id === "car" && p.kind === "car"))
    c.report.problem("unknown-place", ["places"], { found: "car", expected: ["a place “car” of kind car"] });
  checkShared(common, c);
  checkComplaints(common, c);
  checkRules(c);
  const plans = checkConditions(declarationsFor(look, around), c);
  checkRulesFire(plans, c);
  checkCases(c);
  checkCommonTexts(common, c);
  const problems = report.problems();
  if (problems.length > 0) return fail(...problems);
  return ok({ common, plans, planVersion: PLAN_VERSION, notes: report.notes() });
}

function checkIds(common: Common, { report }: Checking): void {
  for (const list of [
    "places",
    "states",
    "gauges",
    "cautions",
    "gates",
    "access",
    "facts",
    "complaints",
    "rules",
  ] as const)
    checkUnique(
      list,
      common[list].map((thing) => thing.id),
      report,
    );
  checkUnique("aids", common.aids ?? [], report, []);
  checkPrefix("cautions", common.cautions, "cau.", report);
  checkPrefix("gates", common.gates, "gate.", report);
  checkPrefix("complaints", common.complaints, "sym.", report);
  checkPrefix("rules", common.rules, `${CROSS}.`, report);
}

function checkComplaints(common: Common, c: Checking): void {
  common.complaints.forEach((complaint, i) => {
    const path = ["complaints", i];
    each(complaint.points, [...path, "points"], c.known.pointThere);
    complaint.suspects.forEach(({ weight }, j) => {
      if (weight < 1 || weight > 3)
        c.report.problem("weight-range", [...path, "suspects", j, "weight"], { found: weight });
    });
  });
}
