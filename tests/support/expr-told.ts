/** Conditions of the tests' small world planned, linked and judged in one step. Throws where a plan or a link is refused. */
import { compile, type Use } from "../../src/core/expr/author.js";
import { link, type Outcome, type Plan, Unknown } from "../../src/core/expr/run.js";
import { DECLARED, missingKey, scopeOf, TRADE, type World } from "./expr-world.js";

export const planned = (text: string, use: Use = { scope: "corner" }): Plan => {
  const made = compile(text, DECLARED, use);
  if (!made.ok) throw new Error(`${text}: ${made.problems.map(({ code }) => code).join(", ")}`);
  return made.value;
};
export const linked = (text: string, use?: Use) => {
  const run = link(planned(text, use), TRADE);
  if (!run.ok) throw new Error(`${text}: ${run.problems.map(({ code }) => code).join(", ")}`);
  return run.value;
};
/** A condition that gives a length. */
export const linkedFormula = (text: string) => linked(text, { scope: "corner", gives: "length" });
export const judged = (text: string, world: World, here = "FR", use?: Use): Outcome =>
  linked(text, use)(scopeOf(world), here);

/** What came of it: true, false, "does not apply", or what is missing. */
export const told = (text: string, world: World, here = "FR", use?: Use): unknown => {
  const outcome = judged(text, world, here, use);
  if (!(outcome instanceof Unknown)) return outcome;
  return outcome.missing.size === 0 ? "does not apply" : [...outcome.missing].sort();
};
export const key = (name: string, place: string): string => {
  const named = DECLARED.names[name];
  if (named === undefined) throw new Error(name);
  return missingKey(named.ref.point, named.ref.field, place);
};
