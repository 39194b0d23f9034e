/** Drafts what is said of a reading when visits are compared. Refuses to compare. */
import type { Act, Draft } from "./contract.js";
import { standingIds } from "./draft.js";
import { draftBy } from "./draft-later.js";
import type { PlanState } from "./plan-contract.js";
import type { WearAt, WearSaid } from "./wear-bodies.js";
import { WEAR_ROWS, wearKey } from "./wear-kinds.js";

/** Said of a reading of the visit this plan is of; null takes it back. */
export const draftWear = (act: Act, plan: PlanState, { of, field, place }: WearAt, says: WearSaid | null): Draft =>
  draftBy(WEAR_ROWS, act, plan.stream, "wear.said", {
    of,
    field,
    place,
    says,
    replaces: standingIds(plan, `wear|${wearKey({ of, field, place })}`),
  });
