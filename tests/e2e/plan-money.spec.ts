/**
 * Money of a plan as a person meets it: rates, an estimate given, work on top, limits of taking apart, taking a car in.
 * On the demo visit that nobody has planned yet.
 */
import type { Page } from "@playwright/test";
import { DEMO_SECOND } from "../../src/app/demo/names.js";
import { paramOf, to } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/index.js";
import { t as estimate } from "../../src/app/texts/plan-estimate.js";
import { t as intake } from "../../src/app/texts/plan-intake.js";
import { t as scope } from "../../src/app/texts/plan-scope.js";
import { t as use } from "../../src/app/texts/plan-use.js";
import { axeFinds } from "../support/axe-finds.js";
import { expect, test } from "../support/harness.js";
import { untilKept } from "../support/kept.js";
import { tooSmall } from "../support/small-text.js";
import { pressable, Walker } from "../support/walker.js";

const VISIT = paramOf(DEMO_SECOND);
const planPage = (name: string): string => to("plan", { visit: VISIT, page: name });
const SHOTS = process.env["LEADLAMP_SHOTS"];

/** Nothing for axe to find, nothing wider than a narrow phone, nothing too small to read; a picture where one is wanted. */
async function looksRight(page: Page, name: string): Promise<void> {
  expect.soft(await axeFinds(page), name).toEqual([]);
  await page.setViewportSize({ width: 360, height: 800 });
  const wider = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  await expect.soft.poll(wider, name).toBeLessThanOrEqual(0);
  await expect.soft.poll(() => tooSmall(page), name).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  if (SHOTS === undefined) return;
  for (const colorScheme of ["dark", "light"] as const) {
    await page.emulateMedia({ colorScheme });
    await page.screenshot({ path: `${SHOTS}/${name}-${colorScheme}.png`, fullPage: true });
  }
}

/** Types three figures of an entry and goes on. */
async function three(page: Page, figures: readonly [string, string, string]): Promise<void> {
  const names = ["three.low", "three.likely", "three.high"] as const;
  for (const [i, name] of names.entries())
    await page.getByRole("textbox", { name: new RegExp(`^${estimate(name)}\\b`) }).fill(figures[i] ?? "");
  const [low, likely, high] = figures.map((figure) => figure.replace(/^0?(\d+)(\d\d)$/, "$1:$2"));
  await pressable(page, estimate("three.keep", { low: low ?? "", likely: likely ?? "", high: high ?? "" })).click();
}

test("an estimate given stays the first through a reload, and what nobody agreed to stands apart", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open(planPage("estimate"));
  const give = pressable(page, new RegExp(`^${estimate("estimate.give")}`));
  await expect(give).toBeEnabled({ timeout: 10_000 });
  // Nobody has priced the parts: the sums say that they are too low.
  await expect(page.getByText(estimate("estimate.aside"))).toBeVisible();
  const line = page.locator("button.row.discloses").first();
  await line.click();
  await expect(line).toHaveAttribute("aria-expanded", "true");
  await expect(page.locator(".disclosed:not([hidden])").first()).toContainText("an hour");
  await give.click();
  await expect(page.getByRole("heading", { name: estimate("forecast.title") })).toBeVisible();

  await walker.press(estimate("addition.add"));
  await page.getByLabel(estimate("addition.words")).fill("Hub as well");
  await walker.press(estimate("addition.onward"));
  await three(page, ["030", "100", "130"]);
  await three(page, ["0", "0", "0"]);
  await untilKept(page, () => walker.press(estimate("addition.keep-open")));
  await page.reload();
  await expect(page.getByRole("heading", { name: estimate("addition.open") })).toBeVisible();
  await expect(page.getByText(estimate("addition.by-nobody"))).toBeVisible();
  await expect(page.getByText(estimate("forecast.open"))).toBeVisible();
  await looksRight(page, "plan-estimate");
  await walker.press(estimate("undo.estimate.addition"));
  await expect(page.getByRole("heading", { name: estimate("addition.open") })).toHaveCount(0);
  await expect(page.getByText(estimate("estimate.given.says"))).toBeVisible();
});

test("what may be taken apart, how far, and what is left out survive a reload, and hard use is told on the list", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open(planPage("scope"));
  const first = page
    .getByRole("group", { name: scope("scope.apart") })
    .getByRole("checkbox")
    .last();
  await first.click();
  await expect(first).toBeChecked();
  await page.getByLabel(scope("scope.cap.hours")).fill("2:30");
  await page.getByLabel(scope("scope.left-out.what")).fill("Gearbox");
  await page.getByLabel(scope("scope.left-out.why")).fill("Not paid for");
  await untilKept(page, () => walker.press(scope("scope.left-out.add")));
  await page.reload();
  await expect(page.getByLabel(scope("scope.cap.hours"))).toHaveValue("2:30");
  await expect(page.getByText("Not paid for")).toBeVisible();
  await expect(page.getByRole("checkbox", { checked: true }).first()).toBeVisible();
  await looksRight(page, "plan-scope");

  await walker.open(to("work", { visit: VISIT }));
  const hard = page.getByRole("radio", { name: use("plan.use.hard") });
  await expect(page.getByText(use("plan.use.unsaid"))).toBeVisible();
  await untilKept(page, () => hard.click());
  await expect(page.getByText(use("plan.use.hard.says"))).toBeVisible();
  await page.reload();
  await expect(hard).toBeChecked();
});

test("taking the car in: short answers and own words count down what is unsaid, and stay", async ({ page, site }) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open(planPage("intake"));
  const unsaid = page.getByRole("status").filter({ hasText: /unsaid/ });
  const before = Number(/\d+/.exec((await unsaid.textContent()) ?? "")?.[0]);
  const keys = page.getByRole("region", { name: intake("intake.keys") });
  await keys.getByRole("radio", { name: intake("intake.keys.two") }).click();
  await expect(unsaid).toHaveText(intake("intake.unsaid", { n: before - 1 }));
  await keys.getByLabel(intake("intake.own.more")).fill("one bent");
  await keys.getByLabel(intake("intake.own.more")).blur();
  const who = page.getByRole("region", { name: intake("intake.decides") });
  await who.getByLabel(intake("intake.own"), { exact: true }).fill("The owner, evenings");
  await untilKept(page, () => who.getByLabel(intake("intake.own"), { exact: true }).blur());
  await expect(unsaid).toHaveText(intake("intake.unsaid", { n: before - 2 }));
  await page.reload();
  await expect(keys.getByRole("radio", { name: intake("intake.keys.two") })).toBeChecked();
  await expect(keys.getByLabel(intake("intake.own.more"))).toHaveValue("one bent");
  await looksRight(page, "plan-intake");
  await walker.press(intake("undo.plan.intake"));
  await expect(unsaid).toHaveText(intake("intake.unsaid", { n: before - 1 }));
  await expect(page.getByText(t("app.broke"))).toHaveCount(0);
});
