/**
 * Marks on a picture with every tool, by presses and by keys; measured, reloaded, taken back; beside the picture of a
 * year before, and that one laid over the camera.
 */
import type { Page } from "@playwright/test";
import { t } from "../../src/app/texts/marks.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

test.use({ permissions: ["camera"] });
test.setTimeout(180_000);

const stage = (page: Page) => page.getByRole("button", { name: t("marks.picture") });
const rows = (page: Page) => page.locator(".mark-row");

async function pressOn(page: Page, x: number, y: number): Promise<void> {
  const box = await stage(page).boundingBox();
  if (!box) throw new Error("no picture");
  await stage(page).click({ position: { x: box.width * x, y: box.height * y } });
}
const choose = (page: Page, tool: "arrow" | "ring" | "words" | "scale" | "length") =>
  page.getByRole("button", { name: t(`marks.tool.${tool}`), exact: true }).click();
const keep = (page: Page) => page.getByRole("button", { name: t("marks.keep"), exact: true }).click();

test("a picture is marked by presses and by keys, measured, and stands beside and under the one before", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open("#/visit/demo-third/picture/demo-picture");
  await walker.press(t("marks.open"));
  await expect(rows(page)).toHaveCount(3);
  await expect(page.getByRole("button", { name: t("marks.tool.length"), exact: true })).toBeDisabled();

  await choose(page, "arrow");
  await pressOn(page, 0.2, 0.2);
  await pressOn(page, 0.4, 0.4);
  await page.getByRole("button", { name: t("marks.right"), exact: true }).click();
  await keep(page);
  await expect(rows(page)).toHaveCount(4);

  await choose(page, "scale");
  await pressOn(page, 0.25, 0.5);
  await pressOn(page, 0.75, 0.5);
  await page.getByLabel(t("marks.known"), { exact: true }).fill("50.0");
  await keep(page);
  await expect(rows(page)).toHaveCount(5);

  // A length by keys alone: begun in the middle, moved, set, moved, kept.
  await choose(page, "length");
  await stage(page).focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Enter");
  for (let step = 0; step < 8; step++) await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Enter");
  await expect(rows(page)).toHaveCount(6);
  await expect(rows(page).nth(5)).toContainText(/\d ± \d.* mm \(.* in\)/);
  await expect(page.getByText(t("marks.plane"))).toBeVisible();

  await choose(page, "ring");
  await page.getByRole("button", { name: t("marks.nearer") }).click();
  await pressOn(page, 0.5, 0.5);
  await pressOn(page, 0.55, 0.55);
  await keep(page);
  await choose(page, "words");
  await pressOn(page, 0.5, 0.52);
  await page.getByLabel(t("marks.words", { n: 60 })).fill("chafed here");
  await keep(page);
  await expect(rows(page)).toHaveCount(8);

  await page.reload();
  await expect(rows(page)).toHaveCount(8);
  await expect(page.locator("svg text", { hasText: "chafed here" })).toHaveCount(1);
  await page.getByRole("button", { name: t("marks.undo.says") }).click();
  await expect(rows(page)).toHaveCount(7);
  await page.getByRole("button", { name: t("marks.remove.one", { n: 4 }) }).click();
  await expect(rows(page)).toHaveCount(6);

  await walker.open("#/visit/demo-third/picture/demo-picture");
  await walker.press(t("beside.open"));
  await expect(page.locator("figure img")).toHaveCount(2);
  await page.getByRole("switch", { name: t("beside.same-frame") }).click();
  const shown = page.locator("figure .row-title");
  const newest = await shown.textContent();
  await page.getByRole("button", { name: t("beside.other") }).click();
  await expect(shown).not.toHaveText(newest ?? "");

  await walker.open("#/visit/demo-third/camera/point~w8-off~RR~whl.grease");
  await expect(page.locator("img.ghost.faint")).toBeVisible();
  await page.getByRole("radio", { name: t("ghost.off") }).click();
  await expect(page.locator("img.ghost")).toHaveCount(0);
});
