/** From a point and its fields to the names conditions use, and back. Knows nothing of the condition language. */
import type { Field, Point } from "./schema-types.js";

/** Which field of which point. */
export interface FieldRef {
  readonly point: string;
  readonly field: string;
}

/** The field the bare point id stands for: the first declared. Shape checking guarantees one. */
export function mainField(point: Point): string {
  return Object.keys(point.fields)[0] ?? "";
}

/** The declaration of a field, if the point has it. */
export function fieldOf(point: Point, field: string): Field | undefined {
  return Object.hasOwn(point.fields, field) ? point.fields[field] : undefined;
}

/** How a condition names a point's field: `whl.rock_braked`; a further field `whl.heat_air`. */
export function celName(point: Point, field = mainField(point)): string {
  const bare = point.id.replaceAll("-", "_");
  return field === mainField(point) ? bare : `${bare}_${field.replaceAll("-", "_")}`;
}

/** The field a name means, `-` and `_` being equal: a point's id (its main field) or `point_field`. */
export function findField(points: readonly Point[], name: string): FieldRef | undefined {
  const wanted = name.replaceAll("-", "_");
  for (const point of points) {
    if (!wanted.startsWith(point.id.replaceAll("-", "_"))) continue;
    for (const field of Object.keys(point.fields))
      if (celName(point, field) === wanted) return { point: point.id, field };
  }
  return undefined;
}
