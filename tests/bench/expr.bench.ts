/**
 * Conditions: planned closures beside hand-written three-valued ones on the same 500 rules, the time to link them, and
 * the parser they spare the app. Judges nothing.
 */
import { compile } from "../../src/core/expr/author.js";
import { type Evaluate, link, type Outcome, type Plan, type Scope, Unknown } from "../../src/core/expr/run.js";
import { CORNERS, DECLARED, scopeOf, worldOf } from "../support/expr-world.js";
import { type BenchRow, interleaved } from "./row.js";

const RULES = 500;
const WARM = 300;
const ROUNDS = 101;

/** A condition and what a careful hand would write for it: `undefined` stands for true, a set for what is missing. */
interface Pattern {
  readonly text: string;
  readonly hand: Hand;
}
type Hand = (scope: Scope, here: string) => boolean | ReadonlySet<string>;

const rock = { point: "whl.rock", field: "feel" };
const spin = { point: "whl.spin", field: "feel" };
const kind = { point: "whl.kind", field: "feel" };
const drone = { point: "whl.drone", field: "feel" };
const float = { point: "whl.float", field: "size" };

const is = (
  scope: Scope,
  ref: typeof rock,
  here: string,
  test: (word: unknown) => boolean,
): boolean | ReadonlySet<string> => {
  const read = scope.read(ref, here);
  return read instanceof Unknown ? read.missing : test(read);
};
const both = (a: boolean | ReadonlySet<string>, b: boolean | ReadonlySet<string>): boolean | ReadonlySet<string> => {
  if (a === false || b === false) return false;
  if (a === true) return b;
  return b === true ? a : new Set([...a, ...b]);
};
const either = (a: boolean | ReadonlySet<string>, b: boolean | ReadonlySet<string>): boolean | ReadonlySet<string> => {
  if (a === true || b === true) return true;
  if (a === false) return b;
  return b === false ? a : new Set([...a, ...b]);
};

const PATTERNS: readonly Pattern[] = [
  {
    text: '(whl.rock == "none" || whl.rock == "just-felt" && whl.kind == "taper-adjust") && whl.spin in ["light-grumble", "rough"]',
    hand: (scope, here) => {
      const none = is(scope, rock, here, (word) => word === "none");
      const felt =
        none === true
          ? true
          : both(
              is(scope, rock, here, (word) => word === "just-felt"),
              is(scope, kind, here, (word) => word === "taper-adjust"),
            );
      const held = either(none, felt);
      return held === false
        ? false
        : both(
            held,
            is(scope, spin, here, (word) => word === "light-grumble" || word === "rough"),
          );
    },
  },
  {
    text: 'whl.rock == "clear" && whl.kind != "taper-adjust" && car.brakes == "outboard"',
    hand: (scope, here) => {
      const clear = is(scope, rock, here, (word) => word === "clear");
      if (clear === false) return false;
      const other = is(scope, kind, here, (word) => word !== "taper-adjust");
      if (other === false) return false;
      const fact = scope.fact("brakes");
      return both(both(clear, other), fact instanceof Unknown ? fact.missing : fact === "outboard");
    },
  },
  {
    text: 'whl.drone == "clear" && (whl.spin == "rough" || band(whl.float) >= major)',
    hand: (scope, here) => {
      const heard = is(scope, drone, here, (word) => word === "clear");
      if (heard === false) return false;
      const rough = is(scope, spin, here, (word) => word === "rough");
      if (rough === true) return heard;
      const band = scope.band(float, here);
      const bad =
        band instanceof Unknown ? band.missing : band.low >= 3 === band.high >= 3 ? band.low >= 3 : band.missing;
      return both(heard, either(rough, bad));
    },
  },
  {
    text: 'whl.float >= 2.0 * opposite.whl.float && whl.rock != "none"',
    hand: (scope, here) => {
      const twin = scope.related("opposite", here)?.[0];
      const mine = scope.measured(float, here);
      const other = twin === undefined ? undefined : scope.measured(float, twin);
      const felt = is(scope, rock, here, (word) => word !== "none");
      if (other === undefined || felt === false) return felt === false ? false : new Set();
      if (mine instanceof Unknown || other instanceof Unknown) {
        const missing = new Set([
          ...(mine instanceof Unknown ? mine.missing : []),
          ...(other instanceof Unknown ? other.missing : []),
        ]);
        return both(missing, felt);
      }
      const [a, b] = [mine.value, 2 * other.value];
      return both(a >= b || Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)), felt);
    },
  },
  {
    text: 'axle.exists(c, c.whl.rock == "bad" || c.whl.spin == "rough")',
    hand: (scope, here) => {
      let missing: Set<string> | undefined;
      for (const place of scope.related("axle", here) ?? []) {
        const one = either(
          is(scope, rock, place, (word) => word === "bad"),
          is(scope, spin, place, (word) => word === "rough"),
        );
        if (one === true) return true;
        if (one !== false) missing = new Set([...(missing ?? []), ...one]);
      }
      return missing ?? false;
    },
  },
];

function planned(text: string): Plan {
  const made = compile(text, DECLARED, { scope: "corner" });
  if (!made.ok) throw new Error(`${text}: ${JSON.stringify(made.problems)}`);
  return made.value;
}
function linked(plan: Plan): Evaluate {
  const run = link(plan);
  if (!run.ok) throw new Error(JSON.stringify(run.problems));
  return run.value;
}

const pick = (i: number): Pattern => {
  const pattern = PATTERNS[i % PATTERNS.length];
  if (pattern === undefined) throw new Error("There are patterns.");
  return pattern;
};
const same = (a: Outcome, b: boolean | ReadonlySet<string>): boolean =>
  a instanceof Unknown ? b instanceof Set && [...a.missing].sort().join() === [...b].sort().join() : a === b;

/** Answers are looked up beforehand, so that the figures are of conditions and not of looking up. */
function frozen(scope: Scope): Scope {
  const kept = <T>(ask: (ref: { point: string; field: string }, place: string) => T) => {
    const table = new Map(
      [rock, spin, kind, drone, float].map((ref) => [
        ref.point,
        new Map(CORNERS.map((place) => [place as string, ask(ref, place)])),
      ]),
    );
    return (ref: { readonly point: string }, place: string): T => {
      const answers = table.get(ref.point);
      const answer = answers?.get(place);
      if (answer === undefined) throw new Error(`No answer for ${ref.point} at ${place}.`);
      return answer;
    };
  };
  const related = new Map(
    ["opposite", "axle"].map((name) => [
      name,
      new Map(CORNERS.map((place) => [place as string, scope.related(name, place)])),
    ]),
  );
  const brakes = scope.fact("brakes");
  return {
    ...scope,
    read: kept((ref, place) => scope.read(ref, place)),
    measured: kept((ref, place) => scope.measured(ref, place)),
    band: kept((ref, place) => scope.band(ref, place)),
    fact: () => brakes,
    related: (name, place) => related.get(name)?.get(place),
  };
}

const WORLDS = {
  "every reply stands": frozen(
    scopeOf(
      worldOf(
        Object.fromEntries(
          CORNERS.flatMap((place, i) => [
            [`whl.rock@${place}`, ["none", "just-felt", "clear", "none"][i] ?? "none"],
            [`whl.spin@${place}`, ["smooth", "rough", "light-grumble", "smooth"][i] ?? "smooth"],
            [`whl.kind@${place}`, i % 2 === 0 ? "taper-adjust" : "hub-unit"],
            [`whl.float@${place}`, { value: 0.5 + i * 1.9, u: 0.1 }],
            ["whl.drone@car", "clear"],
          ]),
        ),
        { facts: { brakes: "outboard" } },
      ),
    ),
  ),
  "half of the replies missing": frozen(
    scopeOf(
      worldOf({
        "whl.rock@FL": "none",
        "whl.rock@RR": "clear",
        "whl.spin@FR": "smooth",
        "whl.float@RL": { value: 4, u: 0.3 },
        "whl.drone@car": "clear",
      }),
    ),
  ),
} as const;

/** The rows of conditions in the bench table. */
export async function bench(): Promise<readonly BenchRow[]> {
  const plans = Array.from({ length: RULES }, (_, i) => planned(pick(i).text));
  const rules = plans.map(linked);
  const hands = plans.map((_, i) => pick(i).hand);
  const here = (i: number): string => CORNERS[i % CORNERS.length] ?? "FL";
  const rows = Object.entries(WORLDS).map(([what, scope]): BenchRow => {
    for (const [i, rule] of rules.entries())
      if (!same(rule(scope, here(i)), hands[i]?.(scope, here(i)) ?? false))
        throw new Error(`The contenders differ on ${pick(i).text}`);
    const all = (run: (i: number) => unknown) => () => {
      let last: unknown;
      for (let i = 0; i < RULES; i++) last = run(i);
      return last;
    };
    const contenders = {
      "planned closures": all((i) => rules[i]?.(scope, here(i))),
      "hand-written three-valued closures": all((i) => hands[i]?.(scope, here(i))),
    };
    // Compiled code only: a visit goes through its conditions far more often than this.
    for (let n = 0; n < WARM; n++) for (const run of Object.values(contenders)) run();
    const times = interleaved(contenders, ROUNDS);
    return {
      what: `one condition of ${RULES}, ${what}`,
      unit: "ns",
      figures: Object.fromEntries(Object.entries(times).map(([name, ms]) => [name, (ms * 1e6) / RULES])),
      goal: "full assess at most 5 × hand-written closures (architecture §10)",
    };
  });
  const text = JSON.stringify(plans);
  const ready = interleaved(
    {
      "from plans as JSON": () => JSON.parse(text).map(linked),
      "from CEL text": () => plans.map((_, i) => linked(planned(pick(i).text))),
    },
    9,
  );
  return [
    ...rows,
    { what: `${RULES} conditions made ready`, unit: "ms", figures: ready, goal: "3 ms (trial, architecture §11.12)" },
  ];
}
