/**
 * A copy in the format that tells what it lacks, as it was first written, kept as bytes: whatever comes later, it opens,
 * says what is not in it, and is read in whole.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { gatherCopy, takeIn, writeJournal } from "../../src/core/record/index.js";
import { openCopy } from "../../src/device/files/open.js";
import { good, newStore, wholeOf } from "../support/copies.js";

const kept = (name: string): Buffer => readFileSync(fileURLToPath(new URL(`copy-2/${name}`, import.meta.url)));

test("FL12 a copy that lacks a picture opens, names it, and gives the journal it was made from", async () => {
  const copy = good(await openCopy(new File([new Uint8Array(kept("plain.zip"))], "plain.zip")));
  const [lacking, ...more] = copy.manifest.lacking ?? [];
  expect([lacking?.name, lacking?.of, lacking?.on, more.length]).toEqual([
    "hub, outer race",
    "Little one",
    "2026-02-03",
    0,
  ]);
  const phone = newStore();
  good(await takeIn(phone, copy));
  expect(writeJournal((await wholeOf(phone)).log)).toBe(kept("journal.jsonl").toString("utf8"));
  // Handed on from there it lacks the same.
  expect(good(await gatherCopy(phone, { holds: "everything" })).lacking.map(({ hash }) => hash)).toEqual([
    lacking?.hash,
  ]);
});
