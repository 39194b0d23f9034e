/** Who is deciding just now, kept while the app is open: the phone is handed over once for many jobs. */
import { signal } from "@preact/signals";
import type { PlanState } from "../../core/record/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import { type Deciding, decidingNow } from "./decision-form.js";

const said = signal<{ readonly plan: string; readonly on: IsoDate; readonly deciding: Deciding } | undefined>(
  undefined,
);

/** Whoever was named on this plan today, else whoever decided last. */
export function decidingOn(plan: PlanState, today: IsoDate): Deciding {
  const now = said.value;
  return now?.plan === plan.stream && now.on === today ? now.deciding : decidingNow(plan, today);
}

export const nowDeciding = (plan: PlanState, today: IsoDate, deciding: Deciding): void => {
  said.value = { plan: plan.stream, on: today, deciding };
};
