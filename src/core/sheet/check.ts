/**
 * Checks one sheet against the shared files and the other loaded sheets, and plans its conditions. Collects every
 * problem; reads no file and takes no text apart.
 */
import { PLAN_VERSION } from "../expr/run.js";
import { fail, ok, type Problem, type Result } from "../terms/index.js";
import { withBrought } from "./brings.js";
import type { Plans } from "./built.js";
import { checkRulesAgree } from "./checks/agree.js";
import { checkDerivedBands } from "./checks/bands.js";
import { checkBrought } from "./checks/brought.js";
import { checkCases } from "./checks/cases.js";
import { checkConditions } from "./checks/conditions.js";
import { circle } from "./checks/cycles.js";
import { checkRulesFire } from "./checks/fires.js";
import { checkSheetIds } from "./checks/ids.js";
import { type Checking, checking } from "./checks/known.js";
import { checkLimits } from "./checks/limits.js";
import { checkPoints } from "./checks/points.js";
import { checkNextLooks, checkRules } from "./checks/rules.js";
import { checkTexts } from "./checks/texts.js";
import { declarationsFor, type Surroundings } from "./declare.js";
import { lookupFor, partOfSheet } from "./lookup.js";
import { capped, reporting } from "./reporting.js";
import type { Common, Sheet } from "./schema-types.js";
import { parseSheet } from "./shape.js";
import type { SpotOf } from "./source.js";

/** A sheet that stands, its planned conditions, and remarks: names of sheets not loaded, limits no rule uses. */
export interface Checked {
  readonly sheet: Sheet;
  readonly plans: Plans;
  readonly planVersion: number;
  readonly notes: readonly Problem[];
}

/**
 * `value` is the parsed sheet with its texts; `others` are the sheets loaded beside it (one of the same id is left
 * out: this is another edition of it). At most 100 problems, then how many more there are.
 */
export function checkSheet(
  value: unknown,
  common: Common,
  others: readonly Sheet[],
  spotOf: SpotOf,
  around: Surroundings = {},
): Result<Checked> {
  const shaped = parseSheet(value, spotOf);
  if (!shaped.ok) return fail(...capped(shaped.problems));
  const sheet = shaped.value;
  const report = reporting(spotOf);
  // A sheet must not lean on what another brings, which need not be open with it; only places others speak of are seen.
  const { places } = withBrought(common, [sheet, ...others]);
  const whole = { ...withBrought(common, [sheet]), places };
  const look = lookupFor(partOfSheet(sheet), whole, others.map(partOfSheet));
  const c = checking(look, report);
  checkSheetIds(c);
  // Two things of one name cannot be told apart below: only they are told.
  if (report.problems().some((p) => p.code === "duplicate-id")) return fail(...report.problems());
  checkBrought(sheet, common, others, c);
  checkPoints(c);
  checkLimits(c);
  checkRules(c);
  checkNextLooks(sheet.nextLooks, c);
  const plans = checkConditions(declarationsFor(look, around), c);
  checkDerivedBands(plans, c, around.work);
  checkRulesFire(plans, c);
  checkRulesAgree(plans, c);
  checkFollows(c);
  checkCases(c);
  checkTexts(sheet, c);
  const problems = report.problems();
  if (problems.length > 0) return fail(...problems);
  return ok({ sheet, plans, planVersion: PLAN_VERSION, notes: report.notes() });
}

/** No job may in the end follow itself or contain itself, over the jobs of every loaded sheet. */
function checkFollows(c: Checking): void {
  for (const key of ["follows", "included-in"] as const) {
    const links = new Map([...c.look.jobs.values()].map((job) => [job.id, job[key] ?? []]));
    const chain = circle(links);
    if (!chain) continue;
    const own = c.look.part.jobs.findIndex((job) => chain.includes(job.id));
    // A circle wholly in other sheets is theirs to tell.
    if (own >= 0) c.report.problem("cycle", ["jobs", own, key], { chain: chain.join(" → ") });
  }
}
