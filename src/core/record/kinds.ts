/**
 * The kinds of entry of cars and visits, and those of every stream, in one table: version, streams it may be in, shape
 * of its body, and the slot whose value it gives. A house's and a plan's own kinds come in tables of their own
 * (house-kinds.ts, plan-kinds.ts). Knows nothing of order, undo or erasing.
 */
import { AUDIENCES, GRADES, NON_ANSWERS, PURPOSES, REASONS } from "../terms/index.js";
import type { Bodies, Entry, IdText, Kind } from "./contract.js";
import { faultKey, limitKey, NAME_PATTERN, parseId, type StreamKind, streamKind } from "./identity.js";
import type { LimitKind } from "./limit-bodies.js";
import type { PictureKind } from "./picture-bodies.js";
import type { PlanBodies } from "./plan-bodies.js";
import {
  basis,
  both,
  byType,
  type Check,
  count,
  dateTime,
  either,
  fields,
  flag,
  grade,
  hash,
  integer,
  isPlainObject,
  listOf,
  mapOf,
  matches,
  name,
  none,
  number,
  oneOf,
  orNull,
  plain,
  text,
} from "./shape.js";

const id: Check = (value, path) =>
  typeof value === "string" && parseId(value) ? undefined : { path, expected: "an entry id" };
export const replaces = listOf(id);
const carName = matches("a car stream", /^car:[A-Za-z0-9._-]{1,80}$/);
export const visitName = matches("a visit stream", /^visit:[A-Za-z0-9._-]{1,80}$/);
export const frozen = fields({ id: name, edition: name, label: text, blob: hash });
const odometer = { value: name, unit: name };
const judged = { sheets: listOf(frozen), before: hash, after: hash, engine: name };
const spot = { point: name, place: name, state: name };
const person = fields({ id: matches("a person id", NAME_PATTERN), name: text });

const gauge = fields({ resolution: number, error: number }, { id: name });
const replyValue = byType({
  words: fields({ type: oneOf(["words"]), words: listOf(name, 1) }),
  reading: fields({ type: oneOf(["reading"]), values: listOf(name, 1), unit: text }, { gauge }),
  count: fields({ type: oneOf(["count"]), count: integer }),
  yes: fields({ type: oneOf(["yes"]), yes: flag }),
  "date-code": fields({ type: oneOf(["date-code"]), text: name }),
  "non-answer": fields(
    { type: oneOf(["non-answer"]), nonAnswer: oneOf(NON_ANSWERS) },
    { reason: oneOf(REASONS), words: text },
  ),
});
const replyKey = fields({ point: name, place: name, state: text, field: name });

/** Hours as typed: plain decimal, at most three digits before the point. */
const job = fields({ words: name }, { hours: matches("hours", /^\d{1,3}(?:\.\d{1,2})?$/) });
const free = fields({ place: name, words: name, grade, reason: text, mustStand: flag }, { job });

/** A non-answer is about the whole point, and nothing else is. */
const fieldFits: Check = (body, path) => {
  if (!isPlainObject(body) || !isPlainObject(body["key"]) || !isPlainObject(body["value"])) return undefined;
  const whole = body["key"]["field"] === "*";
  if (whole === (body["value"]["type"] === "non-answer")) return undefined;
  return { path: `${path}.key.field`, expected: whole ? "the field answered" : "* for a non-answer" };
};

const carLimit = fields(
  { limit: name, unit: text, basis },
  { place: name, value: name, bands: mapOf(GRADES, name), grade, source: text },
);
const limitFits: Check = (body, path) => {
  if (!isPlainObject(body) || !isPlainObject(body["limit"])) return undefined;
  const { limit, place, value, bands } = body["limit"];
  const key = typeof place === "string" ? `${limit}@${place}` : limit;
  if (body["key"] !== key) return { path: `${path}.key`, expected: String(key) };
  if ((value === undefined) === (bands === undefined))
    return { path: `${path}.limit`, expected: "either value or bands" };
  return undefined;
};

const placeChange = either(
  fields({ remove: name }),
  both(plain, (value, path) => {
    const add = isPlainObject(value) && Object.keys(value).length === 1 ? value["add"] : undefined;
    return isPlainObject(add) && typeof add["id"] === "string" ? undefined : { path, expected: "add, or remove" };
  }),
);
const placeFits: Check = (body, path) => {
  if (!isPlainObject(body) || !isPlainObject(body["change"])) return undefined;
  const { add, remove } = body["change"];
  const place = isPlainObject(add) ? add["id"] : remove;
  return body["place"] === place ? undefined : { path: `${path}.place`, expected: String(place) };
};

const clock = (more?: Parameters<typeof fields>[1]): Check =>
  fields({ clock: orNull(fields({ from: dateTime, minutes: count }, more)), replaces });

export interface KindOf<K extends Kind> {
  readonly v: number;
  readonly streams: readonly StreamKind[];
  readonly check: Check;
  /** Shapes of the versions before, oldest first: what was written in them still has its effect. */
  readonly older?: readonly Check[];
  /**
   * The slots this body gives a value to. Entries replace one another inside a slot only.
   * None: undo and erase act on entries instead.
   */
  readonly slots: (body: Bodies[K]) => readonly string[];
}
const CAR = ["car"] as const;
const VISIT = ["visit"] as const;
const ANY = ["car", "visit", "house", "plan"] as const;

/** Slot of a reply: all fields of a point at a place in a car state, because a non-answer covers them all. */
export const replySlot = (key: { readonly point: string; readonly place: string; readonly state: string }): string =>
  `reply|${key.point}@${key.place}#${key.state}`;

/** Kinds told of in tables of their own, which a first reply does without. */
export type HouseKind = Extract<Kind, `house.${string}`>;
export type LaterKind = HouseKind | PictureKind | LimitKind | keyof PlanBodies;
/** Those of a car's and a visit's stream begin so: a fold that has not fetched their table keeps them and reports none. */
const TOLD_LATER = /^(picture|limit)\./;

/** Kinds by their names, as a fold is given them. */
export type Kinds = Readonly<
  Record<string, Omit<KindOf<Kind>, "slots"> & { readonly slots: (body: never) => readonly string[] }>
>;

export const KINDS: { readonly [K in Exclude<Kind, LaterKind>]: KindOf<K> } = {
  "car.begun": { v: 1, streams: CAR, check: fields({ name: text }), slots: () => ["name|"] },
  "car.named": { v: 1, streams: CAR, check: fields({ name: text, replaces }), slots: () => ["name|"] },
  "car.fact": {
    v: 1,
    streams: CAR,
    check: fields({ fact: name, value: either(text, number, flag, none), replaces }),
    slots: (b) => [`fact|${b.fact}`],
  },
  "car.place": {
    v: 1,
    streams: CAR,
    check: both(fields({ place: name, change: orNull(placeChange), replaces }), placeFits),
    slots: (b) => [`place|${b.place}`],
  },
  "car.place-named": {
    v: 1,
    streams: CAR,
    check: fields({ place: name, name: orNull(name), replaces }),
    slots: (b) => [`place-name|${b.place}`],
  },
  "car.limit": {
    v: 1,
    streams: CAR,
    check: both(fields({ key: name, limit: orNull(carLimit), replaces }), limitFits),
    slots: (b) => [`limit|${b.limit ? limitKey(b.limit) : b.key}`],
  },
  "car.same": { v: 1, streams: CAR, check: fields({ other: carName }), slots: () => ["same-car|"] },
  "car.same-occasion": {
    v: 1,
    streams: CAR,
    check: fields({ visits: listOf(visitName, 2) }),
    slots: () => ["same-occasion|"],
  },
  "visit.opened": {
    v: 1,
    streams: VISIT,
    check: fields(
      {
        car: carName,
        purpose: oneOf(PURPOSES),
        who: oneOf(AUDIENCES),
        on: dateTime,
        sheets: listOf(frozen),
        common: hash,
        limits: hash,
      },
      { odometer: fields(odometer) },
    ),
    slots: (b) => (b.odometer ? ["opened|", "on|", "odometer|"] : ["opened|", "on|"]),
  },
  "visit.dated": { v: 1, streams: VISIT, check: fields({ on: dateTime, replaces }), slots: () => ["on|"] },
  "visit.odometer": { v: 1, streams: VISIT, check: fields({ ...odometer, replaces }), slots: () => ["odometer|"] },
  "visit.complaint": {
    v: 1,
    streams: VISIT,
    check: fields({ text, replaces }, { complaint: name }),
    slots: () => ["complaint|"],
  },
  "visit.sheet-added": { v: 1, streams: VISIT, check: frozen, slots: () => ["sheet-added|"] },
  reply: {
    v: 1,
    streams: VISIT,
    check: both(fields({ key: replyKey, value: orNull(replyValue), replaces }), fieldFits),
    slots: (b) => [replySlot(b.key)],
  },
  note: { v: 1, streams: ["car", "visit"], check: fields({ text, replaces }, spot), slots: () => ["note|"] },
  picture: {
    v: 1,
    streams: ["car", "visit"],
    check: fields(
      { blob: hash, type: name, width: count, height: count, replaces },
      { ...spot, thumb: hash, fault: name, unreadable: flag, name: text },
    ),
    slots: () => ["picture|"],
  },
  sound: {
    v: 1,
    streams: VISIT,
    check: fields({ blob: hash, type: name, ms: count, ...spot, replaces }, { cut: flag }),
    slots: () => ["sound|"],
  },
  regrade: {
    v: 1,
    streams: VISIT,
    check: fields({ fault: name, place: name, grade: orNull(grade), reason: text, replaces }),
    slots: (b) => [`regrade|${faultKey(b.fault, b.place)}`],
  },
  finding: {
    v: 1,
    streams: VISIT,
    check: fields({ finding: matches("a finding's name", NAME_PATTERN), found: orNull(free), replaces }),
    slots: (b) => [`finding|${b.finding}`],
  },
  "visit.clock": {
    v: 2,
    streams: VISIT,
    check: clock({ stopped: dateTime }),
    older: [clock()],
    slots: () => ["clock|"],
  },
  "caution.told": { v: 1, streams: VISIT, check: fields({ caution: name }), slots: () => ["told|"] },
  "visit.closed": {
    v: 1,
    streams: VISIT,
    check: fields({ assessment: hash, engine: name, replaces }),
    slots: () => ["closing|"],
  },
  "visit.reopened": { v: 1, streams: VISIT, check: fields({ reason: text, replaces }), slots: () => ["closing|"] },
  "visit.judged-again": {
    v: 2,
    streams: VISIT,
    check: fields({ ...judged, common: hash, limits: hash }),
    older: [fields(judged)],
    slots: () => ["judged-again|"],
  },
  person: { v: 1, streams: ANY, check: fields({ person, replaces }), slots: (b) => [`person|${b.person.id}`] },
  undo: { v: 1, streams: ANY, check: fields({ of: listOf(id, 1) }), slots: () => [] },
  erase: {
    v: 1,
    streams: ANY,
    check: fields({ of: listOf(fields({ id }, { replaced: replaces }), 1) }),
    slots: () => [],
  },
};

/** What is known of a kind here; undefined where these tables do not tell of it. */
export const kindIn = (kinds: Kinds, kind: string): Kinds[string] | undefined =>
  Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;

/** The shape a body of this version has to have; `v` is at most the version known here. */
export const checkOf = (kind: Kinds[string], v: number): Check => kind.older?.[v - 1] ?? kind.check;

/** An entry whose kind, version and body are known here. */
export type Known = {
  readonly [K in Kind]: Omit<Entry, "kind" | "body"> & { readonly kind: K; readonly body: Bodies[K] };
}[Kind];

export type WhyUnknown = "kind" | "newer" | "body" | "stream";

/** Whether an entry not known is left to a table not fetched; in a fold by another table it is unknown like any other. */
export const isToldLater = ({ kind }: Entry, why: WhyUnknown, kinds: Kinds): boolean =>
  why === "kind" && kinds === KINDS && TOLD_LATER.test(kind);

/** Entries found known before, and by which kinds. Entries are never changed, so what was found stays true. */
const found = new WeakMap<Entry, Kinds>();

/** Why this entry has no effect here; undefined when it is known. */
export function whyUnknown(entry: Entry, kinds: Kinds = KINDS): WhyUnknown | undefined {
  if (found.get(entry) === kinds) return undefined;
  const kind = kindIn(kinds, entry.kind);
  if (!kind) return "kind";
  if (entry.v > kind.v) return "newer";
  if (!kind.streams.includes(streamKind(entry.stream))) return "stream";
  if (checkOf(kind, entry.v)(entry.body, "body")) return "body";
  found.set(entry, kinds);
  return undefined;
}

/** The slots an entry gives a value to. */
export function slotsOf(entry: Known, kinds: Kinds = KINDS): readonly string[] {
  // The table pairs each kind with its own body; the compiler cannot follow the pair through the lookup.
  const slots = kindIn(kinds, entry.kind)?.slots as ((body: unknown) => readonly string[]) | undefined;
  return slots?.(entry.body) ?? [];
}

/** The entry with its body's type, where it is known here. */
export function known(entry: Entry, kinds: Kinds = KINDS): Known | undefined {
  // `whyUnknown` has just checked kind, version and body against the table.
  return whyUnknown(entry, kinds) ? undefined : (entry as Known);
}

/** What an entry says it replaces; nothing for kinds that replace nothing. */
export function replacesOf(entry: Known): readonly IdText[] {
  return "replaces" in entry.body ? entry.body.replaces : [];
}
