import { expect, test } from "vitest";
import { bench, benchVisit, sheetFrozen, until } from "../../../tests/support/app-bench.js";
import { readFrozen } from "./frozen.js";
import { workUndo } from "./sheet-undo.js";
import { draftOf, draftsOf, itemsIn, layWork, wholeSheet } from "./sheet-work.js";
import { beginWork, dropWork, fileOf, keepEdition, putItem, undoWork } from "./sheet-work-acts.js";

/** A bench with a working copy of the small sheet begun on it. */
async function begun() {
  const on = bench();
  const { visit } = await benchVisit(on);
  const { journal, phone } = on;
  const house = async () => {
    const now = await until(journal.house(), ({ is }) => is === "open");
    if (now.is !== "open") throw new Error("the house is open");
    return now.state;
  };
  await house();
  expect(await beginWork(journal, phone, sheetFrozen)).toBe(true);
  const draft = draftOf(await house(), "hub");
  if (!draft) throw new Error("a working copy was begun");
  return { ...on, visit, house, draft };
}
const ground = {
  base: wholeSheet(sheetFrozen),
  texts: {},
  on: { bare: { places: [], cases: [], complaints: [] } as never, others: [] },
};

test("what is put stands in the working copy alone; kept as an edition it is the house's sheet, and the visit keeps its own", async () => {
  const { journal, phone, store, house, draft, visit } = await begun();
  const spin = itemsIn({ base: ground.base, changes: { items: new Map(), orders: new Map() } }, "points").get(
    "hub.spin",
  );
  if (!spin) throw new Error("the small sheet turns its hubs");
  await putItem(journal, draft.draft, "points", "hub.spin", { ...spin, texts: { en: { name: "Turning", ask: {} } } });
  const { sheet } = layWork(ground, await house(), draft.draft);
  expect(sheet.texts["en"]?.points["hub.spin"]?.name).toBe("Turning");
  expect((await house()).sheets.size).toBe(0);
  const undo = workUndo(
    await house(),
    journal.writer.value,
    () => true,
    () => "Turning",
  );
  expect(undo?.says).toBe("Points: Turning, changed");
  const opened = await until(journal.visit(visit), ({ is }) => is === "open");
  const frozen = opened.is === "open" ? opened.state.sheets : [];
  expect(await keepEdition(journal, phone, draft.draft, await fileOf(phone, { ...sheet, label: "Hub 2" }))).toBe(true);
  const kept = (await house()).sheets.get("hub")?.at(-1)?.value;
  const blob = await store.blob(kept?.blob ?? "");
  const file = blob.ok && blob.value ? readFrozen("leadlamp-frozen-sheet/1", blob.value.bytes) : undefined;
  expect(file?.ok && [file.value.sheet.label, file.value.cases?.length]).toEqual(["Hub 2", sheet.cases.length]);
  expect(draftOf(await house(), "hub")).toBeUndefined();
  const after = await until(journal.visit(visit), ({ is }) => is === "open");
  expect(after.is === "open" && after.state.sheets).toEqual(frozen);
});

test("a working copy thrown away comes back with all its changes when that is taken back", async () => {
  const { journal, house, draft } = await begun();
  await putItem(journal, draft.draft, "gates", "gate.none", null);
  await dropWork(journal, draft.draft);
  const now = await house();
  expect(draftOf(now, "hub")).toBeUndefined();
  const last = workUndo(now, journal.writer.value, () => true);
  expect(last?.says).toBe("A working copy was thrown away");
  if (last) await undoWork(journal, last.step);
  expect(draftOf(await house(), "hub")?.draft).toBe(draft.draft);
  expect((await house()).draftItems.size).toBe(1);
});

test("a working copy begun again throws the one before away, so that it never comes up behind the new one", async () => {
  const { journal, phone, house, draft } = await begun();
  expect(await beginWork(journal, phone, sheetFrozen)).toBe(true);
  const standing = draftsOf(await house());
  expect(standing).toHaveLength(1);
  expect(standing[0]?.draft).not.toBe(draft.draft);
});

test("what two people changed differently is told, and what they changed alike is not", async () => {
  const { house, draft } = await begun();
  const put = (name: string) => ({
    id: name,
    at: { wall: 1, count: 0 },
    by: "p",
    value: { to: { texts: { en: { name } } } },
  });
  const lay = async (...names: readonly string[]) => {
    const draftItems = new Map([[`${draft.draft}|points|hub.spin`, names.map(put)]]);
    return layWork(ground, { ...(await house()), draftItems }, draft.draft).told;
  };
  expect(await lay("Turning", "Turning")).toEqual([]);
  expect(await lay("Turning", "Spinning")).toMatchObject([
    { is: "problem", about: { list: "points", item: "hub.spin" } },
  ]);
});
