/** Loaded once, then no server at all: every screen for the first time, and a whole look from visit to work list. */
import { type BrowserContext, expect, test } from "@playwright/test";
import { t } from "../../src/app/texts/index.js";
import { type Serving, serve } from "../../src/cli/serve.js";
import { type Offences, watchOffences } from "../support/offences.js";
import { findAddresses, notFound } from "../support/route-walk.js";
import { pressable, Walker } from "../support/walker.js";

const REPLIES = 25;

let serving: Serving;
let offences: Offences;

/** The app loaded once; from then on its server is gone. */
async function loadedOnce(context: BrowserContext): Promise<Walker> {
  offences = await watchOffences(context, new URL(serving.address).origin);
  const walker = new Walker(await context.newPage(), serving.address);
  await walker.open();
  await walker.wholeAppKept();
  await serving.close();
  await walker.page.reload();
  await walker.stands();
  return walker;
}

test.beforeEach(async () => {
  serving = await serve({ port: 0, under: "/any/folder/" });
});
test.afterEach(() => {
  expect(offences.seen).toEqual([]);
});

test("every screen of the route table opens for the first time without a network", async ({ context }) => {
  test.setTimeout(400_000);
  const walker = await loadedOnce(context);
  await walker.open("#/demo");
  await expect(walker.page).toHaveURL(/#\/car\//);
  const found = await findAddresses(walker);
  expect(notFound(found)).toEqual([]);
});

test(`a visit without a network: ${REPLIES} replies, a finding with its because, a caution, a job in order`, async ({
  context,
}) => {
  test.setTimeout(300_000);
  const walker = await loadedOnce(context);
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
});
