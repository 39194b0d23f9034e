/** Works out what is wearing on the car of a hand-over and tells it; draws nothing. Fetched once the hand-over stands. */
import { useEffect } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import type { TrendTold } from "../../core/report/index.js";
import { trendsTold } from "../state/wearing-told.js";
import { useWearing } from "./use-wearing.js";

interface HandOverWearingProps {
  readonly car: CarState;
  readonly onTold: (trends: readonly TrendTold[]) => void;
}

export function HandOverWearing({ car, onTold }: HandOverWearingProps) {
  const now = useWearing(car);
  useEffect(() => {
    // No visit that can be read: nothing is known to wear.
    if (now !== undefined) onTold(trendsTold(now?.all ?? []));
  }, [now, onTold]);
  return null;
}
