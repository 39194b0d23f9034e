/** Laws of three-valued conditions: against trying out every way the missing replies could turn out. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { compile } from "../../src/core/expr/author.js";
import { type Evaluate, link, type Outcome, Unknown, type Value } from "../../src/core/expr/run.js";
import {
  type Atom,
  keysOf,
  LAST,
  type Place,
  type Total,
  type Tree,
  total,
  trees,
  treesReadOnce,
  written,
} from "../support/expr-trees.js";
import { type Answer, CORNERS, DECLARED, missingKey, NOT_FITTED, scopeOf, type World } from "../support/expr-world.js";

const SEED = 20_261_107;
/** Milliseconds: a busy machine must not fail a law. */
const PATIENCE = 60_000;
/** Ways tried out per tree: three answers to the power of the missing replies. */
const MOST_MISSING = 5;

const evaluator = (text: string): Evaluate => {
  const made = compile(text, DECLARED, { scope: "corner" });
  if (!made.ok) throw new Error(`${text}: ${JSON.stringify(made.problems)}`);
  const run = link(made.value);
  if (!run.ok) throw new Error(`${text}: ${JSON.stringify(run.problems)}`);
  return run.value;
};

/** What a missing reply may turn out to be: either way for its atom, or not fitted; a fact has no non-answer. */
const domain = (key: string, atom: Atom): readonly Answer[] => {
  const answers = atom.extremes ?? atom.answers;
  return key.startsWith("fact ") ? answers : [...answers, NOT_FITTED];
};
const standing = (key: string, atom: Atom): readonly Answer[] =>
  key.startsWith("fact ") ? atom.answers : [...atom.answers, NOT_FITTED];

type Known = ReadonlyMap<string, Answer>;
const isValue = (answer: Answer): answer is Value =>
  typeof answer !== "symbol" && !(typeof answer === "object" && "u" in answer);

function worldOf(known: Known, corners: readonly string[]): World {
  const facts = new Map<string, Value>();
  const answers = new Map<string, Answer>();
  for (const [key, answer] of known) {
    if (!key.startsWith("fact ")) answers.set(key, answer);
    else if (isValue(answer)) facts.set(key.slice(5), answer);
  }
  return { answers, facts, corners, last: LAST };
}

/** Every way the missing replies could turn out. */
function* completions(known: Known, missing: readonly (readonly [string, Atom])[]): Generator<Known> {
  const [first, ...rest] = missing;
  if (first === undefined) {
    yield known;
    return;
  }
  for (const answer of domain(...first)) yield* completions(new Map([...known, [first[0], answer]]), rest);
}

/** `point.field@place` of a key as the scope names it when missing. */
function asMissing(key: string): string {
  if (key.startsWith("fact ")) return missingKey("car", key.slice(5), "car");
  const [, point = "", field = "", place = ""] = /^(.*)\.([^.@]*)@(.*)$/.exec(key) ?? [];
  return missingKey(point, field, place);
}

const setting = fc.constantFrom<Place>(
  { here: "FR", corners: CORNERS },
  { here: "RL", corners: CORNERS },
  { here: "FR", corners: ["FR"] },
  { here: "FL", corners: ["FL", "FR", "RL"] },
);

/** A tree with some replies known; the keys left open are few enough to try out. */
const openTree = (tree: fc.Arbitrary<Tree>) =>
  fc.tuple(tree, setting, fc.infiniteStream(fc.nat(5))).map(([made, place, stream]) => {
    const known = new Map<string, Answer>();
    const missing: (readonly [string, Atom])[] = [];
    for (const [key, atom] of keysOf(made, place)) {
      const roll = stream.next().value ?? 0;
      const answers = standing(key, atom);
      if (roll >= 3 && missing.length < MOST_MISSING) missing.push([key, atom]);
      else known.set(key, answers[roll % answers.length] ?? atom.answers[0]);
    }
    return { tree: made, place, known, missing };
  });

const plain = (outcome: Outcome) =>
  outcome instanceof Unknown ? { missing: [...outcome.missing].sort(), only: outcome.only } : outcome;

test(
  "[EX39] known exactly when every way the missing replies could turn out agrees",
  () => {
    fc.assert(
      fc.property(openTree(treesReadOnce(3)), ({ tree, place, known, missing }) => {
        const outcome = evaluator(written(tree))(scopeOf(worldOf(known, place.corners)), place.here);
        const ends = new Set<Total>();
        for (const whole of completions(known, missing)) ends.add(total(tree, worldOf(whole, place.corners), place));
        if (ends.size === 1) {
          const [end = null] = ends;
          expect(plain(outcome)).toEqual(end === null ? { missing: [], only: undefined } : end);
        } else {
          const both = ends.has(true) && ends.has(false);
          expect(outcome).toBeInstanceOf(Unknown);
          expect(outcome instanceof Unknown && outcome.only).toBe(both ? undefined : ends.has(true));
          expect(outcome instanceof Unknown && outcome.missing.size).toBeGreaterThan(0);
        }
      }),
      { seed: SEED, numRuns: 1500 },
    );
  },
  PATIENCE,
);

test(
  "[EX40] the missing replies are exactly those that can still change the result",
  () => {
    fc.assert(
      fc.property(openTree(treesReadOnce(3)), ({ tree, place, known, missing }) => {
        const outcome = evaluator(written(tree))(scopeOf(worldOf(known, place.corners)), place.here);
        const ends = [...completions(known, missing)].map((whole) => ({
          whole,
          end: total(tree, worldOf(whole, place.corners), place),
        }));
        const matters = missing.filter(([key]) => {
          // Ways that differ in this reply only, told by all the others.
          const others = missing.map(([other]) => other).filter((other) => other !== key);
          const seen = new Map<string, Total>();
          return ends.some(({ whole, end }) => {
            const rest = others.map((other) => String(whole.get(other))).join("|");
            const before = seen.get(rest);
            seen.set(rest, end);
            return before !== undefined && before !== end;
          });
        });
        const named = outcome instanceof Unknown ? [...outcome.missing].sort() : [];
        expect(named).toEqual(matters.map(([key]) => asMissing(key)).sort());
      }),
      { seed: SEED + 1, numRuns: 1000 },
    );
  },
  PATIENCE,
);

test(
  "[EX41] filling in what is missing never flips or loses a known result, whatever is read twice",
  () => {
    fc.assert(
      fc.property(openTree(trees(4)), fc.infiniteStream(fc.nat(999)), ({ tree, place, known, missing }, stream) => {
        const evaluate = evaluator(written(tree));
        const now = evaluate(scopeOf(worldOf(known, place.corners)), place.here);
        const more = new Map(known);
        for (const [key, atom] of missing) {
          const answers = domain(key, atom);
          more.set(key, answers[(stream.next().value ?? 0) % answers.length] ?? atom.answers[0]);
          const then = evaluate(scopeOf(worldOf(more, place.corners)), place.here);
          if (!(now instanceof Unknown)) expect(then).toBe(now);
          else if (now.missing.size === 0) expect(plain(then)).toEqual({ missing: [], only: undefined });
          else if (now.only !== undefined && !(then instanceof Unknown)) expect(then).toBe(now.only);
        }
        const end = evaluate(scopeOf(worldOf(more, place.corners)), place.here);
        expect(end instanceof Unknown ? end.missing.size : 0).toBe(0);
        expect(end instanceof Unknown ? null : end).toBe(total(tree, worldOf(more, place.corners), place));
      }),
      { seed: SEED + 2, numRuns: 1500 },
    );
  },
  PATIENCE,
);

const turned = (tree: Tree): Tree => {
  switch (tree.is) {
    case "not":
      return { ...tree, part: turned(tree.part) };
    case "and":
    case "or":
    case "at_least":
      return { ...tree, parts: [...tree.parts].reverse().map(turned) };
    case "exists":
    case "all":
      return { ...tree, body: turned(tree.body) };
    default:
      return tree;
  }
};

test(
  "[EX42] the order of parts changes neither result nor what is missing",
  () => {
    fc.assert(
      fc.property(openTree(trees(4)), ({ tree, place, known }) => {
        const scope = scopeOf(worldOf(known, place.corners));
        const [forward, backward] = [tree, turned(tree)].map((one) =>
          plain(evaluator(written(one))(scope, place.here)),
        );
        expect(backward).toEqual(forward);
      }),
      { seed: SEED + 3, numRuns: 2000 },
    );
  },
  PATIENCE,
);
