/** Checks the shared files: places, car states, gauges, access, facts, complaints, gates and cross rules. */
import { PLAN_VERSION } from "../expr/run.js";
import { fail, ok, type Problem, type Result } from "../terms/index.js";
import type { Plans } from "./built.js";
import { checkCases } from "./checks/cases.js";
import { checkConditions } from "./checks/conditions.js";
import { circle } from "./checks/cycles.js";
import { checkRulesFire } from "./checks/fires.js";
import { checkPrefix, checkUnique } from "./checks/ids.js";
import { type Checking, checking, each } from "./checks/known.js";
import { checkMinutes, checkRules } from "./checks/rules.js";
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
  const look = lookupFor(partOfCommon(common), common, sheets.map(partOfSheet));
  const c = checking(look, report);
  checkIds(common, c);
  if (report.problems().some((p) => p.code === "duplicate-id")) return fail(...report.problems());
  checkPlaces(common, c);
  checkGauges(common, c);
  checkAccess(common, c);
  checkFacts(common, c);
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

function checkPlaces(common: Common, c: Checking): void {
  if (!common.places.some((p) => p.id === "car" && p.kind === "car"))
    c.report.problem("unknown-place", ["places"], { found: "car", expected: ["a place “car” of kind car"] });
  common.places.forEach((place, i) => {
    if (place.in !== undefined) c.known.place(place.in, ["places", i, "in"]);
    for (const [name, to] of Object.entries(place.relations ?? {}))
      if (typeof to === "string") c.known.place(to, ["places", i, "relations", name]);
      else each(to, ["places", i, "relations", name], c.known.place);
  });
  const chain = circle(new Map(common.places.map((p) => [p.id, p.in === undefined ? [] : [p.in]])));
  if (chain) {
    const at = common.places.findIndex((p) => p.id === chain[0]);
    c.report.problem("cycle", ["places", at, "in"], { chain: chain.join(" → ") });
  }
}

function checkGauges(common: Common, c: Checking): void {
  common.gauges.forEach((gauge, i) => {
    const path = ["gauges", i];
    if (c.known.quantity(gauge.quantity, [...path, "quantity"]))
      c.known.unit(gauge.unit, gauge.quantity, [...path, "unit"], `gauge “${gauge.id}”`);
    for (const key of ["resolution", "error"] as const)
      if (!(gauge[key] >= 0)) c.report.problem("gauge-step", [...path, key], { key, found: gauge[key] });
    if (gauge.source.trim() === "") c.report.problem("source-missing", [...path, "source"], { id: gauge.id });
  });
}

function checkAccess(common: Common, c: Checking): void {
  common.access.forEach((access, i) => {
    const path = ["access", i];
    c.known.kind(access.place, [...path, "place"]);
    each(access.needs, [...path, "needs"], c.known.access);
    checkMinutes(access.setUp, [...path, "setUp"], c);
    checkMinutes(access.putBack, [...path, "putBack"], c);
  });
  const chain = circle(new Map(common.access.map((a) => [a.id, a.needs ?? []])));
  if (!chain) return;
  const at = common.access.findIndex((a) => a.id === chain[0]);
  c.report.problem("cycle", ["access", at, "needs"], { chain: chain.join(" → ") });
}

function checkFacts(common: Common, c: Checking): void {
  common.facts.forEach((fact, i) => {
    const path = ["facts", i];
    if (fact.kind === "word" && (fact.words ?? []).length < 2)
      c.report.problem("too-few", path, { key: "words", least: 2 });
    if (fact.quantity === undefined) return;
    if (c.known.quantity(fact.quantity, [...path, "quantity"]))
      c.known.unit(fact.unit ?? "", fact.quantity, [...path, "unit"], `car fact “${fact.id}”`);
  });
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
