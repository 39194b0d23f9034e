// Guard band: JCGM 106:2012 clauses 7 and 8 (rule seen on a laboratory's page; vectors recomputed). Trend: Theil-Sen
// (Sen 1968) and Fieller's interval, worked numbers recomputed with a general statistics library.
import { expect, test } from "vitest";
import { leastSquaresCrossing, medianLine } from "../../src/core/trade/trend.js";
import { answer, figure, refused, told } from "../support/reckoned.js";

const BESIDE = [
  ["at-least", 1.6, 1.65, 0.05, 1.7, 84.13],
  ["at-least", 1.6, 1.55, 0.05, 1.7, 15.87],
  ["at-least", 1.6, 1.49, 0.05, 1.7, 1.39],
  ["at-most", 0.1, 0.09, 0.01, 0.08, 84.13],
  ["at-most", 0.1, 0.08, 0.01, 0.08, 97.72],
  ["at-least", 22, 22, 0.02, 22.04, 50],
] as const;

test.each(BESIDE)("%s %s, read %s", (side, limit, reading, u, acceptance, chance) => {
  expect(figure(`acceptance_limit(${limit}, ${side}, ${u})`)).toBeCloseTo(acceptance, 9);
  expect(figure(`chance_of_conforming(${reading}, ${limit}, ${side}, ${u})`)).toBeCloseTo(chance, 1);
});

/** Share of the normal distribution under z, summed up strip by strip; the program goes by Abramowitz and Stegun 7.1.26. */
function underNormal(z: number): number {
  const strips = 2000;
  const width = z / strips;
  const heights = Array.from({ length: strips }, (_, i) => Math.exp(-(((i + 0.5) * width) ** 2) / 2));
  return 0.5 + (heights.reduce((sum, one) => sum + one, 0) * width) / Math.sqrt(2 * Math.PI);
}

test.each([-3, -1.3, -0.5, -0.05, 0, 0.05, 0.5, 1, 2, 3.5])(
  "%s uncertainties inside: the chance summed up strip by strip",
  (z) => {
    expect(figure(`chance_of_conforming(${1 + z}, 1, at-least, 1)`)).toBeCloseTo(100 * underNormal(z), 4);
    expect(figure(`chance_of_conforming(${1 - z}, 1, at-most, 1)`)).toBeCloseTo(100 * underNormal(z), 4);
  },
);

test("uncertainty of a scale and of parts together", () => {
  expect(figure("uncertainty_of_scale(0.1)")).toBeCloseTo(0.028868, 6);
  expect(figure("uncertainty_together([0.0289, 0.04])")).toBeCloseTo(0.049348, 6);
  expect(answer("clearly_different(1.26, 1.31, 0.02, 0.02)").value).toBe(false);
  expect(answer("clearly_different(1.26, 1.32, 0.02, 0.02)").value).toBe(true);
});

test("two readings: 10.0 then 8.2 after 12 thousand km reach 3.0 at 46.7, between 41.5 and 53.5", () => {
  const two = "[0, 12], [10, 8.2], 3";
  expect(figure(`limit_reached(${two})`)).toBeCloseTo(46.7, 1);
  expect(figure(`limit_reached_earliest(${two}, 0.13)`)).toBeCloseTo(41.5, 1);
  expect(figure(`limit_reached_latest(${two}, 0.13)`)).toBeCloseTo(53.5, 1);
});

test("wear within the uncertainty has an earliest and no latest", () => {
  expect(figure("limit_reached_earliest([0, 1], [10, 9.8], 3, 0.13)")).toBeCloseTo(15.5, 1);
  expect(refused("limit_reached_latest([0, 1], [10, 9.8], 3, 0.13)")).toEqual(["trade.no-trend"]);
});

const X = [0, 8, 15, 24, 31];
const Y = [11, 9.8, 8.9, 7.4, 6.5];

test("five readings: least squares 54.68 (52.68 to 56.89), median line −0.147581 and 54.21", () => {
  const fitted = leastSquaresCrossing(X, Y, 3);
  expect(fitted?.at).toBeCloseTo(54.68, 2);
  expect(fitted?.from).toBeCloseTo(52.68, 1);
  expect(fitted?.to).toBeCloseTo(56.89, 1);
  expect(medianLine(X, Y)?.slope).toBeCloseTo(-0.147581, 6);
  expect(figure(`limit_reached([${X.join(", ")}], [${Y.join(", ")}], 3)`)).toBeCloseTo(54.21, 2);
});

test("one bad reading moves least squares far and the median line hardly", () => {
  const bad = [11, 9.8, 6.9, 7.4, 6.5];
  const fitted = leastSquaresCrossing(X, bad, 3);
  expect(fitted?.at).toBeCloseTo(52.45, 2);
  expect(fitted?.from).toBeCloseTo(36.97, 0);
  expect(fitted?.to).toBeCloseTo(119.97, 0);
  expect(medianLine(X, bad)?.slope).toBeCloseTo(-0.147581, 6);
  expect(figure(`limit_reached([${X.join(", ")}], [${bad.join(", ")}], 3)`)).toBeCloseTo(54.08, 2);
});

test("the order of the readings does not matter, nor where counting starts", () => {
  const turned = figure("limit_reached([31, 0, 24, 8, 15], [6.5, 11, 7.4, 9.8, 8.9], 3)");
  expect(turned).toBeCloseTo(figure(`limit_reached([${X.join(", ")}], [${Y.join(", ")}], 3)`), 9);
  const later = figure(`limit_reached([${X.map((x) => x + 100).join(", ")}], [${Y.join(", ")}], 3)`);
  expect(later - 100).toBeCloseTo(turned, 9);
});

test("wear that comes back points to a new part; readings at one time to nothing", () => {
  expect(answer("part_renewed([8.2, 11.5, 11.2], 0.13, down)").value).toBe(true);
  expect(answer("part_renewed([8.2, 8.3, 8.1], 0.13, down)").value).toBe(false);
  expect(refused("wear_rate([3, 3], [1, 2])")).toEqual(["trade.same-time"]);
  expect(refused("wear_rate([1, 2, 3], [1, 2])")).toEqual(["trade.unequal-lists"]);
});

test("earliest and latest do not depend on the order, and wear that goes up is its mirror", () => {
  const args = ["limit_reached_earliest", "limit_reached_latest"] as const;
  for (const name of args) {
    const down = figure(`${name}([0, 12], [10, 8.2], 3, 0.13)`);
    expect(figure(`${name}([12, 0], [8.2, 10], 3, 0.13)`)).toBeCloseTo(down, 9);
    expect(figure(`${name}([0, 12], [-10, -8.2], -3, 0.13)`)).toBeCloseTo(down, 9);
    expect(refused(`${name}([4, 4], [10, 8.2], 3, 0.13)`)).toEqual(["trade.same-time"]);
  }
});

test("readings that lead away from the limit give no date in the past", () => {
  expect(refused("limit_reached([1, 2, 3], [8, 8.5, 9], 3)")).toEqual(["trade.leads-away"]);
  // Passed between two readings: that is a date.
  expect(figure("limit_reached([0, 10], [10, 2], 3)")).toBeCloseTo(8.75, 9);
});

/** The reading of one time against the other's, every way the uncertainty allows: when the limit may be met. */
function everyWay([x1, x2]: readonly [number, number], [y1, y2]: readonly [number, number], edge: number, u: number) {
  const shifts = Array.from({ length: 21 }, (_, i) => (i / 10 - 1) * u);
  const met = shifts.flatMap((a) => shifts.map((b) => x1 + ((y1 + a - edge) * (x2 - x1)) / (y1 + a - (y2 + b))));
  return { earliest: Math.min(...met), latest: Math.max(...met) };
}

const WAYS = [
  ["ahead of both", [0, 12], [10, 8.2], 3, 0.13],
  ["wear that goes up", [2, 5], [0.1, 0.4], 1, 0.05],
  ["passed between the two", [0, 10], [10, 2], 3, 0.5],
  ["passed between the two, going up", [3, 9], [1, 7], 6, 0.4],
  ["in metres", [0, 12], [0.01, 0.0082], 0.003, 0.00013],
  ["passed between the two, in metres", [0, 10], [0.01, 0.002], 0.003, 0.0005],
] as const;

test.each(WAYS)("%s: earliest and latest are the ends of every way the uncertainty allows", (_, x, y, edge, u) => {
  const { earliest, latest } = everyWay(x, y, edge, u);
  const args = `[${x.join(", ")}], [${y.join(", ")}], ${edge}`;
  const found = ["earliest", "latest"].map((end) => figure(`limit_reached_${end}(${args}, ${u})`));
  expect(found[0]).toBeCloseTo(earliest, 6);
  expect(found[1]).toBeCloseTo(latest, 6);
  const line = figure(`limit_reached(${args})`);
  expect(line).toBeGreaterThanOrEqual(found[0] ?? Number.NaN);
  expect(line).toBeLessThanOrEqual(found[1] ?? Number.NaN);
});

test("a first reading that may be at the limit already: at the earliest it was reached then", () => {
  expect(figure("limit_reached_earliest([4, 9], [3.05, 2.98], 3, 0.1)")).toBe(4);
  expect(figure("limit_reached_earliest([4, 9], [0.00305, 0.00298], 0.003, 0.0001)")).toBe(4);
  expect(refused("limit_reached_latest([4, 9], [3.05, 2.98], 3, 0.1)")).toEqual(["trade.no-trend"]);
  expect(figure("limit_reached_earliest([4, 9], [3, 3], 3, 0.1)")).toBe(4);
});

test("chance alone that reads a little better than before still has an earliest, by the way it wears", () => {
  // 8 then 8.05 ± 0.13 above a least of 3: it may have lost up to 0.21 in a year.
  expect(figure("limit_reached_earliest([1, 2], [8, 8.05], 3, 0.13)")).toBeCloseTo(1 + 5.13 / 0.21, 9);
});

test("readings that lead away have no date, however it is reckoned", () => {
  expect(refused("limit_reached_earliest([1, 2], [8, 9], 3, 0.13)")).toEqual(["trade.leads-away"]);
  expect(refused("limit_reached_latest([1, 2], [8, 9], 3, 0.13)")).toEqual(["trade.no-trend"]);
  expect(refused("limit_reached_fitted([1, 2, 3, 4], [8, 8.5, 9, 9.4], 3)")).toEqual(["trade.leads-away"]);
});

test("a worse last reading never reaches the limit later, and a surer gauge narrows the dates", () => {
  const falling = (row: readonly number[]) => expect(row).toEqual([...row].sort((a, b) => b - a));
  for (const name of ["limit_reached", "limit_reached_earliest", "limit_reached_latest"]) {
    const u = name === "limit_reached" ? "" : ", 0.13";
    falling([9, 8.2, 6, 4, 3, 2].map((last) => figure(`${name}([0, 12], [10, ${last}], 3${u})`)));
  }
  falling([0.01, 0.05, 0.13, 0.3].map((u) => figure(`limit_reached_earliest([0, 12], [10, 8.2], 3, ${u})`)));
  falling([0.3, 0.13, 0.05, 0.01].map((u) => figure(`limit_reached_latest([0, 12], [10, 8.2], 3, ${u})`)));
});

test("readings that stay the same tell no wear", () => {
  expect(refused("limit_reached([0, 1], [8, 8], 3)")).toEqual(["trade.no-trend"]);
  expect(refused("limit_reached_fitted([0, 1, 2, 3], [8, 8, 8, 8], 3)")).toEqual(["trade.no-trend"]);
  expect(refused("limit_reached_fitted([3, 3, 3, 3], [8, 7, 6, 5], 3)")).toEqual(["trade.no-trend"]);
  expect(refused("limit_reached([3, 3], [8, 7], 3)")).toEqual(["trade.same-time"]);
  expect(leastSquaresCrossing([1, 2], [3, 2], 1)).toBeUndefined();
  expect(leastSquaresCrossing([1, 2, 3], [3, 2, 1], 0)?.at).toBeCloseTo(4, 9);
});

test("only more than √2 times the uncertainty is a new part, whichever way it wears", () => {
  // 0.18385 for 0.13.
  expect(answer("part_renewed([8.2, 8.38], 0.13, down)").value).toBe(false);
  expect(answer("part_renewed([8.2, 8.39], 0.13, down)").value).toBe(true);
  expect(answer("part_renewed([0.5, 0.4, 0.22], 0.13, up)").value).toBe(false);
  expect(answer("part_renewed([0.5, 0.6, 0.41], 0.13, up)").value).toBe(true);
  expect(answer("part_renewed([0.5, 0.9, 1.4], 0.13, up)").value).toBe(false);
});

test("each time needs its own reading", () => {
  expect(told("wear_rate([1, 2, 3], [1, 2])")).toContain("2 readings for 3 times");
});
