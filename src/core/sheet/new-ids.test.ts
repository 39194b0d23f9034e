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

test("a long name is cut at a word, so that its id can be read; of a sheet, whose id begins every name, sooner", () => {
  const long = "Seals and weatherstrips of the boot lid, rear";
  expect(slugOf(long)).toBe("seals-and-weatherstrips-of-the");
  expect(freshId("own.", long, ["own.seals-and-weatherstrips-of-the"])).toBe("own.seals-and-weatherstrips-of-the-2");
  expect(freshSheetId(long, [])).toBe("ownsealsand");
  expect(freshSheetId(long, ["ownsealsand", "ownsealsandx2"])).toBe("ownsealsandx3");
  expect(freshSheetId("Weatherstripping-and-seals", [])).toBe("ownweatherstripping");
  expect(freshSheetId("Donaudampfschifffahrt", [])).toBe("owndonaudampfschiff");
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
