/** What a section of a planning file is, and what all sections share. Works nothing out. */
import type { Problem } from "../../core/terms/index.js";
import { calculate, type Given, TRADE_TABLE } from "../../core/trade/index.js";
import { type At, anything, asFields, type Fields, inside, list, type Shape } from "./shape.js";

/** One kind of question: how it is told from others, and its answer under the section's own field names. */
export interface Section {
  readonly name: string;
  /** Whether a bare value is this section, by its fields. */
  readonly isSection: (value: unknown) => boolean;
  /** The whole section worked out; faulty cases are null and told. */
  readonly answer: (value: unknown, at: At) => unknown;
  /** Whether a bare value is one case of it. */
  readonly isCase?: (given: Fields) => boolean;
  readonly answerCase?: (value: unknown, at: At) => unknown;
}

export type CaseWork = (value: unknown, at: At) => unknown;

/** A case read by its shape, then worked out; null where it is faulty. What is said about it stays beside it. */
export const caseOf =
  <T extends object>(shape: Shape<T>, work: (given: T, at: At, raw: Fields) => object | undefined): CaseWork =>
  (value, at) => {
    const read = shape.read(value, at);
    const raw = asFields(value) ?? {};
    const worked = read && work(read.value, at, raw);
    return worked === undefined ? null : { ...remarks(raw), ...worked };
  };

/** The entries of a list, each worked out by itself. */
export function eachOf(value: unknown, at: At, work: CaseWork): readonly unknown[] | null {
  const read = list(anything).read(value, at);
  return read === undefined ? null : read.value.map((entry, i) => work(entry, inside(at, i)));
}

/** A section that holds its cases in a list under a name: `{src, cases: […]}`. */
export const underName =
  (key: string, work: CaseWork) =>
  (value: unknown, at: At): Fields => {
    const given = asFields(value) ?? {};
    return { ...remarks(given), [key]: eachOf(given[key], inside(at, key), work) };
  };

const REMARKS = ["src", "note", "rule", "unit", "name"];
/** What a file says about itself in words; never a figure. */
export const remarks = (given: Fields): Fields =>
  Object.fromEntries(REMARKS.flatMap((key) => (typeof given[key] === "string" ? [[key, given[key]]] : [])));

/** Whether all these names are there. */
export const has = (value: unknown, ...names: readonly string[]): value is Fields => {
  const given = asFields(value);
  return given !== undefined && names.every((name) => given[name] !== undefined);
};

/** The first entry of a list under a name. */
export function firstOf(value: unknown, key: string): unknown {
  const all: unknown = asFields(value)?.[key];
  return Array.isArray(all) ? all[0] : undefined;
}

/** Whether a list's first entry has all these names. */
export const listHas = (value: unknown, ...names: readonly string[]): boolean =>
  Array.isArray(value) && has(value[0], ...names);

const DIGITS = 9;
/** Without the noise of binary fractions. */
export const tidy = (value: number): number => Number(value.toPrecision(DIGITS));

/** Problems that planning found, told at a place of the file: their sentences name the job or state themselves. */
export function tellAll(problems: readonly Problem[], at: At): void {
  at.problems.push(...problems.map((one) => ({ ...one, where: { path: at.path } })));
}

/** A trade function worked out by its name; what it refuses is told. */
export function reckoned(name: string, given: readonly Given[], at: At): number | undefined {
  const fn = TRADE_TABLE.get(name);
  if (fn === undefined) throw new Error(`no trade function ${name}`);
  const result = calculate(fn, given);
  if (result.ok) return Number(result.value);
  tellAll(result.problems, at);
  return undefined;
}
