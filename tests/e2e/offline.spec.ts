/** Loaded once, then no server at all: a whole look from visit to work list. Every screen so: screens.spec.ts. */
import { t } from "../../src/app/texts/index.js";
import { expect, bare as test } from "../support/harness.js";
import { loadedOnce } from "../support/loaded-once.js";
import { pressable } from "../support/walker.js";

const REPLIES = 25;

test(`a visit without a network: ${REPLIES} replies, a finding with its because, a caution, a job in order`, async ({
  context,
}) => {
  test.setTimeout(300_000);
  const { walker, offences } = await loadedOnce(context);
  const { page } = walker;
  await walker.newCar("Far from anywhere");
  await walker.newVisit({ odometer: "48210", complaint: "It hums from behind", name: "T. Ester" });
  for (let pressed = 0; pressed < REPLIES; pressed++) {
    await walker.toNextReplies();
    // The last word of a point is mostly the worst one.
    await walker.pressReply(walker.replies().last());
    await walker.goOn();
  }
  const visit = walker.visit();

  await walker.open(`#/visit/${visit}/findings`);
  const finding = page.locator(`a[href^="#/visit/${visit}/findings/"]`).first();
  await finding.click();
  await walker.stands();
  await expect(page.getByText(t("finding.so"), { exact: true }).first()).toBeVisible();

  await walker.open(`#/visit/${visit}/cautions`);
  await expect(page.getByText(t("cautions.none"))).toBeHidden();
  await expect(pressable(page, t("cautions.tell"))).toBeVisible();

  await walker.open(`#/visit/${visit}/work`);
  await page.locator(`a[href^="#/visit/${visit}/work/"]`).first().click();
  await walker.stands();
  await expect(page.getByText(t("work.why"), { exact: true }).first()).toBeVisible();

  // All of it stands after the page was loaded again.
  await walker.open(`#/visit/${visit}`);
  await page.reload();
  await walker.stands();
  await expect(page.getByText("It hums from behind")).toBeVisible();
  expect(offences.seen).toEqual([]);
});
