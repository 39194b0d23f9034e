// Every figure of every trade function against what it may be for a reason of the trade (ranges-facts.ts): at an end, just
// inside and just outside, and what is no figure at all. A refusal names the argument and tells the range.
import { expect, test } from "vitest";
import { calculate, type Given, isList, isWordArgument, TRADE_TABLE, tellTrade } from "../../src/core/trade/index.js";
import { canonicalUnit } from "../../src/core/units/index.js";
import { RANGE_FACTS } from "./ranges-facts.js";

const FIGURES = [...TRADE_TABLE.values()].flatMap((fn) =>
  fn.arguments.flatMap((argument, index) =>
    isWordArgument(argument) ? [] : [{ where: `${fn.name}.${argument.name}`, fn, argument, index }],
  ),
);
type Figure = (typeof FIGURES)[number];

const SPAN =
  /^(whole, )?(?:(\d+) or more, each )?(a finite number|(?:(over|at least) ([^\s,]+))?(?:(?:, )?(under|at most) (\S+))?)(?: (\S+))?$/;

/** The words of a span: its ends and whether they belong to it. */
function read(span: string) {
  const found = SPAN.exec(span);
  if (!found) throw new Error(`no span: ${span}`);
  const [, whole, least, range, low, from, high, to, unit] = found;
  return {
    isWhole: whole !== undefined,
    least: least === undefined ? undefined : Number(least),
    range,
    low: from === undefined ? undefined : { edge: Number(from), belongs: low === "at least" },
    high: to === undefined ? undefined : { edge: Number(to), belongs: high === "at most" },
    unit: unit ?? "",
  };
}

/** The one fact for a figure: by its full name before its own. */
function factOf({ where, argument }: Figure) {
  const named = (name: string) => RANGE_FACTS.filter(([, of]) => of.split(" ").includes(name));
  const full = named(where);
  const found = full.length > 0 ? full : named(argument.name);
  expect(found, where).toHaveLength(1);
  return read(found[0]?.[0] ?? "");
}

/** What is said of one figure alone, whatever the others are. */
function said({ fn, argument, index }: Figure, value: Given) {
  const rest = fn.arguments.map(
    (one): Given => (isWordArgument(one) ? (one.words?.[0] ?? "0101") : isList(one) ? [1] : 1),
  );
  const result = calculate(
    fn,
    rest.map((one, at) => (at === index ? value : one)),
  );
  const problems = result.ok ? [] : result.problems;
  return problems.filter(
    ({ code, params }) =>
      ["trade.range", "trade.whole", "trade.too-few"].includes(code) && params["argument"] === argument.name,
  );
}

test("every figure has one fact, and every fact a figure", () => {
  const used = new Set(FIGURES.flatMap(({ where, argument }) => [where, argument.name]));
  for (const [span, of, , why] of RANGE_FACTS) {
    expect(why.length, span).toBeGreaterThan(4);
    for (const name of of.split(" ")) expect(used, name).toContain(name);
  }
});

test.each(FIGURES)("$where", (figure) => {
  const { fn, argument } = figure;
  const fact = factOf(figure);
  const unit = argument.kind === "number" || argument.kind === "ratio" ? "" : canonicalUnit(argument.kind);
  expect(fact.unit).toBe(unit);
  const held = (value: number) =>
    said(figure, isList(argument) ? Array.from({ length: fact.least ?? 1 }, () => value) : value);
  const refuses = (value: number): void => {
    const [first] = held(value);
    expect(first?.code, String(value)).toBe("trade.range");
    expect(first && tellTrade(first)).toBe(`${fn.name}: ${argument.name} is ${value}; it must be ${fact.range}.`);
  };
  const accepts = (value: number): void => expect(held(value), String(value)).toEqual([]);

  for (const { end, inward } of [
    { end: fact.low, inward: 1 },
    { end: fact.high, inward: -1 },
  ]) {
    if (!end) continue;
    const step = inward * (fact.isWhole ? 1 : 1e-6 * Math.max(1, Math.abs(end.edge)));
    (end.belongs ? accepts : refuses)(end.edge);
    accepts(end.edge + step);
    refuses(end.edge - step);
  }
  for (const none of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) refuses(none);
  // A zero with a sign is zero.
  if (fact.low?.edge === 0) (fact.low.belongs ? accepts : refuses)(-0);
  if (fact.isWhole) expect(held((fact.low?.edge ?? 0) + 0.5).map(({ code }) => code)).toEqual(["trade.whole"]);
  expect(isList(argument) ? argument.atLeast : undefined).toBe(fact.least);
  if (fact.least !== undefined) {
    const few = Array.from({ length: fact.least - 1 }, () => fact.high?.edge ?? 1);
    const [told] = said(figure, few);
    expect(told && tellTrade(told)).toBe(
      `${fn.name}: ${argument.name} holds ${fact.least - 1}; at least ${fact.least} are needed.`,
    );
  }
});
