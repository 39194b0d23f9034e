/** Reads untyped JSON by shapes: what does not fit is told with its path and what was expected. Knows no section. */
import { type Problem, problem } from "../../core/terms/index.js";

/** Where in the file is being read, and what is wrong so far. */
export interface At {
  readonly path: string;
  readonly problems: Problem[];
}

/** One step further in: `jobs[2].minutes`. */
export const inside = (at: At, step: string | number): At => ({
  problems: at.problems,
  path: typeof step === "number" ? `${at.path}[${step}]` : at.path === "" ? step : `${at.path}.${step}`,
});

export type Fields = Readonly<Record<string, unknown>>;

/** An object with named fields; undefined for anything else. */
export function asFields(value: unknown): Fields | undefined {
  // an object from JSON has text keys; what they hold is read one by one
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Fields) : undefined;
}

/** What a shape made of a value; undefined where it is faulty, which is told. */
export type Read<T> = { readonly value: T } | undefined;

export interface Shape<T> {
  readonly read: (value: unknown, at: At) => Read<T>;
}
export type ValueOf<S> = S extends Shape<infer T> ? T : never;

const LONGEST = 40;

function refuse(value: unknown, at: At, expected: string): undefined {
  const text = typeof value === "string" ? `“${value}”` : JSON.stringify(value);
  const code = value === undefined || value === null ? "plan-file.missing" : "plan-file.expected";
  const found = text === undefined || text.length <= LONGEST ? `${text}` : `${text.slice(0, LONGEST)}…`;
  at.problems.push(problem(code, { path: at.path }, { found, expected }));
  return undefined;
}

/** A shape for one value, by what it makes of it. */
export const one = <T>(expected: string, make: (value: unknown) => T | undefined): Shape<T> => ({
  read: (value, at) => {
    const made = make(value);
    return made === undefined ? refuse(value, at, expected) : { value: made };
  },
});

const asNumber = (value: unknown): number | undefined => {
  const number = typeof value === "string" && value.trim() !== "" ? Number(value) : value;
  return typeof number === "number" && Number.isFinite(number) ? number : undefined;
};
const asWhole = (value: unknown, least: number): number | undefined => {
  const number = asNumber(value);
  return number !== undefined && Number.isSafeInteger(number) && number >= least ? number : undefined;
};

/** Whatever stands there. */
export const anything: Shape<unknown> = { read: (value) => ({ value }) };
/** A number, also written as text. */
export const figure = one("a number", asNumber);
export const notNegative = one("a number, nought or more", (value) => {
  const number = asNumber(value);
  return number !== undefined && number >= 0 ? number : undefined;
});
export const positive = one("a number above nought", (value) => {
  const number = asNumber(value);
  return number !== undefined && number > 0 ? number : undefined;
});
export const whole = one("a whole number, nought or more", (value) => asWhole(value, 0));
export const signedWhole = one("a whole number", (value) => asWhole(value, Number.MIN_SAFE_INTEGER));
export const text = one("text", (value) => (typeof value === "string" ? value : undefined));
export const yesNo = one("true or false", (value) => (typeof value === "boolean" ? value : undefined));
/** Text that names something; a number may name it too. */
export const name = one("a name", (value) =>
  typeof value === "number" ? String(value) : typeof value === "string" && value !== "" ? value : undefined,
);
/** One of a closed list of words. */
export const word = <W extends string | number>(...words: readonly W[]): Shape<W> =>
  one(words.map(String).join(", "), (value) => words.find((known) => known === value));

/** What may be missing, or null; then `otherwise`. */
export function optional<T>(shape: Shape<T>): Shape<T | undefined>;
export function optional<T, D>(shape: Shape<T>, otherwise: D): Shape<T | D>;
export function optional<T, D>(shape: Shape<T>, otherwise?: D): Shape<T | D | undefined> {
  return {
    read: (value, at) => (value === undefined || value === null ? { value: otherwise } : shape.read(value, at)),
  };
}

/** A list; every faulty entry is told. */
export const list = <T>(shape: Shape<T>, least = 0): Shape<readonly T[]> => ({
  read: (value, at) => {
    if (!Array.isArray(value)) return refuse(value, at, "a list");
    if (value.length < least) return refuse(value, at, `a list of at least ${least}`);
    const read = value.map((entry: unknown, i) => shape.read(entry, inside(at, i)));
    const sound = read.flatMap((entry) => (entry === undefined ? [] : [entry.value]));
    return sound.length === read.length ? { value: sound } : undefined;
  },
});

/** Values under names of their own. */
export const named = <T>(shape: Shape<T>): Shape<readonly (readonly [string, T])[]> => ({
  read: (value, at) => {
    const given = asFields(value);
    if (given === undefined) return refuse(value, at, "an object");
    const read = Object.entries(given).map(([key, entry]) => ({ key, got: shape.read(entry, inside(at, key)) }));
    const sound = read.flatMap(({ key, got }) => (got === undefined ? [] : [[key, got.value] as const]));
    return sound.length === read.length ? { value: sound } : undefined;
  },
});

/** An object by its fields; others are passed over. Every faulty field is told. */
export const fields = <const S extends Readonly<Record<string, Shape<unknown>>>>(
  shapes: S,
): Shape<{ readonly [K in keyof S]: ValueOf<S[K]> }> => ({
  read: (value, at) => {
    const given = asFields(value);
    if (given === undefined) return refuse(value, at, "an object");
    const read = Object.entries(shapes).map(([key, shape]) => ({ key, got: shape.read(given[key], inside(at, key)) }));
    if (read.some(({ got }) => got === undefined)) return undefined;
    // every field was read by the shape of its own name
    const made = Object.fromEntries(read.map(({ key, got }) => [key, got?.value]));
    return { value: made as { readonly [K in keyof S]: ValueOf<S[K]> } };
  },
});
