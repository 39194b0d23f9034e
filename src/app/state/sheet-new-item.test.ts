import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { changedSheet, DRAFT_LISTS, type DraftItem, type DraftList } from "../../core/sheet/work.js";
import { checkWork } from "../import/check-work.js";
import { blankSheet } from "./sheet-begin.js";
import { copyOf, movedBy, newItems } from "./sheet-new-item.js";
import type { SheetWork } from "./sheet-work.js";

const { sheet, common } = miniSheets();
const bare = { ...common, cases: [], complaints: [] };
const work: SheetWork = {
  draft: "d",
  base: sheet,
  changes: { items: new Map(), orders: new Map() },
  sheet,
  common,
  others: [],
  on: { bare, others: [] },
  told: [],
  checked: "yet",
};
const none = () => [];
const withItems = (items: ReturnType<typeof newItems>, on = sheet) => {
  const lists = new Map<DraftList, Map<string, DraftItem>>();
  for (const { list, item, to } of items) lists.set(list, (lists.get(list) ?? new Map()).set(item, to));
  return changedSheet(on, { items: lists, orders: new Map() });
};
/** Codes of the shape alone: what a form could not show at all. */
const SHAPE = ["missing-key", "unknown-key", "wrong-value", "null-word", "bad-form", "too-few", "too-many"];

test("a new item of every list has the shape of a sheet, so that the rest can be told beside it", () => {
  for (const list of DRAFT_LISTS.filter((one) => one !== "head") as readonly DraftList[]) {
    const { told } = checkWork(withItems(newItems(work, list, "Rear shield", none)), bare, []);
    expect(told.filter(({ code }) => SHAPE.includes(code)).map(({ says }) => `${list}: ${says}`)).toEqual([]);
  }
});

test("a new rule brings a fault of its own and a condition that can be true; it lacks its cases and no more", () => {
  const { told } = checkWork(withItems(newItems(work, "rules", "Hub is rough", none)), bare, []);
  expect(told.map(({ code, path }) => [code, path])).toEqual([["no-firing-case", ["rules", 3, "id"]]]);
});

test("ids are made from the name and the sheet, never one that was ever used", () => {
  const ids = (list: DraftList, taken: readonly string[]) => newItems(work, list, "Rear shield", () => taken)[0]?.item;
  expect(ids("points", [])).toBe("hub.rear-shield");
  expect(ids("points", ["hub.rear-shield"])).toBe("hub.rear-shield-2");
  expect(ids("jobs", [])).toBe("job.hub.rear-shield");
  expect(newItems(work, "cases", "", () => ["#9"])[0]?.item).toBe("#10");
});

test("a copy says the same under an id and a name of its own", () => {
  const copy = copyOf(work, "points", "hub.spin", "Spin again", []);
  expect(copy).toMatchObject({ item: "hub.spin-again", to: { value: { id: "hub.spin-again", place: "corner" } } });
  expect(copy?.to.texts["en"]).toMatchObject({ name: "Spin again", ask: expect.anything() });
  expect(copyOf(work, "points", "hub.nothing", "x", [])).toBeUndefined();
});

test("an item moves by one place and never past the end", () => {
  expect(movedBy(["a", "b", "c"], "b", -1)).toEqual(["b", "a", "c"]);
  expect(movedBy(["a", "b", "c"], "b", 1)).toEqual(["a", "c", "b"]);
  expect([movedBy(["a", "b"], "a", -1), movedBy(["a", "b"], "b", 1), movedBy(["a"], "z", 1)]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

test("a sheet begun from nothing has one point, which can be answered, and nothing against it", () => {
  const said = { title: "Door seals", about: "Seals.", place: "corner", state: "w7-hang", first: "Seal of the door" };
  const made = blankSheet("owndoorseals", said);
  expect(checkWork(made, bare, [sheet]).told).toEqual([]);
});
