/**
 * What a limit's form does to it: what it judges brings quantity, unit and kind of place along; edges go with the unit
 * and must grow worse in the direction it judges. Pure.
 */
import type { DraftItem } from "../../core/sheet/draft.js";
import { GRADES, type Grade } from "../../core/terms/index.js";
import { textAt, valueAt, withAt } from "./sheet-forms.js";
import { inUnit } from "./sheet-forms-units.js";

export const DIRECTIONS = ["over", "at-or-over", "under", "at-or-under"] as const;
export const AGGREGATES = ["max", "min", "mean", "median", "spread", "each"] as const;
export const WEARS = ["use", "age", "either"] as const;
export const WANTS = ["maker"] as const;

interface Measure {
  readonly quantity: string;
  readonly unit: string;
  readonly place: string;
}

/** The limit over another reading. Where that measures the same, unit and edges stay as they are. */
export function overReading(is: DraftItem, of: string, measure: Measure | undefined): DraftItem {
  const over = withAt(is, ["of"], of);
  if (!measure) return over;
  const there = withAt(over, ["class"], measure.place);
  if (textAt(is, ["quantity"]) === measure.quantity && textAt(is, ["unit"]) !== "") return there;
  return withAt(withAt(there, ["quantity"], measure.quantity), ["unit"], measure.unit);
}

/** Another unit, the edges with it. */
export function limitInUnit(is: DraftItem, unit: string): DraftItem {
  const move = { quantity: textAt(is, ["quantity"]), from: textAt(is, ["unit"]), to: unit };
  return GRADES.reduce(
    (item, grade) => {
      const edge = valueAt(is, ["bands", grade]);
      return edge === undefined ? item : withAt(item, ["bands", grade], inUnit(edge, move));
    },
    withAt(is, ["unit"], unit),
  );
}

/** Edges that do not lie beyond the milder edge before them, with that one's grade. */
export function edgesAstray(is: DraftItem): ReadonlyMap<Grade, Grade> {
  const rises = textAt(is, ["direction"]).endsWith("over");
  const astray = new Map<Grade, Grade>();
  let last: { readonly grade: Grade; readonly edge: number } | undefined;
  for (const grade of GRADES) {
    const edge = valueAt(is, ["bands", grade]);
    if (typeof edge !== "number") continue;
    if (last && (rises ? edge <= last.edge : edge >= last.edge)) astray.set(grade, last.grade);
    last = { grade, edge };
  }
  return astray;
}
