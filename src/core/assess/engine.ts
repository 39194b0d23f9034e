/** Opens sheets for assessing: links every condition once. Knows no visit and no reply. */
import { type Evaluate, link, type Plan, readsOf, type Trade, withUncertainty } from "../expr/run.js";
import {
  type BuiltCommon,
  type BuiltSheet,
  type Limit,
  type Plans,
  type Point,
  type Rule,
  rankStates,
  withBrought,
} from "../sheet/run.js";
import { GRADES, type Grade, type GradeLevel, levelOf, type Problem } from "../terms/index.js";
import { isQuantity, toCanonical, toCanonicalStep } from "../units/index.js";
import type { Bands } from "./band.js";
import { gateInfos } from "./gate-infos.js";
import {
  type DerivedInfo,
  type FieldInfo,
  type FieldKind,
  type LimitInfo,
  type Model,
  type Pass,
  type PointInfo,
  plainId,
  type RefInfo,
  type RuleInfo,
  sheetOf,
} from "./model.js";
import { nameTable } from "./names.js";

/** Linked sheets, ready for any number of visits. */
export interface Engine {
  /** Plans that could not be linked; their rules are never known. */
  readonly problems: readonly Problem[];
  /** Ids of the sheets loaded. */
  readonly sheets: readonly string[];
  /** For assessing itself. */
  readonly model: Model;
}

/**
 * Links every plan once. A plan that cannot be linked is told in `problems`; its rule is then never known.
 * `trade`: the functions conditions may call.
 */
export function prepare(common: BuiltCommon, sheets: readonly BuiltSheet[], trade: Trade = {}): Engine {
  const problems: Problem[] = [];
  const whole = withBrought(
    common.common,
    sheets.map(({ sheet }) => sheet),
  );
  const model = buildModel({ ...common, common: whole }, sheets, trade, problems);
  return { problems, sheets: model.sheets, model };
}

type LinkAt = (plans: Plans, path: string) => Evaluate | undefined;

function buildModel(common: BuiltCommon, sheets: readonly BuiltSheet[], trade: Trade, problems: Problem[]): Model {
  const linkAt: LinkAt = (plans, path) => {
    const plan = plans[path];
    // a condition that names a sheet not loaded has no plan: it stays out until that sheet is there
    if (plan === undefined) return undefined;
    const linked = link(plan, trade);
    if (linked.ok) return linked.value;
    problems.push(...linked.problems.map((p) => ({ ...p, where: { ...p.where, path } })));
    return undefined;
  };
  const loaded = sheets.map((s) => s.sheet.id);
  const stateOrder = rankStates(common.common.states);
  let order = 0;
  const points = sheets.flatMap((s) =>
    s.sheet.points.map((p) => {
      const path = `points/${p.id}/asked-when`;
      const askedWhen = p["asked-when"] === undefined ? undefined : linkAt(s.plans, path);
      order += 1;
      return pointInfo(p, s.sheet.id, order, stateOrder, askedWhen);
    }),
  );
  const limits = limitInfos(sheets, linkAt);
  const derived = sheets.flatMap((s) => s.sheet.derived.map((d) => derivedInfo(d, s.plans, linkAt)));
  const names = nameTable(points, derived, limits);
  const rules = [
    ...sheets.flatMap((s) => s.sheet.rules.map((r) => ({ rule: r, plans: s.plans, own: [s.sheet.id] }))),
    ...common.common.rules.map((r) => ({ rule: r, plans: common.plans, own: undefined })),
  ]
    .filter(({ rule, plans }) => plans[`rules/${rule.id}/when`] !== undefined)
    .map(({ rule, plans, own }, i) => ruleInfo(rule, i, plans, own ?? sheetsRead(rule, plans), linkAt, names.named));
  return {
    sheets: loaded,
    common: common.common,
    complaints: common.complaints ?? [],
    points,
    pointById: new Map(
      points.flatMap(
        (p) =>
          [
            [plainId(p.id), p],
            [p.id, p],
          ] as const,
      ),
    ),
    limits,
    limitById: new Map(limits.map((l) => [plainId(l.limit.id), l])),
    derived,
    rules,
    gates: gateInfos(common, sheets, linkAt, loaded),
    gauges: new Map(common.common.gauges.map((g) => [g.id, g])),
    signals: new Map(common.common.cautions.map((c) => [c.id, c.signal])),
    stateOrder,
    refs: names.refs,
    named: names.named,
    refOf: names.refOf,
    problems,
  };
}

function pointInfo(
  point: Point,
  sheet: string,
  order: number,
  stateOrder: ReadonlyMap<string, number>,
  askedWhen: Evaluate | undefined,
): PointInfo {
  const rank = (state: string) => stateOrder.get(state) ?? stateOrder.size;
  return {
    id: point.id,
    sheet,
    point,
    order,
    fields: Object.entries(point.fields).map(([name, field]) => fieldInfo(name, field, point["set-up-error"])),
    states: [...point.states].sort((a, b) => rank(a) - rank(b)),
    askedWhen,
    safetyCritical: point["safety-critical"] === true,
  };
}

function fieldInfo(name: string, field: Point["fields"][string], setUpError: number | undefined): FieldInfo {
  const kind = kindOf(field);
  const reading = "quantity" in field ? field : undefined;
  const quantity = reading?.quantity ?? "";
  const setUp =
    reading === undefined || setUpError === undefined || !isQuantity(quantity)
      ? 0
      : toCanonicalStep(setUpError, reading.unit, quantity);
  return { name, field, kind, setUp, shots: reading?.shots ?? 1 };
}

function kindOf(field: Point["fields"][string]): FieldKind {
  if ("words" in field) return field.several === true ? "words" : "word";
  if ("quantity" in field) return "reading";
  if ("count" in field) return "count";
  return "yes" in field ? "yes" : "date-code";
}

function limitInfos(sheets: readonly BuiltSheet[], linkAt: LinkAt): readonly LimitInfo[] {
  return sheets
    .flatMap((s) => s.sheet.limits.map((limit) => ({ limit, plans: s.plans })))
    .map(({ limit, plans }, order) => ({
      limit,
      order,
      direction: limit.direction,
      aggregate: limit.aggregate,
      bands: canonicalBands(limit),
      applies: limit.applies === undefined ? undefined : linkAt(plans, `limits/${limit.id}/applies`),
    }));
}

/** Edges in canonical numbers; none for a quantity nobody knows, which checking the sheet tells. */
function canonicalBands({ bands, unit, quantity }: Limit): Bands {
  const out: Partial<Record<Grade, number>> = {};
  if (!isQuantity(quantity)) return out;
  for (const grade of GRADES) {
    const edge = bands[grade];
    if (edge !== undefined) out[grade] = toCanonical(edge, unit, quantity);
  }
  return out;
}

function derivedInfo(derived: DerivedInfo["derived"], plans: Plans, linkAt: LinkAt): DerivedInfo {
  const formula = derived.formula === undefined ? undefined : linkAt(plans, `derived/${derived.id}/formula`);
  return {
    derived,
    formula: formula === undefined ? undefined : withUncertainty(formula),
    prefer: derived.prefer ?? [],
  };
}

function ruleInfo(
  rule: Rule,
  order: number,
  plans: Plans,
  sheets: readonly string[],
  linkAt: LinkAt,
  named: (name: string) => RefInfo | undefined,
): RuleInfo {
  const at = (name: string) => linkAt(plans, `rules/${rule.id}/${name}`);
  const grade = typeof rule.grade === "object" ? rule.grade : undefined;
  const fixed = typeof rule.grade === "string" ? rule.grade : undefined;
  const limitOf = grade === undefined ? undefined : named(grade["limit-of"]);
  return {
    rule,
    order,
    pass: passOf(rule, plans[`rules/${rule.id}/when`]),
    sheets,
    when: at("when"),
    supports: (rule.supports ?? []).map((_, i) => at(`supports/${i}`)),
    worse: rule.worse === undefined ? undefined : { grade: rule.worse.grade, when: at("worse/when") },
    where: typeof rule.at === "object" ? at("at/where") : undefined,
    limitOf,
    atLeast: grade?.["at-least"],
    fixed,
    worst: worstOf(rule, limitOf),
  };
}

/** Discards first; what looks at replies next; effects and what looks at findings last. */
function passOf(rule: Rule, when: Plan | undefined): Pass {
  if (typeof rule.effect === "object") return "discard-reading" in rule.effect ? 1 : 3;
  return when !== undefined && readsOf(when).faults.length > 0 ? 3 : 2;
}

function worstOf(rule: Rule, limitOf: RefInfo | undefined): GradeLevel {
  let worst: GradeLevel = 0;
  const take = (level: GradeLevel) => {
    if (level > worst) worst = level;
  };
  if (typeof rule.grade === "string") take(levelOf(rule.grade));
  if (rule.worse !== undefined) take(levelOf(rule.worse.grade));
  for (const l of limitOf?.limits ?? []) for (const g of GRADES) if (l.bands[g] !== undefined) take(levelOf(g));
  return worst;
}

/** The sheets a cross rule needs: those of every point, derived value and fault it looks at. */
function sheetsRead(rule: Rule, plans: Plans): readonly string[] {
  const needed = new Set<string>();
  const paths = ["when", ...(rule.worse ? ["worse/when"] : []), ...(typeof rule.at === "object" ? ["at/where"] : [])];
  for (const path of paths) {
    const plan = plans[`rules/${rule.id}/${path}`];
    if (plan === undefined) continue;
    const reads = readsOf(plan);
    for (const ref of reads.refs) needed.add(sheetOf(ref.point));
    for (const fault of reads.faults) if (sheetOf(fault) !== sheetOf(rule.id)) needed.add(sheetOf(fault));
  }
  return [...needed];
}
