/** Finds the places a plan speaks of and asks there. Knows no place by name: the scope says what relates. */
import type { Last, ListNode, PlaceNode } from "./plan.js";
import { NOT_APPLICABLE, type Outcome, type Ref, type Scope, type Value } from "./scope.js";

/** The place where the rule stands, then the places bound by the quantifiers around. */
export type At = readonly string[];
/** A linked node. */
export type Run<T = Value> = (scope: Scope, at: At) => Outcome<T>;
export type PlaceOf = (scope: Scope, at: At) => string | undefined;

/** Plans come out of files: a part of another shape stops the linking, where it is told as damage. */
export function text(part: unknown): string {
  if (typeof part !== "string") throw new TypeError(`${typeof part} for a name`);
  return part;
}
export function figure(part: unknown): number {
  if (typeof part !== "number") throw new TypeError(`${typeof part} for a number`);
  return part;
}

/** The one place a node names; undefined where there is none (no twin). */
export function placeOf(node: PlaceNode): PlaceOf {
  if (typeof node === "number") return (_scope, at) => at[node];
  if (!Array.isArray(node)) throw new TypeError("no place");
  const relation = text(node[1]);
  const from = placeOf(node[0]);
  return (scope, at) => {
    const place = from(scope, at);
    return place === undefined ? undefined : scope.related(relation, place)?.[0];
  };
}

/** The places a quantifier goes through. */
export function listOf(node: ListNode): (scope: Scope, at: At) => readonly string[] {
  if (node[0] === "kind") {
    const kind = text(node[1]);
    return (scope) => scope.places(kind);
  }
  const from = placeOf(node[1]);
  const relation = text(node[2]);
  return (scope, at) => {
    const place = from(scope, at);
    return (place === undefined ? undefined : scope.related(relation, place)) ?? [];
  };
}

/** What a node reads; made once, so that the scope can know it again. */
export function refOf(point: string, field: string, last: Last | undefined): Ref {
  if (last !== undefined && last !== "last") throw new TypeError("no such reply");
  return { point: text(point), field: text(field), ...(last === undefined ? {} : { last: true }) };
}

/** Asks the scope at the place meant; without such a place it does not apply. */
export function asked<T>(
  point: string,
  field: string,
  place: PlaceNode,
  ask: (scope: Scope, ref: Ref, place: string, at: At) => Outcome<T>,
  last?: Last,
): Run<T> {
  const ref = refOf(point, field, last);
  if (place === 0) return (scope, at) => ask(scope, ref, at[0] ?? "", at);
  const where = placeOf(place);
  return (scope, at) => {
    const there = where(scope, at);
    return there === undefined ? NOT_APPLICABLE : ask(scope, ref, there, at);
  };
}
