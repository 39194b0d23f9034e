/** Walking order: which point is looked at where and in which car state. Knows no replies and no person. */
import type { PlaceTree } from "./places.js";
import type { CarState, Point } from "./schema-types.js";

export interface WalkStep {
  readonly point: string;
  readonly place: string;
  readonly state: string;
}

/** Walking order of car states. Of two of one order the one listed first is gone through first, whole. */
export const rankStates = (states: readonly CarState[]): ReadonlyMap<string, number> =>
  new Map([...states].sort((a, b) => a.order - b.order).map(({ id }, i) => [id, i]));

/**
 * Every step of a walk round the car: by car state, then place, then as the sheets list their points.
 * A point of a kind this car has no place of has no step.
 */
export function walk(points: readonly Point[], states: readonly CarState[], tree: PlaceTree): readonly WalkStep[] {
  const rank = rankStates(states);
  const steps = points.flatMap((point, index) =>
    point.states.flatMap((state) =>
      tree.ofKind(point.place).map((place) => ({
        step: { point: point.id, place, state },
        key: [rank.get(state) ?? states.length, tree.order(place), index] as const,
      })),
    ),
  );
  steps.sort((a, b) => a.key[0] - b.key[0] || a.key[1] - b.key[1] || a.key[2] - b.key[2]);
  return steps.map((s) => s.step);
}
