/**
 * A row of a condition as it is changed: what can be asked of a name, and the term that comes of a choice. Pure; what it
 * makes is judged by the checker like any other text.
 */
import type { Asked, Condition, FactType, NameType, Term } from "../../core/expr/work.js";
import { GRADES, type Grade } from "../../core/terms/index.js";
import { kindAt, relationsFrom, type SheetNames } from "./sheet-names.js";

/** What a row can say of one name. */
export type Shape =
  | ("is" | "is-not" | "one-of" | "none-of" | "includes" | "lacks" | "yes" | "no" | "unanswered" | "answered")
  | ("at-least" | "inside" | "more-than-last" | "more-than-twin")
  | ("==" | "!=" | "<" | "<=" | ">" | ">=");

const COUNTED = ["==", "!=", "<", "<=", ">", ">="] as const;

/** What can be asked of such a name. `twin`: there is an opposite place; `silence`: the rule rests on what was not said. */
export function shapesOf(
  type: NameType | FactType,
  { twin, silence, fact }: { readonly twin: boolean; readonly silence: boolean; readonly fact: boolean },
): readonly Shape[] {
  const quiet: readonly Shape[] = silence && !fact ? ["unanswered", "answered"] : [];
  switch (type.is) {
    case "word":
      return ["is", "is-not", "one-of", "none-of", ...quiet];
    case "words":
      return ["includes", "lacks", ...quiet];
    case "yes":
      return ["yes", "no", ...quiet];
    case "count":
      return [...COUNTED, ...quiet];
    case "reading": {
      const results: readonly Shape[] = "results" in type && type.results ? ["is", "is-not"] : [];
      if (fact) return [];
      return [
        "at-least",
        "inside",
        "more-than-last",
        ...(twin ? (["more-than-twin"] as const) : []),
        ...results,
        ...quiet,
      ];
    }
    default:
      return quiet;
  }
}

/** Words a name may be. */
export function wordsOf(type: NameType | FactType): readonly string[] {
  if (type.is === "word" || type.is === "words") return type.words;
  return type.is === "reading" && "results" in type ? (type.results ?? []) : [];
}

/** What a term says of its name; undefined where it is of a shape no row can show. */
export function shapeOf(term: Term): Shape | undefined {
  const not = term.not === true;
  switch (term.is) {
    case "yes":
      return not ? "no" : "yes";
    case "word":
      return (term.sign === "==") === not ? "is-not" : "is";
    case "one-of":
      return not ? "none-of" : "one-of";
    case "includes":
      return not ? "lacks" : "includes";
    case "unanswered":
      return not ? "answered" : "unanswered";
    case "figure":
      return !not && term.of.factor === 1 && typeof term.than === "number" ? term.sign : undefined;
    case "band":
      if (not) return undefined;
      if (term.sign === ">=") return "at-least";
      return term.sign === "<" && term.grade === "advisory" ? "inside" : undefined;
    case "more": {
      const { of, than } = term;
      if (not || of.factor !== 1 || than.factor !== 1 || of.of.name !== than.of.name || of.of.at !== than.of.at)
        return isTwin(term) && !not ? "more-than-twin" : undefined;
      return than.of.when === "last" && of.of.when === undefined ? "more-than-last" : undefined;
    }
    default:
      return undefined;
  }
}

const isTwin = ({ of, than }: Extract<Term, { is: "more" }>): boolean =>
  of.factor === 1 &&
  than.factor === 1 &&
  of.of.name === than.of.name &&
  than.of.at === twinOf(of.of.at) &&
  of.of.when === undefined &&
  than.of.when === undefined;
const twinOf = (at: string): string => (at === "" ? "opposite" : `${at}.opposite`);

/** The name a row is about. */
export function subjectOf(term: Term): Asked | undefined {
  switch (term.is) {
    case "figure":
    case "more":
      return term.of.of;
    case "found":
    case "places":
    case "group":
      return undefined;
    default:
      return term.of;
  }
}

/** What stood in the row before and may stay: the words chosen, the grade, the figure. */
interface Kept {
  readonly words: readonly string[];
  readonly grade: Grade;
  readonly figure: number;
}
function keptOf(term: Term | undefined, allowed: readonly string[]): Kept {
  const said =
    term?.is === "word" || term?.is === "includes" ? [term.word] : term?.is === "one-of" ? term.words.map(String) : [];
  const words = said.filter((word) => allowed.includes(word));
  return {
    words: words.length > 0 ? words : allowed.slice(0, 1),
    grade: term?.is === "band" ? term.grade : "minor",
    figure: term?.is === "figure" && typeof term.than === "number" ? term.than : 1,
  };
}

/** The term that says `shape` of a name; what fits of the term before stays. */
export function termOf(of: Asked, type: NameType | FactType, shape: Shape, before?: Term): Term {
  const { words, grade, figure } = keptOf(before, wordsOf(type));
  const [word = ""] = words;
  const one = { factor: 1, of };
  switch (shape) {
    case "is":
    case "is-not":
      return { is: "word", of, sign: shape === "is" ? "==" : "!=", word };
    case "one-of":
      return { is: "one-of", of, words };
    case "none-of":
      return { not: true, is: "one-of", of, words };
    case "includes":
      return { is: "includes", of, word };
    case "lacks":
      return { not: true, is: "includes", of, word };
    case "yes":
      return { is: "yes", of };
    case "no":
      return { not: true, is: "yes", of };
    case "unanswered":
      return { is: "unanswered", of };
    case "answered":
      return { not: true, is: "unanswered", of };
    case "at-least":
      return { is: "band", of, sign: ">=", grade };
    case "inside":
      return { is: "band", of, sign: "<", grade: GRADES[0] };
    case "more-than-last":
      return { is: "more", of: one, than: { factor: 1, of: { ...of, when: "last" } } };
    case "more-than-twin":
      return { is: "more", of: one, than: { factor: 1, of: { ...of, at: twinOf(of.at) } } };
    default:
      return { is: "figure", of: one, sign: shape, than: figure };
  }
}

/** Where a name can be read from a place of `scope`: here, and where one relation leads. `from`: what stands before. */
export function placesFor(
  names: SheetNames,
  scope: string,
  wanted: string,
  from = "",
): readonly { readonly at: string; readonly relation: string }[] {
  const reads = (kind: string): boolean =>
    wanted === "" || kind === wanted || (names.declared.kinds[kind]?.includes(wanted) ?? false);
  const here = reads(scope) ? [{ at: from, relation: "" }] : [];
  const led = relationsFrom(names, scope, false).flatMap(({ name, to }) =>
    wanted !== "" && name !== scope && reads(to)
      ? [{ at: from === "" ? name : `${from}.${name}`, relation: name }]
      : [],
  );
  return [...here, ...led];
}

/** Whether a name asked at such a place has a twin on the other side. */
export const hasTwin = (names: SheetNames, scope: string, kind: string): boolean =>
  kindAt(names, scope, ["opposite"]) !== undefined && (kind === scope || kind === "");

/** The first row somebody begins with: the first name that can be read there. */
export function firstTerm(names: SheetNames, scope: string, at: string): Term | undefined {
  for (const thing of names.at(scope)) {
    const [shape] = shapesOf(thing.type, { twin: false, silence: false, fact: thing.kind === "" });
    if (shape) return termOf({ name: thing.name, at: thing.kind === "" ? "" : at }, thing.type, shape);
  }
  return undefined;
}

/** The condition with one of its terms changed, or taken out. */
export function withTerm(condition: Condition, index: number, to: Term | undefined): Condition {
  const terms = condition.terms.flatMap((term, i) => (i === index ? (to ?? []) : [term]));
  return { ...condition, terms };
}
