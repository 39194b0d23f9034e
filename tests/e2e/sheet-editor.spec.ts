/**
 * A check sheet made on a phone from nothing: a point, a rule with its fault, tried until it fires, proven by a case with
 * a near miss, and kept as an edition a visit can be opened with.
 */
import { t as rules } from "../../src/app/texts/sheet-rules.js";
import { t } from "../../src/app/texts/sheet-work.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

const TITLE = "Door seals";
const FIRST = "Seal of the door";
const FAULT = "A door seal lets water in";

test("a new sheet is made from nothing on a phone, tried, and fires its rule", async ({ page, site }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const walker = new Walker(page, site.address);
  await walker.open("#/sheets");
  await walker.press(t("sheet-work.new"));
  await page.getByLabel(t("new-sheet.title")).fill(TITLE);
  await page.getByLabel(t("new-sheet.about")).fill("Seals round the doors, looked at and felt.");
  await page.getByLabel(t("new-sheet.first")).fill(FIRST);
  await walker.press(t("new-sheet.begin"));
  await expect(page.getByRole("heading", { level: 1 })).toContainText(TITLE);

  await page.getByRole("link", { name: new RegExp(`^${t("sheet-list.rules")}`) }).click();
  await walker.press(t("sheet-list.add"));
  await page.getByLabel(t("sheet-name")).fill(FAULT);
  await walker.press(t("sheet-name.keep"));
  await expect(page.getByRole("heading", { level: 1 })).toContainText(FAULT);
  const sheet = /#\/sheets\/([^/]+)\//.exec(page.url())?.[1] ?? "";

  await walker.open(`#/sheets/${sheet}/try`);
  await page.getByRole("button", { name: FIRST }).click();
  await page.getByRole("group", { name: FIRST }).getByText(t("sheet-new.faulty")).click();
  await expect(page.getByText(rules("try.count", { n: 1 }))).toBeVisible();
  await expect(page.getByRole("heading", { name: FAULT })).toBeVisible();
  await walker.press(rules("try.make-case"));
  await expect(page).toHaveURL(/\/cases\//);
  await expect(page.getByText(rules("case.holds.alone"))).toBeVisible();
  const heading = page.getByRole("heading", { name: rules("case.near-miss"), exact: true });
  const near = page.locator("section", { has: heading });
  await near.getByRole("combobox").selectOption({ label: FIRST });
  await near.getByLabel(FIRST, { exact: true }).selectOption({ label: t("sheet-new.sound") });
  await expect(page.getByText(rules("case.holds"), { exact: true })).toBeVisible();
  await walker.open(`#/sheets/${sheet}/work`);
  await walker.press(t("sheet-edition.keep"));
  await expect(page).toHaveURL(new RegExp(`#/sheets/${sheet}$`));
  await walker.open("#/sheets");
  await expect(page.getByRole("link", { name: TITLE })).toBeVisible();
});
