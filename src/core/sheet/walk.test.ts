import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { celName, fieldOf, findField, mainField } from "./names.js";
import { buildPlaces } from "./places.js";
import { walk } from "./walk.js";

const { common, sheet } = miniSheets();

test("a walk goes by car state, then place, then as the sheet lists its points", () => {
  const steps = walk(sheet.points, common.states, buildPlaces(common.places).tree);
  expect(steps.map((s) => `${s.state} ${s.place} ${s.point}`)).toEqual([
    "w0-talk car hub.noise",
    "w4-road car hub.noise",
    "w7-hang FL hub.spin",
    "w7-hang FL hub.float",
    "w7-hang FR hub.spin",
    "w7-hang FR hub.float",
  ]);
});

test("two car states of one order are gone through one after the other, never by turns", () => {
  const [spin] = sheet.points.filter((point) => point.id === "hub.spin");
  if (!spin) throw new Error("hub.spin is in the small sheet");
  const twin = { id: "w7-soak", order: 7, lifted: true, plan: "chassis" } as const;
  const points = [{ ...spin, states: ["w7-soak", "w7-hang"] }];
  const steps = walk(points, [...common.states, twin], buildPlaces(common.places).tree);
  expect(steps.map((s) => s.state)).toEqual(["w7-hang", "w7-hang", "w7-soak", "w7-soak"]);
});

test("a car without the kind of place is not asked there", () => {
  const { tree } = buildPlaces(common.places, [{ remove: "FL" }, { remove: "FR" }]);
  expect(walk(sheet.points, common.states, tree).map((s) => s.place)).toEqual(["car", "car"]);
});

test("the bare name of a point is its first field; `-` and `_` are one", () => {
  const noise = sheet.points.find((p) => p.id === "hub.noise");
  if (!noise) throw new Error("hub.noise is in the small sheet");
  expect(mainField(noise)).toBe("heard");
  expect([celName(noise), celName(noise, "age")]).toEqual(["hub.noise", "hub.noise_age"]);
  expect(findField(sheet.points, "hub.noise-age")).toEqual({ point: "hub.noise", field: "age" });
  expect(findField(sheet.points, "hub.noise_age")).toEqual({ point: "hub.noise", field: "age" });
  expect(findField(sheet.points, "hub.noise")).toEqual({ point: "hub.noise", field: "heard" });
  expect(findField(sheet.points, "hub.noise_heard")).toBeUndefined();
  expect(findField(sheet.points, "hub.nois")).toBeUndefined();
  expect(fieldOf(noise, "constructor")).toBeUndefined();
});
