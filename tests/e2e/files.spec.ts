/**
 * Files that outlive the phone, on the built app: a locked copy of everything, a wiped phone, the copy read in byte for
 * byte; a visit handed to a second phone and back, joined both ways alike; the car deleted with nothing left.
 */
import { readFileSync } from "node:fs";
import type { Browser, Download, Page } from "@playwright/test";
import { t } from "../../src/app/texts/files.js";
import { t as first } from "../../src/app/texts/index.js";
import { type Logged, writeJournal } from "../../src/core/record/index.js";
import { axeFinds } from "../support/axe-finds.js";
import { expect, test } from "../support/harness.js";
import { pressable, Walker } from "../support/walker.js";

const PASSPHRASE = "kettle sorrel anvil moth";

/** All that the browser keeps of the record: every line and every blob, read past the app. */
async function kept(page: Page): Promise<{ readonly journal: string; readonly blobs: readonly string[] }> {
  const { entries, blobs } = await page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open("leadlamp");
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    const all = <Value>(name: string, keys = false) =>
      new Promise<Value[]>((resolve, reject) => {
        const store = database.transaction(name).objectStore(name);
        const asked = keys ? store.getAllKeys() : store.getAll();
        asked.onsuccess = () => resolve(asked.result as Value[]);
        asked.onerror = () => reject(asked.error);
      });
    const entries = await all<{ logged: unknown }>("entries");
    const hashes = await all<string>("blobs", true);
    const bytes = await all<{ bytes: ArrayBuffer }>("blobs");
    const hex = async (buffer: ArrayBuffer) =>
      Array.from(new Uint8Array(await crypto.subtle.digest("SHA-256", buffer)), (one) =>
        one.toString(16).padStart(2, "0"),
      ).join("");
    const wrong = [];
    for (const [i, one] of bytes.entries()) if ((await hex(one.bytes)) !== hashes[i]) wrong.push(hashes[i]);
    database.close();
    if (wrong.length > 0) throw new Error(`bytes do not match their names: ${wrong.join(", ")}`);
    return { entries: entries.map(({ logged }) => logged), blobs: hashes };
  });
  // Whatever the order of their keys: what counts is the journal they make.
  return { journal: writeJournal(entries as readonly Logged[]), blobs };
}

/** Presses what makes the file, hands it over, and gives what arrived. */
async function handedOver(walker: Walker, make: string): Promise<string> {
  await walker.press(make);
  await expect(pressable(walker.page, t("files.hand"))).toBeVisible();
  const arriving = walker.page.waitForEvent("download");
  await walker.press(t("files.hand"));
  const file: Download = await arriving;
  await expect(walker.page.getByText(t("files.handed.downloaded"))).toBeVisible();
  const path = `${await file.path()}`;
  return path;
}

/** Chooses a file on the screen for copies. */
async function choose(walker: Walker, name: string, path: string): Promise<void> {
  await walker.open("#/files");
  const asked = walker.page.waitForEvent("filechooser");
  await walker.press(t("read.pick"));
  await (await asked).setFiles({ name, mimeType: "application/octet-stream", buffer: readFileSync(path) });
}

const row = (page: Page, name: "cars" | "visits" | "entries" | "blobs") =>
  page.locator(".row", { hasText: t(`read.row.${name}`) }).last();

async function readIn(walker: Walker): Promise<void> {
  await walker.press(t("read.do"));
  await expect(walker.page.getByText(t("read.done"), { exact: true })).toBeVisible();
}

/** A phone of its own. */
async function anotherPhone(browser: Browser, address: string): Promise<Walker> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, acceptDownloads: true });
  return new Walker(await context.newPage(), address);
}

test("a copy outlives the phone, a visit travels to another and back, and a car deleted is gone", async ({
  browser,
  context,
  site,
}) => {
  test.setTimeout(240_000);
  const walker = new Walker(await context.newPage(), site.address);
  const { page } = walker;
  await walker.newCar("Grey one");
  await walker.newVisit({ odometer: "61240", complaint: "It hums from behind" });
  const visit = walker.visit();
  await walker.open(`#/visit/${visit}/round`);
  await walker.toNextReplies();
  const pressed = await walker.firstReply();
  await walker.addPicture();
  const before = await kept(page);

  // A locked copy of everything, and a look at what the screen says of it.
  await walker.open("#/files");
  await expect(page.getByText(t("files.age.never"))).toBeVisible();
  expect(await axeFinds(page)).toEqual([]);
  await page.getByLabel(t("files.passphrase")).fill(PASSPHRASE);
  const copy = await handedOver(walker, t("files.whole"));
  await expect(page.getByText(t("files.age.today"), { exact: false })).toBeVisible();

  // The phone falls into the water: another one, empty. The wrong passphrase opens nothing.
  const fresh = await anotherPhone(browser, site.address);
  await choose(fresh, "copy.zip.age", copy);
  await fresh.page.getByLabel(t("read.passphrase")).fill("something else");
  await fresh.press(t("read.unlock"));
  await expect(fresh.page.getByText(t("refused.files.wrong-passphrase"), { exact: false })).toBeVisible();
  await fresh.page.getByLabel(t("read.passphrase")).fill(PASSPHRASE);
  await fresh.press(t("read.unlock"));
  await expect(row(fresh.page, "cars")).toContainText(t("read.row", { fresh: 1, known: 0 }));
  await expect(row(fresh.page, "visits")).toContainText(t("read.row", { fresh: 1, known: 0 }));
  await expect(fresh.page.getByText(t("read.blank"))).toBeVisible();
  expect((await kept(fresh.page)).journal).toBe(writeJournal([]));
  await readIn(fresh);
  expect(await kept(fresh.page)).toEqual(before);

  // The second phone goes on with the same visit; the file goes back; both then hold the same.
  await fresh.open(pressed.hash);
  await fresh.anotherReply();
  await fresh.open(`#/visit/${visit}/file`);
  const there = await handedOver(fresh, t("car-file.make"));
  await walker.open(`#/visit/${visit}/round`);
  await walker.toNextReplies();
  await walker.anotherReply();
  await choose(walker, "visit.zip", there);
  await expect(row(page, "visits")).toContainText(t("read.row", { fresh: 0, known: 1 }));
  await expect(page.getByText(t("read.blank"))).toBeHidden();
  await readIn(walker);
  await walker.open(`#/visit/${visit}/file`);
  expect(await axeFinds(page)).toEqual([]);
  await choose(fresh, "visit.zip", await handedOver(walker, t("car-file.make")));
  await readIn(fresh);
  expect(await kept(fresh.page)).toEqual(await kept(page));

  // Deleted for good: no body, no byte.
  await walker.open("#/");
  const car = /#\/car\/([^/]+)/.exec((await page.locator('a[href^="#/car/"]').first().getAttribute("href")) ?? "")?.[1];
  await walker.open(`#/car/${car}/file`);
  await walker.press(t("erase.car"));
  await walker.press(t("erase.do"));
  await expect(page.getByText(t("erase.done.checked"))).toBeVisible();
  const after = await kept(page);
  expect(after.blobs).toEqual([]);
  for (const said of ["Grey one", "hums", "61240", "reply"]) expect(after.journal).not.toContain(said);
  await walker.open("#/");
  await expect(page.getByText(first("cars.none"))).toBeVisible();
  await fresh.page.context().close();
});
