/**
 * Drafts of what is said about a car, each naming what it replaces. Apart from draft.ts, because a first reply needs
 * none of them.
 */
import type { CarLimit, PlaceChange } from "../sheet/car.js";
import type { Act, CarState, Draft, FactValue } from "./contract.js";
import { draft, noMixing, standingIds } from "./draft.js";
import { limitKey } from "./identity.js";

export function draftName(act: Act, car: CarState, name: string): Draft {
  return draft(act, car.stream, "car.named", { name, replaces: standingIds(car, "name|") });
}

/** A fact about the car, or null to take it back. */
export function draftFact(act: Act, car: CarState, fact: string, value: FactValue | null): Draft {
  return draft(act, car.stream, "car.fact", { fact, value, replaces: standingIds(car, `fact|${fact}`) });
}

/** A place this car has or lacks, or null to take the change back. */
export function draftPlace(act: Act, car: CarState, place: string, change: PlaceChange | null): Draft {
  return draft(act, car.stream, "car.place", { place, change, replaces: standingIds(car, `place|${place}`) });
}

/** What this car's people call a place, or null to go back to the sheets' own word. */
export function draftPlaceName(act: Act, car: CarState, place: string, name: string | null): Draft {
  const replaces = standingIds(car, `place-name|${place}`);
  return draft(act, car.stream, "car.place-named", { place, name, replaces });
}

/** A figure in the limits book. */
export function draftLimit(act: Act, car: CarState, limit: CarLimit): Draft {
  const key = limitKey(limit);
  return draft(act, car.stream, "car.limit", { key, limit, replaces: standingIds(car, `limit|${key}`) });
}

/** Takes a figure out of the limits book; `key` from `limitKey`. */
export function draftNoLimit(act: Act, car: CarState, key: string): Draft {
  return draft(act, car.stream, "car.limit", { key, limit: null, replaces: standingIds(car, `limit|${key}`) });
}

/** Says that two streams are one car, begun on two phones. Undone like anything else. */
export function draftSameCar(act: Act, car: CarState, other: string): Draft {
  noMixing(car.stream, [other]);
  return draft(act, car.stream, "car.same", { other });
}

/** Says that visits begun apart are one occasion. Undone like anything else. */
export function draftSameOccasion(act: Act, car: CarState, visits: readonly string[]): Draft {
  noMixing(car.stream, visits);
  return draft(act, car.stream, "car.same-occasion", { visits });
}
