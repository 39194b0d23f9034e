/**
 * Hundreds of pictures in one visit: the page is never loaded again, few addresses of bytes live at any moment, and the
 * list draws only what comes near. LEADLAMP_PICTURES=500 for the long run.
 */
import { t } from "../../src/app/texts/media.js";
import { expect, test } from "../support/harness.js";
import { plainPng } from "../support/plain-png.js";
import { Walker } from "../support/walker.js";

const PICTURES = Number(process.env["LEADLAMP_PICTURES"] ?? 24);
/** Chosen from the album at a time. */
const AT_A_TIME = 50;
const MOST_ADDRESSES = 60;

declare global {
  var leadlampAddresses: { live: number; most: number };
}

test(`${PICTURES} pictures in one visit: no reload, at most ${MOST_ADDRESSES} live addresses, a list that follows the finger`, async ({
  page,
  site,
}) => {
  test.setTimeout(120_000 + PICTURES * 4_000);
  await page.addInitScript(() => {
    const live = new Set<string>();
    globalThis.leadlampAddresses = { live: 0, most: 0 };
    const [make, revoke] = [URL.createObjectURL, URL.revokeObjectURL];
    const tell = (): void => {
      const { most } = globalThis.leadlampAddresses;
      globalThis.leadlampAddresses = { live: live.size, most: Math.max(most, live.size) };
    };
    URL.createObjectURL = (of) => {
      const address = make.call(URL, of);
      live.add(address);
      tell();
      return address;
    };
    URL.revokeObjectURL = (address) => {
      live.delete(address);
      revoke.call(URL, address);
      tell();
    };
  });
  const walker = new Walker(page, site.address);
  await walker.newCar("Much looked at");
  await walker.newVisit();
  let loads = 0;
  page.on("load", () => loads++);

  const began = Date.now();
  await walker.press(/^Photo$/);
  for (let from = 0; from < PICTURES; from += AT_A_TIME) {
    const count = Math.min(AT_A_TIME, PICTURES - from);
    await walker.fromAlbum(
      Array.from({ length: count }, (_, index) => ({
        name: `seen-${from + index}.png`,
        mimeType: "image/png",
        buffer: plainPng(from + index),
      })),
    );
    await expect(page.getByText(t("camera.here", { n: from + count }))).toBeVisible({
      timeout: 60_000 + count * 4_000,
    });
  }
  const kept = Date.now() - began;

  await page.getByRole("link", { name: t("camera.here", { n: PICTURES }) }).click();
  await expect(page.getByText(t("pictures.second", { n: PICTURES, unsorted: 0 }))).toBeVisible();
  const thumbs = page.locator("main a.thumb");
  const first = await thumbs.count();
  expect(first).toBeLessThanOrEqual(MOST_ADDRESSES);
  await expect(async () => {
    await page.mouse.wheel(0, 4_000);
    await expect(thumbs).toHaveCount(PICTURES, { timeout: 400 });
  }).toPass({ timeout: 120_000 });
  await thumbs.last().scrollIntoViewIfNeeded();
  const last = thumbs.last().locator("img");
  await expect(last).toBeVisible();
  expect(
    await last.evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth)),
  ).toBeGreaterThan(0);
  // Far from the window nothing is drawn.
  const drawn = await page.locator("main a.thumb img").count();
  expect(drawn).toBeLessThanOrEqual(Math.min(PICTURES, 120));

  await expect.poll(() => page.evaluate(() => globalThis.leadlampAddresses.live)).toBeLessThanOrEqual(1);
  const { most } = await page.evaluate(() => globalThis.leadlampAddresses);
  console.log(
    `${PICTURES} pictures kept in ${(kept / 1000).toFixed(1)} s, at most ${most} live addresses, ${first} drawn at first, ` +
      `${drawn} with a picture at the end, ${loads} reloads`,
  );
  expect(most).toBeLessThanOrEqual(MOST_ADDRESSES);
  expect(loads).toBe(0);
});
