import fc from "fast-check";
import { expect, test } from "vitest";
import { rangeText } from "../terms/author.js";
import type { Problem } from "../terms/index.js";
import { canonicalUnit, unitsOf } from "../units/index.js";
import { calculate } from "./calculate.js";
import { type Argument, type Given, isList, isWordArgument, type TradeFunction } from "./contract.js";
import { TRADE_MESSAGES, TRADE_TABLE, tellTrade } from "./index.js";
import { reckon } from "./reckon.js";

const ALL = [...TRADE_TABLE.values()];
const codes = (result: { readonly ok: boolean; readonly problems?: readonly Problem[] }): readonly string[] =>
  (result.problems ?? []).map(({ code }) => code);

/** Any value in an argument's range, the edges among them. */
function within(argument: Argument): fc.Arbitrary<Given> {
  if (isWordArgument(argument))
    return argument.words ? fc.constantFrom(...argument.words) : fc.stringMatching(/^\d{2,5}$/);
  const least = argument.from ?? argument.over ?? -1000;
  const most = argument.to ?? argument.under ?? 1e6;
  const figure = argument.whole
    ? fc.integer({ min: Math.ceil(least), max: Math.floor(most) })
    : fc.double({
        min: least,
        max: most,
        noNaN: true,
        minExcluded: argument.over !== undefined,
        maxExcluded: argument.under !== undefined,
      });
  return isList(argument) ? fc.array(figure, { minLength: argument.atLeast, maxLength: argument.atLeast + 3 }) : figure;
}

test.each(ALL.map((fn) => [fn.name, fn] as const))(
  "%s: figures in range give a finite answer or a reason in words",
  (_, fn) => {
    fc.assert(
      fc.property(fc.tuple(...fn.arguments.map(within)), (given) => {
        const result = calculate(fn, given);
        if (result.ok) {
          if (fn.gives === "word") expect(fn.words).toContain(result.value);
          else expect(typeof result.value).toBe(fn.gives === "yes" ? "boolean" : "number");
          if (typeof result.value === "number") expect(Number.isFinite(result.value)).toBe(true);
        } else for (const { code } of result.problems) expect(TRADE_MESSAGES[code], code).toBeDefined();
      }),
      { numRuns: 60, seed: 20261129 },
    );
  },
);

/** A figure just outside each edge of an argument. */
function outside(argument: Argument): readonly number[] {
  if (isWordArgument(argument)) return [];
  const { over, from, to, under } = argument;
  return [
    over,
    from === undefined ? undefined : from - 1e-6,
    to === undefined ? undefined : to * 1.000001 + 1e-6,
    under,
  ].filter((edge) => edge !== undefined);
}

test.each(ALL.map((fn) => [fn.name, fn] as const))(
  "%s: a figure outside its range is refused by name and range",
  (_, fn) => {
    const inRange = fn.arguments.map((argument) => fc.sample(within(argument), { numRuns: 1, seed: 7 })[0] ?? 0);
    for (const [index, argument] of fn.arguments.entries())
      for (const figure of [
        ...outside(argument),
        ...(isWordArgument(argument) ? [] : [Number.NaN, Number.POSITIVE_INFINITY]),
      ]) {
        const value = isList(argument) ? Array.from({ length: argument.atLeast }, () => figure) : figure;
        const result = calculate(
          fn,
          inRange.map((given, at) => (at === index ? value : given)),
        );
        expect(codes(result), `${argument.name} ${figure}`).toContain("trade.range");
        const told = result.ok ? "" : result.problems.map(tellTrade).join(" ");
        if (!isWordArgument(argument)) expect(told).toContain(rangeText(argument));
        expect(told).toContain(argument.name);
      }
  },
);

test("every function has words, a formula and a source; published ones name their document", () => {
  expect(ALL.length).toBeGreaterThan(100);
  for (const fn of ALL) {
    expect(fn.name).toMatch(/^[a-z][a-z0-9_]*$/);
    expect(fn.says.length, fn.name).toBeGreaterThan(3);
    expect(fn.formula.length, fn.name).toBeGreaterThan(2);
    if (fn.source.basis === "published") expect(fn.source.document, fn.name).toBeTruthy();
    if (fn.source.basis === "memory" || fn.source.basis === "practice") expect(fn.source.note, fn.name).toBeTruthy();
    if (fn.gives === "word") expect(fn.words, fn.name).toBeDefined();
    expect(new Set(fn.arguments.map(({ name }) => name)).size, fn.name).toBe(fn.arguments.length);
  }
});

/** A function's answer with one argument written in another unit of its quantity. */
const inUnit = (fn: TradeFunction, given: readonly Given[], index: number, code: string, value: number): string =>
  `${fn.name}(${given.map((one, at) => (at === index ? `${value} ${code}` : Array.isArray(one) ? `[${one.join(", ")}]` : typeof one === "string" ? `"${one}"` : String(one))).join(", ")})`;

test("an answer does not depend on the unit the figure was typed in", () => {
  let compared = 0;
  for (const fn of ALL)
    for (const [index, argument] of fn.arguments.entries()) {
      if (isWordArgument(argument) || isList(argument) || argument.kind === "number" || argument.whole) continue;
      const middle = ((argument.from ?? argument.over ?? 0) + Math.min(argument.to ?? argument.under ?? 100, 1000)) / 2;
      const figure = Number(middle.toFixed(3));
      const given = fn.arguments.map((one, at) =>
        at === index ? figure : (fc.sample(within(one), { numRuns: 1, seed: 3 })[0] ?? 1),
      );
      if (given.some((one) => typeof one === "number" && !/^-?\d+(\.\d+)?$/.test(String(one)))) continue;
      const plain = reckon(inUnit(fn, given, index, canonicalUnit(argument.kind), figure));
      if (!plain.ok || typeof plain.value.value !== "number") continue;
      for (const unit of unitsOf(argument.kind)) {
        // No unit of the table has a zero of its own but temperatures; those go through core/units just the same.
        if (unit.before !== 0) continue;
        const typed = (figure * unit.under) / unit.over;
        if (!/^\d+(\.\d+)?$/.test(String(typed))) continue;
        const other = reckon(inUnit(fn, given, index, unit.code, typed));
        if (!other.ok) continue;
        compared++;
        const [a, b] = [plain.value.value, Number(other.value.value)];
        expect(Math.abs(a - b), `${fn.name} ${argument.name} in ${unit.code}`).toBeLessThanOrEqual(
          1e-6 * Math.max(1, Math.abs(a)),
        );
      }
    }
  expect(compared).toBeGreaterThan(50);
});

const REFUSED: readonly (readonly [string, string])[] = [
  ["", "trade.syntax"],
  ["12", "trade.syntax"],
  ["brake_imbalance(1, 2", "trade.syntax"],
  ["brake_imbalance(1, 2))", "trade.syntax"],
  ["brake_imbalance(1 2, 3)", "units.two-numbers"],
  ["brake_imbalance(1)", "trade.arguments"],
  ["brake_imbalance(1, 2, 3)", "trade.arguments"],
  ["brake_imbalanc(1, 2)", "trade.unknown"],
  ["brake_imbalance(1 bar, 2 N)", "units.other-quantity"],
  ["brake_imbalance([1, 2], 2)", "trade.kind"],
  ["brake_efficiency(dew_point(20, 50), 1000)", "trade.kind"],
  ["parking_brake_minimum(drum)", "trade.word"],
  ["disc_spread([24])", "trade.too-few"],
  ["mean_reading([1.5, 2 N])", "units.other-quantity"],
  [`${"mean_reading(".repeat(20)}1${")".repeat(20)}`, "trade.syntax"],
];

test.each(REFUSED)("%s is refused as %s, in words", (text, code) => {
  const result = reckon(text);
  expect(result.ok).toBe(false);
  if (result.ok) return;
  expect(codes(result)).toContain(code);
  for (const one of result.problems) expect(tellTrade(one)).not.toMatch(/undefined|\{|\}/);
});

const nested = (calls: number): string => `${"mean_reading(".repeat(calls)}1${")".repeat(calls)}`;

test("eight calls may stand inside one another, not nine", () => {
  expect(reckon(nested(8)).ok).toBe(true);
  expect(codes(reckon(nested(9)))).toEqual(["trade.syntax"]);
});

test("a long text is told by its beginning, and from where it can't be read", () => {
  const params = (text: string) => {
    const result = reckon(text);
    return result.ok ? undefined : result.problems[0]?.params;
  };
  const tail = "abcdefghij".repeat(20);
  const unclosed = `pad_taper(1, 2)) ${tail}`;
  expect(params(unclosed)).toMatchObject({ typed: unclosed.slice(0, 120), rest: `) ${tail}`.slice(0, 40) });
  expect(params(tail)).toMatchObject({ typed: tail.slice(0, 120), rest: tail.slice(0, 40) });
});

test("calls inside calls, lists, units, fractions and quotes are read", () => {
  const result = reckon(" remaining_life( wall_floor( 3/32 in , 100 ), 1.2, governing_rate(0.01, 0.02) ) ");
  expect(result.ok && result.value.value).toBeCloseTo((2.38125 - 1.2) / 0.02, 6);
});
