/**
 * Runs one trade function: every argument is held against its kind and range first, and nothing but a finite number
 * comes out. Problems name the argument and what it may be; never a guess.
 */
import { isWithin, rangeText } from "../terms/author.js";
import { fail, ok, type Problem, problem } from "../terms/index.js";
import {
  type Argument,
  type Calculated,
  type FigureArgument,
  type Given,
  isList,
  isWordArgument,
  type TradeFunction,
} from "./contract.js";

/** Refuses the figures a function was given although each alone is in range. `params` fill the text of the code. */
export const refusal = (code: string, params: Problem["params"] = {}): Problem => problem(`trade.${code}`, {}, params);

/**
 * Works a function out. Problems (texts in messages.ts): `trade.arguments` (too few or many), `trade.kind`,
 * `trade.range`, `trade.whole`, `trade.too-few`, `trade.word`, what the subject itself refuses, and
 * `trade.no-answer` where the figures have no finite one.
 */
export function calculate(fn: TradeFunction, given: readonly Given[]): Calculated {
  const miscounted = wrongCount(fn, given.length);
  if (miscounted) return fail(miscounted);
  const faults = fn.arguments.flatMap((argument, index) => {
    const value = given[index];
    return value === undefined ? [] : faultsOf(fn, argument, value);
  });
  if (faults.length > 0) return fail(...faults);
  const result = fn.work(...given);
  if (typeof result === "object") return fail({ ...result, params: { of: fn.name, ...result.params } });
  if (typeof result === "number" && !Number.isFinite(result)) return fail(refusal("no-answer", { of: fn.name }));
  return ok(result);
}

/** Too few or too many arguments, as a problem. */
export const wrongCount = (fn: TradeFunction, given: number): Problem | undefined =>
  given === fn.arguments.length
    ? undefined
    : refusal("arguments", { of: fn.name, expected: fn.arguments.map(({ name }) => name), given });

function faultsOf(fn: TradeFunction, argument: Argument, value: Given): readonly Problem[] {
  const told = { of: fn.name, argument: argument.name };
  if (isWordArgument(argument)) {
    if (typeof value !== "string") return [refusal("kind", { ...told, expected: "word" })];
    const { words } = argument;
    return words === undefined || words.includes(value)
      ? []
      : [refusal("word", { ...told, found: value, expected: words })];
  }
  if (isList(argument)) {
    if (typeof value === "string" || typeof value === "number") return [refusal("kind", { ...told, expected: "list" })];
    if (value.length < argument.atLeast)
      return [refusal("too-few", { ...told, found: value.length, expected: argument.atLeast })];
    return value.flatMap((one) => outOfRange(told, argument, one));
  }
  if (typeof value !== "number") return [refusal("kind", { ...told, expected: "number" })];
  return outOfRange(told, argument, value);
}

function outOfRange(told: Problem["params"], argument: FigureArgument, value: number): readonly Problem[] {
  const found = String(value);
  if (!isWithin(value, argument)) return [refusal("range", { ...told, found, range: rangeText(argument) })];
  return argument.whole && !Number.isInteger(value) ? [refusal("whole", { ...told, found })] : [];
}
