/** Derived values, rules, gates, jobs and next looks: every name they use, and what each must state. Reads no condition. */
import { levelOf } from "../../terms/index.js";
import type { Derived, Effect, Gate, Job, NextLook, Rule } from "../schema-types.js";
import type { Path } from "../source.js";
import { type Checking, clash, each } from "./known.js";

/** Acts a gate may guard besides a car state. */
const ACTS: readonly string[] = ["lift", "drive-away", "touch", "spark"];

export function checkRules(c: Checking): void {
  const { part } = c.look;
  for (const [i, derived] of part.derived.entries()) checkDerived(derived, ["derived", i], c);
  for (const [i, rule] of part.rules.entries()) checkRule(rule, ["rules", i], c);
  for (const [i, job] of part.jobs.entries()) checkJob(job, ["jobs", i], c);
  for (const [i, gate] of part.gates.entries()) checkGate(gate, ["gates", i], c);
}

function checkDerived(derived: Derived, path: Path, c: Checking): void {
  c.known.kind(derived.place, [...path, "place"]);
  if (c.known.quantity(derived.quantity, [...path, "quantity"]))
    c.known.unit(derived.unit, derived.quantity, [...path, "unit"], `derived value “${derived.id}”`);
  if ((derived.formula === undefined) === (derived.prefer === undefined))
    c.report.problem("derived-formula", path, { derived: derived.id });
  for (const [i, name] of (derived.prefer ?? []).entries()) {
    const at = [...path, "prefer", i];
    const meant = c.known.reading(name, at);
    if (!meant) return;
    const source = meant.is === "derived" ? meant.derived : "quantity" in meant.field ? meant.field : undefined;
    if (!source) c.report.problem("prefer-words", at, { of: name });
    else if (source.quantity !== derived.quantity)
      clash(
        c.report,
        at,
        { what: `derived value “${derived.id}”`, quantity: derived.quantity, unit: derived.unit },
        { other: `“${name}”`, quantity: source.quantity, unit: source.unit },
      );
  }
}

function checkRule(rule: Rule, path: Path, c: Checking): void {
  const { known } = c;
  known.kind(rule.scope, [...path, "scope"]);
  if (typeof rule.at === "string") known.relation(rule.at, [...path, "at"]);
  else if (rule.at) {
    known.kind(rule.at.each, [...path, "at", "each"]);
    known.relationOrKind(rule.at.else, [...path, "at", "else"]);
  }
  each(rule.jobs, [...path, "jobs"], known.job);
  each(rule.cautions, [...path, "cautions"], known.caution);
  each(rule.opens, [...path, "opens"], known.pointThere);
  if (rule.effect === "finding") checkFinding(rule, path, c);
  else checkEffect(rule, rule.effect, path, c);
}

/** What a finding must state besides its condition. */
const OF_FINDINGS = ["fault", "grade", "sure", "consequence", "likelihood", "must-stand"] as const;

function checkFinding(rule: Rule, path: Path, c: Checking): void {
  const missing = OF_FINDINGS.filter((key) => rule[key] === undefined);
  if (missing.length > 0) c.report.problem("rule-incomplete", path, { rule: rule.id, missing });
  const { grade, worse } = rule;
  if (typeof grade === "object") {
    const at = [...path, "grade", "limit-of"];
    const of = grade["limit-of"];
    if (c.known.reading(of, at) && !judged(of, c)) c.report.problem("no-limit-over", at, { of });
  } else if (grade !== undefined && worse && levelOf(worse.grade) <= levelOf(grade)) {
    c.report.problem("worse-not-worse", [...path, "worse", "grade"], { grade });
  }
}

/** Whether some loaded limit judges the reading or derived value of this name. */
function judged(name: string, c: Checking): boolean {
  const same = name.replaceAll("-", "_");
  return c.look.limits.some((limit) => limit.of.replaceAll("-", "_") === same);
}

function checkEffect(rule: Rule, effect: Exclude<Effect, "finding">, path: Path, c: Checking): void {
  const extra = ["fault", "grade", "worse"].filter((key) => Object.hasOwn(rule, key));
  if (extra.length > 0) c.report.problem("rule-without-finding", path, { rule: rule.id, extra });
  const { known } = c;
  const at = [...path, "effect"];
  const points = (key: string, ids: readonly string[]) => each(ids, [...at, key], known.pointThere);
  if ("raise" in effect) known.fault(effect.raise, [...at, "raise"]);
  else if ("lower-sure" in effect) points("lower-sure", effect["lower-sure"]);
  else if ("not-checked" in effect) points("not-checked", effect["not-checked"]);
  else if ("open" in effect) points("open", effect.open);
  else if ("discard-reading" in effect) known.reading(effect["discard-reading"], [...at, "discard-reading"]);
  else {
    known.job(effect.order.before, [...at, "order", "before"]);
    known.job(effect.order.after, [...at, "order", "after"]);
  }
}

function checkJob(job: Job, path: Path, c: Checking): void {
  const { known } = c;
  known.kind(job.place, [...path, "place"]);
  each(job.access, [...path, "access"], known.access);
  each(job.after, [...path, "after"], known.pointThere);
  each(job.follows, [...path, "follows"], known.job);
  each(job["ends-in"], [...path, "ends-in"], known.job);
  each(job["included-in"], [...path, "included-in"], known.job);
  each(job.cautions, [...path, "cautions"], known.caution);
  if (job["look-too"] !== undefined) known.relation(job["look-too"], [...path, "look-too"]);
  checkMinutes(job.minutes, [...path, "minutes"], c);
}

/** Low, likely and high minutes, none negative. */
export function checkMinutes(minutes: readonly [number, number, number], path: Path, c: Checking): void {
  const [low, likely, high] = minutes;
  if (!(0 <= low && low <= likely && likely <= high))
    c.report.problem("minutes-order", path, { found: minutes.join(", ") });
}

function checkGate(gate: Gate, path: Path, c: Checking): void {
  const { known } = c;
  const states = c.look.common.states.map((s) => s.id);
  if (!ACTS.includes(gate.guards) && !states.includes(gate.guards))
    c.report.problem("unknown-guard", [...path, "guards"], { found: gate.guards, expected: [...states, ...ACTS] });
  each(gate.set, [...path, "set"], known.pointThere);
  each(gate.cautions, [...path, "cautions"], known.caution);
}

/** Next looks stand in sheets only. */
export function checkNextLooks(looks: readonly NextLook[], c: Checking): void {
  looks.forEach((look, i) => {
    const path = ["nextLooks", i];
    const subjects = [look.fault, look.grade, look.job].filter((s) => s !== undefined);
    if (subjects.length !== 1) c.report.problem("next-look-subject", path);
    if (look.km === undefined && look.months === undefined) c.report.problem("next-look-when", path);
    if (look.fault !== undefined) c.known.fault(look.fault, [...path, "fault"]);
    if (look.job !== undefined) c.known.job(look.job, [...path, "job"]);
  });
}
