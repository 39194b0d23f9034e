import { expect, test } from "vitest";
import { circle } from "./cycles.js";

const of = (links: Readonly<Record<string, readonly string[]>>) => circle(new Map(Object.entries(links)));

test("no circle in a tree, in two ways to one end, or where a link leads to what is not there", () => {
  expect(of({})).toBeUndefined();
  expect(of({ a: ["b", "c"], b: ["d"], c: ["d"], d: [] })).toBeUndefined();
  expect(of({ a: ["b"] })).toBeUndefined();
});

test("a circle is told as the way round it, without the way that leads to it", () => {
  expect(of({ a: ["a"] })).toEqual(["a", "a"]);
  expect(of({ start: ["x", "b"], x: [], b: ["c"], c: ["d"], d: ["b"] })).toEqual(["b", "c", "d", "b"]);
});

test("a chain of twenty thousand links needs no deep calls", () => {
  const long = new Map(Array.from({ length: 20_000 }, (_, i) => [`n${i}`, [`n${i + 1}`]]));
  expect(circle(long)).toBeUndefined();
  expect(circle(long.set("n19999", ["n19998"]))).toEqual(["n19998", "n19999", "n19998"]);
});
