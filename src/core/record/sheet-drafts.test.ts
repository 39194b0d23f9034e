import { expect, test } from "vitest";
import { act, HASH_A } from "../../../tests/store/sample.js";
import {
  type Draft,
  draftSheetDraft,
  draftSheetItem,
  draftSheetOrder,
  draftUndo,
  type Entry,
  foldHouse,
  foldStep,
  type HouseState,
  idText,
} from "./index.js";

const base = { id: "own", edition: "e1", label: "Ours", blob: HASH_A };
const at = { draft: "d-1", list: "points" };
const item = (name: string) => ({ value: { id: name }, texts: { en: { name } } });

/** A house that gains what is drafted, entry by entry. */
function house() {
  let state: HouseState = foldHouse([]);
  const log: Entry[] = [];
  return {
    state: () => state,
    log,
    keep: (make: (state: HouseState) => Draft): Entry => {
      const entry = { ...make(state), writer: "w1", seq: log.length + 1 } as Entry;
      log.push(entry);
      state = foldStep(state, [entry]);
      return entry;
    },
  };
}
const said = ({ draftItems, draftOrders, drafts }: HouseState) => ({
  drafts: [...drafts].map(([name, all]) => [name, all.map(({ value }) => value.edition)]),
  items: [...draftItems].map(([name, all]) => [name, all.map(({ value }) => value.to?.value ?? null)]),
  orders: [...draftOrders].map(([name, all]) => [name, all.map(({ value }) => value)]),
});

test("[RC85] items stand by draft, list and item; one taken out stands as taken out, and undoing brings it back", () => {
  const own = house();
  own.keep((s) => draftSheetDraft(act(), s, "d-1", base));
  own.keep((s) => draftSheetItem(act(), s, { ...at, item: "own.a" }, item("first")));
  own.keep((s) => draftSheetItem(act(), s, { ...at, item: "own.a" }, item("second")));
  const out = own.keep((s) => draftSheetItem(act(), s, { ...at, item: "own.b" }, null));
  own.keep((s) => draftSheetOrder(act(), s, at, ["own.c", "own.a"]));
  expect(said(own.state())).toEqual({
    drafts: [["d-1", ["e1"]]],
    items: [
      ["d-1|points|own.a", [{ id: "second" }]],
      ["d-1|points|own.b", [null]],
    ],
    orders: [["d-1|points", [["own.c", "own.a"]]]],
  });
  expect(said(foldHouse(own.log))).toEqual(said(own.state()));
  const [undo] = draftUndo(act(), own.state(), [idText(out)]);
  if (undo) own.keep(() => undo);
  expect(said(own.state()).items).toEqual([["d-1|points|own.a", [{ id: "second" }]]]);
});

test("[RC85] two people's items both stand until one replaces both", () => {
  const own = house();
  const before = own.state();
  own.keep(() => draftSheetItem(act(), before, { ...at, item: "own.a" }, item("hers")));
  own.keep(() => draftSheetItem(act(), before, { ...at, item: "own.a" }, item("his")));
  expect(own.state().draftItems.get("d-1|points|own.a")).toHaveLength(2);
  own.keep((s) => draftSheetItem(act(), s, { ...at, item: "own.a" }, item("ours")));
  expect(
    own
      .state()
      .draftItems.get("d-1|points|own.a")
      ?.map(({ value }) => value.to),
  ).toEqual([item("ours")]);
});

test("[RC86] a draft thrown away is gone, and a new one shares nothing with it", () => {
  const own = house();
  own.keep((s) => draftSheetDraft(act(), s, "d-1", base));
  own.keep((s) => draftSheetItem(act(), s, { ...at, item: "own.a" }, item("old")));
  own.keep((s) => draftSheetDraft(act(), s, "d-1", null));
  own.keep((s) => draftSheetDraft(act(), s, "d-2", base));
  expect(said(own.state()).drafts).toEqual([["d-2", ["e1"]]]);
  expect([...own.state().draftItems.keys()].filter((name) => name.startsWith("d-2"))).toEqual([]);
});
