import { expect, test } from "vitest";
import type { DraftItem } from "../../core/sheet/draft.js";
import { valueAt, withAt } from "./sheet-forms.js";
import { edgesAstray, limitInUnit, overReading } from "./sheet-forms-limit.js";

const limit: DraftItem = {
  value: {
    of: "whl.float",
    quantity: "length",
    unit: "mm",
    class: "corner",
    direction: "over",
    bands: { minor: 2.54, major: 25.4 },
  },
  texts: {},
};

test("another reading brings quantity, unit and kind of place; one that measures the same leaves the unit", () => {
  const warm = overReading(limit, "whl.air", { quantity: "temperature", unit: "Cel", place: "car" });
  expect(warm.value).toMatchObject({ of: "whl.air", quantity: "temperature", unit: "Cel", class: "car" });
  const same = overReading(limit, "whl.runout", { quantity: "length", unit: "[in_i]", place: "axle" });
  expect(same.value).toMatchObject({ of: "whl.runout", unit: "mm", class: "axle" });
  expect(overReading(limit, "brk.pad", undefined).value).toMatchObject({ of: "brk.pad", unit: "mm", class: "corner" });
});

test("another unit takes every edge along and makes none", () => {
  expect(limitInUnit(limit, "[in_i]").value).toMatchObject({ unit: "[in_i]", bands: { minor: 0.1, major: 1 } });
  expect(Object.keys(valueAt(limitInUnit(limit, "[in_i]"), ["bands"]) as object)).toEqual(["minor", "major"]);
});

test("edges must grow worse in the direction that is judged, equal ones do not", () => {
  const astray = (is: DraftItem) => [...edgesAstray(is)];
  expect(astray(limit)).toEqual([]);
  expect(astray(withAt(limit, ["direction"], "at-or-over"))).toEqual([]);
  expect(astray(withAt(limit, ["direction"], "under"))).toEqual([["major", "minor"]]);
  expect(astray(withAt(limit, ["bands", "major"], 2.54))).toEqual([["major", "minor"]]);
  expect(astray(withAt(limit, ["bands", "dangerous"], 5))).toEqual([["dangerous", "major"]]);
  const falling = withAt(withAt(limit, ["direction"], "at-or-under"), ["bands"], { minor: 3, dangerous: 1 });
  expect(astray(falling)).toEqual([]);
});
