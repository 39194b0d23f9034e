/**
 * The phone handed to the owner: four jobs decided four ways, a dangerous one refused after its warning was read, signed
 * on the glass, one changed afterwards; all of it stands after a reload. LEADLAMP_SHOTS=folder leaves pictures.
 */
import { join } from "node:path";
import type { Locator, Page } from "@playwright/test";
import { DEMO_SECOND, PEOPLE } from "../../src/app/demo/names.js";
import { paramOf, to } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/decisions.js";
import { axeFinds } from "../support/axe-finds.js";
import { expect, test } from "../support/harness.js";
import { untilKept } from "../support/kept.js";
import { tooSmall } from "../support/small-text.js";
import { pressable, Walker } from "../support/walker.js";

const SHOTS = process.env["LEADLAMP_SHOTS"];
const VISIT = paramOf(DEMO_SECOND);
const WHO = PEOPLE.ottilie.name;

async function pictured(page: Page, name: string): Promise<void> {
  for (const width of SHOTS === undefined ? [] : [390, 360]) {
    await page.setViewportSize({ width, height: 844 });
    for (const colorScheme of ["dark", "light"] as const) {
      await page.emulateMedia({ colorScheme });
      await page.screenshot({ path: join(SHOTS ?? "", `${name}-${width}-${colorScheme}.png`) });
    }
  }
  await page.setViewportSize({ width: 390, height: 844 });
}

/** Nothing for axe to find, nothing wider than a narrow phone, nothing too small to read. */
async function looksRight(page: Page, name: string): Promise<void> {
  await pictured(page, name);
  expect.soft(await axeFinds(page), name).toEqual([]);
  await page.setViewportSize({ width: 360, height: 844 });
  const wider = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  await expect.soft.poll(wider, name).toBeLessThanOrEqual(0);
  await expect.soft.poll(() => tooSmall(page), name).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
}

const say = (where: Page | Locator, word: "yes-now" | "yes-by" | "no" | "tell-me-more"): Locator =>
  where.getByRole("group", { name: t("decisions.choose") }).getByRole("button", { name: t(`decisions.say.${word}`) });

/** A few strokes with the finger, as a name is written. */
async function write(page: Page): Promise<void> {
  const glass = page.getByRole("img", { name: t("decisions.sign.pad") });
  await glass.scrollIntoViewIfNeeded();
  const box = await glass.boundingBox();
  if (!box) throw new Error("there is no glass to sign on");
  const at = (x: number, y: number) => [box.x + box.width * x, box.y + box.height * y] as const;
  for (const stroke of [
    [at(0.1, 0.6), at(0.2, 0.2), at(0.3, 0.8), at(0.45, 0.4)],
    [at(0.5, 0.7), at(0.6, 0.5), at(0.8, 0.6)],
  ]) {
    const [first, ...rest] = stroke;
    if (first) await page.mouse.move(...first);
    await page.mouse.down();
    for (const point of rest) await page.mouse.move(...point, { steps: 6 });
    await page.mouse.up();
  }
}

test("four jobs four ways, the dangerous one refused after its warning, signed, one changed: all stands after a reload", async ({
  page,
  site,
}) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open(to("plan", { visit: VISIT, page: "decisions" }));
  // Nobody decides before somebody is named.
  await expect(say(page, "yes-now")).toBeDisabled();
  await page.getByLabel(t("decisions.by.name")).fill(WHO);
  await walker.press(t("decisions.by.done"));
  const pool = page.locator(".pool").first();
  const title = async () => (await pool.getByRole("heading").textContent()) ?? "";
  const dialog = page.getByRole("dialog");
  const keep = dialog.locator("footer").getByRole("button");

  const refused = await title();
  await say(page, "no").click();
  await expect(dialog.getByRole("heading", { name: t("decisions.warning.no") })).toBeVisible();
  const warning = (await dialog.locator(".row-title").first().textContent()) ?? "";
  await looksRight(page, "decisions-warning");
  await dialog.getByRole("button", { name: t("decisions.warning.read") }).click();
  await expect(keep).toBeDisabled();
  await dialog.getByLabel(t("decisions.because"), { exact: true }).fill("The car is to be broken for parts");
  await pictured(page, "decisions-refused");
  await untilKept(page, () => keep.click());
  await expect(pool.getByRole("heading")).not.toHaveText(refused);

  const taken = await title();
  await untilKept(page, () => say(page, "yes-now").click());
  await expect(pool.getByRole("heading")).not.toHaveText(taken);

  const later = await title();
  await say(page, "yes-by").click();
  const read = dialog.getByRole("button", { name: t("decisions.warning.read") });
  if (await read.isVisible()) await read.click();
  await dialog.getByLabel(t("decisions.by-odometer"), { exact: true }).fill("70 000");
  await untilKept(page, () => keep.click());
  await expect(pool.getByRole("heading")).not.toHaveText(later);

  const asked = await title();
  await say(page, "tell-me-more").click();
  await dialog.getByLabel(t("decisions.what")).fill("How long would it last as it is?");
  await untilKept(page, () => keep.click());
  await expect(pool.getByRole("heading")).not.toHaveText(asked);

  await walker.press(t("decisions.sign", { n: 4 }));
  await write(page);
  await expect(keep).toBeEnabled();
  await pictured(page, "decisions-sign");
  await untilKept(page, () => keep.click());
  await expect(page.locator("svg.signature .stroke")).toHaveCount(2);

  await page.getByRole("button", { name: new RegExp(`^${taken.replace(/[()]/g, ".")}`) }).click();
  await say(dialog, "tell-me-more").click();
  await dialog.getByLabel(t("decisions.what")).fill("What does it cost elsewhere?");
  await untilKept(page, () => keep.click());

  await page.reload();
  await expect(page.getByText(t("decisions.signed.part", { n: 3, of: 4 }))).toBeVisible();
  await expect(page.locator("svg.signature .stroke")).toHaveCount(2);
  await expect(page.getByText("How long would it last as it is?").first()).toBeVisible();
  await looksRight(page, "decisions-done");

  await walker.open(to("work", { visit: VISIT }));
  await expect(page.getByRole("heading", { name: t("owner.declined") })).toBeVisible();
  await pictured(page, "decisions-work");
  await pressable(page, new RegExp(`^${refused.replace(/[()]/g, ".")}`))
    .first()
    .click();
  await expect(page.getByText(t("owner.decides.out"))).toBeVisible();
  await expect(page.getByText(warning)).toBeVisible();
  await expect(page.getByText(/4 times in 5 under/).first()).toBeVisible();
  await pictured(page, "decisions-job");
});
