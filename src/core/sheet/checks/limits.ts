/**
 * Limits: what they judge, unit, bands in order, and whether the point's own gauge can tell the bands apart.
 * Knows nothing of the car's limits book.
 */
import { GRADES, type Grade, levelOf } from "../../terms/index.js";
import { convert, convertStep, isQuantity, unitOf } from "../../units/index.js";
import type { Meant } from "../lookup.js";
import type { Gauge, Limit, Point } from "../schema-types.js";
import type { Path } from "../source.js";
import { type Checking, clash } from "./known.js";

export function checkLimits(c: Checking): void {
  c.look.part.limits.forEach((limit, i) => {
    const path = ["limits", i];
    const meant = c.known.reading(limit.of, [...path, "of"]);
    const measured = meant && whatItMeasures(meant);
    if (meant && !measured) c.report.problem("limit-of-words", [...path, "of"], { of: limit.of });
    const unitFits =
      c.known.quantity(limit.quantity, [...path, "quantity"]) &&
      c.known.unit(limit.unit, limit.quantity, [...path, "unit"], `limit “${limit.id}”`);
    if (limit.source.trim() === "") c.report.problem("source-missing", [...path, "source"], { id: limit.id });
    const inOrder = checkBands(limit, [...path, "bands"], c);
    if (!meant || !measured || !c.known.kind(limit.class, [...path, "class"])) return;
    if (measured.kind !== limit.class)
      c.report.problem("class-differs", [...path, "class"], { of: limit.of, kind: measured.kind, found: limit.class });
    if (measured.quantity !== limit.quantity && isQuantity(measured.quantity) && isQuantity(limit.quantity))
      clash(
        c.report,
        [...path, "quantity"],
        { what: `limit “${limit.id}”`, quantity: limit.quantity, unit: limit.unit },
        { other: `“${limit.of}”`, quantity: measured.quantity, unit: measured.unit },
      );
    else if (unitFits && inOrder && meant.is === "field")
      checkAgainstGauge(limit, meant.point, meant.ref.field, path, c);
  });
}

interface Measures {
  readonly kind: string;
  readonly quantity: string;
  readonly unit: string;
}
function whatItMeasures(meant: Meant): Measures | undefined {
  if (meant.is === "derived") return { ...meant.derived, kind: meant.derived.place };
  return "quantity" in meant.field ? { ...meant.field, kind: meant.point.place } : undefined;
}

const rises = (limit: Limit) => limit.direction === "over" || limit.direction === "at-or-over";

/** The edges a limit states, mild to severe. */
function edgesOf(limit: Limit): readonly { readonly grade: Grade; readonly edge: number }[] {
  return GRADES.flatMap((grade) => {
    const edge = limit.bands[grade];
    return edge === undefined ? [] : [{ grade, edge }];
  });
}

function checkBands(limit: Limit, path: Path, c: Checking): boolean {
  const edges = edgesOf(limit);
  if (edges.length === 0) c.report.problem("bands-empty", path, { limit: limit.id });
  let inOrder = edges.length > 0;
  edges.forEach((worse, i) => {
    const milder = edges[i - 1];
    if (!milder || (rises(limit) ? milder.edge < worse.edge : milder.edge > worse.edge)) return;
    inOrder = false;
    const direction = rises(limit) ? "up" : "down";
    const params = {
      milder: milder.grade,
      milderEdge: milder.edge,
      worse: worse.grade,
      worseEdge: worse.edge,
      direction,
    };
    c.report.problem("bands-order", [...path, worse.grade], params);
  });
  return inOrder;
}

/** Coverage factor: U = 2u, about 95 % (JCGM 100:2008; from memory). */
const COVERAGE = 2;

/**
 * Expanded uncertainty of one reading in the limit's unit: u² = d²/12 + e²/3 + set-up²/3 (planning §6; the set-up
 * error is added whatever gauge is named). A spread of two readings carries √2 of it.
 */
function expandedUncertainty(gauge: Gauge, setUp: number, limit: Limit): number {
  const u = Math.sqrt(gauge.resolution ** 2 / 12 + (gauge.error ** 2 + setUp ** 2) / 3);
  return COVERAGE * u * (limit.aggregate === "spread" ? Math.SQRT2 : 1);
}

/**
 * Major and dangerous edges are guarded by U on both sides, so a reading can only be called clear inside a band
 * wider than U for each guarded edge beside it. The band before the first edge runs from the window's end.
 */
function checkAgainstGauge(limit: Limit, point: Point, field: string, path: Path, c: Checking): void {
  const gauge = c.look.common.gauges.find((g) => g.id === point.tool);
  const declared = point.fields[field];
  const { quantity, unit } = limit;
  if (!gauge || !declared || !("quantity" in declared) || !isQuantity(quantity)) return;
  const fits = [gauge, declared].every((m) => m.quantity === quantity && unitOf(m.unit, quantity) !== undefined);
  if (!fits) return;
  const inLimitUnit = {
    ...gauge,
    resolution: convertStep(gauge.resolution, gauge.unit, unit, quantity),
    error: convertStep(gauge.error, gauge.unit, unit, quantity),
  };
  const setUp = convertStep(point["set-up-error"] ?? 0, declared.unit, unit, quantity);
  const uncertainty = expandedUncertainty(inLimitUnit, setUp, limit);
  const start = convert(declared.window[rises(limit) ? 0 : 1], declared.unit, unit, quantity);
  const edges = edgesOf(limit);
  edges.forEach((to, i) => {
    const from = edges[i - 1] ?? { grade: null, edge: start };
    const guarded = [from.grade, to.grade].filter((grade) => levelOf(grade) >= levelOf("major")).length;
    const width = Math.abs(to.edge - from.edge);
    if (guarded === 0 || width > guarded * uncertainty) return;
    c.report.problem("band-too-narrow", [...path, "bands", to.grade], {
      limit: limit.id,
      band: `${from.grade ?? "sound"} to ${to.grade}`,
      width: rounded(width),
      least: rounded(guarded * uncertainty),
      uncertainty: rounded(uncertainty),
      gauge: gauge.id,
      unit,
    });
  });
}

const rounded = (value: number) => Number(value.toPrecision(3));
