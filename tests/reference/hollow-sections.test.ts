// Areas in cm², second moments in cm⁴, moduli in cm³ as printed in tables after EN 10219-2 (round and rectangular, cold
// formed) and EN 10210-2 (square, hot finished), annex B; reprints read, the standards only as front pages. The tables
// round, so 0.8 % is allowed. Wall-loss shares: recomputed from the formulae of annex A, no published answer seen.
import { expect, test } from "vitest";
import { oneSidedTube, rectangularTube } from "../../src/core/trade/hollow-sections.js";
import { figure, refused, told } from "../support/reckoned.js";

/** Table rounding: the widest difference of a printed row. */
const ROUNDING = 0.008;
const near = (found: number, printed: number): void => expect(Math.abs(found / printed - 1)).toBeLessThan(ROUNDING);

const ROUND = [
  [21.3, 2, 1.21, 0.571, 0.54],
  [21.3, 3, 1.72, 0.741, 0.7],
  [26.9, 2, 1.56, 1.22, 0.91],
  [26.9, 3, 2.25, 1.63, 1.21],
  [33.7, 2, 1.99, 2.51, 1.49],
  [33.7, 3, 2.89, 3.44, 2.04],
  [42.4, 2, 2.54, 5.19, 2.45],
  [42.4, 3, 3.71, 7.25, 3.42],
  [42.4, 4, 4.83, 8.99, 4.24],
  [48.3, 2.5, 3.6, 9.46, 3.92],
  [48.3, 3, 4.27, 11, 4.55],
  [48.3, 5, 6.8, 16.2, 6.69],
  [60.3, 2, 3.66, 15.6, 5.17],
  [60.3, 4, 7.07, 28.2, 9.34],
  [60.3, 5, 8.69, 33.5, 11.1],
  [76.1, 4, 9.06, 59.1, 15.5],
  [76.1, 5, 11.2, 70.9, 18.6],
  [88.9, 5, 13.2, 116, 26.2],
] as const;

test.each(ROUND)("round tube %s × %s", (d, t, area, second, modulus) => {
  near(figure(`round_tube_area(${d}, ${t})`), area);
  near(figure(`round_tube_second_moment(${d}, ${t})`), second);
  near(figure(`round_tube_section_modulus(${d}, ${t})`), modulus);
});

const RECTANGULAR = [
  [40, 40, 2.6, "hot-finished", 3.82, 8.8, 4.4],
  [40, 40, 4, "hot-finished", 5.59, 11.8, 5.91],
  [50, 50, 2.6, "hot-finished", 4.86, 18, 7.21],
  [50, 50, 4, "hot-finished", 7.19, 25, 9.99],
  [50, 50, 5, "hot-finished", 8.73, 28.9, 11.6],
  [60, 60, 4, "hot-finished", 8.79, 45.4, 15.1],
  [60, 60, 5, "hot-finished", 10.7, 53.3, 17.8],
  [80, 80, 4, "hot-finished", 12, 114, 28.6],
  [40, 20, 2, "cold-formed", 2.14, 4.05, 2.02],
  [20, 40, 2, "cold-formed", 2.14, 1.34, 1.34],
  [40, 20, 3, "cold-formed", 3.01, 5.21, 2.6],
  [40, 30, 2, "cold-formed", 2.54, 5.49, 2.75],
  [30, 40, 2, "cold-formed", 2.54, 3.51, 2.34],
  [50, 30, 2.5, "cold-formed", 3.59, 11.3, 4.52],
  [50, 30, 3, "cold-formed", 4.21, 12.83, 5.13],
  [60, 40, 2, "cold-formed", 3.74, 18.41, 6.14],
  [60, 40, 3, "cold-formed", 5.41, 25.38, 8.46],
  [40, 60, 3, "cold-formed", 5.41, 13.44, 6.72],
] as const;

test.each(RECTANGULAR)("tube %s × %s × %s, %s", (h, b, t, make, area, second, modulus) => {
  near(figure(`rectangular_tube_area(${h}, ${b}, ${t}, ${make})`), area);
  near(figure(`rectangular_tube_second_moment(${h}, ${b}, ${t}, ${make})`), second);
  near(figure(`rectangular_tube_section_modulus(${h}, ${b}, ${t}, ${make})`), modulus);
});

const LOST = [
  [48.3, 3, 0.5, "outside", 82.414, 80.502, 82.204],
  [48.3, 3, 0.5, "inside", 84.253, 86.003, 86.003],
  [48.3, 3, 1, "inside", 68.138, 71.001, 71.001],
  [33.7, 2, 1, "outside", 48.423, 45.284, 48.141],
  [26.9, 2, 1, "inside", 52.008, 55.992, 55.992],
  [38.1, 1.626, 0.4064, "outside", 74.17, 72.466, 74.045],
] as const;

test.each(LOST)("tube %s × %s less %s mm %s", (d, t, x, side, area, second, modulus) => {
  expect(figure(`area_left(${d}, ${t}, ${x}, ${side})`)).toBeCloseTo(area, 2);
  expect(figure(`second_moment_left(${d}, ${t}, ${x}, ${side})`)).toBeCloseTo(second, 2);
  expect(figure(`section_modulus_left(${d}, ${t}, ${x}, ${side})`)).toBeCloseTo(modulus, 2);
});

test("thinned all round, the one-sided model comes to the even one", () => {
  expect(figure("area_left_one_sided(48.3, 3, 0.5, 360)")).toBeCloseTo(figure("area_left(48.3, 3, 0.5, outside)"), 6);
  expect(figure("section_modulus_left_one_sided(48.3, 3, 0.5, 360)")).toBeCloseTo(82.204, 1);
});

test("a thinner or wider patch never leaves more", () => {
  for (const left of ["area_left_one_sided", "section_modulus_left_one_sided"]) {
    const deeper = [0.1, 0.4, 0.9, 1.4].map((x) => figure(`${left}(38.1, 1.6, ${x}, 90)`));
    const wider = [10, 45, 90, 180].map((arc) => figure(`${left}(38.1, 1.6, 0.8, ${arc})`));
    for (const row of [deeper, wider]) expect(row).toEqual([...row].sort((a, b) => b - a));
  }
});

/** Area and second moment of a rectangle with round corners, summed up in strips: b and h outside, r at the corner. */
function inStrips(h: number, b: number, r: number) {
  const strips = 40_000;
  const depth = h / strips;
  let [area, second] = [0, 0];
  for (let i = 0; i < strips; i++) {
    const y = (i + 0.5) * depth - h / 2;
    const intoCorner = Math.max(0, Math.abs(y) - (h / 2 - r));
    const width = b - 2 * (r - Math.sqrt(r ** 2 - intoCorner ** 2));
    area += width * depth;
    second += width * depth * y ** 2;
  }
  return { area, second };
}

const CORNERED = [
  [40, 20, 3, "cold-formed", 2],
  [20, 40, 3, "cold-formed", 2],
  [16, 12, 2.5, "cold-formed", 2],
  [50, 50, 5, "hot-finished", 1.5],
  [20, 16, 3.5, "hot-finished", 1.5],
] as const;

test.each(CORNERED)("tube %s × %s × %s, %s: as summed up in strips, corners and all", (h, b, t, make, corner) => {
  const [outside, inside] = [inStrips(h, b, corner * t), inStrips(h - 2 * t, b - 2 * t, t)];
  const found = rectangularTube(h, b, t, make);
  expect(found.area / (outside.area - inside.area)).toBeCloseTo(1, 5);
  expect(found.secondMoment / (outside.second - inside.second)).toBeCloseTo(1, 5);
  expect(found.modulus / ((2 * (outside.second - inside.second)) / h)).toBeCloseTo(1, 5);
});

/** A tube thinned over an arc below, summed up in sectors: area, and modulus about its own centre of area. */
function inSectors(outside: number, t: number, lost: number, arc: number) {
  const sectors = 36_000;
  const turn = (2 * Math.PI) / sectors;
  const inner = outside / 2 - t;
  let [area, first, second, above, below] = [0, 0, 0, 0, 0];
  for (let i = 0; i < sectors; i++) {
    const theta = -Math.PI + (i + 0.5) * turn;
    const outer = outside / 2 - (Math.abs(theta) < (arc * Math.PI) / 360 ? lost : 0);
    area += ((outer ** 2 - inner ** 2) / 2) * turn;
    first += ((outer ** 3 - inner ** 3) / 3) * Math.cos(theta) * turn;
    second += ((outer ** 4 - inner ** 4) / 4) * Math.cos(theta) ** 2 * turn;
    below = Math.max(below, outer * Math.cos(theta));
    above = Math.max(above, -outer * Math.cos(theta));
  }
  const centre = first / area;
  return { area, modulus: (second - area * centre ** 2) / Math.max(below - centre, above + centre) };
}

const THINNED = [
  [40, 1.5, 0.4, 60],
  [40, 1.5, 0.8, 120],
  [40, 1.5, 1.2, 180],
  [40, 1.5, 0.4, 250],
  [60.3, 4, 1, 20],
  [38.1, 1.6, 0.8, 300],
  [40, 1.5, 0.5, 360],
] as const;

test.each(THINNED)("tube %s × %s less %s mm over %s°: as summed up in sectors", (d, t, lost, arc) => {
  const summed = inSectors(d, t, lost, arc);
  const found = oneSidedTube(d, t, lost, arc);
  expect(found.area / summed.area).toBeCloseTo(1, 4);
  // Segments are taken as thin: their own depth squared is left out.
  expect(Math.abs(found.modulus / summed.modulus - 1)).toBeLessThan(0.002);
});

test("twice as large a tube has four times the area, sixteen times the second moment, eight times the modulus", () => {
  const [once, twice] = ["40, 3", "80, 6"].map((tube) =>
    ["area", "second_moment", "section_modulus"].map((what) => figure(`round_tube_${what}(${tube})`)),
  );
  for (const [index, times] of [4, 16, 8].entries())
    expect((twice?.[index] ?? 0) / (once?.[index] ?? 1)).toBeCloseTo(times, 9);
});

test("a thin tube comes to π d t and π d³ t / 8", () => {
  expect(figure("round_tube_area(1000, 0.01)") * 100).toBeCloseTo(Math.PI * 999.99 * 0.01, 6);
  expect(figure("round_tube_second_moment(1000, 0.01)") * 10_000).toBeCloseTo((Math.PI * 999.99 ** 3 * 0.01) / 8, -1);
});

test("rust outside costs more stiffness than the same rust inside, and either more with every tenth", () => {
  const lost = [0, 0.2, 0.5, 1, 2, 2.9];
  for (const what of ["area_left", "second_moment_left", "section_modulus_left"]) {
    const [out, within] = ["outside", "inside"].map((face) =>
      lost.map((x) => figure(`${what}(48.3, 3, ${x}, ${face})`)),
    );
    for (const row of [out, within]) expect(row).toEqual([...(row ?? [])].sort((a, b) => b - a));
    expect(out?.[0]).toBeCloseTo(100, 9);
    for (const [i, x] of lost.entries()) if (x > 0) expect(out?.[i]).toBeLessThan(within?.[i] ?? 0);
  }
});

test("a wall just under what leaves a hole is a tube yet; the refusal tells how thick it may be", () => {
  for (const rest of [
    "round_tube_area(48.3, WALL)",
    "area_left(48.3, WALL, 1, inside)",
    "area_left_one_sided(48.3, WALL, 1, 90)",
  ]) {
    expect(figure(rest.replace("WALL", "24.1"))).toBeGreaterThan(0);
    expect(told(rest.replace("WALL", "24.15"))).toContain("wall leaves no hole; it must be under 24.15");
  }
  // Two walls of corner on either side: a quarter of the shorter side.
  expect(figure("rectangular_tube_area(40, 20, 4.99, cold-formed)")).toBeGreaterThan(0);
  expect(told("rectangular_tube_area(40, 20, 5, cold-formed)")).toMatch(/wall leaves no hole; it must be under 5\.$/);
  expect(told("rectangular_tube_area(20, 40, 5.01, cold-formed)")).toMatch(/it must be under 5\.$/);
  expect(told("section_modulus_left(48.3, 3, 3, inside)")).toContain("loss leaves no wall; it must be under 3");
  expect(told("section_modulus_left_one_sided(48.3, 3, 3, 90)")).toContain("it must be under 3");
});

test("a wall of half the diameter, a wall rusted through and a patch wider than the tube are refused", () => {
  expect(refused("round_tube_area(48.3, 24.15)")).toEqual(["trade.wall-too-thick"]);
  expect(refused("area_left(48.3, 3, 3, outside)")).toEqual(["trade.wall-gone"]);
  expect(refused("round_tube_area(0, 3)")).toEqual(["trade.range"]);
  expect(refused("arc_of_patch(20, 70)")).toEqual(["trade.over-argument"]);
  expect(figure("arc_of_patch(20, 31.41592653589793)")).toBeCloseTo(180, 9);
  expect(figure("arc_of_patch(20, 62.83)")).toBeCloseTo(360, 1);
});
