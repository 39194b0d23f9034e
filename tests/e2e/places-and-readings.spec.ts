/** A car's own places by touch, and by keyboard from a word to a point and once round the car with the thermometer. */
import { t as car } from "../../src/app/texts/car.js";
import { t } from "../../src/app/texts/index.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

test("a link this car has more is added at both wheels, renamed, taken away and brought back", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.newCar("Five-link car");
  await walker.press(t("car.places"));
  await walker.press(car("places.add"));
  const sheet = page.getByRole("dialog");
  await sheet.getByLabel(car("places.name"), { exact: true }).fill("fifth link");
  await sheet.getByRole("button", { name: car("places.add-keep") }).click();
  await page.getByLabel(car("places.find")).fill("fifth");
  const left = page.getByRole("button", { name: /^Fifth link, front left/ });
  await expect(page.getByRole("button", { name: /^Fifth link, front right/ })).toBeVisible();
  await left.click();
  await sheet.getByLabel(car("places.name"), { exact: true }).fill("fifth link, odd one");
  await sheet.getByRole("button", { name: car("places.rename") }).click();
  const odd = page.getByRole("button", { name: /^Fifth link, odd one/ });
  await odd.click();
  await sheet.getByRole("button", { name: car("places.take-away") }).click();
  await expect(odd).toContainText(car("places.gone"));
  await page.reload();
  await page.getByLabel(car("places.find")).fill("odd");
  await expect(odd).toContainText(car("places.gone"));
  await odd.click();
  await sheet.getByRole("button", { name: car("places.bring-back") }).click();
  await expect(odd).toContainText(car("places.own"));
});

test("by keyboard: a word finds the hub's heat, and one round of the thermometer asks wheel after wheel", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.newCar("Warm car");
  await walker.newVisit({ who: "technician" });
  await walker.open(`#/visit/${walker.visit()}/find`);
  await page.getByLabel(t("find.label"), { exact: true }).focus();
  await page.keyboard.type("hub temp front left");
  const found = page.getByRole("link", { name: /^Front left/ }).first();
  await expect(found).toBeVisible();
  await found.focus();
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(/\/w5-hot\/FL\/whl\.heat$/);
  const enter = page.getByRole("link", { name: new RegExp(`^${t("round.reading")}`) });
  await enter.focus();
  await page.keyboard.press("Enter");
  for (const wheel of ["FL", "FR"]) {
    await expect(page).toHaveURL(new RegExp(`/w5-hot/${wheel}/whl\\.heat/reading$`));
    await page.getByRole("textbox").first().focus();
    await page.keyboard.type("41");
    await page.keyboard.press("Enter");
    const next = page.getByRole("button", { name: /^Next: / });
    await expect(next).toBeVisible();
    await next.focus();
    await page.keyboard.press("Enter");
  }
  await expect(page).toHaveURL(/\/w5-hot\/RL\/whl\.heat\/reading$/);
  await expect(page.getByText(t("reading.round", { done: 2, all: 4 }))).toBeVisible();
});
