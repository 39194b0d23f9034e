/** One entry onwards, whatever kind of state. Knows no kind by itself. */
import type { CarState, HouseState, Logged, VisitState } from "./contract.js";
import { foldCar, stepCar } from "./fold-car.js";
import { foldHouse, stepHouse } from "./fold-house.js";
import { foldVisit, stepVisit } from "./fold-visit.js";

/** From so many entries on one whole fold is quicker than steps that each copy the maps; own measurement. */
const WHOLE_FROM = 40;

/** The state after these entries too; equal to folding all of them anew. */
export function foldStep<S extends CarState | VisitState | HouseState>(state: S, entries: Iterable<Logged>): S;
export function foldStep(state: CarState | VisitState | HouseState, entries: Iterable<Logged>) {
  const more = [...entries];
  if (more.length >= WHOLE_FROM) {
    const all = [...state.ledger.log.values(), ...more];
    return state.of === "car" ? foldCar(all) : state.of === "visit" ? foldVisit(all) : foldHouse(all);
  }
  let folded = state;
  for (const logged of more) {
    if (folded.of === "car") folded = stepCar(folded, logged);
    else folded = folded.of === "visit" ? stepVisit(folded, logged) : stepHouse(folded, logged);
  }
  return folded;
}
