/**
 * What is due again in one visit, as the visits before it ask, and at which of its points. What the visit answers itself
 * takes nothing off the list. Pure; says nothing in words.
 */
import type { Asked } from "../../core/assess/contract.js";
import { type DueAgain, dueAgain, type KmOn, type PointAt } from "../../core/plan/index.js";
import { barePoint } from "./complaint-lines.js";
import { type LooksNow, type LooksOf, looksNow } from "./looks-ground.js";
import type { Looking } from "./round-view.js";
import { isAskedHere, isDone } from "./stops.js";

export interface DueLooks {
  readonly looks: LooksNow;
  readonly due: readonly DueAgain[];
  /** By point and place. */
  readonly at: ReadonlyMap<string, DueAgain>;
}

/** A point of this visit at which something is due, with those asked in the same entry. */
export interface DuePoint {
  readonly at: Asked;
  readonly due: DueAgain;
  readonly done: boolean;
}

const keyOf = ({ point, place }: PointAt): string => `${barePoint(point)}@${place}`;

/** Due by the day, and by what the odometer shows on it. `of` holds the visits before, and nothing of this one. */
export function dueLooks(of: LooksOf, read?: KmOn): DueLooks {
  const looks = looksNow(of, read ? { read } : {});
  const due = dueAgain(looks);
  // The nearest comes first, and names the point.
  const at = new Map(due.toReversed().flatMap((one) => one.look.points.map((point) => [keyOf(point), one] as const)));
  return { looks, due, at };
}

/** What is due at a point, or at one that is asked in its entry. */
export const dueAt = (
  { at }: Pick<DueLooks, "at">,
  { point, place, with: along = [] }: PointAt & Partial<Pick<Asked, "with">>,
): DueAgain | undefined => {
  const named = [point, ...along].find((one) => at.has(keyOf({ point: one, place })));
  return named === undefined ? undefined : at.get(keyOf({ point: named, place }));
};

/** The points this person is asked at which something is due, in the order they are asked; each once, in whichever car state. */
export function duePoints(
  now: DueLooks,
  { known, who, asked, visit: { replies } }: Pick<Looking, "known" | "who" | "asked" | "visit">,
): readonly DuePoint[] {
  const points = new Map<string, DuePoint>();
  for (const at of asked) {
    const due = isAskedHere(known, who, at) ? dueAt(now, at) : undefined;
    if (!due) continue;
    const there = points.get(keyOf(at));
    const done = isDone(known, replies, at);
    if (!there || (done && !there.done)) points.set(keyOf(at), { at: there?.at ?? at, due, done });
  }
  return [...points.values()];
}
