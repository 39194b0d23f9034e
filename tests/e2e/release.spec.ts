/**
 * A car handed back, by touch: its complaint answered; refused while a wheel is dangerous, a gate shut, a nut loose, a
 * point not answered again and a second look missing; each put right where the page leads; handed back, and so after a
 * reload. Past its distance the car says what is overdue, and the next visit leads there. LEADLAMP_SHOTS=folder leaves pictures of the pages in each theme and width.
 */
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { t as looks } from "../../src/app/texts/looks.js";
import { t as loose } from "../../src/app/texts/plan-loose.js";
import { t as parts } from "../../src/app/texts/plan-parts.js";
import { t } from "../../src/app/texts/release.js";
import { axeFinds } from "../support/axe-finds.js";
import { expect, test } from "../support/harness.js";
import { pressable, Walker } from "../support/walker.js";

const SHOTS = process.env["LEADLAMP_SHOTS"];

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

test("refused for each reason, put right one by one, handed back; the complaint is answered on the way", async ({
  page,
  site,
}) => {
  test.setTimeout(240_000);
  const walker = new Walker(page, site.address);
  await walker.newCar("Little one");
  const car = new URL(page.url()).hash;
  await walker.newVisit({ name: "Ines", odometer: "61240", complaint: "It hums from behind" });
  const visit = walker.visit();
  const release = `#/visit/${visit}/plan/release`;
  const retain = `#/visit/${visit}/round/w1-cold/FR/whl.retain`;
  const row = (words: string | RegExp) => page.getByRole("main").getByText(words).first();

  await walker.open(retain);
  await walker.pressReply(walker.reply("Locking pin missing"));
  await walker.open(`#/visit/${visit}/plan/left-loose`);
  await walker.press(loose("loose.add"));
  await page.getByRole("radio", { name: loose("loose.what.loose"), exact: true }).click();
  await page.getByLabel(loose("loose.words")).fill("Wheel nut, front right");
  await page.getByRole("button", { name: t("app.keep"), exact: true }).click();
  await walker.open(`#/visit/${visit}/work/job.whl.secure/FR`);
  await page.getByRole("button", { name: parts("job-plan.finish"), exact: true }).click();
  await page.getByRole("button", { name: t("app.keep"), exact: true }).click();

  await walker.open(release);
  await expect(row(t("release.dangerous.done"))).toBeVisible();
  await expect(row(t("release.gate.tripped"))).toBeVisible();
  await expect(row(t("release.loose"))).toBeVisible();
  await expect(row(/^Done: answer again /)).toBeVisible();
  await expect(row(t("release.second-look", { at: t("release.at.wheels") }))).toBeVisible();
  await expect(row(t("release.complaint"))).toBeVisible();
  await expect(pressable(page, t("release.do"))).toHaveCount(0);
  await looked(page, "release-refused");

  // Who told it as done looks again: that is no second look.
  const look = async (who: string): Promise<void> => {
    await page
      .getByRole("button", { name: new RegExp(t("release.look")) })
      .first()
      .click();
    await page.getByRole("textbox", { name: t("release.look.who") }).fill(who);
    await page.getByRole("textbox", { name: t("release.look.words") }).fill("Pin in, nut tight");
    await page.getByRole("button", { name: t("app.keep"), exact: true }).click();
  };
  await look("ines");
  await expect(row(t("release.second-look.same"))).toBeVisible();
  await look("Jo");
  await expect(row(t("release.look.other", { who: "Jo" }))).toBeVisible();

  await row(/^Done: answer again /).click();
  await walker.pressReply(walker.reply("All there and locked"));
  await walker.open(`#/visit/${visit}/plan/left-loose`);
  await walker.press(loose("loose.clear"));
  await page.getByLabel(loose("loose.clear.words")).fill("Tightened to the book");
  await walker.press(loose("loose.clear.keep"));
  await walker.open(release);
  await row(t("release.gate.not cleared")).click();
  await walker.press(t("gate.unproven"));
  await page.getByLabel(t("gate.unproven.why")).fill("Tyres, fuel and throttle looked at by hand");
  await walker.press(t("gate.unproven.keep"));

  await walker.open(release);
  await row(t("release.complaint")).click();
  await page.getByRole("button", { name: t("heard.open") }).click();
  await page.getByRole("radio", { name: t("heard.word.not-heard") }).click();
  await page.getByRole("textbox", { name: t("heard.words.not-heard") }).fill("Driven twice round the town");
  await looked(page, "complaint-sheet");
  await walker.press(t("heard.keep"));
  await expect(row(/Not heard, seen or felt today: Driven twice/)).toBeVisible();

  await walker.open(release);
  await expect(row(t("release.clear"))).toBeVisible();
  await walker.press(t("release.do"));
  await walker.press(t("release.keep"));
  await expect(page.getByRole("heading", { name: t("release.says.released") })).toBeVisible();
  await page.reload();
  await expect(page.getByRole("heading", { name: t("release.says.released") })).toBeVisible();
  await expect(row(/61.290/)).toBeVisible();
  await looked(page, "release-done");
  await walker.open(`#/visit/${visit}/plan/note`);
  await expect(page.getByLabel(t("note.text"))).toHaveValue(/Handed back on/);
  await looked(page, "progress-note");

  // What was done is looked at again, and the car says so; the next visit leads there once the odometer is past it.
  await walker.open(car);
  await expect(row(/^At 61.290 km or by /)).toBeVisible();
  await looked(page, "look-ahead");
  await walker.press(t("car.new-visit"));
  const begins = page.getByRole("switch", { name: looks("due.begin") });
  await page.getByLabel(t("new-visit.odometer"), { exact: true }).fill("61280");
  await expect(begins).toBeHidden();
  await page.getByLabel(t("new-visit.odometer"), { exact: true }).fill("61400");
  await expect(begins).toBeChecked();
  await looked(page, "new-visit-due");
  await walker.open(car);
  await walker.newVisit({ name: "Ines", odometer: "61400" });
  const next = walker.visit();
  await walker.open(car);
  await expect(row(/^Overdue: at 61.290 km or by /)).toBeVisible();
  await walker.open(`#/visit/${next}`);
  await expect(page.getByRole("heading", { name: looks("looks.due") })).toBeVisible();
  await row(/^Overdue: at 61.290 km/).click();
  await looked(page, "look-due");
  await page.getByRole("dialog").getByText("Make the wheel fixing safe").click();
  await expect(page).toHaveURL(/\/round\/[^/]+\/FR\/whl\.retain$/);
  // Under the open point the round says that it is due, and it says so until it is answered.
  await expect(page.getByRole("heading", { name: looks("due.heading") })).toBeVisible();
  await expect(row(/^Overdue: at 61.290 km .*Not checked yet after the work of/)).toBeVisible();
  await looked(page, "round-due");
  await walker.open(`#/visit/${next}/where`);
  await expect(page.getByRole("heading", { name: looks("due.heading") })).toBeVisible();
  await looked(page, "where-due");
  await walker.open(`#/visit/${next}`);
  // The form chose it for the visit it opened.
  await page.getByText(looks("due.go-on"), { exact: true }).click();
  await expect(page).toHaveURL(/\/round\/w1-cold\/FR\/whl\.retain$/);
  await walker.pressReply(walker.replies().first());
  await walker.open(`#/visit/${next}`);
  // The nuts are checked where the car was handed back, and no point of this round asks for them.
  await expect(page.getByText(looks("due.asked"))).toBeVisible();
  await expect(page.getByText(/^Due again, and this round does not ask it: /)).toBeVisible();
});
