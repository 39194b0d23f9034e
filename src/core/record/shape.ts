/** Checks of plain data, small enough for the first screen. Knows shapes only, no kind of entry. */
import { BASES, GRADES } from "../terms/index.js";

/** What is wrong with a value: where, and what was expected there. */
export interface Fault {
  readonly path: string;
  readonly expected: string;
}
export type Check = (value: unknown, path: string) => Fault | undefined;

/** Longest free text, in UTF-16 units; own choice: far above anything typed, far below what fills a phone. */
const TEXT_AT_MOST = 100_000;
const LIST_AT_MOST = 100_000;
/** How deep data of a kind not known here may be nested; own choice. */
const DEPTH_AT_MOST = 32;

const is =
  (expected: string, test: (value: unknown) => boolean): Check =>
  (value, path) =>
    test(value) ? undefined : { path, expected };

export const text = is("text", (v) => typeof v === "string" && v.length <= TEXT_AT_MOST);
/** A text that names something: not empty. */
export const name = is("a name", (v) => typeof v === "string" && v.length > 0 && v.length <= 500);
export const flag = is("true or false", (v) => typeof v === "boolean");
export const number = is("a number", (v) => typeof v === "number" && Number.isFinite(v));
export const count = is("a whole number from 0", (v) => Number.isSafeInteger(v) && Number(v) >= 0);
export const integer = is("a whole number", (v) => Number.isSafeInteger(v));
export const none = is("null", (v) => v === null);

export const matches = (expected: string, pattern: RegExp): Check =>
  is(expected, (v) => typeof v === "string" && pattern.test(v));
export const hash = matches("a SHA-256 in 64 small hex digits", /^[0-9a-f]{64}$/);
/** ISO 8601 date and time with offset or Z. */
export const dateTime = matches(
  "a date and time with offset, like 2026-03-14T09:30+01:00",
  /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])T(?:[01]\d|2[0-3]):[0-5]\d(?::[0-5]\d(?:\.\d{1,3})?)?(?:Z|[+-](?:0\d|1[0-4]):[0-5]\d)$/,
);

export const oneOf = (words: readonly (string | number)[]): Check =>
  is(`one of ${words.join(", ")}`, (v) => (typeof v === "string" || typeof v === "number") && words.includes(v));
export const grade = oneOf(GRADES);
export const basis = oneOf(BASES);

export const listOf =
  (item: Check, atLeast = 0): Check =>
  (value, path) => {
    if (!Array.isArray(value)) return { path, expected: "a list" };
    if (value.length < atLeast || value.length > LIST_AT_MOST)
      return { path, expected: `a list of ${atLeast} to ${LIST_AT_MOST}` };
    for (let i = 0; i < value.length; i++) {
      const fault = item(value[i], `${path}[${i}]`);
      if (fault) return fault;
    }
    return undefined;
  };

export const orNull =
  (check: Check): Check =>
  (value, path) =>
    value === null ? undefined : check(value, path);

/** First check that fits; else what the last one expected. */
export const either =
  (...checks: readonly Check[]): Check =>
  (value, path) => {
    let fault: Fault | undefined;
    for (const check of checks) {
      fault = check(value, path);
      if (!fault) return undefined;
    }
    return fault;
  };

export const both =
  (first: Check, second: Check): Check =>
  (value, path) =>
    first(value, path) ?? second(value, path);

type Fields = Readonly<Record<string, Check>>;
export const isPlainObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** An object with these fields, those, if present, and no other. */
export const fields = (must: Fields, may: Fields = {}): Check => {
  const known = new Map([...Object.entries(may), ...Object.entries(must)]);
  const needed = Object.keys(must);
  return (value, path) => {
    if (!isPlainObject(value)) return { path, expected: "an object" };
    for (const key of needed)
      if (!Object.hasOwn(value, key)) return { path: `${path}.${key}`, expected: "to be there" };
    for (const key of Object.keys(value)) {
      const check = known.get(key);
      if (!check) return { path: `${path}.${key}`, expected: "not to be there" };
      const fault = check(value[key], `${path}.${key}`);
      if (fault) return fault;
    }
    return undefined;
  };
};

/** Object with any keys, each value checked. */
export const mapOf =
  (keys: readonly string[], item: Check): Check =>
  (value, path) =>
    fields({}, Object.fromEntries(keys.map((key) => [key, item])))(value, path);

/** Object told apart by `type`. */
export const byType = (types: Readonly<Record<string, Check>>): Check => {
  const kinds = new Map(Object.entries(types));
  const words = Object.keys(types).join(", ");
  return (value, path) => {
    if (!isPlainObject(value)) return { path, expected: "an object" };
    const check = typeof value["type"] === "string" ? kinds.get(value["type"]) : undefined;
    return check ? check(value, path) : { path: `${path}.type`, expected: `one of ${words}` };
  };
};

/** Plain data of any shape: what JSON can hold, not nested too deep, no key that could reach a prototype. */
export const plain: Check = (value, path) => plainWithin(value, path, DEPTH_AT_MOST);

function plainWithin(value: unknown, path: string, depth: number): Fault | undefined {
  if (value === null || typeof value === "string" || typeof value === "boolean") return undefined;
  if (typeof value === "number") return Number.isFinite(value) ? undefined : { path, expected: "a finite number" };
  if (depth === 0) return { path, expected: `at most ${DEPTH_AT_MOST} levels` };
  if (Array.isArray(value)) {
    for (let i = 0; i < value.length; i++) {
      const fault = plainWithin(value[i], `${path}[${i}]`, depth - 1);
      if (fault) return fault;
    }
    return undefined;
  }
  if (!isPlainObject(value)) return { path, expected: "plain data" };
  for (const key of Object.keys(value)) {
    if (key === "__proto__") return { path: `${path}.${key}`, expected: "not to be there" };
    const fault = plainWithin(value[key], `${path}.${key}`, depth - 1);
    if (fault) return fault;
  }
  return undefined;
}
