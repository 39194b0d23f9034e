/** What is due again in a visit, at which of its points, and what of it is not asked or not known; undefined where there is nothing to tell. */
import { useMemo } from "preact/hooks";
import type { LookWanted } from "../../core/plan/index.js";
import { useApp } from "../state/app.js";
import { dueIn } from "../state/due-earlier.js";
import { type DuePoint, dueBeyond, duePoints } from "../state/due-points.js";
import type { LooksNow } from "../state/looks-ground.js";
import { beyondText, dueSays, pointNamed, unreadTexts } from "../state/looks-words.js";
import { lookingAt, type OnDesk } from "./on-visit.js";

export interface DueHere {
  readonly points: readonly DuePoint[];
  /** Those to be tried yet before those that could not be looked at. */
  readonly open: readonly DuePoint[];
  /** Why and when. */
  readonly says: (point: DuePoint) => string;
  /** What this round does not ask. */
  readonly beyond: string | undefined;
  /** What could not be read. */
  readonly unread: readonly string[];
  /** Nothing is left out of `points`. */
  readonly isAll: boolean;
}

/** Nothing while somebody who must not read along stands by. */
export function useDue(on: OnDesk): DueHere | undefined {
  const now = dueIn(useApp(), on.visit);
  const { asked } = on.assessment;
  return useMemo(() => {
    if (!now || on.quiet) return undefined;
    const unread = unreadTexts(now.unread);
    const [points, rest] = now.looks
      ? [duePoints(now, lookingAt(on)), dueBeyond(now, lookingAt(on))]
      : [[] as readonly DuePoint[], [] as readonly LookWanted[]];
    if (points.length + rest.length + unread.length === 0) return undefined;
    const looks: LooksNow | undefined = now.looks;
    return {
      points,
      open: [...points.filter(({ done, unable }) => !done && !unable), ...points.filter(({ unable }) => unable)],
      says: ({ due }) => (looks ? dueSays(looks, due, on.who) : ""),
      beyond: looks && rest.length > 0 ? beyondText(looks, rest, on.who) : undefined,
      unread,
      isAll: rest.length + unread.length === 0,
    };
  }, [now, asked, on.visit.replies, on.quiet]);
}

/** `Front right, Float`. */
export const dueNamed = ({ known }: Pick<OnDesk, "known">, { at }: DuePoint): string =>
  pointNamed(known, at.place, at.point);
