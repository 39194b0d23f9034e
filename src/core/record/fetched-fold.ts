/** The fold of a house's stream and of plans, fetched when the first of them is read: a first reply does without. */
import type { HouseState, Logged } from "./contract.js";
import type { PlanState } from "./plan-contract.js";

export type FoldLater = (stream: string, entries: Iterable<Logged>) => HouseState | PlanState;

export const fetchedFold = async (): Promise<FoldLater> => (await import("./fold-later.js")).foldLater;
