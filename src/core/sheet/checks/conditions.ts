/**
 * Every condition and formula of a part, compiled into plans keyed by path. Knows where conditions stand and what they
 * may use; refuses to know the language.
 */
import { compile, type Declarations, type Use } from "../../expr/author.js";
import { type Plan, type Ref, readsOf } from "../../expr/run.js";
import { isQuantity } from "../../units/index.js";
import type { Lookup } from "../lookup.js";
import { celName } from "../names.js";
import type { Rule } from "../schema-types.js";
import type { Path } from "../source.js";
import { circle } from "./cycles.js";
import type { Checking } from "./known.js";

interface Condition {
  /** Key of its plan: `rules/whl.r01/when`. */
  readonly key: string;
  readonly path: Path;
  readonly text: string;
  readonly use: Use;
}

/** Every condition of the part looked up, in the order of its files. */
function conditionsOf({ part }: Lookup): readonly Condition[] {
  const one = (key: string, path: Path, text: string | undefined, use: Use): readonly Condition[] =>
    text === undefined ? [] : [{ key, path, text, use }];
  const several = (key: string, path: Path, texts: readonly string[] | undefined, use: Use) =>
    (texts ?? []).flatMap((text, i) => one(`${key}/${i}`, [...path, i], text, use));
  return [
    ...part.points.flatMap((p, i) =>
      one(`points/${p.id}/asked-when`, ["points", i, "asked-when"], p["asked-when"], { scope: p.place }),
    ),
    ...part.limits.flatMap((l, i) =>
      one(`limits/${l.id}/applies`, ["limits", i, "applies"], l.applies, { scope: l.class }),
    ),
    ...part.derived.flatMap((d, i) =>
      one(`derived/${d.id}/formula`, ["derived", i, "formula"], d.formula, {
        scope: d.place,
        ...(isQuantity(d.quantity) ? { gives: d.quantity } : { gives: "number" }),
      }),
    ),
    ...part.rules.flatMap((rule, i) => ruleConditions(rule, ["rules", i], one, several)),
    ...part.gates.flatMap((gate, i) => {
      const use: Use = { scope: "car", findings: true };
      return [
        ...several(`gates/${gate.id}/trips`, ["gates", i, "trips"], gate.trips, use),
        ...several(`gates/${gate.id}/clears`, ["gates", i, "clears"], gate.clears, use),
      ];
    }),
  ];
}

type One = (key: string, path: Path, text: string | undefined, use: Use) => readonly Condition[];
type Several = (key: string, path: Path, texts: readonly string[] | undefined, use: Use) => readonly Condition[];

/** Findings are seen by rules of the third pass only: those with an effect other than finding or discarding. */
export const seesFindings = (rule: Rule): boolean => rule.effect !== "finding" && !("discard-reading" in rule.effect);

function ruleConditions(rule: Rule, path: Path, one: One, several: Several): readonly Condition[] {
  const key = `rules/${rule.id}`;
  const use: Use = { scope: rule.scope, provisional: rule.provisional ?? false, findings: seesFindings(rule) };
  const at = typeof rule.at === "object" ? rule.at : undefined;
  return [
    ...one(`${key}/when`, [...path, "when"], rule.when, use),
    ...one(`${key}/worse/when`, [...path, "worse", "when"], rule.worse?.when, use),
    ...several(`${key}/supports`, [...path, "supports"], rule.supports, use),
    ...(at ? one(`${key}/at/where`, [...path, "at", "where"], at.where, { ...use, scope: at.each }) : []),
  ];
}

const ELSEWHERE = "expr.sheet-not-loaded";

/**
 * Plans of every condition that compiles. A condition that fails only because it names a sheet not loaded is noted and
 * has no plan: it stays out until that sheet is there. Also notes limits that no rule uses.
 */
export function checkConditions(declared: Declarations, c: Checking): Record<string, Plan> {
  const plans: Record<string, Plan> = {};
  for (const condition of conditionsOf(c.look)) {
    const { key, path, text, use } = condition;
    const compiled = compile(text, declared, use, c.report.spotOf(path));
    if (compiled.ok) {
      plans[key] = compiled.value;
      checkBands(condition, compiled.value, c);
      continue;
    }
    const placed = compiled.problems.map((p) => {
      const { offset } = p.params;
      return typeof offset === "number" ? { ...p, where: c.report.spotOf(path, offset) } : p;
    });
    c.report.add(placed.filter((p) => p.code !== ELSEWHERE));
    c.report.addNotes(placed.filter((p) => p.code === ELSEWHERE));
  }
  noteUnusedLimits(plans, c);
  checkDerivedCircle(plans, c);
  return plans;
}

const sameRef = (look: Lookup, name: string, ref: Ref): boolean => {
  const meant = look.meant(name);
  if (meant?.is === "derived") return meant.derived.id === ref.point;
  return meant !== undefined && meant.ref.point === ref.point && meant.ref.field === ref.field;
};

/** A band is asked of readings some limit judges. */
function checkBands({ path }: Condition, plan: Plan, c: Checking): void {
  for (const ref of readsOf(plan).bands)
    if (!c.look.limits.some((limit) => sameRef(c.look, limit.of, ref)))
      c.report.problem("no-limit-over", path, { of: ref.field === "" ? ref.point : nameOf(c.look, ref) });
}

function nameOf(look: Lookup, ref: Ref): string {
  const point = look.points.get(ref.point);
  return point ? celName(point, ref.field) : ref.point;
}

/** A limit concludes nothing by itself: some rule must take its grade from it or ask its band. */
function noteUnusedLimits(plans: Readonly<Record<string, Plan>>, c: Checking): void {
  const asked = Object.values(plans).flatMap((plan) => readsOf(plan).bands);
  const graded = c.look.parts.flatMap((part) =>
    part.rules.flatMap((r) => (typeof r.grade === "object" ? [r.grade["limit-of"].replaceAll("-", "_")] : [])),
  );
  c.look.part.limits.forEach((limit, i) => {
    const used =
      graded.includes(limit.of.replaceAll("-", "_")) ||
      asked.some((ref) => sameRef(c.look, limit.of, ref)) ||
      bandAskedElsewhere(limit.of, c.look);
    if (!used) c.report.note("unused-limit", ["limits", i, "id"], { limit: limit.id, of: limit.of });
  });
}

/** Gates of the shared files and rules of other sheets are checked with their own plans: here their text must do. */
function bandAskedElsewhere(of: string, look: Lookup): boolean {
  const name = of.replaceAll("-", "_");
  const texts = look.others.flatMap((part) => [
    ...part.gates.flatMap((g) => [...g.trips, ...(g.clears ?? [])]),
    ...part.rules.map((r) => r.when),
  ]);
  const asked = texts.flatMap((text) => [...text.matchAll(/\bband\(\s*([\w.]+)\s*\)/g)].map((m) => m[1] ?? ""));
  return asked.some((reading) => reading === name || reading.endsWith(`.${name}`));
}

/** No derived value may rest on itself, by formula or by preference. */
function checkDerivedCircle(plans: Readonly<Record<string, Plan>>, c: Checking): void {
  const links = new Map(
    c.look.part.derived.map((d) => {
      const plan = plans[`derived/${d.id}/formula`];
      const read = plan
        ? readsOf(plan)
            .refs.filter((r) => r.field === "")
            .map((r) => r.point)
        : [];
      const preferred = (d.prefer ?? []).flatMap((name) => {
        const meant = c.look.meant(name);
        return meant?.is === "derived" ? [meant.derived.id] : [];
      });
      return [d.id, [...read, ...preferred]] as const;
    }),
  );
  const chain = circle(links);
  if (!chain) return;
  const at = c.look.part.derived.findIndex((d) => d.id === chain[0]);
  c.report.problem("cycle", ["derived", at], { chain: chain.join(" → ") });
}
