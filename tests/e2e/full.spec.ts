/** Storage that is full: told in words, the reply stays on the screen, and it is kept once there is room again. */

import type { Page } from "@playwright/test";
import { t } from "../../src/app/texts/index.js";
import { expect, test } from "../support/harness.js";
import { pressable, Walker } from "../support/walker.js";

/**
 * Takes all the room there is, in a database of its own; returns what it took. What the browser tidies away meanwhile
 * is room again, and could be filled with the smallest pieces for minutes: each round goes down from the large ones,
 * and the last round is the one in which nothing fits any more.
 */
async function takeAllRoom(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const LARGEST = 65_536;
    const SMALLEST = 16;
    const opened = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open("somebody else's");
      opening.onupgradeneeded = () => opening.result.createObjectStore("ballast", { autoIncrement: true });
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const fits = (size: number): Promise<boolean> =>
      new Promise((resolve) => {
        const writing = opened.transaction("ballast", "readwrite");
        writing.objectStore("ballast").add(crypto.getRandomValues(new Uint8Array(size)).buffer);
        writing.oncomplete = () => resolve(true);
        writing.onabort = () => resolve(false);
      });
    let taken = 0;
    for (let before = -1; taken > before; ) {
      before = taken;
      while (await fits(LARGEST)) {
        taken += LARGEST;
        if (taken > 64 << 20) throw new Error("there is no end to the room");
      }
      for (let size = LARGEST / 2; size >= SMALLEST; size /= 2) if (await fits(size)) taken += size;
    }
    opened.close();
    return taken;
  });
}

const giveRoomBack = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const going = indexedDB.deleteDatabase("somebody else's");
        going.onsuccess = () => resolve();
        going.onerror = () => reject(going.error);
      }),
  );

const toldOfNoRoom = (page: Page): Promise<boolean> =>
  page
    .getByText(t("trouble.full"))
    .waitFor({ timeout: 3_000 })
    .then(
      () => true,
      () => false,
    );

test("a reply that finds no room is shown as not kept, stays, and is kept once there is room", async ({
  context,
  page,
  site,
}) => {
  const session = await context.newCDPSession(page);
  // Before the first write: later the browser reckons with what it knew.
  await session.send("Storage.overrideQuotaForOrigin", { origin: new URL(site.address).origin, quotaSize: 12 << 20 });
  const walker = new Walker(page, site.address);
  await walker.newCar("On a full phone");
  await walker.newVisit();
  await expect(walker.replies().first()).toBeVisible();

  expect(await takeAllRoom(page)).toBeGreaterThan(0);
  let pressed = await walker.firstReply({ kept: false });
  // The browser may have tidied up between the last piece and the reply: then that room is taken too, and the next asked.
  while (!(await toldOfNoRoom(page))) {
    await walker.wentOn(pressed);
    await takeAllRoom(page);
    pressed = await walker.firstReply({ kept: false });
  }
  await expect(walker.reply(pressed.words)).toHaveAttribute("aria-pressed", "true");

  await giveRoomBack(page);
  await pressable(page, t("app.again")).click();
  await expect(page.getByText(t("trouble.full"))).toBeHidden();
  await walker.open(pressed.hash);
  await expect(walker.reply(pressed.words)).toHaveAttribute("aria-pressed", "true");
});
