/** Storage that is full: told in words, the reply stays on the screen, and it is kept once there is room again. */

import type { Page } from "@playwright/test";
import { t } from "../../src/app/texts/index.js";
import { expect, test } from "../support/harness.js";
import { pressable, Walker } from "../support/walker.js";

/** Takes all the room there is, in a database of its own; returns what it took. */
async function takeAllRoom(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const opened = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open("somebody else's");
      opening.onupgradeneeded = () => opening.result.createObjectStore("ballast", { autoIncrement: true });
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    let taken = 0;
    // From large to small, so that in the end not even a reply finds room.
    for (let size = 1 << 20; size >= 16; size >>= 1) {
      for (let full = false; !full; ) {
        full = await new Promise<boolean>((resolve) => {
          const writing = opened.transaction("ballast", "readwrite");
          writing.objectStore("ballast").add(crypto.getRandomValues(new Uint8Array(Math.min(size, 65_536))).buffer);
          writing.oncomplete = () => resolve(false);
          writing.onabort = () => resolve(true);
        });
        if (!full) taken += Math.min(size, 65_536);
        if (taken > 64 << 20) throw new Error("there is no end to the room");
      }
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
  const pressed = await walker.firstReply({ kept: false });
  await expect(page.getByText(t("trouble.full"))).toBeVisible();
  await expect(walker.reply(pressed.words)).toHaveAttribute("aria-pressed", "true");

  await giveRoomBack(page);
  await pressable(page, t("app.again")).click();
  await expect(page.getByText(t("trouble.full"))).toBeHidden();
  await walker.open(pressed.hash);
  await expect(walker.reply(pressed.words)).toHaveAttribute("aria-pressed", "true");
});
