/** A viewing: the clock runs from its kept start, stands still while the car is away, and the screen tells nothing. */
import type { Page } from "@playwright/test";
import { t } from "../../src/app/texts/index.js";
import { t as viewing } from "../../src/app/texts/viewing.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

const BEGUN = Date.parse("2026-11-28T10:00:00Z");
/** The phone's clock so many minutes later; what runs in the page runs on. */
const minutesIn = (page: Page, minutes: number): Promise<void> => page.clock.setFixedTime(BEGUN + minutes * 60_000);
const line = (page: Page) => page.getByRole("button", { name: viewing("viewing.name") });

test("forty minutes run from the opening through a reload, stand still while the car is away, and name what is left", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await minutesIn(page, 0);
  await walker.newCar("Seen on a drive");
  await walker.newVisit({ purpose: "viewing", who: "buyer" });
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
  const visit = walker.visit();
  await walker.open(`#/visit/${visit}/round/w1-cold/FL/whl.retain`);
  await walker.pressReply(walker.replies().nth(2));
  await walker.open(`#/visit/${visit}/round/w1-cold/FR/whl.retain`);
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
