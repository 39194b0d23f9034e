/** Calls of trade functions and amounts, linked: what is not known, what is refused, what uncertainty comes through. */
import { expect, test } from "vitest";
import {
  DECLARED,
  missingKey,
  NOT_FITTED,
  scopeOf,
  TRADE,
  type World,
  worldOf,
} from "../../../tests/support/expr-world.js";
import type { Problem } from "../terms/index.js";
import { compile, type Use } from "./author.js";
import { link, Unknown, withUncertainty } from "./run.js";

const linked = (text: string, use: Use = { scope: "corner" }) => {
  const made = compile(text, DECLARED, use);
  const run = made.ok ? link(made.value, TRADE) : made;
  if (!run.ok) throw new Error(`${text}: ${run.problems.map(({ code }) => code).join(", ")}`);
  return run.value;
};
/** true, false, "does not apply", or what is missing. */
const told = (text: string, world: World): unknown => {
  const outcome = linked(text)(scopeOf(world), "FR");
  if (!(outcome instanceof Unknown)) return outcome;
  return outcome.missing.size === 0 ? "does not apply" : [...outcome.missing].sort();
};
const key = (name: string, place: string): string => {
  const named = DECLARED.names[name];
  if (named === undefined) throw new Error(name);
  return missingKey(named.ref.point, named.ref.field, place);
};
const reporting = (world: World, into: Problem[]) => ({
  ...scopeOf(world),
  report: (one: Problem) => void into.push(one),
});

test("[EX38] at a kink the farther end counts, and an end out of a function's range gives way to the other", () => {
  const formula = (text: string) => withUncertainty(linked(text, { scope: "corner", gives: "length" }));
  const world = (left: number) =>
    scopeOf(worldOf({ "whl.float@FR": { value: 0.2, u: 0.03 }, "whl.float@FL": { value: left, u: 0 } }));
  const apart = formula("spread_of([whl.float, opposite.whl.float])");
  // |a − b| at a = b: 0.03 to either side, although nothing lies between the two ends.
  expect(apart(world(0.2), "FR")).toEqual({ value: 0, u: expect.closeTo(0.03, 12) });
  expect(apart(world(0.5), "FR")).toEqual({ value: expect.closeTo(0.3, 12), u: expect.closeTo(0.03, 12) });
  const reported: Problem[] = [];
  const edge = reporting(worldOf({ "whl.float@FR": { value: 49.99, u: 0.03 } }), reported);
  expect(formula("ring_gap(whl.float, 1)")(edge, "FR")).toEqual({ value: 49.99, u: expect.closeTo(0.03, 12) });
  expect(reported).toEqual([]);
});

test("[EX51] a figure out of a function's range: the result is not known, why is told, and the reading is to be taken again", () => {
  const reported: Problem[] = [];
  const world = reporting(worldOf({ "whl.float@FR": 51 }), reported);
  const outcome = linked("ring_gap(whl.float, 2) < whl.float")(world, "FR");
  expect(outcome).toBeInstanceOf(Unknown);
  expect(outcome instanceof Unknown && [...outcome.missing]).toEqual([`${key("whl.float", "FR")}!closer`]);
  expect(reported).toEqual([
    { code: "trade.range", where: {}, params: { argument: "play", offset: 0, length: 22, place: "FR" } },
  ]);
});

test("[EX27] of an argument of several figures one that is missing makes the result not known, and names it", () => {
  const spread = "is_oval(spread_of([whl.float, opposite.whl.float]))";
  expect(told(spread, worldOf({ "whl.float@FR": 0.1 }))).toEqual([key("whl.float", "FL")]);
  expect(told(spread, worldOf({ "whl.float@FR": 0.1, "whl.float@FL": 0.7 }))).toBe(true);
  expect(told(spread, worldOf({ "whl.float@FR": 0.1, "whl.float@FL": NOT_FITTED }))).toBe("does not apply");
});

test("[EX50] an amount is worked with in the canonical unit, whatever unit it is written in", () => {
  const thick = (text: string) => told(text, worldOf({ "whl.float@FR": 50.8 }));
  expect(thick('whl.float / amount(1.0, "[in_i]") > 1.99 && whl.float / amount(25.4, "mm") < 2.01')).toBe(true);
});
