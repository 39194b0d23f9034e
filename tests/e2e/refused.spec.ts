/** The person says no to the camera or the microphone: it is explained, and everything else stays on offer. */
import { t } from "../../src/app/texts/media.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

test.setTimeout(300_000);

test("a refused camera is explained; the album still gives a picture", async ({ page, site }) => {
  const session = await page.context().newCDPSession(page);
  const origin = new URL(site.address).origin;
  await session.send("Browser.setPermission", { origin, permission: { name: "camera" }, setting: "denied" });
  const walker = new Walker(page, site.address);
  await walker.newCar("Refused");
  await walker.newVisit();
  await walker.press(t("round.photo"));
  await expect(page.getByText(t("camera.refused"), { exact: true })).toBeVisible();
  await expect(page.getByText(t("camera.refused.says"))).toBeVisible();
  await expect(page.getByRole("button", { name: t("camera.phone") })).toBeVisible();
  await expect(page.getByRole("button", { name: t("camera.take") })).toHaveCount(0);
  await walker.fromAlbum([{ name: "seal.png", mimeType: "image/png", buffer: await page.screenshot() }]);
  await expect(page.getByText(t("camera.here", { n: 1 }))).toBeVisible({ timeout: 60_000 });
});

test("a refused microphone is explained, and a note still says what was heard", async ({ page, site }) => {
  const session = await page.context().newCDPSession(page);
  const origin = new URL(site.address).origin;
  await session.send("Browser.setPermission", { origin, permission: { name: "microphone" }, setting: "denied" });
  const walker = new Walker(page, site.address);
  await walker.newCar("Not heard");
  await walker.newVisit();
  await walker.press(t("round.sound"));
  await walker.press(t("sound.voices.told"));
  await page
    .getByRole("dialog")
    .getByRole("button", { name: t("sound.record") })
    .click();
  await expect(page.getByText(t("sound.refused"), { exact: true })).toBeVisible();
  await expect(page.getByText(t("sound.refused.says"))).toBeVisible();
  await walker.press(t("app.close"));
  await walker.press(t("round.add-note"));
  await expect(page.getByRole("dialog")).toBeVisible();
});
