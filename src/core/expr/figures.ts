/** Compares and calculates with linked figures and grades. Knows no limit: the scope says which band a reading is in. */
import type { GradeLevel } from "../terms/index.js";
import { asked, figure, type Run } from "./places-of.js";
import type { Arithmetic, Comparison, GradeNode, ScaledNode } from "./plan.js";
import { type BandSpan, type Measured, NOT_APPLICABLE, type Ref, type Scope, Unknown, type Value } from "./scope.js";
import { strict, union } from "./settle.js";

/** Numbers closer than this share of their size are equal: 3 × 0.1 is 0.3. No gauge tells so little apart. */
const EQUAL_WITHIN = 1e-9;

const same = (a: Value, b: Value): boolean =>
  typeof a === "number" && typeof b === "number"
    ? Math.abs(a - b) <= EQUAL_WITHIN * Math.max(Math.abs(a), Math.abs(b))
    : a === b;

export const COMPARE: Readonly<Record<Comparison, (a: Value, b: Value) => boolean>> = {
  "==": same,
  "!=": (a, b) => !same(a, b),
  "<": (a, b) => a < b && !same(a, b),
  "<=": (a, b) => a < b || same(a, b),
  ">": (a, b) => a > b && !same(a, b),
  ">=": (a, b) => a > b || same(a, b),
};

export const CALCULATE: Readonly<Record<Arithmetic, (a: number, b: number) => number>> = {
  "+": (a, b) => a + b,
  "-": (a, b) => a - b,
  "*": (a, b) => a * b,
  "/": (a, b) => a / b,
};

export const compares =
  (compare: (a: Value, b: Value) => boolean, a: Run, b: Run): Run =>
  (scope, at) => {
    const left = a(scope, at);
    const right = b(scope, at);
    if (left instanceof Unknown || right instanceof Unknown) return strict(left, right);
    return compare(left, right);
  };

/** `failed` where the result is no finite number. */
export const calculates =
  (work: (a: number, b: number) => number, a: Run, b: Run, failed: Run): Run =>
  (scope, at) => {
    const left = a(scope, at);
    const right = b(scope, at);
    if (left instanceof Unknown || right instanceof Unknown) return strict(left, right);
    const result = work(Number(left), Number(right));
    return Number.isFinite(result) ? result : failed(scope, at);
  };

/** Compares with something that is always known. */
export const tests =
  (test: (value: Value) => boolean, a: Run): Run =>
  (scope, at) => {
    const value = a(scope, at);
    return value instanceof Unknown ? value : test(value);
  };

/** A reply beside one word. */
export const isWord =
  (a: Run, word: string): Run =>
  (scope, at) => {
    const value = a(scope, at);
    return value instanceof Unknown ? value : value === word;
  };

/** Grades compared over all they may be: known only when every grade from low to high says the same. */
export function grades(compare: (a: Value, b: Value) => boolean, a: GradeNode, b: GradeNode): Run {
  const [first, second] = [bandOf(a), bandOf(b)];
  return (scope, at) => {
    const [left, right] = [first(scope, at), second(scope, at)];
    if (left instanceof Unknown || right instanceof Unknown) return strict(left, right);
    const answer = compare(left.low, right.low);
    for (let x: number = left.low; x <= left.high; x++)
      for (let y: number = right.low; y <= right.high; y++)
        if (compare(x, y) !== answer) return new Unknown(union([left.missing, right.missing]));
    return answer;
  };
}

function bandOf(node: GradeNode): Run<BandSpan> {
  if (typeof node !== "number") return asked(node[1], node[2], node[3], (scope, ref, place) => scope.band(ref, place));
  // A plan holds grade levels only; the author door writes them.
  const level = node as GradeLevel;
  const span = { low: level, high: level, missing: NOT_APPLICABLE.missing };
  return () => span;
}

/** Difference above twice the joint uncertainty; `failed` where that is no number. */
export function clearlyMore(a: ScaledNode, b: ScaledNode, failed: Run): Run {
  const [first, second] = [scaled(a), scaled(b)];
  return (scope, at) => {
    const [left, right] = [first(scope, at), second(scope, at)];
    if (left instanceof Unknown || right instanceof Unknown) return strict(left, right);
    const [gap, needed] = [left.value - right.value, 2 * Math.hypot(left.u, right.u)];
    return Number.isFinite(gap - needed) ? COMPARE[">"](gap, needed) : failed(scope, at);
  };
}

function scaled([times, point, field, place, last]: ScaledNode): Run<Measured> {
  const factor = figure(times);
  const ask = (scope: Scope, ref: Ref, there: string) => {
    const read = scope.measured(ref, there);
    return read instanceof Unknown ? read : { value: factor * read.value, u: Math.abs(factor) * read.u };
  };
  return asked(point, field, place, ask, last);
}
