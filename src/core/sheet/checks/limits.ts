/** Limits: what they judge, their unit, their bands in order. Knows nothing of the car's limits book. */
import { isQuantity } from "../../units/index.js";
import type { Meant } from "../lookup.js";
import type { Limit } from "../schema-types.js";
import type { Path } from "../source.js";
import { checkReadingBands, edgesOf, rises } from "./bands.js";
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
    else if (unitFits && inOrder && meant.is === "field") checkReadingBands(limit, meant.point, meant.field, path, c);
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
