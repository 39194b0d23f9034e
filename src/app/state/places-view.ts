/** The places of a car for the list: what it has, what it lacks, what was added. Pure. */

import type { CommonTexts, PlaceChange, PlaceDef, PlaceTree } from "../../core/sheet/run.js";
import { capital } from "./knowledge.js";

export interface PlaceLine {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  /** What it lies in; nothing for what lies in the car itself. */
  readonly inside?: string;
  readonly gone: boolean;
  readonly added: boolean;
}

export function placeLines(
  common: readonly PlaceDef[],
  tree: PlaceTree,
  changes: readonly PlaceChange[],
  words: CommonTexts,
): readonly PlaceLine[] {
  const name = (id: string): string => capital(words.places[id] ?? id);
  const added = changes.flatMap((change) => ("add" in change ? [change.add] : []));
  return [...common, ...added].map((place) => ({
    id: place.id,
    name: name(place.id),
    kind: place.kind,
    ...(place.in === undefined || place.in === "car" ? {} : { inside: name(place.in) }),
    gone: !tree.has(place.id),
    added: added.includes(place),
  }));
}
