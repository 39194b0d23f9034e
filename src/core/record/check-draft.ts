/** Checks what the app itself is about to keep, and holds what that has in common with checking entries from outside. */
import { type Problem, problem, type Spot } from "../terms/index.js";
import type { Draft } from "./contract.js";
import { isDemo, isStreamName, NAME_PATTERN, parseId, streamKind } from "./identity.js";
import { checkOf, KINDS, type Kinds, kindIn } from "./kinds.js";
import { type Check, count, type Fault, fields, integer, isPlainObject, matches, name, plain } from "./shape.js";

export const stamp = fields({ wall: count, count });
export const named = matches("letters, digits, dot, dash or underscore, 80 at most", NAME_PATTERN);
export const stream: Check = (value, path) =>
  typeof value === "string" && isStreamName(value) ? undefined : { path, expected: "car:…, visit:…, plan:… or house" };
export const fromOne: Check = (value, path) =>
  integer(value, path) ?? (Number(value) >= 1 ? undefined : { path, expected: "a whole number from 1" });

export const said = { at: stamp, by: named, kind: name, v: fromOne, body: plain };
const draft = fields({ stream, nonce: named, ...said }, { act: named });

/** What is wrong with a draft, which has neither writer nor seq yet; codes as `faultsOf` has them. */
export function faultsOfDraft(value: Draft): readonly Problem[] {
  const record: unknown = value;
  if (!isPlainObject(record)) return [problem("record.bad-entry", {}, { expected: "an object" })];
  return told(draft(record, "draft") ?? bodyFault(record, KINDS), record, {});
}

export type Plain = Readonly<Record<string, unknown>>;

/** Where a fault was found, as a problem; without one, whether demo and real are mixed. */
export function told(fault: Fault | undefined, value: Plain, where: Spot): readonly Problem[] {
  if (fault) return [problem("record.bad-entry", { ...where, path: fault.path }, { expected: fault.expected })];
  const own = String(value["stream"]);
  const other = othersOf(value).find((one) => isDemo(one) !== isDemo(own));
  return other === undefined ? [] : [problem("record.demo-mixed", where, { stream: own, other })];
}

/** Bodies of kinds and versions known here must fit; others are kept as they came. */
export function bodyFault(value: Plain, kinds: Kinds): Fault | undefined {
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
    case "picture.after":
      return [String(body["after"])];
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
