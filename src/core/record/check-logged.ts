/** Checks entries that come from outside: a file, another tab, the app's own drafts. Refuses to repair any. */
import { type Problem, problem, type Spot } from "../terms/index.js";
import type { Draft, Logged } from "./contract.js";
import { isDemo, isStreamName, NAME_PATTERN, parseId, streamKind } from "./identity.js";
import { checkOf, KINDS, type Kinds, kindIn } from "./kinds.js";
import { type Check, count, type Fault, fields, integer, isPlainObject, matches, name, plain } from "./shape.js";

const stamp = fields({ wall: count, count });
const named = matches("letters, digits, dot, dash or underscore, 80 at most", NAME_PATTERN);
const stream: Check = (value, path) =>
  typeof value === "string" && isStreamName(value) ? undefined : { path, expected: "car:…, visit:…, plan:… or house" };
const fromOne: Check = (value, path) =>
  integer(value, path) ?? (Number(value) >= 1 ? undefined : { path, expected: "a whole number from 1" });

const identity = { stream, writer: named, seq: fromOne, nonce: named };
const stub = fields({ ...identity, at: stamp });
const said = { at: stamp, by: named, kind: name, v: fromOne, body: plain };
const entry = fields({ ...identity, ...said }, { act: named });
const draft = fields({ stream, nonce: named, ...said }, { act: named });

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

/** The same for a draft, which has neither writer nor seq yet. */
export function faultsOfDraft(value: Draft): readonly Problem[] {
  const record: unknown = value;
  if (!isPlainObject(record)) return [problem("record.bad-entry", {}, { expected: "an object" })];
  return told(draft(record, "draft") ?? bodyFault(record, KINDS), record, {});
}

/** `value`, found without fault, as what it is. */
export function checkedLogged(value: unknown): Logged {
  // Only called with what `faultsOf` found nothing wrong with.
  return value as Logged;
}

type Plain = Readonly<Record<string, unknown>>;

function told(fault: Fault | undefined, value: Plain, where: Spot): readonly Problem[] {
  if (fault) return [problem("record.bad-entry", { ...where, path: fault.path }, { expected: fault.expected })];
  const own = String(value["stream"]);
  const other = othersOf(value).find((one) => isDemo(one) !== isDemo(own));
  return other === undefined ? [] : [problem("record.demo-mixed", where, { stream: own, other })];
}

/** Bodies of kinds and versions known here must fit; others are kept as they came. */
function bodyFault(value: Plain, kinds: Kinds): Fault | undefined {
  const { kind, v, body } = value;
  const known = kindIn(kinds, String(kind));
  if (!known || Number(v) > known.v) return undefined;
  const own = String(value["stream"]);
  if (!known.streams.includes(streamKind(own))) return { path: "entry.kind", expected: `a kind of the stream ${own}` };
  return (
    checkOf(known, Number(v))(body, "body") ?? (kind === "undo" || kind === "erase" ? strayIn(body, own) : undefined)
  );
}

/** Undo and erase reach into their own stream only. */
function strayIn(body: unknown, own: string): Fault | undefined {
  const of: unknown = isPlainObject(body) ? body["of"] : undefined;
  if (!Array.isArray(of)) return undefined;
  const stray = of.findIndex((one: unknown) => {
    const id: unknown = isPlainObject(one) ? one["id"] : one;
    return typeof id === "string" && parseId(id)?.stream !== own;
  });
  return stray < 0 ? undefined : { path: `body.of[${stray}]`, expected: "an entry of the same stream" };
}

/** Streams an entry ties its own to. */
function othersOf(value: Plain): readonly string[] {
  const body = value["body"];
  if (!isPlainObject(body)) return [];
  switch (value["kind"]) {
    case "visit.opened":
      return [String(body["car"])];
    case "plan.begun":
      return [String(body["visit"])];
    case "car.same":
      return [String(body["other"])];
    case "car.same-occasion":
      return Array.isArray(body["visits"]) ? body["visits"].map(String) : [];
    default:
      return [];
  }
}
