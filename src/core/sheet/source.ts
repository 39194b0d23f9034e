/** Where a value stands in the text it came from. Knows paths; refuses to know YAML, JSON or files. */
import type { Spot } from "../terms/index.js";

/** Keys and indexes from the root of the joined object: `["rules", 3, "when"]`. */
export type Path = readonly (string | number)[];

/**
 * The place in its file of the value at `path` (where there is none: of the nearest thing around it), of its
 * `"key"`, or of the character at that offset inside its text. Without a source: the path alone.
 */
export type SpotOf = (path: Path, at?: number | "key") => Spot;

/** A path as people read it: `rules[3].when`, `points["whl.spin"].name`. */
export function pathText(path: Path): string {
  return path
    .map((part, i) => {
      if (typeof part === "number") return `[${part}]`;
      if (!/^[A-Za-z_][\w-]*$/.test(part)) return `[${JSON.stringify(part)}]`;
      return i === 0 ? part : `.${part}`;
    })
    .join("");
}

/** For values that came without a text. */
export const pathOnly: SpotOf = (path) => ({ path: pathText(path) });
