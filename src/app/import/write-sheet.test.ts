import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import type { FrozenCommonFile } from "../state/frozen.js";
import { wholeSheet } from "../state/sheet-work.js";
import { readSheetFile } from "./sheet-file.js";
import { writeSheet } from "./write-sheet.js";

const { common, sheet } = miniSheets();
const shared: FrozenCommonFile = { format: "leadlamp-frozen-common/1", edition: "e", common, texts: common.texts };

test("a sheet handed on as YAML or JSON is read in again as the very same sheet, cases and all", async () => {
  for (const as of ["yaml", "json"] as const) {
    const read = await readSheetFile(`hub.${as}`, writeSheet(sheet, as), shared);
    expect(read).toMatchObject({ ok: true });
    if (read.ok) expect(wholeSheet(read.value.file)).toEqual(sheet);
  }
});

test("words that another reader would take for numbers, yes or dates stay words", async () => {
  const en = sheet.texts["en"] as (typeof sheet.texts)["en"] & object;
  const about = 'yes: 012 # no, "2024-01-01"\n- two lines';
  const read = await readSheetFile(
    "hub.yaml",
    writeSheet({ ...sheet, label: "1e3", texts: { en: { ...en, about } } }, "yaml"),
    shared,
  );
  expect(read.ok && [read.value.file.sheet.label, read.value.file.texts["en"]?.about]).toEqual(["1e3", about]);
});
