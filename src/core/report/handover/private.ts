/**
 * Takes out of a buyer's version what is nobody's business but the seller's: decisions, signatures, who was told, facts that lead to
 * a person, and the names of people wherever they stand in free words. Pictures cannot be read here and go as given.
 */
import type { DoneTold, HandoverInput } from "./input.js";

const STRUCK = "…";
/** A single letter is no name, and would be struck out of half the words there are. */
const SHORTEST = 2;

export function withoutPersons(input: HandoverInput): HandoverInput {
  const lookers = new Set(input.visit.lookers ?? []);
  const told = [
    ...input.jobs.flatMap(({ decision }) => [decision?.who ?? [], decision?.signed?.who ?? []].flat()),
    ...(input.signatures ?? []).map(({ who }) => who),
  ];
  const names = [...(input.personal ?? []), ...told, ...(input.release?.who === undefined ? [] : [input.release.who])];
  const strike = striking(names.map((one) => one.trim()).filter((one) => one.length >= SHORTEST && !lookers.has(one)));
  const { release, personal: _, signatures: _signatures, ...kept } = input;
  return struck(
    {
      ...kept,
      car: { ...input.car, facts: input.car.facts.filter(({ personal }) => personal !== true) },
      ...(input.done === undefined ? {} : { done: input.done.map((one) => nameless(one, lookers)) }),
      jobs: input.jobs.map(({ decision: _decision, ...job }) => job),
      cautions: input.cautions.map(({ toldAt: _toldAt, ...caution }) => caution),
      ...(release === undefined ? {} : { release: { ...release, who: undefined } }),
    },
    strike,
  );
}

/** Who did it and who looked at it a second time; names of who looked at the car stay. */
const nameless = ({ by, look, ...one }: DoneTold, lookers: ReadonlySet<string>): DoneTold => ({
  ...one,
  ...(by === undefined || !lookers.has(by) ? {} : { by }),
  look: { ...look, who: look.who.filter((name) => lookers.has(name)) },
});

/** Names, longest first, as whole words in either case. */
function striking(names: readonly string[]): (text: string) => string {
  if (names.length === 0) return (text) => text;
  const either = [...names]
    .sort((a, b) => b.length - a.length)
    .map((one) => one.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"))
    .join("|");
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${either})(?![\\p{L}\\p{N}])`, "giu");
  return (text) => text.replace(pattern, STRUCK);
}

/** Names of things and figures: never free words. */
const NO_WORDS: ReadonlySet<string> = new Set([
  ...["id", "fault", "place", "point", "gate", "caution", "limit", "guards", "rules", "answersTo", "hash"],
  ...[
    "is",
    "on",
    "at",
    "unit",
    "grade",
    "sure",
    "basis",
    "direction",
    "state",
    "for",
    "who",
    "by",
    "signal",
    "lookers",
    "from",
    "word",
  ],
  ...["edition", "engine", "madeAt", "next", "currency", "typed", "couldDecide", "lookAgain", "reaches", "marks"],
]);

/** Every free text of plain data struck through; its shape stays. */
function struck<T>(value: T, strike: (text: string) => string): T {
  const walk = (one: unknown): unknown => {
    if (typeof one === "string") return strike(one);
    if (Array.isArray(one)) return one.map(walk);
    if (typeof one !== "object" || one === null) return one;
    return Object.fromEntries(
      Object.entries(one).map(([key, inner]) => [key, NO_WORDS.has(key) ? inner : walk(inner)]),
    );
  };
  // plain data in, the same shape out: only texts are changed
  return walk(value) as T;
}
