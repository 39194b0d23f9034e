import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { sheetDifference } from "./difference.js";
import type { Sheet } from "./schema-types.js";

const { sheet } = miniSheets();
const told = (after: Sheet, before = sheet) =>
  sheetDifference(before, after).items.map(({ list, item, is, parts }) => [list, item, is, parts.map((p) => p.path)]);

test("a sheet differs from itself in nothing", () => {
  expect(sheetDifference(sheet, structuredClone(sheet))).toEqual({ items: [], reordered: [] });
});

test("a changed edge and a changed word are told by where they stand, with before and after", () => {
  const limits = sheet.limits.map((limit) => ({ ...limit, bands: { ...limit.bands, minor: 0.2 } }));
  const [first] = sheetDifference(sheet, { ...sheet, limits }).items;
  expect(first).toMatchObject({ list: "limits", item: "lim.float", is: "changed" });
  expect(first?.parts).toEqual([{ path: ["bands", "minor"], before: 0.13, after: 0.2 }]);
  const en = sheet.texts["en"] as (typeof sheet.texts)["en"] & object;
  const jobs = Object.fromEntries(Object.entries(en.jobs).map(([id, job]) => [id, { ...job, name: "Other" }]));
  expect(told({ ...sheet, texts: { en: { ...en, jobs } } })[0]).toEqual([
    "jobs",
    Object.keys(jobs)[0],
    "changed",
    [["texts", "en", "name"]],
  ]);
});

test("what is new, what is gone and what only moved are told apart", () => {
  const [spin, float, noise] = sheet.points;
  if (!spin || !float || !noise) throw new Error("the small sheet has three points");
  const after = { ...sheet, points: [float, { ...spin, id: "hub.other" }, noise] };
  expect(told(after).filter(([list]) => list === "points")).toEqual([
    ["points", "hub.other", "added", []],
    ["points", "hub.spin", "taken-out", []],
  ]);
  const turned = sheetDifference(sheet, { ...sheet, points: [noise, spin, float] });
  expect(turned).toEqual({ items: [], reordered: ["points"] });
});

test("another first field is another meaning even when nothing else changed", () => {
  const points = sheet.points.map((point) => ({
    ...point,
    fields: Object.fromEntries(Object.entries(point.fields).reverse()),
  }));
  expect(told({ ...sheet, points })).toEqual([["points", "hub.noise", "changed", [["fields"]]]]);
});

test("a case is held against the case of the same rule, wherever it stands", () => {
  const [first, ...rest] = sheet.cases;
  if (!first) throw new Error("the small sheet has cases");
  const changed = { ...first, odometer: 1000 };
  expect(told({ ...sheet, cases: [...rest, changed] })).toEqual([
    ["cases", `#${rest.length}`, "changed", [["odometer"]]],
  ]);
  expect(told({ ...sheet, cases: rest })).toEqual([["cases", "#0", "taken-out", []]]);
});
