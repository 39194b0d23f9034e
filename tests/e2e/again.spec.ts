/** A maker's figure that comes while a visit is open: judged again on purpose, shown before and after, and taken back. */

import { DEMO_THIRD } from "../../src/app/demo/names.js";
import { paramOf } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/index.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

test("a maker's figure grades a finding of the open visit otherwise once it is judged again, and undo brings back", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.open("#/demo");
  await expect(page).toHaveURL(/#\/car\//);
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
});
