// Helical gears: design textbook, stock gear catalogue (diameters), a textbook example with published answers (from
// memory, reproduced). Clutch and speed: arithmetic of the trade's notes.
import { expect, test } from "vitest";
import { answer, figure, refused, told } from "../support/reckoned.js";

/** module, teeth, teeth, helix; transverse module, transverse pressure angle, diameters, centre, lead, outside. */
const PAIRS = [
  [3, 12, 60, 30, 3.464102, 22.79588, 41.56922, 207.8461, 124.7077, 226.195, 47.56922],
  [2.5, 17, 43, 15, 2.58819, 20.6469, 43.99924, 111.2922, 77.64571, 515.873, 48.99924],
  [2, 25, 50, 20, 2.128356, 21.17283, 53.20889, 106.4178, 79.81333, 459.27, 57.20889],
] as const;

test.each(PAIRS)("module %s, %s and %s teeth, %s°", (m, z1, z2, beta, mt, alpha, d1, d2, a, lead, outside) => {
  expect(figure(`transverse_module(${m}, ${beta})`)).toBeCloseTo(mt, 5);
  expect(figure(`transverse_pressure_angle(20, ${beta})`)).toBeCloseTo(alpha, 4);
  expect(figure(`gear_pitch_diameter(${m}, ${z1}, ${beta})`)).toBeCloseTo(d1, 4);
  expect(figure(`gear_pitch_diameter(${m}, ${z2}, ${beta})`)).toBeCloseTo(d2, 3);
  expect(figure(`gear_centre_distance(${m}, ${z1}, ${z2}, ${beta})`)).toBeCloseTo(a, 4);
  expect(figure(`gear_lead(${m}, ${z1}, ${beta})`)).toBeCloseTo(lead, 2);
  expect(figure(`gear_outside_diameter(${m}, ${z1}, ${beta})`)).toBeCloseTo(outside, 4);
  expect(figure(`module_of_loose_gear(gear_outside_diameter(${m}, ${z1}, ${beta}), ${z1}, ${beta})`)).toBeCloseTo(m, 9);
});

test("catalogue: outside diameter is two modules over the pitch diameter", () => {
  for (const z of [20, 24, 25, 30, 32, 36, 40, 45, 48, 60, 70, 90, 100]) {
    expect(figure(`gear_pitch_diameter(1, ${z}, 0)`)).toBe(z);
    expect(figure(`gear_outside_diameter(1, ${z}, 0)`)).toBe(z + 2);
  }
});

test("textbook example: 18 teeth, 6 an inch across, helix 25°", () => {
  // Normal pitch 6.62, transverse pressure angle 21.88°, diameter 3 inches.
  const normal = `module_of_pitch(6.62027)`;
  expect(figure(`gear_pitch_diameter(${normal}, 18, 25)`) / 25.4).toBeCloseTo(3, 3);
  expect(figure("transverse_pressure_angle(20, 25)")).toBeCloseTo(21.88, 2);
});

test("the worked replacement: 25 and 35 teeth at 25° need 82.75 mm; 27° or 36 teeth do not fit", () => {
  expect(figure("gear_centre_distance(2.5, 25, 35, 25)")).toBeCloseTo(82.75, 2);
  expect(figure("gear_centre_distance(2.5, 25, 35, 27)")).toBeCloseTo(84.17, 2);
  expect(figure("gear_centre_distance(2.5, 25, 36, 25)")).toBeCloseTo(84.13, 2);
  expect(figure("gear_centre_distance(2, 20, 40, 20)")).toBeCloseTo(63.85, 2);
  expect(figure("helix_for_centre_distance(2.5, 25, 36, 82.7533)")).toBeCloseTo(22.87, 2);
  expect(figure("mate_teeth_needed(2.5, 25, 25, 82.7533)")).toBe(35);
  expect(refused("mate_teeth_needed(2.5, 26, 28, 82.7533)")).toEqual(["trade.no-mate"]);
  expect(refused("helix_for_centre_distance(2.5, 40, 40, 82.75)")).toEqual(["trade.gears-too-large"]);
});

const mesh = (own: string, mate: string, centre = "79.8133"): unknown =>
  answer(`gears_mesh(${own}, ${mate}, ${centre})`).value;

test("does it mesh", () => {
  const own = "2, 25, 20, 20, right";
  expect(mesh(own, "2, 50, 20, 20, left")).toBe("meshes");
  expect(mesh(own, "2.25, 50, 20, 20, left")).toBe("other-module");
  expect(mesh(own, "2, 50, 14.5, 20, left")).toBe("other-pressure-angle");
  expect(mesh(own, "2, 50, 20, 21.5, left")).toBe("other-helix");
  expect(mesh(own, "2, 50, 20, 20, right")).toBe("same-hand");
  expect(mesh(own, "2, 51, 20, 20, left")).toBe("other-centre-distance");
  // Ten an inch looks like 2.5 to the eye: 2.54, and 76.2 against 75.0 mm for 60 teeth.
  expect(mesh("module_of_pitch(10), 25, 20, 0, straight", "2.5, 35, 20, 0, straight", "75")).toBe("other-module");
  expect(figure("gear_centre_distance(module_of_pitch(10), 25, 35, 0)")).toBeCloseTo(76.2, 9);
});

test("a transverse module of 2 at 21.5° is no normal module of 2", () => {
  const normal = 2 * Math.cos((21.5 * Math.PI) / 180);
  expect(mesh(`${normal}, 25, 20, 21.5, right`, "2, 50, 20, 21.5, left")).toBe("other-module");
});

/** At and over the width a screening allows (common practice, no source): module, helix, pressure angle, centre. */
const SCREENED = [
  ["2, 25, 20, 20, right", "2.0098, 50, 20, 20, left", "79.8133", "meshes"],
  ["2, 25, 20, 20, right", "2.0102, 50, 20, 20, left", "79.8133", "other-module"],
  ["2, 25, 20, 20, right", "1.9902, 50, 20, 20, left", "79.8133", "meshes"],
  ["2, 25, 20, 20, right", "1.9898, 50, 20, 20, left", "79.8133", "other-module"],
  ["2, 25, 20, 20, right", "2, 50, 20.24, 20, left", "79.8133", "meshes"],
  ["2, 25, 20, 20, right", "2, 50, 20.26, 20, left", "79.8133", "other-pressure-angle"],
  ["2, 25, 20, 20, right", "2, 50, 20, 20.29, left", "79.8133", "meshes"],
  ["2, 25, 20, 20, right", "2, 50, 20, 20.31, left", "79.8133", "other-helix"],
  ["2, 25, 20, 20, right", "2, 50, 20, 20, left", "79.862", "meshes"],
  ["2, 25, 20, 20, right", "2, 50, 20, 20, left", "79.866", "other-centre-distance"],
  ["2, 25, 20, 0, straight", "2, 50, 20, 0, straight", "75", "meshes"],
  ["2, 25, 20, 20, right", "2, 50, 20, 20, straight", "79.8133", "same-hand"],
  ["2, 25, 20, 0, straight", "2, 50, 20, 0, left", "75", "same-hand"],
] as const;

test.each(SCREENED)("%s with %s at %s: %s", (own, mate, centre, verdict) => {
  expect(mesh(own, mate, centre)).toBe(verdict);
});

test("it is the same from the mate's side", () => {
  expect(mesh("2, 50, 20, 20, left", "2, 25, 20, 20, right")).toBe("meshes");
  expect(mesh("2, 50, 14.5, 20, left", "2, 25, 20, 20, right")).toBe("other-pressure-angle");
  expect(mesh("2, 51, 20, 20, left", "2, 25, 20, 20, right")).toBe("other-centre-distance");
});

test("pitch circles that roll on each other: as many pitches round as teeth, and they touch in the housing", () => {
  for (const [m, z1, z2, beta] of PAIRS) {
    // What one tooth takes of the circle, square to the axis.
    const pitch = (Math.PI * m) / Math.cos((beta * Math.PI) / 180);
    const radii = [z1, z2].map((z) => (z * pitch) / (2 * Math.PI));
    expect((radii[0] ?? 0) + (radii[1] ?? 0)).toBeCloseTo(
      figure(`gear_centre_distance(${m}, ${z1}, ${z2}, ${beta})`),
      9,
    );
    // Along one whole turn the tooth climbs its lead at the helix angle.
    const lead = figure(`gear_lead(${m}, ${z1}, ${beta})`);
    expect((Math.atan((z1 * pitch) / lead) * 180) / Math.PI).toBeCloseTo(beta, 9);
  }
});

/** Teeth that come within 0.05 mm of the housing, by trying them all. */
const tried = (m: number, z1: number, beta: number, centre: number): readonly number[] =>
  Array.from({ length: 396 }, (_, i) => i + 5).filter(
    (z2) => Math.abs((m * (z1 + z2)) / (2 * Math.cos((beta * Math.PI) / 180)) - centre) <= 0.05,
  );

const HOUSINGS = [
  [2.5, 25, 25, 82.7533],
  [2.5, 26, 28, 82.7533],
  [2, 25, 20, 79.8133],
  [2, 25, 20, 79.862],
  [2, 25, 20, 79.866],
  [2, 25, 0, 30],
  [2, 25, 0, 29],
  [2, 100, 0, 80],
] as const;

test.each(HOUSINGS)(
  "module %s, %s teeth, %s° in a housing of %s mm: the mate is the one found by trying all",
  (m, z1, beta, centre) => {
    const [only] = tried(m, z1, beta, centre);
    const text = `mate_teeth_needed(${m}, ${z1}, ${beta}, ${centre})`;
    if (only !== undefined) expect(figure(text)).toBe(only);
    else {
      const exact = (2 * centre * Math.cos((beta * Math.PI) / 180)) / m - z1;
      expect(told(text)).toContain(`no whole number of teeth fits the centre distance; ${exact.toFixed(2)} would`);
    }
  },
);

test("teeth that are too many for the housing: the least distance is that of straight teeth", () => {
  expect(told("helix_for_centre_distance(2.5, 25, 36, 75)")).toContain("the centre distance; at least 76.25 is needed");
  expect(figure("helix_for_centre_distance(2.5, 25, 36, 76.25)")).toBeCloseTo(0, 6);
  expect(figure("gear_centre_distance(2.5, 25, 36, helix_for_centre_distance(2.5, 25, 36, 82.7533))")).toBeCloseTo(
    82.7533,
    9,
  );
});

test("more helix never brings the axles nearer, and straight teeth are the old formulae", () => {
  const distances = [0, 5, 15, 30, 45].map((beta) => figure(`gear_centre_distance(2, 20, 40, ${beta})`));
  expect(distances).toEqual([...distances].sort((a, b) => a - b));
  expect(distances[0]).toBe(60);
  expect(figure("transverse_module(2, 0)")).toBe(2);
  expect(figure("transverse_pressure_angle(20, 0)")).toBeCloseTo(20, 12);
});

test("road speed and slip: 119.8 km/h at 3500 turns; the same speed at 3700 slips 5.4 %", () => {
  expect(figure("road_speed(3500, 0.9, 3.7, 1900)")).toBeCloseTo(119.8, 1);
  expect(figure("clutch_slip(road_speed(3500, 0.9, 3.7, 1900), 3700, 0.9, 3.7, 1900)")).toBeCloseTo(5.4, 1);
});

test("lining, clamp and travel", () => {
  expect(figure("lining_left(7.2, 8.4, 6.0)")).toBeCloseTo(50, 9);
  expect(figure("clutch_torque(0.3, 6000 N, 100 mm, 2)")).toBeCloseTo(360, 9);
  expect(figure("slave_travel(20, 16, 20)")).toBeCloseTo(12.8, 9);
  expect(figure("release_travel(12.8, 1.6)")).toBeCloseTo(8, 9);
  expect(figure("backlash_at_pitch(0.12, 60, 40)")).toBeCloseTo(0.08, 9);
  expect(told("lining_left(7, 6, 6)")).toContain("new is too small beside the others; at least 6");
  // Worn to the metal: nothing left of it, and past the least.
  expect(figure("lining_left(0, 10, 2)")).toBeCloseTo(-25, 9);
});
