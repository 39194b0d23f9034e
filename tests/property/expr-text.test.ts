/** Laws of condition texts: printing, the library's second opinion, and hostile input. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { compile, print, type Use } from "../../src/core/expr/author.js";
import { link, type Plan, readsOf, type Scope, Unknown } from "../../src/core/expr/run.js";
import { celEnvironment, placesByKind } from "../support/cel-environment.js";
import { trees, written } from "../support/expr-trees.js";
import { DECLARED, scopeOf, TRADE, worldOf } from "../support/expr-world.js";

const SEED = 20_261_107;
/** Milliseconds: a busy machine must not fail a law. */
const PATIENCE = 60_000;
const ANY: Use = { scope: "corner", provisional: true, findings: true };

/** Conditions with every construct the language has. */
const EVERY_CONSTRUCT: readonly string[] = [
  "whl.float >= 2 * opposite.whl.float && clearly_more(whl.float, opposite.whl.float)",
  "clearly_more(3.0 * whl.float, whl.runout / 2.0)",
  "whl.studs_loose + 1 > 2.5 * whl.studs_loose - car.first_used / 2.0",
  "whl.studs_loose - (1 - whl.studs_loose) > -(whl.studs_loose * 2.0)",
  "whl.heat - whl.air > 1.5 * (opposite.whl.heat - whl.air) + whl.rise",
  "whl.heat + whl.rise > opposite.whl.heat - whl.rise",
  "whl.float / (2.0 * whl.runout) > 1e-7 && whl.float / whl.runout / 2.0 < 1e21",
  "band(whl.float) >= major || band(opposite.whl.heat) == minor || band(whl.rise) != band(whl.float)",
  '(whl.kind == "hub-unit" ? whl.float : whl.runout) < car.wheelbase',
  'whl.kind == opposite.whl.kind && "hub-unit" != whl.kind',
  'whl.wall == "no-echo" || whl.wall in ["no-echo"] || whl.wall < whl.float',
  'whl.studs_loose in [1, 2] && !("milky" in whl.grease) && car.brakes in ["inboard"]',
  'places("axle").exists(a, a.axle.all(c, c.opposite.whl.rock == "bad" || whl.rock == "none"))',
  'axle.exists(c, found("whl.race", c)) && !found("brk.drag") && found("whl.play", opposite)',
  "unanswered(whl.float) || unanswered(opposite.whl.grease) || unanswered(whl.drone)",
  'at_least(2, whl.knockback, car.limited_slip == true, whl.rock == "bad" ? true : false)',
  "clearly_more(whl.float, last(whl.float)) || whl.float - last(opposite.whl.float) > 2.0 * last(whl.runout)",
  'last(whl.kind) == whl.kind && last(whl.rock) in ["bad"] && "milky" in last(whl.grease) && last(whl.studs_loose) > 1',
  'last(whl.wall) == "no-echo" && last(whl.knockback) == whl.knockback && axle.exists(c, last(c.whl.rock) == "bad")',
  "since_last_km(opposite.whl.float) <= 5000 && clearly_more(2.0 * last(whl.float), last(whl.runout) / 2.0)",
  "is_oval(whl.float) && ring_gap(whl.float + whl.runout, whl.studs_loose) < whl.float",
  'spread_of([whl.float, whl.runout, 2.0 * whl.float]) < ring_gap(amount(0.02, "[in_i]"), 3) || is_oval(amount(4.0 * whl.studs_loose, "mm"))',
  'share_for(car.brakes, whl.rise) < share_for("inboard", amount(5.0, "K")) && whl.float / amount(0.5, "mm") > 2.0',
  "!(whl.knockback && (whl.knockback || car.limited_slip) && !whl.knockback)",
];

const planned = (text: string): Plan => {
  const made = compile(text, DECLARED, ANY);
  if (!made.ok) throw new Error(`${text}: ${JSON.stringify(made.problems)}`);
  return made.value;
};
const conditions = fc.oneof(fc.constantFrom(...EVERY_CONSTRUCT), trees(4).map(written));

test(
  "[EX43] a printed plan compiles to the same plan, and prints the same again",
  () => {
    fc.assert(
      fc.property(conditions, (text) => {
        const { code } = planned(text);
        const printed = print(planned(text), DECLARED);
        expect(planned(printed).code).toEqual(code);
        expect(print(planned(printed), DECLARED)).toBe(printed);
      }),
      { seed: SEED, numRuns: 1500 },
    );
  },
  PATIENCE,
);

test(
  "[EX44] what is accepted here is accepted by the library's own checker",
  () => {
    const environment = celEnvironment(DECLARED, "corner");
    const refused = (text: string): string | undefined => {
      const { valid, type, error } = environment.check(placesByKind(environment, text, DECLARED));
      return valid && type === "bool" ? undefined : `${text}: ${error?.message ?? type}`;
    };
    expect(EVERY_CONSTRUCT.map(refused).filter((said) => said !== undefined)).toEqual([]);
    fc.assert(
      fc.property(trees(4).map(written), (text) => {
        expect(refused(text)).toBeUndefined();
      }),
      { seed: SEED + 1, numRuns: 800 },
    );
    // The second opinion is one: it refuses what is plainly wrong.
    for (const wrong of ["whl.float > whl.heat", "whl.float > 0.3", "whl.rock && true", "whl.nothing == 1.0"])
      expect(environment.check(wrong).valid).toBe(false);
  },
  PATIENCE,
);

/** Pieces that conditions are made of, and pieces they are not. */
const SCRAPS = [
  ..."()[]{}!&|?:.,<>=+-*/%'\"\\ \n\t0123456789eux_",
  ..."&& || == != <= >= true false null in whl whl.rock whl.float opposite axle places here car c".split(" "),
  ...'exists( all( band( at_least( clearly_more( has( map( "bad" "corner" r"x" b"x" """ 0x1F 1e999 9999999999999999999 2u .? [? //'.split(
    " ",
  ),
  "\u0000",
  "é",
  "🔧",
  "\u202e",
  "__proto__",
  "constructor",
  "prototype",
  "toString",
];

test(
  "[EX45] no text makes the compiler throw; it gives a plan or tells at least one problem",
  () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...SCRAPS), { maxLength: 60 }),
        fc.constantFrom("", " "),
        (scraps, between) => {
          const made = compile(scraps.join(between), DECLARED, ANY);
          expect(made.ok || made.problems.length > 0).toBe(true);
          if (!made.ok)
            for (const { params } of made.problems)
              expect(Number(params["offset"])).toBeLessThanOrEqual(scraps.join(between).length);
        },
      ),
      { seed: SEED + 2, numRuns: 6000 },
    );
  },
  PATIENCE,
);

test("[EX45] long rows of any one scrap are answered within limits", () => {
  for (const scrap of SCRAPS) {
    for (const text of [
      scrap.repeat(1999 / scrap.length),
      `${scrap} `.repeat(600),
      `true ${scrap} `.repeat(300),
      `(${scrap}`.repeat(400),
    ]) {
      const made = compile(text, DECLARED, ANY);
      expect(made.ok || made.problems.length > 0).toBe(true);
    }
  }
});

test("[EX45] names every object has are no names here", () => {
  for (const name of ["constructor", "toString", "hasOwnProperty", "valueOf"]) {
    for (const text of [
      `${name} == 1`,
      `car.${name} == 1`,
      `whl.${name} == 1`,
      `${name}(1.0)`,
      `axle.${name}(c, true)`,
      `places("${name}").exists(c, true)`,
    ])
      expect([text, compile(text, DECLARED, ANY).ok]).toEqual([text, false]);
  }
});

/** Any part of a plan changed for any other JSON. */
const damaged = (plan: Plan, path: readonly number[], with_: unknown): unknown => {
  const go = (part: unknown, [step, ...rest]: readonly number[]): unknown => {
    if (step === undefined || !Array.isArray(part) || part.length === 0) return with_;
    const index = step % part.length;
    return part.map((inner, i) => (i === index ? go(inner, rest) : inner));
  };
  return { ...plan, code: go(plan.code, path) };
};

test(
  "[EX45] a plan damaged anywhere is refused or still answers; it never throws",
  () => {
    const whole = scopeOf(worldOf({ "whl.rock@FR": "bad", "whl.float@FR": 0.4 }, { facts: { brakes: "outboard" } }));
    fc.assert(
      fc.property(
        conditions,
        fc.array(fc.nat(5), { maxLength: 5 }),
        fc.jsonValue({ maxDepth: 2 }),
        (text, path, scrap) => {
          // JSON from a file: its shape is what link has to find out.
          const plan = damaged(planned(text), path, scrap) as Plan;
          const run = link(plan, TRADE);
          readsOf(plan);
          if (run.ok) run.value(whole, "FR");
          else expect(run.problems).toHaveLength(1);
        },
      ),
      { seed: SEED + 3, numRuns: 6000 },
    );
  },
  PATIENCE,
);

test(
  "[EX45] no reply makes a condition throw",
  () => {
    const junk = fc.oneof(
      fc.string(),
      fc.double(),
      fc.boolean(),
      fc.array(fc.string(), { maxLength: 3 }),
      fc.constant(new Unknown(new Set())),
      fc.constant(new Unknown(new Set(["k"]))),
    );
    fc.assert(
      fc.property(conditions, fc.array(junk, { minLength: 1, maxLength: 8 }), (text, answers) => {
        let asked = 0;
        const next = () => answers[asked++ % answers.length] ?? true;
        const scope: Scope = {
          read: next,
          measured: () => {
            const answer = next();
            return answer instanceof Unknown ? answer : { value: Number(answer), u: asked % 3 };
          },
          band: () => ({ low: 0, high: 4, missing: new Set(["k!closer"]) }),
          unanswered: () => next() === true,
          sinceLast: () => {
            const answer = next();
            return answer instanceof Unknown ? answer : Number(answer);
          },
          fact: next,
          related: () => (next() === true ? undefined : ["FL", "FR"]),
          places: () => ["FL", "FR", "RL"],
          found: () => next() === true,
        };
        const run = link(planned(text), TRADE);
        const outcome = run.ok ? run.value(scope, "FR") : "not linked";
        expect(outcome instanceof Unknown || typeof outcome === "boolean").toBe(true);
      }),
      { seed: SEED + 4, numRuns: 3000 },
    );
  },
  PATIENCE,
);
