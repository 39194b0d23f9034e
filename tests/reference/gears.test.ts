// Helical gears: design textbook, stock gear catalogue (diameters), a textbook example with published answers (from
// memory, reproduced). Clutch and speed: arithmetic of the trade's notes.
import { expect, test } from "vitest";
import { answer, figure, refused } from "../support/reckoned.js";

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
  expect(refused("lining_left(7, 6, 6)")).toEqual(["trade.under-argument"]);
});
