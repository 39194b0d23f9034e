import { expect, test } from "vitest";
import { freshId, freshNumber, freshSheetId, idPrefix, slugOf } from "./new-ids.js";

test("a name becomes an id of small letters and digits that begins with a letter", () => {
  expect(["Heat shield, rear", "  Türgriff  ", "2nd gear", "in", "…", "A".repeat(60)].map(slugOf)).toEqual([
    "heat-shield-rear",
    "turgriff",
    "n-2nd-gear",
    "n-in",
    "item",
    "a".repeat(32),
  ]);
});

test("an id that is or was taken gets a number behind it; hyphen and underscore count as one", () => {
  expect(freshId("own.", "Rear shield", [])).toBe("own.rear-shield");
  expect(freshId("own.", "Rear shield", ["own.rear_shield", "own.rear-shield-2"])).toBe("own.rear-shield-3");
  expect(freshNumber(["#0", "#7"])).toBe("#8");
  expect(freshNumber([])).toBe("#0");
});

test("a sheet's id has no sign conditions could stumble over, and is taken once", () => {
  expect(freshSheetId("Door & seals", [])).toBe("owndoorseals");
  expect(freshSheetId("Door & seals", ["owndoorseals"])).toBe("owndoorsealsx2");
  expect(
    ["points", "limits", "jobs", "gates", "cautions", "places"].map((list) => idPrefix("own", list as "points")),
  ).toEqual(["own.", "lim.own.", "job.own.", "gate.own.", "cau.own.", "own-"]);
});
