/**
 * A maker's figure that comes while a visit is open: judged again on purpose, shown before and after, and taken back.
 * Then a figure that is odd: asked about, kept on purpose, looked at by a second person, and taken out of the book again.
 */

import { DEMO_CAR, DEMO_THIRD } from "../../src/app/demo/names.js";
import { paramOf } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/index.js";
import { t as book } from "../../src/app/texts/limits.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

test("a maker's figure grades a finding of the open visit otherwise once it is judged again, and undo brings back", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  const findings = `#/visit/${paramOf(DEMO_THIRD)}/findings`;
  const dangerous = page.getByRole("button", { name: new RegExp(t("mark.dangerous")) });
  await walker.open(findings);
  const before = await dangerous.textContent();
  await walker.keepFigure("lim.float-taper", "0.1", "dangerous");
  await walker.open(findings);
  await expect(dangerous).toHaveText(before ?? "");

  await walker.open(`#/visit/${paramOf(DEMO_THIRD)}`);
  await walker.press(t("again.title"));
  await expect(page.getByRole("heading", { name: t("again.title") })).toBeVisible();
  const limit = page
    .getByRole("region")
    .or(page.locator("section"))
    .filter({ hasText: t("again.limits") });
  await expect(limit.first()).toContainText("0.1");
  const changed = page.locator("section", { hasText: t("again.changed") }).last();
  const grades = t("again.now", { before: t("grade.major"), after: t("grade.dangerous") });
  await expect(changed).toContainText(new RegExp(grades.replace(" before", ".* before"), "i"));
  await walker.press(t("again.keep"));
  await expect(page.getByRole("heading", { name: t("again.kept") })).toBeVisible();
  await expect(page.getByText(t("again.same"), { exact: true })).toBeVisible();
  await walker.open(findings);
  await expect(dangerous).not.toHaveText(before ?? "");

  await walker.open(`#/visit/${paramOf(DEMO_THIRD)}/history`);
  await expect(page.getByText(t("history.visit.judged-again"), { exact: true })).toBeVisible();
  await walker.press(t("history.undo", { what: t("history.visit.judged-again") }));
  await walker.open(findings);
  await expect(dangerous).toHaveText(before ?? "");

  const sure = { why: "a later edition", sure: true };
  await walker.keepFigure("lim.float-taper", "0.008", "dangerous", sure);
  await expect(page.getByText(book("told.why", { why: sure.why }))).toBeVisible();
  await walker.press(book("look.title"));
  await page.getByLabel(book("look.who")).fill("Second pair of eyes");
  await walker.press(book("look.keep"));
  await expect(page.getByText(/Second pair of eyes/)).toBeVisible();
  await expect(page.getByText(book("look.wanted"))).toBeHidden();
  await walker.press(book("out.title"));
  await page.getByLabel(book("out.why")).fill("inches read for millimetres");
  await page
    .getByRole("dialog")
    .getByRole("button", { name: book("out.keep"), exact: true })
    .click();
  await page.getByText(new RegExp(book("told.before"))).click();
  await expect(page.getByText(book("told.why", { why: "inches read for millimetres" }))).toBeVisible();
  await expect(page.getByText(book("told.why", { why: sure.why }))).toBeVisible();

  await walker.press(new RegExp(book("book.closed")));
  await expect(page.getByText(book("book.closed.says"))).toBeVisible();
  await walker.open(`#/car/${paramOf(DEMO_CAR)}/limits`);
  await page.getByLabel(book("book.find")).fill("end flo");
  await expect(page.getByText(/^\d+ limits?/)).toBeVisible();
});
