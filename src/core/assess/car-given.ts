/** Car facts and the limits book laid into a site. Sets aside and tells what does not fit; applies no limit. */
import type { Outcome } from "../expr/run.js";
import type { CarLimit } from "../sheet/run.js";
import { GRADES, type Grade, levelOf, type Problem, problem } from "../terms/index.js";
import { isQuantity, readTyped, toCanonical, unitOf } from "../units/index.js";
import { isBeyond } from "./band.js";
import type { AssessInput, FactValue } from "./contract.js";
import { type BookFigure, type LimitInfo, type Model, plainId } from "./model.js";
import type { FactNode } from "./nodes.js";
import type { Site } from "./site.js";

/** A car fact that stands. */
export interface StandingFact {
  readonly name: string;
  readonly value: FactValue;
  readonly outcome: Outcome;
}

/** By node id of facts. */
export type Facts = readonly (readonly StandingFact[] | undefined)[];
/** By id of the default limit. */
export type Book = ReadonlyMap<string, readonly BookFigure[]>;

export function layFacts(site: Site, input: AssessInput, problems: Problem[]): Facts {
  const out: (StandingFact[] | undefined)[] = [];
  const declared = new Map(site.model.common.facts.map((f) => [plainId(f.id), f]));
  const put = (node: FactNode, value: FactValue) => {
    const fact = declared.get(node.name);
    const outcome = factOutcome(value, fact);
    if (outcome === undefined)
      problems.push(problem("assess.fact-kind", {}, { fact: node.name, value: String(value) }));
    const row = out[node.id] ?? [];
    if (!row.some((s) => s.value === value)) row.push({ name: node.name, value, outcome: outcome ?? node.unknown });
    out[node.id] = row;
  };
  for (const [name, value] of Object.entries(input.car.facts)) put(site.factFor(name), value);
  for (const [name, values] of Object.entries(input.car.otherFacts ?? {}))
    for (const v of values) put(site.factFor(name), v);
  const { country, firstUsed, seat } = input.car;
  const year = firstUsed === undefined ? Number.NaN : Number(firstUsed.slice(0, 4));
  if (country !== undefined) putDefault("country", knownCountry(country.toLowerCase()));
  if (seat !== undefined) putDefault("seat", seat);
  if (Number.isInteger(year)) putDefault("first_used", year);
  return out.map((row) => row?.sort((a, b) => (String(a.value) < String(b.value) ? -1 : 1)));

  /** Countries the sheets know by name; the rest are `other` where that is a word. */
  function knownCountry(country: string): string {
    const words = declared.get("country")?.words ?? [];
    return words.includes("other") && !words.includes(country) ? "other" : country;
  }
  function putDefault(name: string, value: FactValue) {
    const node = site.factFor(name);
    if (out[node.id] === undefined) put(node, value);
  }
}

type FactDeclaration = Model["common"]["facts"][number];
/** What a condition hears of a fact; undefined when the value does not fit what is declared. */
function factOutcome(value: FactValue, fact: FactDeclaration | undefined): Outcome | undefined {
  if (fact === undefined) return value;
  if (fact.kind === "word") return typeof value === "string" && (fact.words ?? []).includes(value) ? value : undefined;
  if (fact.kind === "yes") return typeof value === "boolean" ? value : undefined;
  if (typeof value === "boolean") return undefined;
  const { quantity, unit } = fact;
  if (quantity !== undefined && unit !== undefined && isQuantity(quantity)) {
    if (typeof value === "number") return Number.isFinite(value) ? toCanonical(value, unit, quantity) : undefined;
    const read = readTyped(value, { quantity, unit });
    return read.ok ? read.value.canonical : undefined;
  }
  const number = Number(value);
  return Number.isFinite(number) && value !== "" ? number : undefined;
}

export function layBook(model: Model, figures: readonly CarLimit[], problems: Problem[]): Book {
  const book = new Map<string, BookFigure[]>();
  for (const figure of figures) {
    const over = model.limitById.get(plainId(figure.limit));
    if (over === undefined) {
      problems.push(problem("assess.limit-unknown", {}, { limit: figure.limit }));
      continue;
    }
    const bands = figureBands(figure, over, problems);
    if (bands === undefined) continue;
    const row = book.get(over.limit.id) ?? [];
    row.push({ figure, over, bands });
    book.set(over.limit.id, row);
  }
  return book;
}

/** The figure's own edges; of the default's only the severer ones that lie beyond them stay. */
function figureBands(figure: CarLimit, over: LimitInfo, problems: Problem[]): BookFigure["bands"] | undefined {
  const { quantity } = over.limit;
  const typed = figure.bands ?? (figure.value === undefined ? {} : { [figure.grade ?? "major"]: figure.value });
  const bands: Partial<Record<Grade, number>> = {};
  for (const grade of GRADES) {
    const text = typed[grade];
    if (text === undefined) continue;
    const read =
      isQuantity(quantity) && unitOf(figure.unit, quantity) !== undefined
        ? readTyped(text, { quantity, unit: figure.unit })
        : undefined;
    if (read === undefined || !read.ok) {
      problems.push(problem("assess.figure-not-read", {}, { limit: figure.limit, typed: text, unit: figure.unit }));
      return undefined;
    }
    bands[grade] = read.value.canonical;
  }
  const own = GRADES.filter((g) => bands[g] !== undefined);
  const severest = own[own.length - 1];
  const edge = severest === undefined ? undefined : bands[severest];
  if (severest === undefined || edge === undefined) {
    problems.push(problem("assess.figure-empty", {}, { limit: figure.limit }));
    return undefined;
  }
  for (const grade of GRADES) {
    const stays = over.bands[grade];
    if (levelOf(grade) > levelOf(severest) && stays !== undefined && isBeyond(edge, stays, over.direction))
      bands[grade] = stays;
  }
  return bands;
}
