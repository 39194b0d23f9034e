/**
 * Drafts of entries about a car or the house, and what all drafts share. What a draft replaces is read off the
 * folded state, so that no screen can get it wrong. Refuses to know clocks, randomness and storage.
 */
import type { CarLimit, PlaceChange } from "../sheet/car.js";
import type {
  Act,
  Bodies,
  CarState,
  Draft,
  FactValue,
  FoldedState,
  FrozenSheet,
  HouseGauge,
  HouseState,
  IdText,
  Kind,
  Person,
} from "./contract.js";
import { HOUSE, idText, isDemo, limitKey } from "./identity.js";
import { KINDS } from "./kinds.js";
import { sameValue } from "./same-value.js";
import { standingIn } from "./standing.js";

/** A draft of one entry. */
export function draft<K extends Kind>(act: Act, stream: string, kind: K, body: Bodies[K]): Draft {
  const { id, by, at } = act;
  return { stream, nonce: act.nonce(), at, by, act: id, kind, v: KINDS[kind].v, body };
}

/** Everything that stands in a slot, entries that only took something back included: what a new value replaces. */
export function standingIds(state: FoldedState, slot: string): readonly IdText[] {
  return standingIn(state.ledger, slot).map(idText);
}

/** Stops our own mistakes: the demo never mixes with a person's own cars. */
export function noMixing(stream: string, others: readonly string[]): void {
  const mixed = others.find((other) => isDemo(other) !== isDemo(stream));
  if (mixed !== undefined) throw new Error(`The demo never mixes with one's own: ${stream} and ${mixed}`);
}

/** The first entry of a new car; `stream` from `carStream`. */
export const draftCar = (act: Act, stream: string, name: string): Draft => draft(act, stream, "car.begun", { name });

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

/** A sheet of one's own, or null to take it out; editions frozen in visits stay. */
export function draftHouseSheet(act: Act, house: HouseState, id: string, sheet: FrozenSheet | null): Draft {
  return draft(act, HOUSE, "house.sheet", { id, sheet, replaces: standingIds(house, `sheet|${id}`) });
}

/** A gauge of this house, or null to take it out; readings taken with it keep its figures. */
export function draftHouseGauge(act: Act, house: HouseState, id: string, gauge: HouseGauge | null): Draft {
  return draft(act, HOUSE, "house.gauge", { id, gauge, replaces: standingIds(house, `gauge|${id}`) });
}

/** Says in this stream who a person is; nothing when it says so already. `stream` for a stream still empty. */
export function draftPerson(act: Act, state: FoldedState, person: Person, stream = state.stream): readonly Draft[] {
  const standing = state.people.get(person.id) ?? [];
  if (standing.length === 1 && sameValue(standing[0]?.value, person)) return [];
  return [draft(act, stream, "person", { person, replaces: standingIds(state, `person|${person.id}`) })];
}
