/** What is due again in a visit and at which of its points; undefined until it is known, and where nothing is due. */
import { useMemo } from "preact/hooks";
import { useApp } from "../state/app.js";
import { dueIn } from "../state/due-earlier.js";
import { type DueLooks, type DuePoint, duePoints } from "../state/due-points.js";
import { placeName, pointName } from "../state/knowledge.js";
import { lookingAt, type OnDesk } from "./on-visit.js";

export interface DueHere {
  readonly now: DueLooks;
  readonly points: readonly DuePoint[];
  readonly open: readonly DuePoint[];
}

/** Nothing while somebody who must not read along stands by. */
export function useDue(on: OnDesk): DueHere | undefined {
  const now = dueIn(useApp(), on.visit);
  const { asked } = on.assessment;
  return useMemo(() => {
    if (!now || on.quiet) return undefined;
    const points = duePoints(now, lookingAt(on));
    return points.length === 0 ? undefined : { now, points, open: points.filter(({ done }) => !done) };
  }, [now, asked, on.visit.replies, on.quiet]);
}

/** `Front right, Float`. */
export const dueNamed = ({ known }: Pick<OnDesk, "known">, { at }: DuePoint): string =>
  [...(at.place === "car" ? [] : [placeName(known, at.place)]), pointName(known, at.point)].join(", ");
