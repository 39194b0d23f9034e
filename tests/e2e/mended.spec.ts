/**
 * What people tripped over once, in a browser: the chosen light, an unusual reading, a kept reading touched, the last
 * reply taken back, arrows on forms.
 */
import { t } from "../../src/app/texts/index.js";
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

for (const [phone, chosen, scheme] of [
  ["dark", "daylight", "light"],
  ["light", "under-the-car", "dark"],
] as const) {
  test(`a phone that is ${phone}: ${chosen} is chosen and holds`, async ({ page, site }) => {
    await page.emulateMedia({ colorScheme: phone });
    const walker = new Walker(page, site.address);
    await walker.open("#/settings");
    const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    const before = await ground();
    await page.getByRole("radio", { name: t(`settings.theme.${chosen}`) }).click();
    await expect(page.locator("html")).toHaveAttribute("data-theme", chosen);
    await expect.poll(ground).not.toBe(before);
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe(scheme);
    await page.reload();
    await expect(page.locator("html")).toHaveAttribute("data-theme", chosen);
  });
}

test("an unusual reading is kept by a key elsewhere, and a kept one is only changed on purpose", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.newCar("Reading car");
  await walker.newVisit();
  const visit = walker.visit();
  await walker.open(`#/visit/${visit}/reading/w8-off/RL/whl.float/play`);
  const entry = page.getByRole("textbox");
  await entry.fill("22");
  const keep = page.getByRole("button", { name: t("reading.keep", { value: "22 mm" }) });
  const box = await keep.boundingBox();
  if (!box) throw new Error("there is no key that keeps");
  const middle = [box.x + box.width / 2, box.y + box.height / 2] as const;
  await page.mouse.click(...middle);
  const yes = page.getByRole("button", { name: t("reading.odd.keep", { value: "22 mm" }) });
  await expect(yes).toBeInViewport({ ratio: 1 });
  await expect(page.getByRole("button", { name: t("reading.odd.again") })).toBeVisible();
  await page.mouse.click(...middle);
  await expect(yes).toBeHidden();
  await expect(entry).toHaveValue("22");
  const first = page.getByRole("button", { name: t("reading.one", { n: 1, value: "22 mm" }) });
  await expect(first).toHaveCount(0);
  await entry.press("Enter");
  await entry.press("Enter");
  await expect(first).toHaveCount(0);
  await yes.click();
  await first.click();
  await expect(page.getByRole("dialog", { name: t("reading.one", { n: 1, value: "22 mm" }) })).toBeVisible();
  await page.getByRole("button", { name: t("app.cancel") }).click();
  await expect(first).toBeVisible();
  await first.click();
  await page.getByRole("button", { name: t("reading.one.change"), exact: true }).click();
  await entry.fill("0.22");
  await expect(page.getByText(t("reading.replaces", { n: 1, was: "22 mm" }))).toBeVisible();
  await page.getByRole("button", { name: t("reading.keep", { value: "0.22 mm" }) }).click();
  const changed = page.getByRole("button", { name: t("reading.one", { n: 1, value: "0.22 mm" }) });
  await expect(changed).toContainText(t("reading.was", { n: 1, was: "22 mm" }));
  await changed.click();
  await page.getByRole("button", { name: t("reading.one.rub-out") }).click();
  await expect(changed).toHaveCount(0);
});

test("the last reply can be taken back above the thumb zone, and the place's title is at the head again", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.newCar("Undo car");
  await walker.newVisit();
  await walker.toNextReplies();
  const { hash } = await walker.firstReply();
  await walker.goOn();
  const undo = page.getByRole("button", { name: t("round.undo") });
  await expect(undo).toBeInViewport({ ratio: 1 });
  const [row, zone] = [await undo.boundingBox(), await page.locator(".thumbs").boundingBox()];
  expect((row?.y ?? 0) + (row?.height ?? 0)).toBeLessThanOrEqual((zone?.y ?? 0) + 1);
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  await undo.click();
  await expect.poll(() => new URL(page.url()).hash).toBe(hash);
  await expect(page.getByRole("heading", { level: 1 })).toBeInViewport({ ratio: 1 });
});

test("arrows choose on a form, and what one comes for chooses who looks until that is chosen", async ({
  page,
  site,
}) => {
  const walker = new Walker(page, site.address);
  await walker.newCar("Form car");
  await walker.press(t("car.new-visit"));
  const one = (name: string) => page.getByRole("radio", { name: new RegExp(`^${name}`) });
  await one(t("purpose.workshop")).focus();
  await page.keyboard.press("ArrowDown");
  await expect(one(t("purpose.viewing"))).toBeChecked();
  await expect(one(t("who.buyer"))).toBeChecked();
  await page.keyboard.press("ArrowDown");
  await expect(one(t("who.owner"))).toBeChecked();
  await one(t("who.technician")).click();
  await one(t("purpose.viewing")).click();
  await expect(one(t("who.technician"))).toBeChecked();
});
