import { expect, test } from "vitest";
import { aimText, type CameraAim, cameraHref, isUnsorted, pinsFor, readAim, sameSpot, spotOf } from "./picture-spot.js";

const point = { state: "w8-off", place: "RR", point: "whl.float" };
const AIMS: readonly CameraAim[] = [
  { pin: "point", from: { at: "point", point } },
  { pin: "place", from: { at: "point", point } },
  { pin: "tray", from: { at: "point", point } },
  { pin: "fault", from: { at: "fault", fault: "whl.race", place: "RR" } },
  { pin: "place", from: { at: "place", place: "FL-lower-fore" } },
  { pin: "tray", from: { at: "visit" } },
];

test.each(AIMS)("an aim goes into an address and comes back: %j", (aim) => {
  expect(readAim(aimText(aim))).toEqual(aim);
});

test.each(["", "fault", "point~w8-off~RR", "point~a~b~c~d", "place~", "whole~RR", "fault~w8-off~RR~whl.float"])(
  "what is no aim is not taken for one: %s",
  (text) => {
    expect(readAim(text)).toBeUndefined();
  },
);

test("a picture is pinned to the point, the finding or the place it was shot for, or to nothing yet", () => {
  expect(AIMS.map(spotOf)).toEqual([
    point,
    { place: "RR" },
    {},
    { fault: "whl.race", place: "RR" },
    { place: "FL-lower-fore" },
    {},
  ]);
  expect(AIMS.map((aim) => isUnsorted(spotOf(aim)))).toEqual([false, false, true, false, false, true]);
});

test("the camera's address names the narrowest there is, and can be widened", () => {
  expect(cameraHref("v", { at: "point", point })).toBe("#/visit/v/camera/point~w8-off~RR~whl.float");
  expect(cameraHref("v", { at: "visit" })).toBe("#/visit/v/camera/tray");
  expect(pinsFor({ at: "fault", fault: "f", place: "RR" })).toEqual(["fault", "place", "tray"]);
});

test("two pictures belong together only when everything they are pinned to is the same", () => {
  expect(sameSpot(point, { ...point })).toBe(true);
  expect(sameSpot(point, { place: "RR" })).toBe(false);
  expect(sameSpot({ place: "RR" }, { place: "RR", fault: "whl.race" })).toBe(false);
});
