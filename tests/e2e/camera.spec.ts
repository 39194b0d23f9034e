/**
 * Looking through the browser's pretended camera: shots in a row, shots first and sorting later, pictures of a finding,
 * and a browser killed while the camera is open.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "@playwright/test";
import { t as words } from "../../src/app/texts/index.js";
import { t } from "../../src/app/texts/media.js";
import { serve } from "../../src/cli/serve.js";
import { FAKE_DEVICES, SAYS_YES } from "../support/browser.js";
import { expect, test } from "../support/harness.js";
import { openKillable } from "../support/killable.js";
import { Walker } from "../support/walker.js";

test.use({ permissions: ["camera"] });

const icon = fileURLToPath(new URL("../../public/icons/leadlamp-512.png", import.meta.url));
const thumbs = (page: Page) => page.locator('main a[href*="/picture/"]');

/** A pretended camera costs a machine without graphics dearly: keeping may take its time. */
const KEPT_WITHIN_MS = 120_000;
test.setTimeout(420_000);

const kept = (page: Page, pictures: number) =>
  expect(page.getByText(t("camera.here", { n: pictures }))).toBeVisible({ timeout: KEPT_WITHIN_MS });

/** Shoots until so many pictures are kept here. */
/** `before`: pictures that lie there already. */
async function shoot(walker: Walker, shots: number, before = 0): Promise<void> {
  const take = walker.page.getByRole("button", { name: t("camera.take") });
  for (let shot = 0; shot < shots; shot++) await take.click();
  await kept(walker.page, before + shots);
}

async function atAPoint(walker: Walker): Promise<string> {
  await walker.newCar("Looked through");
  await walker.newVisit();
  await expect(walker.page).toHaveURL(/\/round\/[^/]+\/[^/]+\/[^/]+$/);
  return new URL(walker.page.url()).hash;
}

test("several shots in a row are kept at the point without leaving the camera, and stand there after a reload", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  const point = await atAPoint(walker);
  await walker.press(t("round.photo"));
  await expect(page.locator("video")).toBeVisible();
  await shoot(walker, 3);
  await page.reload();
  await expect(thumbs(page)).toHaveCount(3);
  await page.locator(".back").click();
  await expect(page).toHaveURL(new RegExp(`${point.slice(1)}$`));
  await expect(thumbs(page)).toHaveCount(3);
  // A whole picture as the pretended camera shows it, with its place.
  await thumbs(page).first().click();
  await expect(page.locator(".marked img")).toBeVisible();
});

test("several pictures from the album at once, each kept", async ({ page, site }) => {
  const walker = new Walker(page, site.address);
  await atAPoint(walker);
  await walker.press(t("round.photo"));
  await walker.fromAlbum(Array.from({ length: 5 }, () => icon));
  await kept(page, 5);
  await expect(page.getByRole("button", { name: t("line.leave-out") })).toHaveCount(0);
});

test("shot first, sorted later: chosen together, said where by a word, and taken back", async ({ page, site }) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open("#/visit/demo-third");
  await walker.press(t("pictures.shoot"));
  // The demo left one to be sorted.
  await shoot(walker, 2, 1);
  await page.locator(".back").click();
  await expect(page.getByText(words("visit.pictures.unsorted", { n: 7, unsorted: 3 }))).toBeVisible();
  await walker.press(t("pictures.title"));
  await walker.press(t("pictures.choose-all"));
  await walker.press(t("pictures.sort"));
  await page.getByLabel(t("pick-place.search")).fill("seal rear left");
  const found = page.getByRole("dialog").locator("button.row");
  await expect(found.first()).toContainText(/seal/i);
  await found.first().click();
  await expect(page.getByRole("heading", { name: t("pictures.unsorted") })).toHaveCount(0);
  await page.getByRole("button", { name: t("round.undo") }).click();
  await expect(page.getByRole("heading", { name: t("pictures.unsorted") })).toBeVisible();
  await expect(page.locator("button.thumb")).toHaveCount(3);
});

test("a picture is added on a finding's page and stands there", async ({ page, site }) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open("#/visit/demo-third/findings/whl.race/RR");
  await walker.press(t("finding.add-picture"));
  await walker.fromAlbum([icon]);
  await kept(page, 1);
  await page.locator(".back").click();
  await expect(page).toHaveURL(/\/findings\/whl.race\/RR$/);
  await expect(thumbs(page)).toHaveCount(1);
});

test("killed while the camera is open, the app comes back to the same point with all earlier pictures", async () => {
  const profile = mkdtempSync(join(tmpdir(), "leadlamp-camera-"));
  const serving = await serve({ port: 0 });
  const wishes = [FAKE_DEVICES, SAYS_YES];
  let open = await openKillable(profile, wishes);
  try {
    let walker = new Walker(open.page, serving.address);
    const point = await atAPoint(walker);
    const aim = `/camera/point~${point.split("/").slice(-3).join("~")}`;
    await walker.press(t("round.photo"));
    await shoot(walker, 2);
    await open.kill();

    open = await openKillable(profile, wishes);
    walker = new Walker(open.page, serving.address);
    await walker.open("");
    await expect(walker.page).toHaveURL(new RegExp(`${aim}$`));
    await expect(thumbs(walker.page)).toHaveCount(2);
    await expect(walker.page.getByText(t("camera.left"))).toHaveCount(0);

    // Behind the phone's own camera it is the page that is ended.
    const asked = walker.page.waitForEvent("filechooser");
    await walker.press(t("camera.phone"));
    await asked;
    await walker.page.waitForTimeout(300);
    await open.kill();
    open = await openKillable(profile, wishes);
    walker = new Walker(open.page, serving.address);
    await walker.open("");
    await expect(walker.page.getByText(t("camera.left"))).toBeVisible();
    await expect(thumbs(walker.page)).toHaveCount(2);
    await walker.page.locator(".back").click();
    await expect(walker.page).toHaveURL(new RegExp(`${point.slice(1)}$`));
    await expect(thumbs(walker.page)).toHaveCount(2);
    await open.close();
  } finally {
    await open.kill().catch(() => undefined);
    await serving.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
