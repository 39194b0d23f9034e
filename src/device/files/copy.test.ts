// Copies: written as a plain archive, opened again byte for byte, under a passphrase too; nothing from a camera goes to others.
import { unzipSync } from "fflate";
import { expect, test } from "vitest";
import { act, bytesOf, emptyVisit } from "../../../tests/store/sample.js";
import { copyOf, filledPhone, good, newStore, volumesOf, wholeOf } from "../../../tests/support/copies.js";
import { asFromCamera } from "../../../tests/support/exif.js";
import { draftPicture, gatherCopy, readJournal, takeIn, writeJournal } from "../../core/record/index.js";
import { openCopy } from "./open.js";

const unzipped = async (file: File) => unzipSync(new Uint8Array(await file.arrayBuffer()));

test("FL1 a copy lies open: a page that explains it, a list, the journal, blobs named by their hash", async () => {
  const { store, blobs } = await filledPhone();
  const files = await unzipped(await copyOf(store, { holds: "everything" }));
  expect(Object.keys(files).slice(0, 2)).toEqual(["README.txt", "journal.jsonl"]);
  expect(Object.keys(files).at(-1)).toBe("manifest.json");
  expect(Object.keys(files).length).toBe(3 + blobs.length);
  const text = (name: string): string => new TextDecoder().decode(files[name]);
  expect(text("README.txt")).toContain("HOW THE LINES ARE READ");
  expect(text("journal.jsonl")).toBe(writeJournal((await wholeOf(store)).log));
  expect(good(readJournal(text("journal.jsonl"))).length).toBe((await wholeOf(store)).log.length);
});

test.each([undefined, "four words nobody guesses"])(
  "FL7 from a full phone onto a wiped one, all is as it was (passphrase: %s)",
  async (passphrase) => {
    const { store } = await filledPhone();
    const file = await copyOf(store, { holds: "everything" }, passphrase);
    const wiped = newStore();
    const copy = good(await openCopy(file, passphrase));
    const taken = good(await takeIn(wiped, copy));
    expect(await wholeOf(wiped)).toEqual(await wholeOf(store));
    expect([taken.left, taken.received.forks, taken.received.altered]).toEqual([0, [], []]);
  },
);

test("FL6 a locked copy shows nothing of what it holds", async () => {
  const { store, blobs } = await filledPhone();
  const file = await copyOf(store, { holds: "everything" }, "secret");
  const text = new TextDecoder("latin1").decode(await file.arrayBuffer());
  expect(text.startsWith("age-encryption.org/v1\n-> scrypt ")).toBe(true);
  for (const shown of ["Little one", "journal", ...blobs.map(({ hash }) => hash)])
    expect(text.slice(200)).not.toContain(shown);
});

const JPEG = new Uint8Array([0xff, 0xd8, 0xff, 0xdb, 0, 4, 0, 0, 0xff, 0xd9]);

test("FL9 what a camera wrote beside its picture is in one's own copy, told, and in nothing handed to others", async () => {
  const { store, car, visit } = await filledPhone();
  const tagged = asFromCamera(JPEG, 6);
  const blob = { ...(await bytesOf("")), bytes: tagged, type: "image/jpeg" };
  const hash = (await import("./parts.js")).sha256(tagged);
  const named = { ...blob, hash: await hash };
  const draft = draftPicture(act(), emptyVisit(visit), {
    blob: named.hash,
    type: "image/jpeg",
    width: 0,
    height: 0,
    unreadable: true,
  });
  good(await store.append([draft], [named]));
  const own = good(await gatherCopy(store, { holds: "everything" }));
  expect([own.asTheyCame, own.keptBack]).toEqual([1, []]);
  for (const what of [
    { holds: "visit", car, visit },
    { holds: "car", car, visits: [visit] },
  ] as const) {
    const plan = good(await gatherCopy(store, what));
    expect(plan.keptBack).toEqual([named.hash]);
    for (const file of await volumesOf(store, plan))
      for (const bytes of Object.values(await unzipped(file)))
        expect(new TextDecoder("latin1").decode(bytes)).not.toMatch(/Exif\0|eXIf|GPS|Testcam|SN-0042|ns\.adobe/);
  }
});
