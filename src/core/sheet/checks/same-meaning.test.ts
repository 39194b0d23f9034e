import { expect, test } from "vitest";
import { miniSheets } from "../../../../tests/support/mini-sheet.js";
import { tell } from "../messages.js";
import type { Point, Sheet } from "../schema-types.js";
import { pathOnly } from "../source.js";
import { checkSameMeaning } from "./same-meaning.js";

const { sheet } = miniSheets();
const says = (after: Sheet) => checkSameMeaning(after, sheet, pathOnly).map(tell);
const withPoint = (id: string, change: (point: Point) => Point): Sheet => ({
  ...sheet,
  points: sheet.points.map((point) => (point.id === id ? change(point) : point)),
});

test("the same sheet, a further word and a further field keep every meaning", () => {
  expect(says(sheet)).toEqual([]);
  const feel = { words: ["smooth", "rough", "tight", "loose"] };
  expect(says(withPoint("hub.spin", (point) => ({ ...point, fields: { feel, heat: { yes: true } } })))).toEqual([]);
});

test("a point may not be looked at elsewhere under its old id", () => {
  expect(says(withPoint("hub.spin", (point) => ({ ...point, place: "axle" })))).toEqual([
    "points[0].place “hub.spin” was looked at per corner in the edition before, now per axle; that is another thing: take it out and add a new one",
  ]);
});

test("the first field stays the first, and is answered as it was", () => {
  const fields = { heat: { yes: true as const }, feel: { words: ["smooth", "rough", "tight"] } };
  expect(says(withPoint("hub.spin", (point) => ({ ...point, fields })))).toEqual([
    "points[0].fields “hub.spin” meant its field “feel” in the edition before, now “heat”; put that first again, or add a new one",
  ]);
  expect(says(withPoint("hub.spin", (point) => ({ ...point, fields: { feel: { yes: true } } })))).toEqual([
    "points[0].fields.feel “hub.spin” was answered with one word in the edition before, now with yes or no; add a new one for that",
  ]);
});

test("a word visits hold may not go, a reading keeps its quantity, a limit what it judges", () => {
  expect(
    says(withPoint("hub.spin", (point) => ({ ...point, fields: { feel: { words: ["smooth", "rough"] } } }))),
  ).toEqual([
    "points[0].fields.feel.words “tight” could be replied to “hub.spin” in the edition before and may not go: visits hold it",
  ]);
  const play = { quantity: "pressure", unit: "bar", window: [0, 2] as [number, number] };
  expect(says(withPoint("hub.float", (point) => ({ ...point, fields: { play } })))).toEqual([
    "points[1].fields.play.quantity “hub.float” was length in the edition before, now pressure; add a new one for that",
  ]);
  expect(says({ ...sheet, limits: sheet.limits.map((limit) => ({ ...limit, of: "hub.odd" })) })).toEqual([
    "limits[0].of “lim.float” judged “hub.float” in the edition before, now “hub.odd”; add a new one for that",
  ]);
});
