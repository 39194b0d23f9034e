/**
 * The usual shapes of a condition as data, for who puts one together from rows instead of writing it. What is said here
 * is how a condition is written, not whether its names exist: `compile` judges that.
 */
import type { Grade } from "../terms/index.js";
import type { Comparison } from "./plan.js";

/** Signs a comparison may have, in the order they are offered. */
export const SIGNS = ["==", "!=", "<", "<=", ">", ">="] as const satisfies readonly Comparison[];

/** The place a quantifier goes through, and the one of the quantifier inside it: they stand first in `at`. */
export const EACH = "each";
export const EACH_WITHIN = "each-within";

/** What a term reads: a point's field, a derived value, or a car fact (`car.brakes`). */
export interface Asked {
  readonly name: string;
  /** Where: "" here, a relation (`opposite`), `each` within a quantifier, a chain joined by points. */
  readonly at: string;
  /** What it was at the visit before, or how far back in km that lies; absent: what it is now. */
  readonly when?: "last" | "since";
}

/** A reading with a fixed factor. */
export interface Scaled {
  readonly factor: number;
  readonly of: Asked;
}

/** Places a quantifier goes through: all of one kind, or those a relation names. */
export type PlaceList = { readonly kind: string } | { readonly relation: string };

/** One term; `not` turns it round. */
export type Term = { readonly not?: true } & (
  | { readonly is: "yes"; readonly of: Asked }
  | { readonly is: "word"; readonly of: Asked; readonly sign: "==" | "!="; readonly word: string }
  | { readonly is: "one-of"; readonly of: Asked; readonly words: readonly (string | number)[] }
  | { readonly is: "includes"; readonly of: Asked; readonly word: string }
  | { readonly is: "figure"; readonly of: Scaled; readonly sign: Comparison; readonly than: number | Scaled }
  | { readonly is: "band"; readonly of: Asked; readonly sign: Comparison; readonly grade: Grade }
  | { readonly is: "more"; readonly of: Scaled; readonly than: Scaled }
  | { readonly is: "unanswered"; readonly of: Asked }
  | { readonly is: "found"; readonly fault: string; readonly at: string }
  /** With nothing asked of them: that there are such places. */
  | { readonly is: "places"; readonly list: PlaceList; readonly every: boolean; readonly hold: Condition | null }
  | { readonly is: "group"; readonly hold: Condition }
);

/** Terms joined: all of them, any of them, or at least so many. One alone is always `all`. */
export interface Condition {
  readonly join: "all" | "any" | number;
  readonly terms: readonly Term[];
}

/** Groups and quantifiers inside one another; deeper is read as text. */
export const DEEPEST_GROUPS = 4;

/**
 * The same condition as reading its text would give it: groups that join as their surroundings do are dissolved, one
 * term alone stands without a group.
 */
export function tidy({ join, terms }: Condition): Condition {
  const flat = terms.map(tidyTerm).flatMap((term) => {
    if (term.is !== "group" || term.not) return [term];
    const { hold } = term;
    return typeof join === "string" && (hold.join === join || hold.terms.length === 1) && typeof hold.join === "string"
      ? hold.terms
      : [term];
  });
  const [only] = flat;
  if (typeof join === "number" || flat.length !== 1 || only === undefined) return { join, terms: flat };
  return only.is === "group" && !only.not ? only.hold : { join: "all", terms: flat };
}

function tidyTerm(term: Term): Term {
  if (term.is === "places") return term.hold === null ? term : { ...term, hold: tidy(term.hold) };
  if (term.is !== "group") return term;
  const hold = tidy(term.hold);
  const [only] = hold.terms;
  // One term in a group is that term, unless both would turn it round.
  if (typeof hold.join === "string" && hold.terms.length === 1 && only && !(only.not && term.not))
    return term.not ? { ...only, not: true } : only;
  return { ...term, hold };
}
