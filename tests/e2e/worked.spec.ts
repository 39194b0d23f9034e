/**
 * A value worked out, by touch: the hub's heat typed, its rise over the air shown with its formula behind a tap, on the
 * point and in the because. LEADLAMP_SHOTS=folder leaves pictures of both in each theme and width.
 */
import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { t } from "../../src/app/texts/index.js";
import { t as working } from "../../src/app/texts/working.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

const SHOTS = process.env["LEADLAMP_SHOTS"];

async function looked(page: Page, name: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
  for (const width of [390, 360, 320]) {
    await page.setViewportSize({ width, height: 844 });
    const wider = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wider, `${name} at ${width} px`).toBeLessThanOrEqual(0);
    for (const colorScheme of SHOTS === undefined ? [] : (["dark", "light"] as const)) {
      await page.emulateMedia({ colorScheme });
      await page.screenshot({ path: join(SHOTS ?? "", `${name}-${width}-${colorScheme}.png`), fullPage: true });
    }
  }
  await page.setViewportSize({ width: 390, height: 844 });
}

test("the rise of a hub over the air: shown with its error, its formula and this visit's numbers behind a tap", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  const fetched: string[] = [];
  page.on("request", (request) => fetched.push(request.url()));
  const isTrade = (url: string): boolean => /\/trade-work-/.test(url);
  await walker.newCar("Warm car");
  await walker.newVisit({ who: "technician" });
  const visit = walker.visit();
  // The work of the trade is not on the way to the first reply.
  expect(fetched.filter(isTrade)).toEqual([]);
  const type = async (place: string, point: string, text: string): Promise<void> => {
    await walker.open(`#/visit/${visit}/reading/w5-hot/${place}/${point}/reading`);
    await page.getByRole("textbox").first().focus();
    await page.keyboard.type(text);
    await page.keyboard.press("Enter");
    await expect(page.getByText(text).first()).toBeVisible();
  };
  await type("car", "whl.air", "20");
  await type("FL", "whl.heat", "72");
  // 72 − 20 = 52 K; the minor edge is 45 K.
  const line = page.getByRole("button", { name: /^Hub over air 52\.0 ± \d/ });
  await expect(line).toHaveAttribute("aria-expanded", "false");
  const box = await line.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(48);
  await line.click();
  await expect(line).toHaveAttribute("aria-expanded", "true");
  await expect(page.getByText(working("working.numbers"))).toBeVisible();
  await expect(page.getByText(/\(72\s°C; 20\s°C\) = 52\.0 ± \d/)).toBeVisible();
  await expect(page.getByText("T(part) − T(air)")).toBeVisible();
  await looked(page, "reading");
  await walker.open(`#/visit/${visit}/findings/whl.hot-hub/FL`);
  const step = page
    .getByRole("list", { name: t("finding.because") })
    .getByRole("button", { name: /^Hub over air: 52\.0/ });
  await step.click();
  await expect(step).toHaveAttribute("aria-expanded", "true");
  await expect(page.getByText("T(part) − T(air)")).toBeVisible();
  await looked(page, "finding");
  await walker.open(`#/visit/${visit}/round/w5-hot/FL/whl.heat`);
  await expect(page.getByRole("button", { name: /^Hub over air 52\.0/ })).toBeVisible();
  await looked(page, "point");
});
