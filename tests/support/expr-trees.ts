/**
 * Conditions as trees for property tests: made at random, written as CEL, and judged by a second, plain
 * implementation that only knows worlds in which every reply stands. Shares no code with core/expr.
 */
import fc from "fast-check";
import { type Answer, keyOf, NOT_FITTED, type World } from "./expr-world.js";

/** Result in a world where nothing is missing: `null` is 'does not apply'. */
export type Total = boolean | null;

type Answers = readonly [Exclude<Answer, typeof NOT_FITTED>, Exclude<Answer, typeof NOT_FITTED>];

/** One test of one or two replies. `names` are read at `place`; facts have no place. */
export interface Atom {
  readonly names: readonly string[];
  readonly facts?: readonly string[];
  /** Belongs to corners: may stand in the body of a quantifier. */
  readonly corner: boolean;
  /** A name read of the last visit: known from `LAST`, or nothing to ask. Its answer comes last to `holds`. */
  readonly last?: string;
  /** CEL with the place written in front of every name. */
  readonly text: (at: string) => string;
  readonly holds: (...answers: readonly Exclude<Answer, typeof NOT_FITTED>[]) => boolean;
  /** Two answers, such that the atom can be made true and false. */
  readonly answers: Answers;
  /** Where two replies are compared: answers that make it true and false whatever the other one is. */
  readonly extremes?: Answers;
}

export type Tree =
  | { readonly is: "atom"; readonly atom: Atom; readonly at: string }
  | { readonly is: "literal"; readonly value: boolean }
  | { readonly is: "not"; readonly part: Tree }
  | { readonly is: "and" | "or"; readonly parts: readonly Tree[] }
  | { readonly is: "at_least"; readonly need: number; readonly parts: readonly Tree[] }
  | { readonly is: "choice"; readonly parts: readonly [Tree, Tree, Tree] }
  | { readonly is: "exists" | "all"; readonly over: string; readonly body: Tree };

const word = (name: string, corner: boolean, is: string, other: string): Atom => ({
  names: [name],
  corner,
  text: (at) => `${at}${name} == "${is}"`,
  holds: (answer) => answer === is,
  answers: [is, other],
});
/** What stood at the last visit; there was none at the rear left. */
export const LAST: ReadonlyMap<string, Exclude<Answer, typeof NOT_FITTED>> = new Map([
  [keyOf("whl.bolt", "FL"), "tight"],
  [keyOf("whl.bolt", "FR"), "turned"],
  [keyOf("whl.bolt", "RR"), "tight"],
]);
const size = (answer: unknown): number => (typeof answer === "number" ? answer : Number.NaN);

/** No two atoms share a reply. */
export const ATOMS: readonly Atom[] = [
  word("whl.rock", true, "bad", "none"),
  { ...word("whl.spin", true, "rough", "smooth"), text: (at) => `${at}whl.spin in ["rough", "light-grumble"]` },
  { ...word("whl.kind", true, "hub-unit", "deep-groove"), text: (at) => `${at}whl.kind != "deep-groove"` },
  word("whl.seal", true, "torn", "sound"),
  {
    names: ["whl.grease"],
    corner: true,
    text: (at) => `"milky" in ${at}whl.grease`,
    holds: (answer) => Array.isArray(answer) && answer.includes("milky"),
    answers: [["milky", "burnt"], ["clean"]],
  },
  {
    names: ["whl.studs_loose"],
    corner: true,
    text: (at) => `${at}whl.studs_loose >= 2`,
    holds: (answer) => size(answer) >= 2,
    answers: [3, 1],
  },
  {
    names: ["whl.wall"],
    corner: true,
    text: (at) => `${at}whl.wall == "no-echo"`,
    holds: (answer) => answer === "no-echo",
    answers: ["no-echo", 1.2],
  },
  {
    names: ["whl.float", "whl.runout"],
    corner: true,
    text: (at) => `${at}whl.float >= 2.0 * ${at}whl.runout`,
    holds: (a, b) => size(a) >= 2 * size(b),
    answers: [0.6, 0.2],
    extremes: [0.0001, 1000],
  },
  {
    names: ["whl.shim"],
    corner: true,
    text: (at) => `band(${at}whl.shim) >= major`,
    holds: (answer) => size(answer) > 4,
    answers: [9, 0.5],
  },
  {
    names: ["whl.heat", "whl.air"],
    corner: false,
    text: (at) => `clearly_more(${at}whl.heat, ${at}whl.air)`,
    holds: (a, b) => size(a) > size(b),
    answers: [60, 20],
    extremes: [-100, 500],
  },
  {
    names: ["whl.bolt"],
    last: "whl.bolt",
    corner: true,
    text: (at) => `${at}whl.bolt != last(${at}whl.bolt)`,
    holds: (now, before) => now !== before,
    answers: ["turned", "tight"],
  },
  { ...word("whl.drone", false, "clear", "faint") },
  { ...word("brk.balance", false, "left", "even"), text: (at) => `${at}brk.balance == "left"` },
  {
    names: ["whl.knockback"],
    corner: false,
    text: (at) => `${at}whl.knockback`,
    holds: (answer) => answer === true,
    answers: [true, false],
  },
  {
    names: [],
    facts: ["brakes"],
    corner: false,
    text: () => 'car.brakes == "outboard"',
    holds: (answer) => answer === "outboard",
    answers: ["outboard", "inboard"],
  },
  {
    names: [],
    facts: ["limited_slip"],
    corner: false,
    text: () => "car.limited_slip",
    holds: (answer) => answer === true,
    answers: [true, false],
  },
];

type Leaf = { readonly is: "leaf"; readonly pick: number };
type Shape =
  | Leaf
  | { readonly is: "not"; readonly part: Shape }
  | { readonly is: "and" | "or"; readonly parts: readonly Shape[] }
  | { readonly is: "at_least"; readonly need: number; readonly parts: readonly Shape[] }
  | { readonly is: "choice"; readonly parts: readonly Shape[] }
  | { readonly is: "exists" | "all"; readonly over: string; readonly body: Shape };

const shapes = (depth: number): fc.Arbitrary<Shape> =>
  fc.letrec<{ shape: Shape }>((tie) => {
    const some = (min: number, max: number) => fc.array(tie("shape"), { minLength: min, maxLength: max });
    return {
      shape: fc.oneof(
        { maxDepth: depth, depthSize: "small" },
        fc.record({ is: fc.constant("leaf" as const), pick: fc.nat(999) }),
        fc.record({ is: fc.constant("not" as const), part: tie("shape") }),
        fc.record({ is: fc.constantFrom("and" as const, "or" as const), parts: some(2, 3) }),
        some(2, 4).chain((parts) =>
          fc.record({
            is: fc.constant("at_least" as const),
            need: fc.integer({ min: 1, max: parts.length }),
            parts: fc.constant(parts),
          }),
        ),
        fc.record({ is: fc.constant("choice" as const), parts: some(3, 3) }),
        fc.record({
          is: fc.constantFrom("exists" as const, "all" as const),
          over: fc.constantFrom("axle", 'places("corner")'),
          body: tie("shape"),
        }),
      ),
    };
  }).shape;

/** Fills a shape's leaves. `once`: every reply stands in one place of the tree only. */
function filled(shape: Shape, once: boolean): Tree {
  const left = [...ATOMS];
  const fill = (part: Shape, bound: string | null): Tree => {
    switch (part.is) {
      case "leaf": {
        const fit = (once ? left : ATOMS).filter((atom) => !(once && bound !== null) || atom.corner);
        const atom = fit[part.pick % Math.max(1, fit.length)];
        if (atom === undefined || part.pick % 17 === 16) return { is: "literal", value: part.pick % 2 === 0 };
        if (once) left.splice(left.indexOf(atom), 1);
        const places =
          bound !== null && once ? [bound] : ["", "opposite.", ...(bound === null ? [] : [bound, `${bound}opposite.`])];
        return { is: "atom", atom, at: places[Math.floor(part.pick / 7) % places.length] ?? "" };
      }
      case "not":
        return { is: "not", part: fill(part.part, bound) };
      case "and":
      case "or":
        return { is: part.is, parts: part.parts.map((inner) => fill(inner, bound)) };
      case "at_least":
        return { ...part, parts: part.parts.map((inner) => fill(inner, bound)) };
      case "choice": {
        const [test, yes, no] = part.parts.map((inner) => fill(inner, bound));
        if (test === undefined || yes === undefined || no === undefined) throw new Error("A choice has three parts.");
        return { is: "choice", parts: [test, yes, no] };
      }
      default:
        // One quantifier deep: a second would go through the same places again.
        return bound === null ? { ...part, body: fill(part.body, "c.") } : fill(part.body, bound);
    }
  };
  return fill(shape, null);
}

/** Trees in which every reply is read once: there three values and trying everything must agree. */
export const treesReadOnce = (depth: number): fc.Arbitrary<Tree> => shapes(depth).map((shape) => filled(shape, true));
/** Trees that read replies here, at the twin and at bound places, as often as they like. */
export const trees = (depth: number): fc.Arbitrary<Tree> => shapes(depth).map((shape) => filled(shape, false));

/** The tree as CEL, every part in brackets. */
export function written(tree: Tree): string {
  switch (tree.is) {
    case "atom":
      return tree.atom.text(tree.at);
    case "literal":
      return String(tree.value);
    case "not":
      return `!(${written(tree.part)})`;
    case "and":
    case "or":
      return tree.parts.map((part) => `(${written(part)})`).join(tree.is === "and" ? " && " : " || ");
    case "at_least":
      return `at_least(${tree.need}, ${tree.parts.map(written).join(", ")})`;
    case "choice": {
      const [test, yes, no] = tree.parts.map(written);
      return `(${test}) ? (${yes}) : (${no})`;
    }
    default:
      return `${tree.over}.${tree.is}(c, ${written(tree.body)})`;
  }
}

export interface Place {
  readonly here: string;
  readonly corners: readonly string[];
  readonly bound?: string;
}

const TWIN: Readonly<Record<string, string>> = { FL: "FR", FR: "FL", RL: "RR", RR: "RL" };
function placeOf(at: string, { here, corners, bound }: Place): string | undefined {
  const from = at.startsWith("c.") ? bound : here;
  if (from === undefined || !at.endsWith("opposite.")) return from;
  const twin = TWIN[from] ?? "";
  return corners.includes(twin) ? twin : undefined;
}

const placesOf = (over: string, { here, corners }: Place): readonly string[] =>
  over === "axle" ? corners.filter((corner) => corner.charAt(0) === here.charAt(0)) : corners;

/** Every reply and fact the tree can read: answer key, or `fact NAME`. */
export function keysOf(tree: Tree, place: Place): ReadonlyMap<string, Atom> {
  const keys = new Map<string, Atom>();
  const walk = (part: Tree, at: Place): void => {
    if (part.is === "atom") {
      const where = placeOf(part.at, at);
      if (where !== undefined) for (const name of part.atom.names) keys.set(keyOf(name, where), part.atom);
      for (const fact of part.atom.facts ?? []) keys.set(`fact ${fact}`, part.atom);
    } else if (part.is === "not") walk(part.part, at);
    else if (part.is === "exists" || part.is === "all")
      for (const bound of placesOf(part.over, at)) walk(part.body, { ...at, bound });
    else if ("parts" in part) for (const inner of part.parts) walk(inner, at);
  };
  walk(tree, place);
  return keys;
}

/** What the tree says in a world where every reply it reads stands. */
export function total(tree: Tree, world: World, place: Place): Total {
  const all = (parts: readonly Tree[]) => parts.map((part) => total(part, world, place));
  switch (tree.is) {
    case "literal":
      return tree.value;
    case "atom": {
      const where = placeOf(tree.at, place);
      if (where === undefined && tree.atom.names.length > 0) return null;
      const replies = tree.atom.names.map((name) => world.answers.get(keyOf(name, where ?? "")));
      const facts = (tree.atom.facts ?? []).map((fact) => world.facts.get(fact));
      const answers = [...replies, ...facts].filter((answer) => answer !== undefined);
      if (answers.length !== replies.length + facts.length) throw new Error("A reply is missing in a whole world.");
      const given = answers.filter((answer) => answer !== NOT_FITTED);
      if (given.length < answers.length) return null;
      if (tree.atom.last === undefined) return tree.atom.holds(...given);
      const before = LAST.get(keyOf(tree.atom.last, where ?? ""));
      return before === undefined ? null : tree.atom.holds(...given, before);
    }
    case "not": {
      const part = total(tree.part, world, place);
      return part === null ? null : !part;
    }
    case "and": {
      const parts = all(tree.parts);
      return parts.includes(false) ? false : parts.includes(null) ? null : true;
    }
    case "or": {
      const parts = all(tree.parts);
      return parts.includes(true) ? true : parts.includes(null) ? null : false;
    }
    case "at_least": {
      const parts = all(tree.parts);
      if (parts.filter((part) => part === true).length >= tree.need) return true;
      return parts.filter((part) => part === false).length > parts.length - tree.need ? false : null;
    }
    case "choice": {
      const [test, yes, no] = all(tree.parts);
      if (test === true) return yes ?? null;
      if (test === false) return no ?? null;
      return yes === no ? (yes ?? null) : null;
    }
    default: {
      const said = placesOf(tree.over, place)
        .map((bound) => total(tree.body, world, { ...place, bound }))
        .filter((value) => value !== null);
      if (said.length === 0) return null;
      return tree.is === "exists" ? said.includes(true) : !said.includes(false);
    }
  }
}
