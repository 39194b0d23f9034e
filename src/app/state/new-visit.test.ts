import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { commonFrozen, sheetFrozen } from "../../../tests/support/app-bench.js";
import { foldCar } from "../../core/record/index.js";
import { PURPOSES, type Purpose } from "../../core/terms/index.js";
import { chosenSheets, isoNow, openingFrom, sheetsOfPoints, type VisitForm } from "./new-visit.js";

test("the moment of a visit carries the offset of where it was", () => {
  expect(isoNow(0, 0)).toBe("1970-01-01T00:00:00+00:00");
  expect(isoNow(0, 330)).toBe("1970-01-01T05:30:00+05:30");
  expect(isoNow(0, -90)).toBe("1969-12-31T22:30:00-01:30");
});

test("empty boxes leave nothing behind; the complaint is kept as spoken", () => {
  const form: VisitForm = {
    purpose: "season",
    who: "owner",
    odometer: " ",
    odometerUnit: "km",
    complaint: "",
    led: [],
    byHand: {},
  };
  const opening = openingFrom(form, foldCar([]), commonFrozen, [sheetFrozen], "2026-11-25T10:00:00+01:00");
  expect(opening).not.toHaveProperty("odometer");
  expect(opening).not.toHaveProperty("complaint");
  const said = openingFrom(
    { ...form, odometer: "61 240", complaint: " it hums ", known: "sym.hum" },
    foldCar([]),
    commonFrozen,
    [],
    "x",
  );
  expect(said).toMatchObject({
    odometer: { value: "61 240", unit: "km" },
    complaint: { text: "it hums", complaint: "sym.hum" },
  });
});

test("a visit opens with the sheets for what it is for, with those its complaint leads to, and as chosen by hand", () => {
  const sheets = [
    { id: "own" },
    { id: "brk", opensFor: ["workshop", "season"] as const },
    { id: "buy", opensFor: ["viewing"] as const },
    { id: "head", opensFor: [] },
  ];
  const ids = (form: Partial<VisitForm>) =>
    chosenSheets(sheets, { purpose: "workshop", led: [], byHand: {}, ...form }).map(({ id }) => id);
  expect(ids({})).toEqual(["own", "brk"]);
  expect(ids({ purpose: "viewing" })).toEqual(["own", "buy"]);
  expect(ids({ led: sheetsOfPoints(["head.gasket", "head.guide", "brk.pedal"]) })).toEqual(["own", "brk", "head"]);
  expect(ids({ led: ["head"], byHand: { head: false, buy: true } })).toEqual(["own", "brk", "buy"]);
});

test("a car put away or woken opens with the sheet of its rest and the nose alone, one in use with all of its season", () => {
  const season = { opensFor: ["season"] as const };
  const sheets = [{ id: "own" }, ...["drn", "fuel", "rest"].map((id) => ({ id, ...season }))];
  const ids = (form: Partial<VisitForm>) =>
    chosenSheets(sheets, { purpose: "season", led: [], byHand: {}, ...form }).map(({ id }) => id);
  for (const now of ["put-away", "monthly-look", "wake-up"])
    expect(ids({ season: now })).toEqual(["own", "fuel", "rest"]);
  expect(ids({ season: "in-use" })).toEqual(["own", "drn", "fuel", "rest"]);
  expect(ids({})).toEqual(["own", "drn", "fuel", "rest"]);
  expect(ids({ season: "wake-up", byHand: { drn: true } })).toContain("drn");
  // Chosen, and then the visit is for something else after all.
  expect(ids({ season: "wake-up", purpose: "workshop" })).toEqual(["own"]);
});

test("every occasion opens with some of the sheets there are, and what lies on the bench with none", () => {
  const folders = readdirSync("checklists", { withFileTypes: true }).filter((one) => one.isDirectory());
  const heads = folders.map(({ name }) => join("checklists", name, "sheet.yaml")).filter((file) => existsSync(file));
  const sheets = heads.map((file) => {
    const head: { readonly id: string; readonly "opens-for"?: readonly Purpose[] } = parse(readFileSync(file, "utf8"));
    return { id: head.id, opensFor: head["opens-for"] };
  });
  for (const purpose of PURPOSES) {
    const opened = chosenSheets(sheets, { purpose, led: [], byHand: {} });
    expect(opened.length).toBeGreaterThan(2);
    expect(opened.length).toBeLessThan(sheets.length);
    expect(opened.map(({ id }) => id)).not.toEqual(expect.arrayContaining(["head"]));
  }
  expect(sheets.filter(({ opensFor }) => opensFor?.length === 0).map(({ id }) => id)).toEqual(
    expect.arrayContaining(["head", "recv", "trans"]),
  );
});
