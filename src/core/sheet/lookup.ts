/**
 * Everything that may be named while one part (a sheet or the shared files) is checked: its own names, those of the
 * other loaded sheets, the shared ones. Knows which sheet a name would belong to; judges nothing.
 */
import { type FieldRef, fieldOf, findField } from "./names.js";
import { buildPlaces, type PlaceTree } from "./places.js";
import type { Common, Derived, Field, Gate, Job, Limit, Point, Rule, Sheet } from "./schema-types.js";

/** What `checkSheet` and `checkCommon` look through alike; the shared files have no points, limits or jobs. */
export interface Part {
  /** Prefix of its rules and faults: the sheet's id; `x` for the shared rules. */
  readonly prefix: string;
  readonly points: readonly Point[];
  readonly limits: readonly Limit[];
  readonly derived: readonly Derived[];
  readonly rules: readonly Rule[];
  readonly jobs: readonly Job[];
  readonly gates: readonly Gate[];
  readonly cases: Sheet["cases"];
}

/** The prefix of rules that stand in the shared files. */
export const CROSS = "x";

export const partOfSheet = (sheet: Sheet): Part => ({ ...sheet, prefix: sheet.id });
export const partOfCommon = (common: Common): Part => ({
  prefix: CROSS,
  points: [],
  limits: [],
  derived: [],
  rules: common.rules,
  jobs: [],
  gates: common.gates,
  cases: common.cases,
});

/** A field or derived value a name stands for. */
export type Meant =
  | { readonly is: "field"; readonly point: Point; readonly field: Field; readonly ref: FieldRef }
  | { readonly is: "derived"; readonly derived: Derived };

export interface Lookup {
  readonly part: Part;
  readonly common: Common;
  readonly tree: PlaceTree;
  /** Loaded sheets and the shared files, the part itself first. */
  readonly parts: readonly Part[];
  /** The same without the part itself. */
  readonly others: readonly Part[];
  readonly points: ReadonlyMap<string, Point>;
  readonly faults: ReadonlySet<string>;
  readonly jobs: ReadonlyMap<string, Job>;
  readonly limits: readonly Limit[];
  /** A point, `point_field` or derived id, `-` and `_` being equal. */
  readonly meant: (name: string) => Meant | undefined;
  /** The sheet an id would belong to when that sheet is not loaded; undefined when it should be here. */
  readonly sheetNotLoaded: (id: string) => string | undefined;
}

export function lookupFor(part: Part, common: Common, sheets: readonly Part[]): Lookup {
  const others = [...sheets, partOfCommon(common)].filter((o) => o.prefix !== part.prefix);
  const all = [part, ...others];
  const pointList = all.flatMap((p) => p.points);
  const derived = new Map(all.flatMap((p) => p.derived.map((d) => [d.id.replaceAll("-", "_"), d] as const)));
  const points = new Map(pointList.map((p) => [p.id, p]));
  const loaded = new Set(all.map((p) => p.prefix));
  return {
    part,
    common,
    tree: buildPlaces(common.places).tree,
    parts: all,
    others,
    points,
    faults: new Set(all.flatMap((p) => p.rules.flatMap((r) => r.fault ?? []))),
    jobs: new Map(all.flatMap((p) => p.jobs.map((j) => [j.id, j]))),
    limits: all.flatMap((p) => p.limits),
    meant: (name) => {
      const found = derived.get(name.replaceAll("-", "_"));
      if (found) return { is: "derived", derived: found };
      const ref = findField(pointList, name);
      const point = ref && points.get(ref.point);
      const field = point && fieldOf(point, ref.field);
      return point && field && ref ? { is: "field", point, field, ref } : undefined;
    },
    sheetNotLoaded: (id) => {
      const [first, second] = id.split(".");
      const sheet = first === "job" ? second : first;
      return sheet === undefined || second === undefined || loaded.has(sheet) ? undefined : sheet;
    },
  };
}
