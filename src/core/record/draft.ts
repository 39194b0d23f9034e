/**
 * What all drafts of entries share, and those every record begins with. What a draft replaces is read off the folded
 * state, so that no screen can get it wrong. Refuses to know clocks, randomness and storage.
 */
import type { Act, Bodies, Draft, FoldedState, IdText, Kind, Person } from "./contract.js";
import { idText, isDemo } from "./identity.js";
import { KINDS, type LaterKind } from "./kinds.js";
import { sameValue } from "./same-value.js";
import { standingIn } from "./standing.js";

/** A draft of one entry of a car or a visit, or of a kind every stream has. */
export function draft<K extends Exclude<Kind, LaterKind>>(
  { id, by, at, nonce }: Act,
  stream: string,
  kind: K,
  body: Bodies[K],
): Draft {
  return { stream, nonce: nonce(), at, by, act: id, kind, v: KINDS[kind].v, body };
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

/** Says in this stream who a person is; nothing when it says so already. `stream` for a stream still empty. */
export function draftPerson(act: Act, state: FoldedState, person: Person, stream = state.stream): readonly Draft[] {
  const standing = state.people.get(person.id) ?? [];
  if (standing.length === 1 && sameValue(standing[0]?.value, person)) return [];
  return [draft(act, stream, "person", { person, replaces: standingIds(state, `person|${person.id}`) })];
}
