/**
 * A small invented car for tests of conditions: what may be named, and a scope that answers from a table of
 * replies. Knows no sheet and no assessing.
 */
import type { Declarations } from "../../src/core/expr/author.js";
import {
  type BandSpan,
  type Measured,
  NOT_APPLICABLE,
  type Ref,
  type Scope,
  type Trade,
  Unknown,
  type Value,
} from "../../src/core/expr/run.js";
import { fail, type GradeLevel, keyText, ok, type Problem, problem } from "../../src/core/terms/index.js";

const word = (point: string, kind: string, ...words: readonly string[]) =>
  [point, { ref: { point, field: "feel" }, kind, type: { is: "word", words } }] as const;
const reading = (point: string, kind: string, quantity: "length" | "temperature") =>
  [point, { ref: { point, field: "size" }, kind, type: { is: "reading", quantity } }] as const;

/** Two sheets, `whl` and `brk`, on a car with four corners. */
export const DECLARED: Declarations = {
  names: Object.fromEntries([
    word("whl.rock", "corner", "none", "just-felt", "clear", "bad"),
    word("whl.spin", "corner", "smooth", "light-grumble", "rough"),
    word("whl.kind", "corner", "taper-adjust", "hub-unit", "deep-groove"),
    word("whl.seal", "corner", "sound", "weeping", "torn"),
    word("whl.bolt", "corner", "tight", "turned"),
    word("whl.drone", "car", "none", "faint", "clear"),
    word("brk.balance", "axle", "even", "left", "right"),
    reading("whl.float", "corner", "length"),
    reading("whl.runout", "corner", "length"),
    reading("whl.shim", "corner", "length"),
    reading("whl.heat", "corner", "temperature"),
    reading("whl.air", "car", "temperature"),
    [
      "whl.grease",
      {
        ref: { point: "whl.grease", field: "look" },
        kind: "corner",
        type: { is: "words", words: ["clean", "milky", "burnt"] },
      },
    ],
    ["whl.knockback", { ref: { point: "whl.knockback", field: "felt" }, kind: "car", type: { is: "yes" } }],
    ["whl.studs_loose", { ref: { point: "whl.studs", field: "loose" }, kind: "corner", type: { is: "count" } }],
    [
      "whl.wall",
      {
        ref: { point: "whl.wall", field: "depth" },
        kind: "corner",
        type: { is: "reading", quantity: "length", results: ["no-echo"] },
      },
    ],
    ["whl.made", { ref: { point: "whl.made", field: "code" }, kind: "corner", type: { is: "date-code" } }],
    [
      "whl.rise",
      {
        ref: { point: "whl.rise", field: "" },
        kind: "corner",
        type: { is: "reading", quantity: "temperature_difference" },
      },
    ],
  ]),
  facts: {
    brakes: { is: "word", words: ["outboard", "inboard"] },
    first_used: { is: "count" },
    limited_slip: { is: "yes" },
    wheelbase: { is: "reading", quantity: "length" },
  },
  kinds: { car: [], axle: ["car"], side: ["car"], corner: ["axle", "side", "car"] },
  relations: [
    { name: "opposite", from: "corner", to: "corner", many: false },
    { name: "axle", from: "corner", to: "corner", many: true },
    { name: "side", from: "corner", to: "corner", many: true },
    { name: "axle", from: "axle", to: "corner", many: true },
  ],
  faults: ["whl.race", "whl.play", "brk.drag"],
  functions: {
    age_of: {
      arguments: [
        { name: "code", kind: "word" },
        { name: "year", kind: "number" },
      ],
      gives: "age",
    },
    ring_gap: {
      arguments: [
        { name: "play", kind: "length", from: 0, to: 50 },
        { name: "count", kind: "number", over: 0, whole: true },
      ],
      gives: "length",
    },
    spread_of: { arguments: [{ name: "readings", kind: "length", over: 0, atLeast: 2 }], gives: "length" },
    share_for: {
      arguments: [
        { name: "build", kind: "word", words: ["outboard", "inboard"] },
        { name: "warm", kind: "temperature_difference", from: 0 },
      ],
      gives: "ratio",
    },
    is_oval: { arguments: [{ name: "play", kind: "length" }], gives: "yes" },
  },
  sheets: ["whl", "brk"],
  otherSheets: ["susp"],
};

const sum = (list: unknown): readonly number[] => (Array.isArray(list) ? list.map(Number) : []);
const refused = (argument: string) => fail(problem("trade.range", {}, { argument }));
/** What the declared functions work out; a play over 50 they refuse. */
export const TRADE: Trade = {
  age_of: ([code, year]) => ok(typeof code === "string" ? Number(code.slice(2)) + 2000 - Number(year) : Number.NaN),
  ring_gap: ([play, count]) => (Number(play) > 50 ? refused("play") : ok(Number(play) / Number(count))),
  spread_of: ([readings]) => ok(Math.max(...sum(readings)) - Math.min(...sum(readings))),
  share_for: ([build, warm]) => ok(build === "outboard" ? Number(warm) / 100 : 0),
  is_oval: ([play]) => ok(Number(play) > 0.5),
};

export const CORNERS = ["FL", "FR", "RL", "RR"] as const;
const TWIN: Readonly<Record<string, string>> = { FL: "FR", FR: "FL", RL: "RR", RR: "RL" };

/** What stands for one reply. */
export type Answer = Value | Measured | typeof NOT_FITTED;
/** The non-answer that leaves the count. */
export const NOT_FITTED = Symbol("not fitted");

export interface World {
  /** By `point.field@place`. */
  readonly answers: ReadonlyMap<string, Answer>;
  readonly facts: ReadonlyMap<string, Value>;
  /** What stood there at the last visit, by the same keys. */
  readonly last?: ReadonlyMap<string, Answer>;
  /** Distance in km since then. */
  readonly since?: number;
  /** By `fault@place`. */
  readonly faults?: ReadonlySet<string>;
  /** Corners this car has. */
  readonly corners?: readonly string[];
  readonly reported?: Problem[];
}

export const answerKey = (point: string, field: string, place: string): string => `${point}.${field}@${place}`;
export const missingKey = (point: string, field: string, place: string): string =>
  keyText({ point, field, place, state: "" });

const widerPlace = (kind: string, place: string): string => {
  if (kind === "car") return "car";
  if (kind === "axle") return `axle-${place.replace("axle-", "").charAt(0)}`;
  return place;
};

const kindOf = new Map(Object.values(DECLARED.names).map(({ ref, kind }) => [`${ref.point}.${ref.field}`, kind]));

/** Edges every reading of the tests is judged by: advisory, minor, major, dangerous. */
const EDGES = [1, 2, 4, 8] as const;
const levelAt = (value: number): GradeLevel => {
  const levels: readonly GradeLevel[] = [0, 1, 2, 3, 4];
  return levels[EDGES.filter((edge) => value > edge).length] ?? 0;
};

/** A scope that answers from the world's tables. */
export function scopeOf(world: World): Scope {
  const corners: readonly string[] = world.corners ?? CORNERS;
  const answerAt = ({ point, field, last }: Ref, place: string): Answer | Unknown => {
    const at = widerPlace(kindOf.get(`${point}.${field}`) ?? "corner", place);
    if (last === true) return world.last?.get(answerKey(point, field, at)) ?? NOT_APPLICABLE;
    const answer = world.answers.get(answerKey(point, field, at));
    if (answer === NOT_FITTED) return NOT_APPLICABLE;
    return answer ?? new Unknown(new Set([missingKey(point, field, at)]));
  };
  const measured: Scope["measured"] = (ref, place) => {
    const answer = answerAt(ref, place);
    if (answer instanceof Unknown) return answer;
    if (typeof answer === "number") return { value: answer, u: 0 };
    return typeof answer === "object" && "value" in answer ? answer : NOT_APPLICABLE;
  };
  return {
    read: (ref, place) => {
      const answer = answerAt(ref, place);
      if (typeof answer === "symbol") return NOT_APPLICABLE;
      return typeof answer === "object" && "value" in answer ? answer.value : answer;
    },
    measured,
    band: (ref, place) => {
      const read = measured(ref, place);
      if (read instanceof Unknown) return read;
      const [low, high] = [levelAt(read.value - 2 * read.u), levelAt(read.value + 2 * read.u)];
      const closer = new Set(low === high ? [] : [`${missingKey(ref.point, ref.field, place)}!closer`]);
      return { low, high, missing: closer } satisfies BandSpan;
    },
    unanswered: (ref, place) => answerAt(ref, place) instanceof Unknown,
    sinceLast: () => world.since ?? NOT_APPLICABLE,
    fact: (name) => world.facts.get(name) ?? new Unknown(new Set([missingKey("car", name, "car")])),
    related: (relation, place) => {
      if (!corners.includes(place))
        return relation === "axle" ? corners.filter((corner) => corner.startsWith(place.slice(5))) : undefined;
      if (relation === "opposite") return corners.filter((corner) => corner === TWIN[place]);
      const letter = relation === "axle" ? 0 : 1;
      return corners.filter((corner) => corner.charAt(letter) === place.charAt(letter));
    },
    places: (kind) =>
      kind === "corner"
        ? corners
        : kind === "axle"
          ? ["axle-F", "axle-R"]
          : kind === "car"
            ? ["car"]
            : ["side-L", "side-R"],
    found: (fault, place) => world.faults?.has(`${fault}@${place}`) ?? false,
    report: (problem) => world.reported?.push(problem),
  };
}

/** The key of a point's field at a place, from the name conditions spell it by. */
export function keyOf(name: string, place: string): string {
  const named = DECLARED.names[name];
  if (named === undefined) throw new Error(`The test names ${name}, which is not declared.`);
  return answerKey(named.ref.point, named.ref.field, widerPlace(named.kind, place));
}

/** A world from `{"whl.rock@FR": "bad"}`; the point's name as conditions spell it. */
export function worldOf(
  replies: Readonly<Record<string, Answer>>,
  rest: Omit<World, "answers" | "facts" | "last"> & {
    readonly facts?: Readonly<Record<string, Value>>;
    readonly last?: Readonly<Record<string, Answer>>;
  } = {},
): World {
  const table = (said: Readonly<Record<string, Answer>>) =>
    new Map(
      Object.entries(said).map(([key, answer]): [string, Answer] => {
        const [name = "", place = "car"] = key.split("@");
        return [keyOf(name, place), answer];
      }),
    );
  const { facts, last, ...more } = rest;
  return { ...more, answers: table(replies), facts: new Map(Object.entries(facts ?? {})), last: table(last ?? {}) };
}
