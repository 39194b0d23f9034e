// Rolling bearings: two university data sets (the second with geometry and figures seen, CC BY 4.0; the first with
// geometry from memory that reproduces its multiples) and a public worked table.
import { expect, test } from "vitest";
import { figure, refused } from "../support/reckoned.js";

interface DataSet {
  readonly set: string;
  /** As typed: elements, element, pitch, contact angle in degrees, turns in Hz. */
  readonly geometry: readonly [n: number, d: string, pitch: string, contact: number, hz: number];
  /** As printed: cage, outer race, inner race, element. */
  readonly printed: readonly [cage: number, outer: number, inner: number, element: number];
  readonly rounding: number;
}
const SETS: readonly DataSet[] = [
  {
    set: "university set, 6205",
    geometry: [9, "0.3126 in", "1.537 in", 0, 1],
    printed: [0.39828, 3.5848, 5.4152, 2.35675],
    rounding: 0.002,
  },
  {
    set: "university set, ER16K",
    geometry: [9, "7.9375 mm", "38.5 mm", 0, 1],
    printed: [0.3969, 3.572, 5.428, 2.32],
    rounding: 0.003,
  },
  { set: "worked table, 1800 rpm", geometry: [8, "10", "50", 0, 30], printed: [12, 96, 144, 72], rounding: 1e-6 },
  {
    set: "contact 15°, recomputed",
    geometry: [8, "2", "12", 15, 25],
    printed: [10.48765, 83.90124, 116.0988, 73.05622],
    rounding: 1e-4,
  },
];

test.each(SETS)("$set", ({ geometry: [n, d, pitch, contact, hz], printed, rounding }) => {
  const found = [
    `cage_frequency(${d}, ${pitch}, ${contact}, ${hz}, inner)`,
    `outer_race_frequency(${n}, ${d}, ${pitch}, ${contact}, ${hz})`,
    `inner_race_frequency(${n}, ${d}, ${pitch}, ${contact}, ${hz})`,
    `rolling_element_frequency(${d}, ${pitch}, ${contact}, ${hz})`,
  ].map(figure);
  for (const [index, one] of printed.entries())
    expect(Math.abs((found[index] ?? Number.NaN) - one)).toBeLessThanOrEqual(rounding);
});

test("the first set prints twice the element's turns as its defect frequency: a spot strikes both races", () => {
  expect(2 * figure("rolling_element_frequency(0.3126 in, 1.537 in, 0, 1)")).toBeCloseTo(4.7135, 3);
});

test("five thousandths of an inch of hub float are 0.127 mm; one maker prints a tenth of that", () => {
  expect(figure("inches(0.005)")).toBeCloseTo(0.127, 12);
  expect(figure("inches(0.005)")).not.toBeCloseTo(0.0127, 3);
});

test("outer and inner race together meet every element, and a hub's cage turns the other share", () => {
  const [outer, inner] = ["outer", "inner"].map((race) => figure(`${race}_race_frequency(12, 9, 52, 20, 14)`));
  expect((outer ?? 0) + (inner ?? 0)).toBeCloseTo(12 * 14, 9);
  const [own, hub] = ["inner", "outer"].map((ring) => figure(`cage_frequency(9, 52, 20, 14, ${ring})`));
  expect((own ?? 0) + (hub ?? 0)).toBeCloseTo(14, 9);
  expect(outer).toBeCloseTo(12 * (own ?? 0), 9);
});

test("110 km/h on 1.9 m is 16 turns a second; elements wider than their pitch are no bearing", () => {
  expect(figure("turns_by_speed(110 km/h, 1900 mm)")).toBeCloseTo(16, 0);
  expect(refused("cage_frequency(50, 50, 0, 1, inner)")).toEqual(["trade.over-argument"]);
  expect(refused("outer_race_frequency(2, 10, 50, 0, 1)")).toEqual(["trade.range"]);
  expect(refused("outer_race_frequency(8.5, 10, 50, 0, 1)")).toEqual(["trade.whole"]);
});
