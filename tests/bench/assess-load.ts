/**
 * The same load for every contender: twenty points at a hundred joints, two thousand replies, twenty-five rules of two
 * to six terms. Once as a check sheet, once as three-valued closures written by hand. No trade knowledge.
 */
import { type AssessInput, type Engine, prepare, type StandingReply } from "../../src/core/assess/index.js";
import type { BareCommon, BareSheet, Point, Rule } from "../../src/core/sheet/run.js";
import { planned, visit } from "../support/small-car.js";
import { rule, SMALL_COMMON } from "../support/small-sheets.js";

const WORDS = ["sound", "light", "clear", "bad"] as const;
const POINTS = 20;
const JOINTS = 100;
const RULES = 25;
/** Terms of rule n: point → the words that make it true, how it is joined to the terms before, and negated or not. */
export interface Term {
  readonly point: number;
  readonly words: readonly string[];
  readonly join: "&&" | "||";
}

/** Small and repeatable: every run and every contender has the same rules and replies. */
function steps(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state / 2_147_483_648;
  };
}

const draw = steps(20_260_504);
const pick = (n: number): number => Math.floor(draw() * n);
export const RULE_TERMS: readonly (readonly Term[])[] = Array.from({ length: RULES }, () =>
  Array.from(
    { length: 2 + pick(5) },
    (): Term => ({
      point: pick(POINTS),
      words: WORDS.filter((_, i) => i > 0 && draw() < 0.4).concat("bad"),
      join: draw() < 0.7 ? "&&" : "||",
    }),
  ),
);

export const pointId = (n: number): string => `lod.p${n}`;
const cel = (t: Term): string => `${pointId(t.point)} in [${t.words.map((w) => `"${w}"`).join(", ")}]`;
/** Joined from the left, in brackets, as the closures do it. */
const whenOf = (terms: readonly Term[]): string =>
  terms.slice(1).reduce((text, t) => `(${text} ${t.join} ${cel(t)})`, terms[0] === undefined ? "true" : cel(terms[0]));

const joints = Array.from({ length: JOINTS }, (_, i) => ({ id: `J${i}`, kind: "bench-joint", in: "car" }));
const COMMON: BareCommon = {
  ...SMALL_COMMON,
  places: [...SMALL_COMMON.places, ...joints],
  gates: [],
  rules: [],
};
const SHEET: BareSheet = {
  format: "leadlamp-sheet/1",
  id: "lod",
  label: "Load",
  points: Array.from(
    { length: POINTS },
    (_, i): Point => ({
      id: pointId(i),
      place: "bench-joint",
      states: ["w7-hang"],
      fields: { look: { words: [...WORDS] } },
      who: ["technician"],
    }),
  ),
  limits: [],
  derived: [],
  rules: RULE_TERMS.map(
    (terms, i): Rule => rule(`lod.r${i}`, "bench-joint", `lod.f${i}`, i % 2 === 0 ? "minor" : "major", whenOf(terms)),
  ),
  jobs: [],
  gates: [],
  nextLooks: [],
};

export function loadEngine(): Engine {
  const built = planned(COMMON, [SHEET]);
  return prepare(built.common, built.sheets);
}

/** Two thousand replies, nearly all sound, as on a car; `answered` is the share that has one. */
export function loadVisit(answered = 1): AssessInput {
  const chance = steps(7);
  const replies = joints.flatMap((joint) =>
    Array.from({ length: POINTS }, (_, p) => ({ joint: joint.id, p })).flatMap(
      ({ joint: place, p }): StandingReply[] => {
        const word = chance() < 0.9 ? "sound" : (WORDS[1 + Math.floor(chance() * 3)] ?? "bad");
        if (chance() >= answered) return [];
        return [
          {
            key: { point: pointId(p), place, state: "w7-hang", field: "look" },
            value: { type: "words", words: [word] },
            id: `${place}/${p}`,
          },
        ];
      },
    ),
  );
  return visit(replies, { sheets: ["lod"] });
}

/** One reply of the visit changed, as a tap does. */
export function tapped(input: AssessInput, n: number): AssessInput {
  const at = (n * 37) % input.replies.length;
  const word = WORDS[n % WORDS.length] ?? "bad";
  const replies = input.replies.map(
    (r, i): StandingReply => (i === at ? { ...r, id: `tap${n}`, value: { type: "words", words: [word] } } : r),
  );
  return { ...input, replies };
}

/** True, false, or the replies it waits for. */
type Three = boolean | ReadonlySet<string>;
type Closure = (said: ReadonlyMap<string, string>, place: string) => Three;

const both = (a: ReadonlySet<string>, b: ReadonlySet<string>): ReadonlySet<string> => new Set([...a, ...b]);
const and =
  (a: Closure, b: Closure): Closure =>
  (said, place) => {
    const x = a(said, place);
    if (x === false) return false;
    const y = b(said, place);
    if (y === false) return false;
    if (x === true) return y;
    return y === true ? x : both(x, y);
  };
const or =
  (a: Closure, b: Closure): Closure =>
  (said, place) => {
    const x = a(said, place);
    if (x === true) return true;
    const y = b(said, place);
    if (y === true) return true;
    if (x === false) return y;
    return y === false ? x : both(x, y);
  };
const term = ({ point, words }: Term): Closure => {
  const id = pointId(point);
  return (said, place) => {
    const key = `${id}@${place}`;
    const word = said.get(key);
    return word === undefined ? new Set([key]) : words.includes(word);
  };
};
const closures: readonly Closure[] = RULE_TERMS.map((terms) =>
  terms
    .slice(1)
    .reduce(
      (left, t) => (t.join === "&&" ? and : or)(left, term(t)),
      terms[0] === undefined ? () => true : term(terms[0]),
    ),
);

/** By hand: index the replies, run every closure at every joint, gather what fires and what each missing reply decides. */
export function byHand(input: AssessInput): {
  readonly fired: readonly string[];
  readonly settle: ReadonlyMap<string, readonly string[]>;
} {
  const said = new Map<string, string>();
  for (const { key, value } of input.replies)
    if (value.type === "words") said.set(`${key.point}@${key.place}`, value.words[0] ?? "");
  const fired: string[] = [];
  const settle = new Map<string, string[]>();
  closures.forEach((run, i) => {
    for (const { id } of joints) {
      const outcome = run(said, id);
      if (outcome === true) fired.push(`lod.r${i}@${id}`);
      else if (outcome !== false)
        for (const key of outcome) {
          const row = settle.get(key);
          if (row === undefined) settle.set(key, [`lod.r${i}`]);
          else row.push(`lod.r${i}`);
        }
    }
  });
  return { fired, settle };
}
