/**
 * A draft of one entry of a kind that has a table of its own. Its body is checked here: the store, which a first reply
 * loads, holds only the kinds of cars and visits to their shape.
 */
import type { Act, Bodies, Draft } from "./contract.js";
import type { KindOf, LaterKind } from "./kinds.js";

/** Throws on a body that is none: that is our own mistake, no person's. */
export function draftBy<K extends LaterKind>(
  kinds: { readonly [Kind in K]: KindOf<Kind> },
  { id, by, at, nonce }: Act,
  stream: string,
  kind: K,
  body: Bodies[K],
): Draft {
  const { v, check } = kinds[kind];
  const fault = check(body, "body");
  if (fault) throw new Error(`A draft that is none: ${kind} expects ${fault.expected} at ${fault.path}`);
  return { stream, nonce: nonce(), at, by, act: id, kind, v, body };
}
