/** Folding of streams a first reply does without: fetched when one of them is read. */
import type { HouseState, Logged } from "./contract.js";
import { foldHouse } from "./fold-house.js";
import { foldPlan } from "./fold-plan.js";
import { HOUSE, isDemo } from "./identity.js";
import type { PlanState } from "./plan-contract.js";

/** The house's stream, or a plan's; of no entries what it is before anything is said in it. */
export function foldLater(stream: string, entries: Iterable<Logged>): HouseState | PlanState {
  return stream === HOUSE ? foldHouse(entries) : { ...foldPlan(entries), stream, demo: isDemo(stream) };
}
