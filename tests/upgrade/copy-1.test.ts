/**
 * A copy as the first format of copies wrote it, kept as bytes: whatever comes later, it opens and is read in whole. Made
 * once and never again; a changed format gets a file of its own beside it.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { takeIn, writeJournal } from "../../src/core/record/index.js";
import { openCopy } from "../../src/device/files/open.js";
import { good, newStore, wholeOf } from "../support/copies.js";

const kept = (name: string): Buffer => readFileSync(fileURLToPath(new URL(`copy-1/${name}`, import.meta.url)));

test.each([
  ["plain.zip", undefined],
  ["locked.zip.age", "kettle sorrel anvil moth"],
])("FL1 FL6 a first copy (%s) opens and gives the journal and the blobs it was made from", async (name, passphrase) => {
  const copy = good(await openCopy(new File([new Uint8Array(kept(name))], name), passphrase));
  const phone = newStore();
  good(await takeIn(phone, copy));
  const whole = await wholeOf(phone);
  expect(writeJournal(whole.log)).toBe(kept("journal.jsonl").toString("utf8"));
  expect(whole.blobs.length).toBe(5);
});
