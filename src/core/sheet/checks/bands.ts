/**
 * Whether the gauge a point names can tell the bands of a limit apart. Major and dangerous edges are guarded by the
 * uncertainty U on both sides: a reading can only be called clear in a band wider than U for each guarded edge beside it.
 */
import {
  type Evaluate,
  link,
  type Plan,
  type Ref,
  type Scope,
  type Trade,
  Unknown,
  withUncertainty,
} from "../../expr/run.js";
import { GRADES, type Grade, levelOf } from "../../terms/index.js";
import { canonicalUnit, convert, convertStep, isQuantity, type Quantity, unitOf } from "../../units/index.js";
import type { Lookup } from "../lookup.js";
import { fieldOf } from "../names.js";
import type { Derived, Field, Limit, Point } from "../schema-types.js";
import type { Path } from "../source.js";
import type { Checking } from "./known.js";

export const rises = (limit: Limit): boolean => limit.direction === "over" || limit.direction === "at-or-over";

/** The edges a limit states, mild to severe. */
export function edgesOf(limit: Limit): readonly { readonly grade: Grade; readonly edge: number }[] {
  return GRADES.flatMap((grade) => {
    const edge = limit.bands[grade];
    return edge === undefined ? [] : [{ grade, edge }];
  });
}

/** Coverage factor: U = 2u, about 95 % (JCGM 100:2008; from memory). */
const COVERAGE = 2;

/** Standard uncertainty of one reading of a point in `unit`; undefined without a gauge for this quantity. */
function readingUncertainty(point: Point, field: Field, unit: string, quantity: Quantity, look: Lookup) {
  const gauge = look.common.gauges.find((g) => g.id === point.tool);
  if (!gauge || !("quantity" in field)) return undefined;
  const fits = [gauge, field].every((m) => m.quantity === quantity && unitOf(m.unit, quantity) !== undefined);
  if (!fits) return undefined;
  const step = convertStep(gauge.resolution, gauge.unit, unit, quantity);
  const error = convertStep(gauge.error, gauge.unit, unit, quantity);
  const setUp = convertStep(point["set-up-error"] ?? 0, field.unit, unit, quantity);
  // u² = d²/12 + e²/3 with e² = gauge² + set-up²: display step and error taken as even (JCGM 100:2008; from memory).
  return { u: Math.sqrt(step ** 2 / 12 + (error ** 2 + setUp ** 2) / 3), gauge: gauge.id };
}

/** Bands of a limit on a reading itself; the first runs from the end of the plausible window. */
export function checkReadingBands(limit: Limit, point: Point, field: Field, path: Path, c: Checking): void {
  const { quantity, unit } = limit;
  if (!("quantity" in field) || !isQuantity(quantity)) return;
  const told = readingUncertainty(point, field, unit, quantity, c.look);
  if (!told) return;
  const start = convert(field.window[rises(limit) ? 0 : 1], field.unit, unit, quantity);
  // A spread of two readings carries √2 of the uncertainty of one.
  const u = told.u * (limit.aggregate === "spread" ? Math.SQRT2 : 1);
  tellNarrow(limit, COVERAGE * u, told.gauge, start, path, c);
}

/** Bands of limits on derived values: the uncertainty of every reading is carried through the formula, mid-window. */
export function checkDerivedBands(plans: Readonly<Record<string, Plan>>, c: Checking, work: Trade = {}): void {
  for (const [i, limit] of c.look.part.limits.entries()) {
    const meant = c.look.meant(limit.of);
    const { quantity } = limit;
    if (meant?.is !== "derived" || !isQuantity(quantity) || meant.derived.quantity !== quantity) continue;
    const plan = plans[`derived/${meant.derived.id}/formula`];
    const linked = plan && link(plan, work);
    const u = linked?.ok ? derivedUncertainty(meant.derived, linked.value, c.look) : undefined;
    if (u === undefined || unitOf(limit.unit, quantity) === undefined) continue;
    const inUnit = convertStep(u, canonicalUnit(quantity), limit.unit, quantity);
    tellNarrow(limit, COVERAGE * inUnit, `formula of ${meant.derived.id}`, undefined, ["limits", i], c);
  }
}

/** Canonical unit; undefined where the formula rests on more than readings with a gauge. */
function derivedUncertainty(derived: Derived, formula: Evaluate, look: Lookup): number | undefined {
  const [place] = look.tree.ofKind(derived.place);
  if (place === undefined) return undefined;
  const found = withUncertainty(formula)(midWindow(look), place);
  return found instanceof Unknown ? undefined : found.u;
}

/** A world where every reading stands in the middle of its plausible window and nothing else is known. */
function midWindow(look: Lookup): Scope {
  const unknown = (ref: Ref) => new Unknown(new Set([ref.point]));
  return {
    read: unknown,
    measured: (ref) => {
      const point = look.points.get(ref.point);
      const field = point && fieldOf(point, ref.field);
      if (!field || !("quantity" in field) || !isQuantity(field.quantity)) return unknown(ref);
      const unit = canonicalUnit(field.quantity);
      const told = readingUncertainty(point, field, unit, field.quantity, look);
      const middle = (field.window[0] + field.window[1]) / 2;
      return told ? { value: convert(middle, field.unit, unit, field.quantity), u: told.u } : unknown(ref);
    },
    band: unknown,
    unanswered: () => false,
    sinceLast: unknown,
    fact: (name) => new Unknown(new Set([name])),
    related: (relation, here) => look.tree.related(relation, here),
    places: (kind) => look.tree.ofKind(kind),
    found: () => false,
  };
}

function tellNarrow(
  limit: Limit,
  uncertainty: number,
  gauge: string,
  start: number | undefined,
  path: Path,
  c: Checking,
) {
  const edges = edgesOf(limit);
  for (const [i, to] of edges.entries()) {
    const from = edges[i - 1] ?? (start === undefined ? undefined : { grade: null, edge: start });
    if (!from) continue;
    const guarded = [from.grade, to.grade].filter((grade) => levelOf(grade) >= levelOf("major")).length;
    const width = Math.abs(to.edge - from.edge);
    if (guarded === 0 || width > guarded * uncertainty) continue;
    c.report.problem("band-too-narrow", [...path, "bands", to.grade], {
      limit: limit.id,
      band: `${from.grade ?? "sound"} to ${to.grade}`,
      width: rounded(width),
      least: rounded(guarded * uncertainty),
      uncertainty: rounded(uncertainty),
      gauge,
      unit: limit.unit,
    });
  }
}

const rounded = (value: number) => Number(value.toPrecision(3));
