/** One entry onwards, whatever kind of state. Knows no kind by itself. */
import type { CarState, HouseState, Logged, VisitState } from "./contract.js";
import { foldCar, stepCar } from "./fold-car.js";
import { foldHouse, stepHouse } from "./fold-house.js";
import { foldVisit, stepVisit } from "./fold-visit.js";
import { changesBelow, isNews } from "./ledger.js";

/** From so many entries on one whole fold is quicker than steps that each copy the maps; own measurement. */
const WHOLE_FROM = 40;

type State = CarState | VisitState | HouseState;

/** The state after these entries too; equal to folding all of them anew. */
export function foldStep<S extends State>(state: S, entries: Iterable<Logged>): S;
export function foldStep(state: State, entries: Iterable<Logged>): State {
  const more = [...entries].filter((logged) => isNews(state.ledger, logged));
  if (more.length >= WHOLE_FROM) return foldedWith(state, more);
  let folded = state;
  for (const [i, logged] of more.entries()) {
    // What needs the whole log again takes all the rest with it.
    if (changesBelow(folded.ledger, logged)) return foldedWith(folded, more.slice(i));
    folded = stepped(folded, logged);
  }
  return folded;
}

function stepped(state: State, logged: Logged): State {
  if (state.of === "car") return stepCar(state, logged);
  return state.of === "visit" ? stepVisit(state, logged) : stepHouse(state, logged);
}

function foldedWith(state: State, more: readonly Logged[]): State {
  const all = [...state.ledger.log.values(), ...more];
  if (state.of === "car") return foldCar(all);
  return state.of === "visit" ? foldVisit(all) : foldHouse(all);
}
