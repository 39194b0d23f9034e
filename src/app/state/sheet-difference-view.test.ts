import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { differenceView } from "./sheet-difference-view.js";

const { sheet } = miniSheets();

test("a changed edge is told in words with before and after, under the name of what it judges", () => {
  const limits = sheet.limits.map((limit) => ({ ...limit, bands: { ...limit.bands, minor: 0.2 }, source: "a book" }));
  const { lines } = differenceView(sheet, { ...sheet, limits });
  expect(lines.map(({ title, parts }) => [title, parts])).toEqual([
    [
      sheet.texts["en"]?.limits?.["lim.float"],
      ["edges, minor: 0.13 → 0.2", "source: common practice, no source → a book"],
    ],
  ]);
});

test("what is new and what is gone is said so; a long text is cut", () => {
  const [first, ...rest] = sheet.points;
  if (!first) throw new Error("the small sheet has points");
  const gone = differenceView(sheet, { ...sheet, points: rest });
  expect(gone.lines[0]).toMatchObject({ title: sheet.texts["en"]?.points[first.id]?.name, parts: ["taken out"] });
  const came = differenceView({ ...sheet, points: rest }, sheet);
  expect(came.lines[0]?.parts).toEqual(["new"]);
  const en = sheet.texts["en"] as (typeof sheet.texts)["en"] & object;
  const long = differenceView(sheet, { ...sheet, texts: { en: { ...en, about: "x".repeat(500) } } });
  expect(long.lines[0]?.parts[0]).toMatch(/x{160} …$/);
});
