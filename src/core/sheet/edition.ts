/** The text whose hash names an edition of a sheet: its meaning without shown texts. Computes no hash itself. */
import type { Common, Sheet } from "./schema-types.js";

/** JSON with object keys in code-unit order and no white space: equal values give equal text. */
export function canonicalText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((v) => canonicalText(v ?? null)).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const parts = Object.entries(value)
    .filter(([, v]) => v !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, v]) => `${JSON.stringify(key)}:${canonicalText(v)}`);
  return `{${parts.join(",")}}`;
}

/**
 * Canonical text of a sheet or of the shared files: everything but shown texts. A point's fields count in their
 * order (the first is what the point's bare name means), so they stand as pairs. Cases are kept in: they are part
 * of what an edition promises.
 */
export function editionText(bare: Omit<Sheet, "texts"> | Omit<Common, "texts" | "complaints">): string {
  if (!("points" in bare)) return canonicalText({ ...bare, texts: undefined });
  const points = bare.points.map((point) => ({ ...point, fields: Object.entries(point.fields) }));
  return canonicalText({ ...bare, points, texts: undefined });
}
