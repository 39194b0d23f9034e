/** The usual shapes of a condition as CEL text. Checks no name: what is put in is written. */
import { type Asked, type Condition, EACH, EACH_WITHIN, type PlaceList, type Scaled, type Term } from "./condition.js";

/** Letters for the places of quantifiers, from the outside in, unless a name of the condition begins with one. */
const LETTERS = "cdefghjkmnpqstuvwxyz";

/** The condition as text; `readCondition` gives it back. */
export function writeCondition(condition: Condition): string {
  const taken = new Set(namesIn(condition).map((name) => name.split(".")[0]));
  const free = [...LETTERS].filter((letter) => !taken.has(letter));
  return new Writer(free).whole(condition);
}

class Writer {
  readonly #letters: readonly string[];
  constructor(letters: readonly string[]) {
    this.#letters = letters;
  }

  whole({ join, terms }: Condition, depth = 0): string {
    const parts = terms.map((term) => this.#term(term, depth));
    if (typeof join === "number") return `at_least(${[join, ...parts].join(", ")})`;
    return parts.join(join === "all" ? " && " : " || ");
  }

  #term(term: Term, depth: number): string {
    const text = this.#bare(term, depth);
    return term.not ? `!(${text})` : text;
  }

  #bare(term: Term, depth: number): string {
    switch (term.is) {
      case "yes":
        return this.#asked(term.of);
      case "word":
        return `${this.#asked(term.of)} ${term.sign} ${quoted(term.word)}`;
      case "one-of":
        return `${this.#asked(term.of)} in [${term.words.map(literal).join(", ")}]`;
      case "includes":
        return `${quoted(term.word)} in ${this.#asked(term.of)}`;
      case "figure":
        return `${this.#scaled(term.of)} ${term.sign} ${typeof term.than === "number" ? term.than : this.#scaled(term.than)}`;
      case "band":
        return `band(${this.#asked(term.of)}) ${term.sign} ${term.grade}`;
      case "more":
        return `clearly_more(${this.#scaled(term.of)}, ${this.#scaled(term.than)})`;
      case "unanswered":
        return `unanswered(${this.#asked(term.of)})`;
      case "found":
        return `found(${[quoted(term.fault), ...(term.at === "" ? [] : [this.#place(term.at)])].join(", ")})`;
      case "places": {
        const body = term.hold === null ? "true" : this.whole(term.hold, depth + 1);
        return `${this.#list(term.list)}.${term.every ? "all" : "exists"}(${this.#letters[depth] ?? "c"}, ${body})`;
      }
      case "group": {
        const inside = this.whole(term.hold, depth);
        return typeof term.hold.join === "number" || term.not ? inside : `(${inside})`;
      }
    }
  }

  #asked({ name, at, when }: Asked): string {
    const read = at === "" ? name : `${this.#place(at)}.${name}`;
    if (when === undefined) return read;
    return when === "last" ? `last(${read})` : `since_last_km(${read})`;
  }

  #scaled({ factor, of }: Scaled): string {
    return factor === 1 ? this.#asked(of) : `${factor} * ${this.#asked(of)}`;
  }

  #list(list: PlaceList): string {
    return "kind" in list ? `places(${quoted(list.kind)})` : this.#place(list.relation);
  }

  #place(at: string): string {
    const [first, ...rest] = at.split(".");
    const [outer = "c", inner = "d"] = this.#letters;
    const head = first === EACH ? outer : first === EACH_WITHIN ? inner : (first ?? "");
    return [head, ...rest].join(".");
  }
}

const quoted = (text: string): string => JSON.stringify(text);
const literal = (value: string | number): string => (typeof value === "number" ? String(value) : quoted(value));

/** Every name a condition asks or goes through. */
export function namesIn(condition: Condition): readonly string[] {
  return condition.terms.flatMap((term): readonly string[] => {
    if (term.is === "group") return namesIn(term.hold);
    if (term.is === "places") {
      const list = "relation" in term.list ? [term.list.relation] : [];
      return [...list, ...(term.hold === null ? [] : namesIn(term.hold))];
    }
    if (term.is === "found") return term.at === "" ? [] : [term.at];
    return askedIn(term).flatMap(({ name, at }) => (at === "" ? [name] : [name, at]));
  });
}

/** What one term that is no group reads. */
export function askedIn(term: Term): readonly Asked[] {
  switch (term.is) {
    case "figure":
      return [term.of.of, ...(typeof term.than === "number" ? [] : [term.than.of])];
    case "more":
      return [term.of.of, term.than.of];
    case "found":
    case "places":
    case "group":
      return [];
    default:
      return [term.of];
  }
}
