/** Works out what is wearing on the car of a hand-over, and when to look again; draws nothing. Fetched once that stands. */
import { useEffect } from "preact/hooks";
import type { CarState, VisitState } from "../../core/record/index.js";
import { looksTold } from "../state/handover-looks.js";
import { unreadBefore, wearingUpTo } from "../state/looks-ground.js";
import { trendsTold } from "../state/wearing-told.js";
import { looksIn, useToday } from "./use-looks.js";
import type { Trends } from "./use-made.js";
import { useWearingVisits } from "./use-wearing.js";

interface HandOverWearingProps {
  readonly car: CarState;
  /** The visit that is handed over. */
  readonly visit: VisitState;
  readonly onTold: (told: Trends) => void;
}

export function HandOverWearing({ car, visit, onTold }: HandOverWearingProps) {
  const now = useWearingVisits(car);
  const today = useToday();
  useEffect(() => {
    if (now === undefined) return;
    const again = now.worn ? looksIn(now, car, today, { upTo: visit.stream }) : undefined;
    // No visit that can be read: nothing is known to wear.
    onTold({
      trends: trendsTold(now.worn ? wearingUpTo(now, visit.stream) : []),
      looks: again && ((reader) => looksTold(again, reader, visit.stream)),
      ...(again ? { again } : {}),
      visitsUnread: unreadBefore(now.left, visit),
    });
  }, [now, visit, today, onTold]);
  return null;
}
