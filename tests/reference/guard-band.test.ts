// Readings near a limit against outside figures. u from display step and gauge error as rectangular distributions:
// JCGM 100 (from memory). Guard band w = U = 2u, four zones: ILAC-G8:09/2019 4.2.3, read on a laboratory's page; the
// g-vectors after JCGM 106:2012 clauses 7 and 8, recomputed. We call the two middle zones 'too close'.
import { expect, test } from "vitest";
import { spanOf } from "../../src/core/assess/band.js";
import { aggregate, singleU } from "../../src/core/assess/reading.js";
import { GAUGED, SEVERAL } from "./facts/limits.js";

test("a scale read to 0.1 alone has u 0.028868, and two parts add in quadrature", () => {
  expect(singleU({ resolution: 0.1, error: 0, setUp: 0 })).toBeCloseTo(0.028868, 6);
  expect(Math.hypot(0.0289, 0.04)).toBeCloseTo(0.049348, 6);
});

test.each(GAUGED)("a reading of $y with step $d and error $e is $zone", (row) => {
  const read = aggregate({ values: [row.y], resolution: row.d, error: row.e, setUp: 0 }, "max");
  expect(read?.u).toBeCloseTo(row.u, 5);
  const [edge, direction] = "lower" in row ? [row.lower, "under" as const] : [row.upper, "over" as const];
  expect(zoneOf(row.y, read?.u ?? 0, edge, direction)).toBe(row.zone);
});

const VECTORS = [
  { id: "g1", kind: "under", limit: 1.6, y: 1.65, u: 0.05, zone: "close" },
  { id: "g3", kind: "under", limit: 1.6, y: 1.55, u: 0.05, zone: "close" },
  { id: "g4", kind: "under", limit: 1.6, y: 1.49, u: 0.05, zone: "past" },
  { id: "g6", kind: "over", limit: 0.1, y: 0.09, u: 0.01, zone: "close" },
  { id: "g7", kind: "over", limit: 0.1, y: 0.08, u: 0.01, zone: "clear" },
  { id: "g9", kind: "under", limit: 22, y: 22, u: 0.02, zone: "close" },
] as const;

test.each(VECTORS)("vector $id: $y against $limit with u $u is $zone", ({ kind, limit, y, u, zone }) => {
  expect(zoneOf(y, u, limit, kind)).toBe(zone);
});

function zoneOf(y: number, u: number, edge: number, direction: "over" | "under"): "clear" | "close" | "past" {
  const { low, high } = spanOf(y, u, { major: edge }, direction);
  return low !== high ? "close" : low === 0 ? "clear" : "past";
}

test("several readings of one part, worked by hand", () => {
  const of = (values: readonly number[]) => ({ values, resolution: 0, error: 0, setUp: 0 });
  const [least, mean, pads] = SEVERAL;
  expect(aggregate(of(least.in), "min")?.value).toBe(least.out);
  expect(aggregate(of(mean.in), "mean")?.value).toBeCloseTo(mean.out, 12);
  const means = Object.values(pads.in).map((pad) => aggregate(of(pad), "mean")?.value ?? Number.NaN);
  expect(Math.min(...means)).toBeCloseTo(pads.out, 12);
});
