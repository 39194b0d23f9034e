/**
 * What may stand next while somebody writes a condition: names by their spelling or as they are spoken, facts, words in
 * quotes, relations, functions. Looks at the text before the cursor only and needs no parser; judges nothing.
 */
import { GRADES } from "../terms/index.js";
import type { Declarations, FactType, NameType } from "./declarations.js";

/** How names and words are spoken; what has no words of its own is given back as it is. */
export interface Spoken {
  readonly name: (name: string) => string;
  readonly word: (name: string, word: string) => string;
}
export interface Offer {
  /** What takes the place of the text from `from` to `to`. */
  readonly text: string;
  readonly says: string;
}
export interface Completions {
  readonly from: number;
  readonly to: number;
  readonly offers: readonly Offer[];
}

/** So many are offered; more would be searched, not read. */
const MOST = 12;

/** What the language itself can be asked, with what stands in the brackets. */
const BUILT_IN: Readonly<Record<string, string>> = {
  band: "reading",
  clearly_more: "reading, reading",
  median: "reading",
  last: "name",
  since_last_km: "name",
  unanswered: "name",
  found: '"fault"',
  at_least: "n, condition, condition",
  places: '"kind"',
};

/** What fits at the cursor, likeliest first; `from` to `to` is what a chosen one replaces. */
export function completions(text: string, cursor: number, declared: Declarations, spoken: Spoken): Completions {
  const before = text.slice(0, cursor);
  const none = { from: cursor, to: cursor, offers: [] };
  const quote = openQuote(before);
  if (quote !== undefined) return inQuotes(text, cursor, quote, declared, spoken);
  const grade = /\bband\([^()]*(?:\([^()]*\))?[^()]*\)\s*(?:==|!=|<=?|>=?)\s*([a-z]*)$/.exec(before);
  if (grade) return offered(cursor, grade[1] ?? "", GRADES.map(asItIs));
  const wanted = wordsWanted(before);
  if (wanted !== undefined) {
    const words = wordsOf(typeOf(wanted.name, declared));
    const typed = wanted.typed;
    if (words.length > 0)
      return offered(
        cursor,
        typed,
        words.map((word) => ({ text: JSON.stringify(word), says: spoken.word(plain(wanted.name, declared), word) })),
      );
  }
  const several = phrase(before, declared, spoken);
  if (several !== undefined) return several;
  const token = /[A-Za-z_][\w.]*$/.exec(before)?.[0] ?? "";
  const mayBegin = before.trim() === "" || /(?:&&|\|\||[!(,])\s*$/.test(before);
  return token === "" && !mayBegin ? none : named(token, cursor, declared, spoken);
}

const asItIs = (text: string): Offer => ({ text, says: text });

/** Those that begin like what was typed, in spelling or in a spoken word of theirs. */
function offered(cursor: number, typed: string, all: readonly Offer[]): Completions {
  const wanted = typed.toLowerCase().replace(/^"/, "");
  const rank = ({ text, says }: Offer): number => {
    const spelled = text.toLowerCase().replace(/^"/, "");
    if (spelled.startsWith(wanted)) return 0;
    const parts = spelled.split(/[._-]/);
    if (parts.some((part) => part.startsWith(wanted))) return 1;
    return ` ${says.toLowerCase()}`.includes(` ${wanted}`) ? 2 : 3;
  };
  const offers = all
    .map((offer, i) => ({ offer, i, rank: rank(offer) }))
    .filter((one) => one.rank < 3)
    .sort((a, b) => a.rank - b.rank || a.i - b.i)
    .slice(0, MOST)
    .map((one) => one.offer);
  return { from: cursor - typed.length, to: cursor, offers };
}

/** A name being written, with the relations before it left alone. */
function named(token: string, cursor: number, declared: Declarations, spoken: Spoken): Completions {
  if (token.startsWith("car.") && !isRelation("car", declared)) {
    const facts = Object.keys(declared.facts).map((fact) => ({ text: fact, says: spoken.name(`car.${fact}`) }));
    return offered(cursor, token.slice("car.".length), facts);
  }
  const front = placesBefore(token, declared);
  const rest = token.slice(front.length);
  const names = Object.keys(declared.names).map((name) => ({ text: name, says: spoken.name(name) }));
  const relations = [...new Set(declared.relations.map(({ name }) => name))].map((name) => ({
    text: `${name}.`,
    says: spoken.name(name),
  }));
  if (front !== "") return offered(cursor, rest, [...names, ...relations]);
  const facts = Object.keys(declared.facts).map((fact) => ({ text: `car.${fact}`, says: spoken.name(`car.${fact}`) }));
  return offered(cursor, rest, [...names, ...facts, ...relations, ...functionsOf(declared)]);
}

const functionsOf = ({ functions }: Declarations): readonly Offer[] => [
  ...Object.entries(BUILT_IN).map(([name, inside]) => ({ text: `${name}(`, says: `${name}(${inside})` })),
  ...Object.entries(functions).map(([name, { arguments: taken }]) => ({
    text: `${name}(`,
    says: `${name}(${taken.map((one) => `${one.name}: ${one.kind}`).join(", ")})`,
  })),
];

/** Several words as spoken, up to the cursor: "wheel rock". */
function phrase(before: string, declared: Declarations, spoken: Spoken): Completions | undefined {
  const typed = /[A-Za-z][A-Za-z' -]* [A-Za-z' -]*$/.exec(before)?.[0];
  if (typed === undefined) return undefined;
  const wanted = typed.toLowerCase();
  const offers = [...Object.keys(declared.names), ...Object.keys(declared.facts).map((fact) => `car.${fact}`)]
    .map((name) => ({ text: name, says: spoken.name(name) }))
    .filter(({ says }) => says.toLowerCase().includes(wanted.trim()))
    .slice(0, MOST);
  return offers.length === 0 ? undefined : { from: before.length - typed.length, to: before.length, offers };
}

const isRelation = (name: string, { relations }: Declarations): boolean => relations.some((one) => one.name === name);

/** Relations, `here` and the letter of a quantifier at the front, each with its point. */
function placesBefore(token: string, declared: Declarations): string {
  const parts = token.split(".");
  let front = "";
  for (const part of parts.slice(0, -1)) {
    if (!isRelation(part, declared) && part !== "here" && part.length > 1) break;
    front += `${part}.`;
  }
  return front;
}

/** The name without the places before it. */
const plain = (name: string, declared: Declarations): string => name.slice(placesBefore(name, declared).length);

function typeOf(name: string, declared: Declarations): NameType | FactType | undefined {
  const bare = plain(name, declared);
  if (Object.hasOwn(declared.names, bare)) return declared.names[bare]?.type;
  const fact = /^car\.(.+)$/.exec(bare)?.[1];
  return fact !== undefined && Object.hasOwn(declared.facts, fact) ? declared.facts[fact] : undefined;
}

function wordsOf(type: NameType | FactType | undefined): readonly string[] {
  if (type?.is === "word" || type?.is === "words") return type.words;
  return type?.is === "reading" && "results" in type ? (type.results ?? []) : [];
}

/** The name whose words may come now: behind `==`, `!=` or within `in [`. */
function wordsWanted(before: string): { readonly name: string; readonly typed: string } | undefined {
  const found =
    /([A-Za-z_][\w.]*)\)?\s*(?:==|!=)\s*([\w-]*)$/.exec(before) ??
    /([A-Za-z_][\w.]*)\)?\s+in\s*\[(?:\s*"[^"]*"\s*,)*\s*([\w-]*)$/.exec(before);
  const [, name, typed] = found ?? [];
  return name === undefined || typed === undefined ? undefined : { name, typed };
}

/** Where the quotes open that the cursor stands in. */
function openQuote(before: string): number | undefined {
  let open: number | undefined;
  for (let i = 0; i < before.length; i++) {
    if (before[i] === "\\") i++;
    else if (before[i] === '"') open = open === undefined ? i : undefined;
  }
  return open;
}

function inQuotes(text: string, cursor: number, open: number, declared: Declarations, spoken: Spoken): Completions {
  const typed = text.slice(open, cursor);
  const front = text.slice(0, open);
  const quoted = (words: readonly string[], says: (word: string) => string): Completions => {
    const made = offered(
      cursor,
      typed,
      words.map((word) => ({ text: JSON.stringify(word), says: says(word) })),
    );
    return text[cursor] === '"' ? { ...made, to: cursor + 1 } : made;
  };
  if (/\bplaces\($/.test(front)) return quoted(Object.keys(declared.kinds), (kind) => spoken.name(kind));
  if (/\bfound\($/.test(front)) return quoted(declared.faults, (fault) => spoken.name(fault));
  const wanted = wordsWanted(front) ?? wordsBehind(text.slice(cursor));
  if (wanted === undefined) return { from: cursor, to: cursor, offers: [] };
  const bare = plain(wanted.name, declared);
  return quoted(wordsOf(typeOf(wanted.name, declared)), (word) => spoken.word(bare, word));
}

/** `"…" in name`, the cursor before the closing quotes. */
function wordsBehind(after: string): { readonly name: string } | undefined {
  const name = /^[^"]*"\s+in\s+([A-Za-z_][\w.]*)/.exec(after)?.[1];
  return name === undefined ? undefined : { name };
}
