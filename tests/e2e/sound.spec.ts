/** Recording through the browser's pretended microphone: told once whom to ask, kept, played, left against right, cut off. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { t as heard } from "../../src/app/texts/heard.js";
import { t } from "../../src/app/texts/media.js";
import { serve } from "../../src/cli/serve.js";
import { FAKE_DEVICES, SAYS_YES } from "../support/browser.js";
import { expect, test } from "../support/harness.js";
import { openKillable } from "../support/killable.js";
import { Walker } from "../support/walker.js";

test.use({ permissions: ["microphone"] });
test.setTimeout(300_000);

const point = (visit: string, place: string): string => `#/visit/${visit}/round/w7-hang/${place}/whl.listen`;
const drawn = (side: "heard.left" | "heard.right"): string => heard(side, { when: heard("heard.this-visit") });
const record = (page: Page) => page.getByRole("button", { name: t("sound.record") });
const stopAndKeep = (page: Page) => page.getByRole("button", { name: t("sound.keep") });

/** Opens the sound sheet of the open point; the first time it says whom to ask. */
async function openSounds(walker: Walker, isFirst: boolean): Promise<void> {
  await walker.press(t("round.sound"));
  if (isFirst) {
    await expect(walker.page.getByText(t("sound.voices"))).toBeVisible();
    await expect(record(walker.page)).toHaveCount(0);
    await walker.press(t("sound.voices.told"));
  }
  await expect(record(walker.page)).toBeVisible();
}

async function recordFor(page: Page, seconds: number): Promise<void> {
  await record(page).click();
  await expect(page.getByText(t("sound.recording", { n: seconds }))).toBeVisible({ timeout: 30_000 });
  await stopAndKeep(page).click();
  await expect(page.getByRole("dialog").getByText(t("sound.one", { n: 1 }))).toBeVisible();
}

test("whom to ask is told once; a sound is kept at its point, played, and left is heard before right", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open(point("demo-third", "FR"));
  await openSounds(walker, true);
  await recordFor(page, 2);
  await walker.open(point("demo-third", "FL"));
  await openSounds(walker, false);
  await recordFor(page, 2);

  const play = page.getByRole("dialog").getByRole("button", { name: t("sound.one", { n: 1 }) });
  await play.click();
  await expect(play).toContainText(t("sound.stop"));
  await expect(play).toContainText(t("sound.play"), { timeout: 30_000 });
  await expect(page.getByText(t("sound.unplayed"))).toHaveCount(0);

  const sides = page.getByRole("dialog").getByRole("button", { name: t("sound.sides") });
  await sides.click();
  await expect(page.getByText(t("sound.left"))).toBeVisible();
  await expect(page.getByText(t("sound.right"))).toBeVisible({ timeout: 30_000 });
  await expect(sides).toBeVisible({ timeout: 30_000 });
  await page.reload();
  await expect(page.locator("main").getByText(t("sound.one", { n: 1 }))).toBeVisible();

  // Both sides on one scale, with where the wheel would be heard once it is said how it turned.
  await walker.press(t("sound.drawn"));
  for (const which of [drawn("heard.left"), drawn("heard.right")])
    await expect(page.getByText(new RegExp(`^${which}: [\\d.]+ s, `))).toBeVisible();
  await page.getByRole("button", { name: heard("heard.turning") }).click();
  await page.getByLabel(heard("heard.ten")).fill("5");
  await expect(page.getByText(new RegExp(`^${heard("heard.mark.turns")}: 1.9 to 2.1`))).toBeVisible();
  await page.getByLabel(heard("heard.ten")).fill("soon");
  await expect(page.getByText(heard("heard.unread"))).toBeVisible();
});

test("a sound thrown away is not kept, and one taken back no longer stands", async ({ page, site }) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open(point("demo-third", "FL"));
  await openSounds(walker, true);
  await record(page).click();
  await page.getByRole("button", { name: t("sound.throw-away") }).click();
  await expect(record(page)).toBeVisible();
  await expect(page.getByText(t("sound.one", { n: 1 }))).toHaveCount(0);
  await recordFor(page, 1);
  await page.getByRole("button", { name: t("sound.take-back") }).click();
  await expect(page.getByText(t("sound.one", { n: 1 }))).toHaveCount(0);
});

test("killed while recording, what was heard up to the last slice is a sound that says it was cut off", async () => {
  const profile = mkdtempSync(join(tmpdir(), "leadlamp-sound-"));
  const serving = await serve({ port: 0 });
  const wishes = [FAKE_DEVICES, SAYS_YES];
  let open = await openKillable(profile, wishes);
  try {
    let walker = new Walker(open.page, serving.address);
    await walker.openDemo();
    await walker.open(point("demo-third", "FR"));
    await openSounds(walker, true);
    await record(open.page).click();
    await expect(open.page.getByText(t("sound.recording", { n: 7 }))).toBeVisible({ timeout: 60_000 });
    await open.kill();

    open = await openKillable(profile, wishes);
    walker = new Walker(open.page, serving.address);
    await walker.open("#/");
    await walker.open(point("demo-third", "FR"));
    await expect(open.page.locator("main").getByText(t("sound.cut"))).toBeVisible();
    await open.close();
  } finally {
    await open.kill().catch(() => undefined);
    await serving.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
