/** The usual shapes of a condition: as data and back, and every condition of the sheets that has one. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { GRADES } from "../terms/index.js";
import { type Asked, type Condition, SIGNS, type Term, tidy } from "./condition.js";
import { readCondition } from "./condition-read.js";
import { writeCondition } from "./condition-write.js";

const asked: fc.Arbitrary<Asked> = fc
  .record({
    name: fc.constantFrom("whl.rock", "whl.heat_reading", "car.brakes", "brk.pedal"),
    at: fc.constantFrom("", "opposite", "axle.opposite"),
    when: fc.constantFrom(undefined, undefined, "last" as const, "since" as const),
  })
  .map(({ when, ...rest }) => (when === undefined ? rest : { ...rest, when }));
const within: fc.Arbitrary<Asked> = asked.map((one) => ({ ...one, at: one.at === "" ? "each" : `each.${one.at}` }));
const word = fc.constantFrom("clear", "just-felt", "no-echo", 'it\'s "so"');
const sign = fc.constantFrom(...SIGNS);
const number = fc.oneof(fc.integer({ min: -20, max: 400 }), fc.constantFrom(0.25, 1.5, 12.75));

const single = (of: fc.Arbitrary<Asked>): fc.Arbitrary<Term> => {
  const scaled = fc.record({ factor: fc.constantFrom(1, 1.25, 2), of });
  const bare: fc.Arbitrary<Term> = fc.oneof(
    fc.record({ is: fc.constant("yes" as const), of }),
    fc.record({ is: fc.constant("word" as const), of, sign: fc.constantFrom("==" as const, "!=" as const), word }),
    fc.record({ is: fc.constant("one-of" as const), of, words: fc.array(fc.oneof(word, number), { minLength: 1 }) }),
    fc.record({ is: fc.constant("includes" as const), of, word }),
    fc.record({ is: fc.constant("figure" as const), of: scaled, sign, than: fc.oneof(number, scaled) }),
    fc.record({ is: fc.constant("band" as const), of, sign, grade: fc.constantFrom(...GRADES) }),
    fc.record({ is: fc.constant("more" as const), of: scaled, than: scaled }),
    fc.record({ is: fc.constant("unanswered" as const), of }),
    fc.record({
      is: fc.constant("found" as const),
      fault: fc.constantFrom("whl.race", "brk.pipe-rust"),
      at: fc.constantFrom("", "opposite"),
    }),
  );
  return fc.tuple(bare, fc.boolean()).map(([term, not]) => (not ? { not: true, ...term } : term));
};
const joined = (term: fc.Arbitrary<Term>): fc.Arbitrary<Condition> =>
  fc.record({
    join: fc.constantFrom("all" as const, "any" as const, 2),
    terms: fc.array(term, { minLength: 1, maxLength: 4 }),
  });
const list = fc.oneof(
  fc.record({ kind: fc.constantFrom("corner", "axle") }),
  fc.record({ relation: fc.constantFrom("axle", "front", "opposite.side") }),
);
const places = (hold: fc.Arbitrary<Condition>): fc.Arbitrary<Term> =>
  fc.record({
    is: fc.constant("places" as const),
    list,
    every: fc.boolean(),
    hold: fc.option(hold, { nil: null }),
  });
const group = (hold: fc.Arbitrary<Condition>): fc.Arbitrary<Term> =>
  fc
    .tuple(fc.record({ is: fc.constant("group" as const), hold }), fc.boolean())
    .map(([term, not]) => (not ? { not: true, ...term } : term));
const condition = joined(
  fc.oneof(
    { weight: 3, arbitrary: single(asked) },
    places(joined(fc.oneof(single(asked), single(within)))),
    group(joined(fc.oneof(single(asked), group(joined(single(asked)))))),
  ),
);

describe("a condition of rows", () => {
  it("comes back from its text as it was put together", () => {
    fc.assert(
      fc.property(condition, (one) => {
        expect(readCondition(writeCondition(one))).toEqual(tidy(one));
      }),
    );
  });
  it("stays as it is once tidied", () => {
    fc.assert(
      fc.property(condition, (one) => {
        expect(tidy(tidy(one))).toEqual(tidy(one));
      }),
    );
  });
  it("is written as a technician would write it", () => {
    const one: Condition = {
      join: "all",
      terms: [
        { is: "word", of: { name: "whl.rock", at: "" }, sign: "==", word: "clear" },
        {
          is: "group",
          hold: {
            join: "any",
            terms: [
              { is: "one-of", of: { name: "whl.nut", at: "opposite" }, words: ["locked", "stake-worked"] },
              { is: "band", of: { name: "whl.float", at: "" }, sign: ">=", grade: "minor" },
            ],
          },
        },
        {
          is: "places",
          list: { kind: "corner" },
          every: true,
          hold: { join: "all", terms: [{ is: "yes", of: { name: "whl.hot", at: "each" }, not: true }] },
        },
      ],
    };
    expect(writeCondition(one)).toBe(
      'whl.rock == "clear" && (opposite.whl.nut in ["locked", "stake-worked"] || band(whl.float) >= minor)' +
        ' && places("corner").all(c, !(c.whl.hot))',
    );
  });
  it("gives its places a letter no name begins with", () => {
    const hold: Condition = { join: "all", terms: [{ is: "yes", of: { name: "c.loose", at: "each" } }] };
    const one: Condition = { join: "all", terms: [{ is: "places", list: { kind: "corner" }, every: false, hold }] };
    expect(writeCondition(one)).toBe('places("corner").exists(d, d.c.loose)');
  });
  it.each([
    ["a choice between two", 'whl.rock == "clear" ? whl.hot : whl.cold'],
    ["a function of the trade as a term", "pad_taper(brk.pad, brk.trail) > 2.0"],
    ["text that does not parse", 'whl.rock == "clear'],
    ["a bare word", "whl"],
    ["a sum", "whl.a + whl.b > whl.c"],
  ])("is left as text where it has no usual shape: %s", (_what, text) => {
    expect(readCondition(text)).toBeUndefined();
  });
});
