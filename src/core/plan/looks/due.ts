/** What is due again in a visit, and the walk that takes those places first. Knows no sheet, no record and no words. */
import type { PointAt } from "../release/works.js";
import type { LookDue, LooksAgain, LookVisit, LookWanted } from "./contract.js";

/** A look that is due in a visit; of one for which nothing states when there is no `visit`. */
export interface DueAgain {
  readonly look: LookWanted | LookDue;
  readonly visit?: LookVisit;
}

/** What falls together is due together; where nothing says when, at the next visit. Nearest first. */
export const dueAgain = ({ visits, unsaid }: LooksAgain): readonly DueAgain[] => [
  ...visits.flatMap((visit) => (visit.stands === "ahead" ? [] : visit.looks.map((look) => ({ look, visit })))),
  ...unsaid.map((look) => ({ look })),
];

type Walked = PointAt & { readonly state: string };

/**
 * `asked` comes in walking order. Car states keep their order; in each, places at which something is due are walked
 * before the others, and each is finished while one stands there. Every place is come to once, nothing is left out.
 */
export function dueFirst<One extends Walked>(asked: readonly One[], isDue: (one: One) => boolean): readonly One[] {
  const placeOf = ({ state, place }: One): string => `${state} ${place}`;
  const states = ranks(asked.map(({ state }) => state));
  const places = ranks(asked.map(placeOf));
  const due = new Set(asked.filter(isDue));
  const duePlaces = new Set([...due].map(placeOf));
  const at = (of: ReadonlyMap<string, number>, id: string): number => of.get(id) ?? of.size;
  const late = (is: boolean): number => (is ? 0 : 1);
  return asked.toSorted(
    (a, b) =>
      at(states, a.state) - at(states, b.state) ||
      late(duePlaces.has(placeOf(a))) - late(duePlaces.has(placeOf(b))) ||
      at(places, placeOf(a)) - at(places, placeOf(b)) ||
      late(due.has(a)) - late(due.has(b)),
  );
}

const ranks = (ids: readonly string[]): ReadonlyMap<string, number> =>
  new Map([...new Set(ids)].map((id, at) => [id, at]));
