/** A newer version waits until the person agrees, in every window, and nothing kept is lost over it. */

import { t } from "../../src/app/texts/index.js";
import { expect, test } from "../support/harness.js";
import { serveVersions, type TwoVersions } from "../support/next-version.js";
import { watchOffences } from "../support/offences.js";
import { pressable, Walker } from "../support/walker.js";

declare global {
  /** Put on a page by these tests; gone once the page was loaded again. */
  var notReloaded: true | undefined;
}

let versions: TwoVersions;
test.beforeEach(async () => {
  versions = await serveVersions();
});
test.afterEach(() => versions.close());

test("a newer version is offered in both windows, waits, and starts in both when one agrees", async ({ browser }) => {
  const context = await browser.newContext();
  const offences = await watchOffences(context, new URL(versions.serving.address).origin);
  const first = new Walker(await context.newPage(), versions.serving.address);
  await first.open();
  await first.wholeAppKept();
  await first.newCar("Kept before the update");

  versions.deploy(2);
  const second = new Walker(await context.newPage(), versions.serving.address);
  await second.open();
  for (const { page } of [first, second])
    await expect(page.getByText(t("update.title"))).toBeVisible({ timeout: 20_000 });

  // Offered is not taken: the old version goes on, through a reload and on a screen never opened before.
  for (const { page } of [first, second]) await page.evaluate(() => (globalThis.notReloaded = true));
  await second.open("#/settings");
  await expect(second.page.locator("html")).not.toHaveAttribute("data-version", /./);
  expect(await first.page.evaluate(() => globalThis.notReloaded)).toBe(true);

  await pressable(second.page.getByRole("status"), t("update.take")).click();
  for (const { page } of [first, second])
    await expect(page.locator("html")).toHaveAttribute("data-version", "2", { timeout: 40_000 });
  expect(await first.page.evaluate(() => globalThis.notReloaded)).toBeUndefined();
  await expect(first.page.getByText(t("update.title"))).toBeHidden();
  await first.stands();
  await expect(first.page.getByRole("heading", { name: "Kept before the update" })).toBeVisible();
  expect(offences.seen).toEqual([]);
  await context.close();
});

test("the very first visit is not interrupted by its own service worker", async ({ browser }) => {
  const context = await browser.newContext();
  const walker = new Walker(await context.newPage(), versions.serving.address);
  await walker.open();
  await walker.page.evaluate(() => (globalThis.notReloaded = true));
  await walker.wholeAppKept();
  expect(await walker.page.evaluate(() => globalThis.notReloaded)).toBe(true);
  await context.close();
});
