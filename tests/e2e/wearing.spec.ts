/**
 * What is wearing, by touch: the soonest on the car's page, the list, one part with its chart and a step back; said to
 * be renewed, and that taken back. LEADLAMP_SHOTS=folder leaves pictures in each theme and width.
 */
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { DEMO_CAR } from "../../src/app/demo/names.js";
import { paramOf, to } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/wearing.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

const SHOTS = process.env["LEADLAMP_SHOTS"];

async function looked(page: Page, name: string): Promise<void> {
  for (const width of [390, 360, 320]) {
    await page.setViewportSize({ width, height: 844 });
    const wider = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wider, `${name} at ${width} px`).toBeLessThanOrEqual(0);
    for (const colorScheme of SHOTS === undefined || width === 320 ? [] : (["dark", "light"] as const)) {
      await page.emulateMedia({ colorScheme });
      await page.screenshot({ path: join(SHOTS ?? "", `${name}-${width}-${colorScheme}.png`), fullPage: true });
    }
  }
  await page.setViewportSize({ width: 390, height: 844 });
}

test("from the car's page to a part that came back: said to be renewed, and taken back", async ({ page, site }) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await expect(page.getByRole("heading", { name: t("wearing.title") })).toBeVisible({ timeout: 30_000 });
  // What has passed a limit comes before what only nears one.
  await expect(page.getByText(/\(major\) is passed/).first()).toBeVisible();
  await looked(page, "wearing-car");
  await page.getByRole("link", { name: new RegExp(t("wearing.all")) }).click();
  await expect(page.getByRole("heading", { name: t("wearing.soonest") })).toBeVisible();
  await expect(page.getByRole("heading", { name: t("wearing.not-yet") })).toBeVisible();
  await looked(page, "wearing-list");

  await walker.open(to("wear", { car: paramOf(DEMO_CAR), series: "brk.fluid-boil~boils", place: "car" }));
  await expect(page.getByRole("img").first()).toBeVisible();
  await looked(page, "wear-part");
  const unsaid = page.getByText(/^Better by 53/);
  await expect(unsaid).toBeVisible();
  await page.getByRole("button", { name: t("wear.say"), exact: true }).click();
  await page.getByRole("dialog").getByText(t("wear.say.renewed")).click();
  await expect(page.getByText(t("wear.break.said-renewed"))).toBeVisible();
  await expect(unsaid).toBeHidden();
  await page.getByRole("button", { name: t("wear.undo") }).click();
  await expect(unsaid).toBeVisible();
  await expect(page.getByText(t("wear.break.said-renewed"))).toBeHidden();

  await walker.open(to("wear", { car: paramOf(DEMO_CAR), series: "brk.pad_thin~", place: "FR-pad-inner" }));
  await expect(page.getByRole("img").first()).toBeVisible();
  await looked(page, "wear-pad");
});
