import fc from "fast-check";
import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import {
  aboutItem,
  changedSheet,
  DRAFT_LISTS,
  type DraftItem,
  type DraftList,
  draftItems,
  itemsOf,
  NO_CHANGES,
} from "./draft.js";

const { sheet } = miniSheets();
const changes = (
  list: DraftList,
  items: readonly (readonly [string, DraftItem | null])[],
  order?: readonly string[],
) => ({
  items: new Map([[list, new Map(items)]]),
  orders: new Map(order ? [[list, order]] : []),
});

test("a sheet put together again from its own items is the same sheet, whatever list is touched", () => {
  expect(changedSheet(sheet, NO_CHANGES)).toEqual(sheet);
  for (const list of DRAFT_LISTS as readonly DraftList[]) {
    const own = itemsOf(sheet, list);
    expect(changedSheet(sheet, changes(list, [...own], [...own.keys()])), list).toEqual(sheet);
  }
});

test("a point is changed with its words, one is added at the end, one taken out takes its words along", () => {
  const spin = itemsOf(sheet, "points").get("hub.spin");
  const words = { en: { ...(spin?.texts["en"] as object), name: "Turning" } };
  const added = { value: { id: "hub.new", place: "car" }, texts: { en: { name: "New", ask: {} } } };
  const now = changedSheet(
    sheet,
    changes("points", [
      ["hub.spin", { value: spin?.value, texts: words }],
      ["hub.new", added],
      ["hub.float", null],
    ]),
  );
  expect(now.points.map(({ id }) => id)).toEqual(["hub.spin", "hub.noise", "hub.new"]);
  expect(now.texts["en"]?.points["hub.spin"]?.name).toBe("Turning");
  expect(Object.keys(now.texts["en"]?.points ?? {}).sort()).toEqual(["hub.new", "hub.noise", "hub.spin"]);
  expect(now.rules).toBe(sheet.rules);
});

test("an order names what comes first; what it does not name follows as it stood", () => {
  const order = changes("points", [], ["hub.noise", "hub.gone"]);
  expect([...draftItems(sheet, order, "points").keys()]).toEqual(["hub.noise", "hub.spin", "hub.float"]);
});

test("what a sheet brings, words alone, cases and the head are items like any other", () => {
  const tap = { value: { id: "tap", kind: "tap", in: "car" }, texts: { en: "tap" } };
  const brought = changedSheet(sheet, changes("places", [["tap", tap]]));
  expect(brought.brings?.places).toEqual([tap.value]);
  expect(brought.texts["en"]?.brings?.places).toEqual({ tap: "tap" });
  const fault = { texts: { en: { says: "Loose." } } };
  expect(changedSheet(sheet, changes("faults", [["hub.loose", fault]])).texts["en"]?.faults["hub.loose"]).toEqual({
    says: "Loose.",
  });
  const head = { value: { label: "Hub 2" }, texts: { en: { title: "Hubs again", about: "More." } } };
  expect(changedSheet(sheet, changes("head", [["head", head]]))).toMatchObject({
    label: "Hub 2",
    texts: { en: { title: "Hubs again", about: "More." } },
  });
  const [first] = itemsOf(sheet, "cases");
  expect(changedSheet(sheet, changes("cases", first ? [[first[0], null]] : [])).cases).toEqual(sheet.cases.slice(1));
});

test("every place of a sheet that a check can name leads to its item, or is the sheet's own", () => {
  expect(aboutItem(sheet, ["rules", 1, "when"])).toEqual({ list: "rules", item: "hub.r2", inside: ["when"] });
  expect(aboutItem(sheet, ["texts", "en", "points", "hub.spin", "ask", "owner"])).toEqual({
    list: "points",
    item: "hub.spin",
    inside: ["texts", "en", "ask", "owner"],
  });
  expect(aboutItem(sheet, ["texts", "en", "title"])).toEqual({ list: "head", item: "head", inside: ["title"] });
  expect(aboutItem(sheet, ["rules", 99])).toBeUndefined();
  expect(aboutItem(sheet, ["id"])).toBeUndefined();
  const brought = changedSheet(
    sheet,
    changes("places", [["tap", { value: { id: "tap", kind: "tap" }, texts: { en: "tap" } }]]),
  );
  expect(aboutItem(brought, ["brings", "places", 0, "in"])).toEqual({ list: "places", item: "tap", inside: ["in"] });
});

test("changes laid on one after the other, or all at once, give the same sheet", () => {
  const key = fc.constantFrom("hub.spin", "hub.float", "hub.noise", "hub.more");
  const item = fc.option(
    fc.constantFrom("a", "b").map((name) => ({ value: { id: name }, texts: { en: { name, ask: {} } } })),
  );
  fc.assert(
    fc.property(fc.array(fc.tuple(key, item), { maxLength: 8 }), (steps) => {
      const all = changedSheet(sheet, changes("points", [...new Map(steps)]));
      const kept = new Map(steps);
      const out: readonly string[] = [...kept].filter(([, to]) => to === null).map(([name]) => name);
      expect(all.points.some(({ id }) => out.includes(id))).toBe(false);
      expect(draftItems(sheet, changes("points", [...kept]), "points").size).toBe(all.points.length);
    }),
    { seed: 20261129 },
  );
});
