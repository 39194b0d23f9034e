/** Checks entries that come from outside: a file, another tab. Refuses to repair any. */
import { type Problem, problem, type Spot } from "../terms/index.js";
import { bodyFault, fromOne, named, said, stamp, stream, told } from "./check-draft.js";
import type { Logged } from "./contract.js";
import { KINDS, type Kinds } from "./kinds.js";
import { fields, isPlainObject } from "./shape.js";

const identity = { stream, writer: named, seq: fromOne, nonce: named };
const stub = fields({ ...identity, at: stamp });
const entry = fields({ ...identity, ...said }, { act: named });

/**
 * What is wrong with something that claims to be an entry or a stub; empty when nothing is. Codes:
 * record.bad-entry {expected} (where.path says where), record.demo-mixed {stream, other}. Bodies of `kinds` are held to
 * their shape; where none are given, those of cars and visits.
 */
export function faultsOf(value: unknown, where: Spot = {}, kinds: Kinds = KINDS): readonly Problem[] {
  if (!isPlainObject(value)) return [problem("record.bad-entry", where, { expected: "an object" })];
  return told(
    Object.hasOwn(value, "kind") ? (entry(value, "entry") ?? bodyFault(value, kinds)) : stub(value, "entry"),
    value,
    where,
  );
}

/** `value`, found without fault, as what it is. */
export function checkedLogged(value: unknown): Logged {
  // Only called with what `faultsOf` found nothing wrong with.
  return value as Logged;
}
