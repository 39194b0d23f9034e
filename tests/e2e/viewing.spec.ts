/** A viewing: the clock runs from its kept start, stands still while the car is away, and the screen tells nothing. */
import type { Page } from "@playwright/test";
import { t } from "../../src/app/texts/index.js";
import { t as viewing } from "../../src/app/texts/viewing.js";
import { t as whole } from "../../src/app/texts/viewing-page.js";
import { expect, test } from "../support/harness.js";
import { untilKept } from "../support/kept.js";
import { countTaps } from "../support/taps.js";
import { pressable, Walker } from "../support/walker.js";

const BEGUN = Date.parse("2026-11-28T10:00:00Z");
/** The phone's clock so many minutes later; what runs in the page runs on. */
const minutesIn = (page: Page, minutes: number): Promise<void> => page.clock.setFixedTime(BEGUN + minutes * 60_000);
const line = (page: Page) => page.getByRole("button", { name: viewing("viewing.name") });
/** Stands before the car: the time for looking begins. */
async function arrive(walker: Walker): Promise<void> {
  await walker.press(whole("viewing-page.start", { n: 40 }));
  await expect(walker.page).toHaveURL(/\/round\//);
}

test("forty minutes run from the opening through a reload, stand still while the car is away, and name what is left", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await minutesIn(page, 0);
  await walker.newCar("Seen on a drive");
  await walker.newVisit({ purpose: "viewing", who: "buyer" });
  await arrive(walker);
  await expect(line(page)).toContainText(viewing("viewing.left", { n: 40 }));

  await minutesIn(page, 31);
  await page.reload();
  await expect(line(page)).toContainText(viewing("viewing.left", { n: 9 }));
  await expect(page.getByRole("status").filter({ hasText: viewing("viewing.said", { n: 10 }) })).toHaveCount(1);

  await line(page).click();
  await walker.press(viewing("viewing.pause"));
  await minutesIn(page, 90);
  await walker.press(viewing("viewing.resume"));
  await walker.press(t("app.close"));
  await expect(line(page)).toContainText(viewing("viewing.left", { n: 9 }));

  await minutesIn(page, 99);
  await expect(line(page)).toContainText(viewing("viewing.over"), { timeout: 10_000 });
  const still = page.getByRole("region", { name: viewing("viewing.still") });
  await expect(still.or(page.getByText(viewing("viewing.still"))).first()).toBeVisible();
  // Nothing is closed: the open point still takes its reply.
  await expect(walker.replies().first()).toBeEnabled();
});

test("a danger is told neither on the round nor on the list of findings before it is uncovered", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await minutesIn(page, 0);
  await walker.newCar("Quiet car");
  await walker.newVisit({ purpose: "viewing", who: "buyer" });
  await arrive(walker);
  const visit = walker.visit();
  await walker.open(`#/visit/${visit}/round/w1-cold/FL/whl.retain`);
  const letGo = await walker.holdWriting();
  await walker.pressReply(walker.replies().nth(2), { kept: false });
  await walker.open(`#/visit/${visit}/round/w1-cold/FR/whl.retain`);
  await untilKept(page, letGo, "reply");
  // A reply that was kept late carries nobody off the point that was opened meanwhile: the page's own clock is past it.
  await page.evaluate(() => new Promise<void>((past) => setTimeout(past, 600)));
  await expect(page).toHaveURL(/\/FR\/whl\.retain$/);
  const said = page.getByText(new RegExp(`\\b(${t("mark.dangerous")}|${t("mark.major")})\\b`, "i"));
  await expect(said).toHaveCount(0);

  await walker.open(`#/visit/${visit}/findings`);
  await expect(page.getByText(viewing("viewing.covered"), { exact: true })).toBeVisible();
  await expect(said).toHaveCount(0);
  await walker.press(viewing("viewing.uncover"));
  await expect(said.first()).toBeVisible();

  // Back on the round it is covered again; switched off it stays open.
  await walker.open(`#/visit/${visit}/round/w1-cold/FR/whl.retain`);
  await line(page).click();
  await page.getByRole("switch", { name: viewing("viewing.quiet") }).click();
  await walker.press(t("app.close"));
  await walker.open(`#/visit/${visit}/findings`);
  await expect(said.first()).toBeVisible();
});

test.describe("without a signal", () => {
  test.use({ keepsApp: true });
  test("from the advert to the table: claims, pictures, what stands before a price, figures, papers asked to go", async ({
    page,
    context,
    site,
  }) => {
    const taps = await countTaps(page);
    const walker = new Walker(page, site.address);
    await minutesIn(page, 0);
    await walker.newCar("Advertised in the north");
    await walker.wholeAppKept();
    await context.setOffline(true);

    // At home: the sheets of a viewing are chosen already; the advert is pasted.
    await walker.press(t("car.new-visit"));
    await page.getByRole("radio", { name: t("purpose.viewing"), exact: true }).click();
    await expect(page.getByRole("radio", { name: t("who.buyer") })).toBeChecked();
    await walker.press(t("new-visit.open"));
    await expect(page.getByRole("heading", { level: 1, name: whole("viewing-page.title") })).toBeVisible();
    await page.getByLabel(whole("claims.add")).fill("• Tyres two years old\n• Never seen salt\n\n");
    await walker.press(whole("claims.keep", { n: 2 }));
    await expect(page.getByText("“Never seen salt”")).toBeVisible();
    const prepared = taps();

    // There an hour later: the time begins now, not when the advert was read.
    await minutesIn(page, 60);
    await arrive(walker);
    await expect(line(page)).toContainText(viewing("viewing.left", { n: 40 }));
    let replied = 0;
    for (; replied < 8; replied++) {
      await walker.toNextReplies();
      await walker.wentOn(await walker.firstReply());
    }
    await minutesIn(page, 70);
    await line(page).click();
    await walker.press(viewing("viewing.page"));
    await walker.press("“Never seen salt”");
    await page.getByRole("radio", { name: whole("claim.word.otherwise") }).click();
    await page.getByLabel(whole("claim.words")).fill("White bloom in the seams");
    await pressable(page.getByRole("dialog"), whole("claim.keep")).click();
    await expect(page.getByRole("dialog")).toBeHidden();

    // What the seller might read along is covered; the figures are for where nobody does.
    await walker.press(viewing("viewing.uncover"));
    await page.getByLabel(whole("papers.ask")).selectOption("7");
    await expect(page.getByLabel(whole("papers.ask"))).toHaveValue("as-set");
    await walker.press(whole("viewing-page.figures"));
    await expect(page.getByText("The car or a paper says otherwise: White bloom in the seams.")).toBeVisible();
    await expect(page.getByText("“Tyres two years old” (advert). Not asked for: not known.")).toBeVisible();
    await expect(page.getByRole("heading", { name: "Reasons to walk away" })).toBeVisible();
    console.log(`a viewing: ${prepared} presses at home, ${taps() - prepared} there, ${replied} of them replies`);
    expect(prepared).toBeLessThanOrEqual(8);
    expect(taps() - prepared - replied).toBeLessThanOrEqual(18);
  });
});
