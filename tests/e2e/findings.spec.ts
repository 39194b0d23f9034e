/** Findings a person adds or grades by hand, on the built app: off the list, up and down, kept through a reload. */
import type { Page } from "@playwright/test";
import { demoAddresses } from "../../src/app/demo/addresses.js";
import type { RouteName } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/index.js";
import { t as media } from "../../src/app/texts/media.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

const SEEN = "Clip of the fuel hose rubs the rubber flat";
const WHY = "Will be through within the year";
const WORK = "New hose and clip, run clear of the bracket";

function demoHref(name: RouteName): string {
  const href = demoAddresses().find((one) => one.name === name)?.href;
  if (href === undefined) throw new Error(`the demo has no address for ${name}`);
  return href;
}

async function demoWalker(page: Page, address: string): Promise<Walker> {
  const walker = new Walker(page, address);
  await walker.openDemo();
  return walker;
}

test("a finding off the list says what is missing, outlives a reload half-typed, stands with its place, grade and work, and is taken back", async ({
  page,
  site,
}) => {
  const walker = await demoWalker(page, site.address);
  await walker.open(demoHref("findings"));
  await walker.press(t("off-list.add"));
  await walker.press(t("off-list.keep"));
  const words = page.getByLabel(t("off-list.words"));
  await expect(page.getByText(t("off-list.words.needed"))).toBeVisible();
  await expect(words).toBeFocused();
  await words.fill(SEEN);
  await page.reload();
  await expect(words).toHaveValue(SEEN);

  await walker.press(new RegExp(t("off-list.place")));
  await page.getByLabel(media("pick-place.search")).fill("rear left");
  await page.getByRole("dialog").getByRole("button", { name: "Rear left", exact: true }).click();
  await page.getByRole("radio", { name: t("mark.major") }).click();
  await page.getByLabel(t("off-list.reason")).fill(WHY);
  await page.getByLabel(t("off-list.job")).fill(WORK);
  await page.getByLabel(t("off-list.hours")).fill("0,5");
  await walker.press(t("off-list.keep"));

  const row = page.getByRole("link", { name: new RegExp(SEEN) });
  await expect(row).toContainText("Rear left");
  await page.reload();
  await row.click();
  await expect(page.getByRole("list", { name: t("finding.because") })).toContainText(WHY);
  await walker.press(WORK);
  await expect(page).toHaveURL(/\/work\//);
  await expect(page.getByRole("main")).toContainText(WORK);
  await walker.open(demoHref("findings"));
  await row.click();
  await walker.press(t("off-list.mend"));
  await walker.press(t("off-list.take-back"));
  await expect(page.getByRole("heading", { name: t("findings.title") })).toBeVisible();
  await expect(row).toHaveCount(0);
});

test("a finding is graded up freely, down only with a reason, and back to the rules", async ({ page, site }) => {
  const walker = await demoWalker(page, site.address);
  await walker.open(demoHref("finding"));
  const sheet = page.getByRole("dialog", { name: t("finding.regrade.title") });
  const keep = sheet.getByRole("button", { name: t("finding.regrade.keep") });
  const grade = async (mark: "dangerous" | "advisory", reason: string): Promise<void> => {
    await walker.press(t("finding.regrade"));
    await sheet.getByRole("radio", { name: t(`mark.${mark}`) }).click();
    await sheet.getByLabel(t("finding.regrade.reason")).fill(reason);
  };
  const open = page.getByRole("main");
  await grade("advisory", "");
  await expect(sheet.getByText(t("finding.regrade.needed"))).toBeVisible();
  await expect(keep).toBeDisabled();
  await sheet.getByLabel(t("finding.regrade.reason")).fill("Only a stain, wiped off");
  await keep.click();
  await expect(open).toContainText("Only a stain, wiped off");
  await expect(open.getByText(t("mark.advisory"), { exact: false }).first()).toBeVisible();
  await page.reload();
  await expect(open).toContainText("Only a stain, wiped off");
  await grade("dangerous", "");
  await expect(keep).toBeEnabled();
  await sheet.getByRole("button", { name: t("finding.regrade.rules") }).click();
  await expect(open).not.toContainText("Only a stain, wiped off");
});

test("fuel smelt: no spark is to be made, over every point from then on, in a quiet viewing too", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.newCar("Smells of fuel");
  await walker.newVisit({ who: "buyer", onlySheet: "Floor drainage" });
  const noSpark = page.getByRole("link", { name: /No spark/ });
  await walker.open(`#/visit/${walker.visit()}/round/w2-doors/car/drn.smell`);
  await expect(walker.reply("Fuel")).toBeVisible();
  await expect(noSpark).toHaveCount(0);
  await walker.pressReply(walker.reply("Fuel"));
  await expect(noSpark).toBeVisible();
  await walker.goOn();
  await expect(noSpark).toBeVisible();
  await noSpark.click();
  await expect(page).toHaveURL(/\/gate\/gate\.no-spark$/);
});
