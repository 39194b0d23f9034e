import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { changedSheet, sheetDifference } from "../../core/sheet/work.js";
import { takenOver } from "./sheet-take-over.js";

const { sheet } = miniSheets();
const changes = { items: new Map(), orders: new Map() };

test("taking every difference over, one by one, makes the working copy say what the other edition says", () => {
  const [first, ...rest] = sheet.cases;
  if (!first) throw new Error("the small sheet has cases");
  const other = {
    ...sheet,
    limits: sheet.limits.map((limit) => ({ ...limit, bands: { ...limit.bands, minor: 0.2 } })),
    gates: [],
    cases: [...rest, { ...first, odometer: 1000 }, { fires: "hub.r2", replies: {}, expect: {} }],
  };
  const taken = sheetDifference(sheet, other).items.map((one) => {
    const { item, to } = takenOver({ base: sheet, changes }, one, []);
    return [one.list, item, to] as const;
  });
  const items = new Map();
  for (const [list, item, to] of taken) items.set(list, (items.get(list) ?? new Map()).set(item, to));
  const now = changedSheet(sheet, { items, orders: new Map() });
  expect(sheetDifference(now, other).items).toEqual([]);
});
