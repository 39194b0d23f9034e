/**
 * The August case, by touch: a chipped gear that can't be had without its mate, from stores that take ten working days
 * and shut all August. Worked by hand on the calendar of 2027, where Wed 28 July is the day the car comes: ordered that
 * day the parts lose August and come on Fri 10 September; ordered on Fri 16 July they come on Fri 30 July.
 * LEADLAMP_SHOTS=folder leaves pictures of the screens in each theme and width.
 */
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { demoAddresses } from "../../src/app/demo/addresses.js";
import { dayWords } from "../../src/app/texts/days.js";
import { t as house } from "../../src/app/texts/house.js";
import { t as loose } from "../../src/app/texts/plan-loose.js";
import { t } from "../../src/app/texts/plan-parts.js";
import { axeFinds } from "../support/axe-finds.js";
import { expect, test } from "../support/harness.js";
import { pressable, Walker } from "../support/walker.js";

const SHOTS = process.env["LEADLAMP_SHOTS"];
const MAIN = "Third gear, mainshaft";
const LAY = "Third gear, layshaft";
const STORES = "Gear stores";

/** Noon, wherever the phone is. */
const noon = (day: string): number => new Date(`${day}T12:00:00`).getTime();

async function looked(page: Page, name: string): Promise<void> {
  expect.soft(await axeFinds(page), name).toEqual([]);
  for (const width of [390, 360]) {
    await page.setViewportSize({ width, height: 844 });
    const wider = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect.soft(wider, `${name} at ${width} px`).toBeLessThanOrEqual(0);
    for (const colorScheme of SHOTS === undefined ? [] : (["dark", "light"] as const)) {
      await page.emulateMedia({ colorScheme });
      await page.screenshot({ path: join(SHOTS ?? "", `${name}-${width}-${colorScheme}.png`), fullPage: true });
    }
  }
  await page.setViewportSize({ width: 390, height: 844 });
}

/** The workshop is open from Monday to Friday, 8 to 17; the stores too, but for August. */
async function sayHouse(walker: Walker): Promise<void> {
  const { page } = walker;
  await walker.open("#/settings");
  await walker.press(house("house.days"));
  for (const day of ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday"])
    await page.getByLabel(day, { exact: true }).fill("8:00-17:00");
  await page.getByLabel(house("house.people")).fill("1");
  await page.getByLabel(house("house.lifts")).fill("1");
  await page.getByRole("button", { name: house("house.keep"), exact: true }).click();
  await page.getByRole("button", { name: house("house.suppliers") }).click();
  await page.getByRole("button", { name: house("house.supplier.add") }).click();
  await page.getByLabel(house("house.supplier.name"), { exact: true }).fill(STORES);
  await page.getByLabel(house("house.supplier.lead")).fill("10");
  await page.getByRole("button", { name: house("house.shut.add") }).click();
  await page.getByLabel(house("house.shut.from")).fill("2027-08-01");
  await page.getByLabel(house("house.shut.to")).fill("2027-08-31");
  await page.getByRole("button", { name: house("house.keep"), exact: true }).click();
  await expect(page.getByText(STORES)).toBeVisible();
}

/** A finding off the list whose job is six hours in one's own words. */
async function chippedGear(walker: Walker, visit: string): Promise<void> {
  const { page } = walker;
  await walker.open(`#/visit/${visit}/off-list/car/new`);
  await page.getByLabel(t("off-list.words")).fill("Third gear chipped");
  await page.getByRole("radio", { name: t("mark.major") }).click();
  await page.getByLabel(t("off-list.reason")).fill("A tooth is in the oil");
  await page.getByLabel(t("off-list.job")).fill("Replace the gear pair");
  await page.getByLabel(t("off-list.hours")).fill("6");
  await walker.press(t("off-list.keep"));
  await expect(page.getByRole("heading", { name: "Third gear chipped" })).toBeVisible();
}

async function addPart(walker: Walker, name: string, pair?: string): Promise<void> {
  const { page } = walker;
  await page.getByRole("button", { name: t("all-parts.add") }).click();
  await page.getByLabel(t("one-part.name")).fill(name);
  if (pair !== undefined) await page.getByLabel(t("all-parts.add.pair")).selectOption({ label: pair });
  await page
    .getByRole("dialog")
    .getByRole("button", { name: t("app.keep"), exact: true })
    .click();
  await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
  await page.getByRole("button", { name: new RegExp(`^${t("one-part.from")}`) }).click();
  await page.getByRole("dialog").getByLabel(t("one-part.from")).selectOption({ label: STORES });
  await page
    .getByRole("dialog")
    .getByRole("button", { name: t("app.keep"), exact: true })
    .click();
  await expect(page.getByText(STORES).first()).toBeVisible();
}

test("a gear that can't be had alone from stores shut in August: told, ordered in time, ready six weeks sooner", async ({
  page,
  site,
}) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await page.clock.setFixedTime(noon("2027-07-28"));
  const walker = new Walker(page, site.address);
  await sayHouse(walker);
  await walker.newCar("Gear car");
  await walker.newVisit({ who: "technician" });
  const visit = walker.visit();
  await chippedGear(walker, visit);

  await walker.open(`#/visit/${visit}/work`);
  await walker.press(/Replace the gear pair/);
  await addPart(walker, MAIN);
  await page.goBack();
  await addPart(walker, LAY, MAIN);
  await expect(page.getByText(t("one-part.pair.refused", { counterpart: MAIN }))).toBeVisible();
  await expect(page.getByText(new RegExp(`Ordered today it comes ${dayWords("2027-09-10")}`))).toBeVisible();
  await looked(page, "part");

  await walker.open(`#/visit/${visit}/plan/dates`);
  await page.getByLabel(t("dates.there")).fill("2027-07-28");
  await expect(page.getByRole("heading", { name: t("dates.ready", { date: dayWords("2027-09-10") }) })).toBeVisible();
  await expect(page.getByText(/holds it up$/).first()).toBeVisible();
  await expect(page.getByText(/Gear stores is shut 1 Aug – 31 Aug 2027/).first()).toBeVisible();
  await expect(page.getByText(new RegExp(`Order by ${dayWords("2027-07-28")}`)).first()).toBeVisible();
  await looked(page, "dates");

  await walker.open(`#/visit/${visit}/plan/parts`);
  await expect(page.getByText(new RegExp(t("all-parts.alone", { counterpart: MAIN })))).toBeVisible();
  await looked(page, "parts");

  await pressable(page, new RegExp(`^${LAY}`)).click();
  await page.getByRole("button", { name: t("part-do.order"), exact: true }).click();
  await page.getByLabel(t("part-do.order.on")).fill("2027-07-16");
  await page.getByRole("button", { name: t("part-do.order.keep") }).click();
  await expect(page.getByText(new RegExp(`Expected ${dayWords("2027-07-30")}`))).toBeVisible();
  await looked(page, "ordered");

  await walker.open(`#/visit/${visit}/plan/dates`);
  await expect(page.getByRole("heading", { name: t("dates.ready", { date: dayWords("2027-07-30") }) })).toBeVisible();
  // The order was one act: undone, both parts are to be ordered again.
  await page
    .getByRole("button", { name: new RegExp(t("plan-undo")) })
    .last()
    .click();
  await expect(page.getByRole("heading", { name: t("dates.ready", { date: dayWords("2027-09-10") }) })).toBeVisible();
});

test("what was left drained is told on the visit's page until somebody who looked clears it", async ({
  page,
  site,
}) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  const walker = new Walker(page, site.address);
  await walker.newCar("Drained car");
  await walker.newVisit({ who: "technician", name: "Ines" });
  const visit = walker.visit();
  await walker.open(`#/visit/${visit}/plan/left-loose`);
  await walker.press(loose("loose.add"));
  await page.getByRole("radio", { name: loose("loose.what.drained") }).click();
  await page.getByLabel(loose("loose.words")).fill("Gearbox oil");
  await page
    .getByRole("dialog")
    .getByRole("button", { name: t("app.keep"), exact: true })
    .click();
  await expect(page.getByRole("heading", { name: loose("loose.open") })).toBeVisible();
  await looked(page, "loose");

  await walker.open(`#/visit/${visit}`);
  await expect(page.getByText(loose("loose.before", { n: 1 }))).toBeVisible();
  await pressable(page, loose("loose.title")).first().click();
  await pressable(page, /^Gearbox oil/).click();
  await page.getByLabel(loose("loose.clear.who")).fill("Ines");
  await page.getByLabel(loose("loose.clear.words")).fill("Filled to the level, plug tight");
  await page.getByRole("button", { name: loose("loose.clear.keep") }).click();
  await expect(page.getByText(/Filled to the level, plug tight \(Ines\)/)).toBeVisible();
  await walker.open(`#/visit/${visit}`);
  await expect(page.getByText(loose("loose.before", { n: 1 }))).toHaveCount(0);
});

test("a part of a job: come, looked at and sent back; the job begun, its time said by hand", async ({ page, site }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  const part = demoAddresses().find(({ name }) => name === "part");
  await walker.open(part?.href);
  await page.getByRole("button", { name: t("part-do.arrive") }).click();
  await page
    .getByRole("dialog")
    .getByRole("button", { name: t("app.keep"), exact: true })
    .click();
  await page.getByRole("button", { name: t("part-do.check") }).click();
  const keep = page.getByRole("dialog").getByRole("button", { name: t("app.keep"), exact: true });
  const answer = (check: "right" | "count" | "condition", word: string) =>
    page.getByRole("radiogroup", { name: t(`part-check.${check}`) }).getByRole("radio", { name: word, exact: true });
  await answer("right", t("app.no")).click();
  // Nothing is taken to be right because nobody looked.
  await expect(keep).toBeDisabled();
  await answer("count", t("app.yes")).click();
  await answer("condition", t("app.yes")).click();
  await looked(page, "check");
  await keep.click();
  await expect(page.getByText(t("part-failed"))).toBeVisible();
  await looked(page, "failed");
  await page.reload();
  await page.getByRole("button", { name: t("part-do.send-back") }).click();
  await page
    .getByRole("dialog")
    .getByRole("button", { name: t("app.keep"), exact: true })
    .click();
  await expect(page.getByRole("button", { name: t("part-do.order.new") })).toBeVisible();

  const job = demoAddresses().find(({ name }) => name === "job");
  await walker.open(job?.href);
  await page.getByRole("button", { name: new RegExp(t("job-plan.time.change")) }).click();
  const hours = page.getByRole("dialog").getByRole("textbox");
  for (const [i, text] of ["1:00", "1:30", "2:30"].entries()) await hours.nth(i).fill(text);
  await page.getByRole("button", { name: t("one-part.keep", { low: "1:00", likely: "1:30", high: "2:30" }) }).click();
  await expect(page.getByText("1.0–2.5 h").first()).toBeVisible();
  await page.getByRole("button", { name: t("job-plan.begin"), exact: true }).click();
  await page
    .getByRole("dialog")
    .getByRole("button", { name: t("app.keep"), exact: true })
    .click();
  await expect(page.getByRole("button", { name: t("job-plan.finish"), exact: true })).toBeVisible();
  await looked(page, "job");
});
