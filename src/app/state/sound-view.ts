/**
 * The sounds of a point, and those of the same point on the other side of the car, to be heard one after the other.
 * Pure.
 */
import type { VisitState } from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import type { SoundOfList } from "./sound-slices.js";
import type { PointAt } from "./standing.js";

export interface SoundsView {
  readonly here: readonly SoundOfList[];
  /** The last sound of either side, left first; only where both have one. */
  readonly sides?: { readonly left: SoundOfList; readonly right: SoundOfList };
}

function soundsAt(sounds: VisitState["sounds"], at: PointAt): readonly SoundOfList[] {
  return sounds
    .filter(({ value }) => value.point === at.point && value.place === at.place && value.state === at.state)
    .map(({ id, value }) => ({ id, blob: value.blob, ms: value.ms, cut: value.cut === true }));
}

export function soundsView(tree: PlaceTree, sounds: VisitState["sounds"], at: PointAt): SoundsView {
  const here = soundsAt(sounds, at);
  const [twin] = tree.related("opposite", at.place);
  const own = here.at(-1);
  const other = twin === undefined ? undefined : soundsAt(sounds, { ...at, place: twin }).at(-1);
  if (!own || !other) return { here };
  return { here, sides: tree.sideOf(at.place) === "right" ? { left: other, right: own } : { left: own, right: other } };
}

/** Seconds to the nearest, never nought for something heard. */
export const secondsOf = (ms: number): number => Math.max(1, Math.round(ms / 1000));
