/**
 * The work list that plans, in the demo: a budget by step and by hand parts the list, outlives a reload and is taken
 * back; in the order of doing what is opened together stands in one bracket.
 */
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

test("a budget by step and typed parts the list, outlives a reload, leads to the next better plan, and is taken back", async ({
  page,
  site,
}) => {
  test.setTimeout(120_000);
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await walker.open("#/visit/demo-third/plan/budget");
  const box = page.getByLabel("May be spent");
  await box.fill("2 500");
  await box.press("Enter");
  await expect(page.getByText("€2500.00 reaches to here")).toBeVisible();
  await expect(page.getByRole("heading", { name: "Left for later" })).toBeVisible();
  await expect(page.getByText("No other choice does more for this money.")).toBeVisible();

  await page.getByRole("button", { name: /more$/ }).last().click();
  await expect(box).not.toHaveValue("2500");
  const after = await box.inputValue();
  await page.reload();
  await expect(box).toHaveValue(after);

  await box.fill("abc");
  await expect(page.getByText(/Write a sum, like/)).toBeVisible();
  await box.fill("9999999");
  await box.press("Enter");
  await expect(page.getByText("There is no better plan: everything worth doing is in.")).toBeVisible();
  await expect(page.getByRole("heading", { name: "Left for later" })).toHaveCount(0);

  await page.getByRole("button", { name: "No budget: plan everything" }).click();
  await expect(box).toHaveValue("");
  await walker.open("#/visit/demo-third/work");
  await expect(page.getByText(/reaches to here/)).toHaveCount(0);
  await page.getByText("As it is done").click();
  await expect(page.getByText(/opened and put back once/).first()).toBeVisible();
});
