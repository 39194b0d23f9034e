/** Reads untyped JSON piece by piece, noting what is wrong and where. Knows no visit. */
import { type Problem, problem } from "../terms/index.js";

/** Collects problems with the path inside the file. */
export interface Noting {
  readonly problems: Problem[];
}

export const note = (at: Noting, code: string, path: string, params: Problem["params"] = {}): undefined => {
  at.problems.push(problem(code, { path }, params));
  return undefined;
};

export type Fields = Readonly<Record<string, unknown>>;

export function asFields(value: unknown): Fields | undefined {
  // an object from JSON has text keys; what they hold is checked one by one
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Fields) : undefined;
}

/** A list, or nothing noted as a problem unless absent. */
export function listIn(of: Fields, key: string, path: string, at: Noting): readonly unknown[] {
  const value = of[key];
  if (value === undefined) return [];
  if (Array.isArray(value)) return value;
  note(at, "visit.not-a-list", `${path}${key}`);
  return [];
}

export const textOf = (value: unknown): string | undefined => (typeof value === "string" ? value : undefined);

/** A finite number, also written as text. */
export function numberOf(value: unknown): number | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? value : undefined;
  if (typeof value !== "string" || value.trim() === "") return undefined;
  const number = Number(value);
  return Number.isFinite(number) ? number : undefined;
}

/** One of a closed list of words, `_` standing for `-`. */
export function wordOf<W extends string>(value: unknown, words: readonly W[]): W | undefined {
  const text = textOf(value)?.replaceAll("_", "-");
  return words.find((w) => w === text);
}

/** Names a few of many, for a message. */
export const some = (all: readonly string[]): readonly string[] => all.slice(0, 12);

/** How an odd value is shown in a message. */
export const shown = (value: unknown): string => {
  const text = typeof value === "string" ? value : (JSON.stringify(value) ?? String(value));
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
};
