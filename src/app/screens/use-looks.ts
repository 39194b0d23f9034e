/** When to look again on a car, once its visits are judged; undefined until it is known, null where there is nothing to tell. */
import { useMemo } from "preact/hooks";
import type { IsoDate } from "../../core/plan/index.js";
import type { CarState } from "../../core/record/index.js";
import { useApp } from "../state/app.js";
import { type LooksFor, type LooksNow, looksNow } from "../state/looks-ground.js";
import { dayOf } from "../state/today.js";
import { useWearing, type WearingNow } from "./use-wearing.js";

export const useToday = (): IsoDate => dayOf(useApp().phone.now());

export const looksIn = (
  { worn, all, left, visits, plans }: WearingNow,
  car: CarState,
  today: IsoDate,
  which: LooksFor,
): LooksNow => looksNow({ worn, all, left, visits, plans, car, today }, which);

/** Nothing while somebody who must not read along stands by. */
export function useLooks(car: CarState, openedAt?: string): LooksNow | null | undefined {
  const now = useWearing(car);
  const today = useToday();
  return useMemo(() => {
    if (!now) return now;
    return now.covered ? null : looksIn(now, car, today, openedAt === undefined ? {} : { openedAt });
  }, [now, car, today, openedAt]);
}
