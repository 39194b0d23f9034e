/** Finds the places a plan speaks of and asks there. Knows no place by name: the scope says what relates. */
import type { ListNode, PlaceNode } from "./plan.js";
import { NOT_APPLICABLE, type Outcome, type Ref, type Scope, type Value } from "./scope.js";

/** The place where the rule stands, then the places bound by the quantifiers around. */
export type At = readonly string[];
/** A linked node. */
export type Run<T = Value> = (scope: Scope, at: At) => Outcome<T>;
export type PlaceOf = (scope: Scope, at: At) => string | undefined;

/** The one place a node names; undefined where there is none (no twin). */
export function placeOf(node: PlaceNode): PlaceOf {
  if (typeof node === "number") return (_scope, at) => at[node];
  const [of, relation] = node;
  const from = placeOf(of);
  return (scope, at) => {
    const place = from(scope, at);
    return place === undefined ? undefined : scope.related(relation, place)?.[0];
  };
}

/** The places a quantifier goes through. */
export function listOf(node: ListNode): (scope: Scope, at: At) => readonly string[] {
  if (node[0] === "kind") return (scope) => scope.places(node[1]);
  const from = placeOf(node[1]);
  return (scope, at) => {
    const place = from(scope, at);
    return (place === undefined ? undefined : scope.related(node[2], place)) ?? [];
  };
}

/** Asks the scope at the place meant; without such a place it does not apply. */
export function asked<T>(
  point: string,
  field: string,
  place: PlaceNode,
  ask: (scope: Scope, ref: Ref, place: string) => Outcome<T>,
): Run<T> {
  const ref = { point, field };
  if (place === 0) return (scope, at) => ask(scope, ref, at[0] ?? "");
  const where = placeOf(place);
  return (scope, at) => {
    const there = where(scope, at);
    return there === undefined ? NOT_APPLICABLE : ask(scope, ref, there);
  };
}
