/**
 * The parts as people meet them: seen (axe, sizes, nothing wider than the screen), by keyboard, by finger on the plan,
 * with large targets and with text at twice its size. On the gallery, so that no screen is needed.
 */
import type { Page } from "@playwright/test";
import { axeFinds } from "../support/axe-finds.js";
import { buildGallery } from "../support/build-gallery.js";
import type { BuiltPage } from "../support/build-page.js";
import { bare, expect } from "../support/harness.js";
import { type Offences, watchOffences } from "../support/offences.js";

const PAGES = [
  ...["round", "owner", "reading", "inch", "findings", "cautions", "work", "frame", "plans", "marks"],
  ...["planning", "dates", "entries", "price"],
];
const PHONE = { width: 390, height: 844 };

let gallery: BuiltPage;
let shared: Page;
let offences: Offences;

/** One window for all tests of a worker: the gallery keeps nothing and each test loads it anew. */
const test = bare.extend({
  page: async ({ browser: _opened }, use) => {
    await shared.setViewportSize(PHONE);
    await shared.emulateMedia({ media: null, reducedMotion: null, forcedColors: null });
    await use(shared);
  },
});

// The gallery is built once: in pieces beside each other, both workers would build it.
test.describe.configure({ mode: "default" });

test.beforeAll(async ({ browser }) => {
  gallery = await buildGallery();
  const context = await browser.newContext();
  offences = await watchOffences(context, new URL(gallery.address).origin);
  shared = await context.newPage();
});
test.afterEach(() => {
  expect(offences.seen, "what the app may never do").toEqual([]);
});
test.afterAll(async () => {
  await shared.context().close();
  await gallery.close();
});

async function show(page: Page, name: string, asked = ""): Promise<void> {
  await page.goto(`${gallery.address}?page=${name}${asked}`);
  await page.locator(".app").waitFor();
}
/** Twice the text, as a person's own setting of the browser would make it. */
async function doubled(page: Page): Promise<void> {
  await page.evaluate(() => document.documentElement.style.setProperty("font-size", "212.5%"));
}
const wider = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

for (const name of PAGES) {
  test(`${name}: axe finds nothing in either theme, the policy is kept, nothing is wider than 390, 360 and 320 px`, async ({
    page,
  }) => {
    await show(page, name, "&theme=under-the-car");
    expect(await axeFinds(page)).toEqual([]);
    for (const width of [390, 360, 320]) {
      await page.setViewportSize({ width, height: 844 });
      expect(await wider(page), `${width} px`).toBeLessThanOrEqual(0);
    }
    await page.setViewportSize(PHONE);
    await show(page, name, "&theme=daylight");
    expect(await axeFinds(page, "colour")).toEqual([]);
    await doubled(page);
    expect(await wider(page), "with text at twice its size").toBeLessThanOrEqual(0);
  });
}

test("text at twice its size: replies in one column, keys 60 px, the plan folded into a list", async ({ page }) => {
  await show(page, "round");
  await expect(page.getByRole("img", { name: "Plan of the car" })).toBeVisible();
  await doubled(page);
  await expect(page.getByRole("img", { name: "Plan of the car" })).toBeHidden();
  const replies = await page.locator(".replies > .reply").all();
  const lefts = await Promise.all(replies.map(async (reply) => (await reply.boundingBox())?.x));
  expect(new Set(lefts).size).toBe(1);
  await page.getByText("Places").click();
  await page.getByRole("button", { name: /Front left/ }).click();
  await expect(page.getByRole("heading", { name: "Front left" })).toBeVisible();
  await show(page, "reading");
  await doubled(page);
  expect((await page.getByRole("button", { name: "5", exact: true }).boundingBox())?.height).toBeCloseTo(60, 0);
});

test("every pressed thing is 48 px high or more, 44 wide or more; replies 68, keys 68, next action 72", async ({
  page,
}) => {
  for (const name of ["round", "reading", "findings", "cautions", "work", "frame", "planning", "entries", "price"]) {
    await show(page, name);
    const pressed = page.locator(
      ".app :is(a[href], button:not(.place), input:not(:is(.entry, .three, .budget-box) input), select, textarea):visible",
    );
    const targets = await pressed.evaluateAll((all) =>
      all.map((target) => {
        const { width, height } = target.getBoundingClientRect();
        return { says: target.textContent?.slice(0, 30), width, height };
      }),
    );
    expect(targets.length, name).toBeGreaterThan(0);
    for (const { says, width, height } of targets) {
      expect(height, `${name}: ${says}`).toBeGreaterThanOrEqual(47.9);
      expect(width, `${name}: ${says}`).toBeGreaterThanOrEqual(43.9);
    }
  }
  await show(page, "round");
  for (const reply of await page.locator(".replies > .reply").all())
    expect((await reply.boundingBox())?.height).toBeGreaterThanOrEqual(68);
  expect((await page.getByRole("button", { name: "Next point" }).boundingBox())?.height).toBeGreaterThanOrEqual(72);
  await show(page, "reading");
  expect((await page.getByRole("button", { name: "5", exact: true }).boundingBox())?.height).toBeGreaterThanOrEqual(68);
});

test("large targets: replies and keys 96 px, text 20 px", async ({ page }) => {
  await show(page, "round", "&targets=large");
  for (const reply of await page.locator(".replies > .reply").all())
    expect((await reply.boundingBox())?.height).toBeGreaterThanOrEqual(96);
  const size = await page.evaluate(() => getComputedStyle(document.body).fontSize);
  expect(Number.parseFloat(size)).toBeGreaterThanOrEqual(20);
  await show(page, "reading", "&targets=large");
  expect((await page.getByRole("button", { name: "5", exact: true }).boundingBox())?.height).toBeGreaterThanOrEqual(96);
});

test("left hand: the next action and the tool keys stand at the left", async ({ page }) => {
  const left = async (name: string): Promise<number> =>
    (await page.getByRole("button", { name, exact: true }).boundingBox())?.x ?? -1;
  await show(page, "round");
  expect(await left("Next point")).toBeGreaterThan(await left("Photo"));
  await show(page, "round", "&hand=left");
  expect(await left("Next point")).toBeLessThan(await left("Photo"));
  await show(page, "reading", "&hand=left");
  expect(await left("Rub out")).toBeLessThan(await left("7"));
});

test("replies by keyboard: each is a tab stop, arrows choose nothing, space chooses", async ({ page }) => {
  await show(page, "round");
  const chosen = page.getByRole("button", { pressed: true });
  await chosen.focus();
  await page.keyboard.press("ArrowDown");
  await expect(chosen).toHaveText("Light grumble");
  await page.keyboard.press("Tab");
  await expect(page.getByRole("button", { name: "Rough" })).toBeFocused();
  await page.keyboard.press("Space");
  await expect(chosen).toHaveText("Rough");
  for (let over = 0; over < 3; over++) await page.keyboard.press("Tab");
  await expect(page.getByRole("button", { name: "Can’t get at it" })).toBeFocused();
});

test("several replies: each is its own checkbox and can be taken back", async ({ page }) => {
  await show(page, "owner");
  const replies = page.getByRole("group", { name: "Grease on the inside of the wheel" });
  await expect(replies).toHaveAccessibleDescription("Choose all that are true.");
  const dry = page.getByRole("checkbox", { name: "No, dry and dusty" });
  await dry.click();
  await expect(dry).toBeChecked();
  await expect(page.getByRole("checkbox", { name: "Yes, streaks or drops" })).toBeChecked();
  await dry.press("Space");
  await expect(dry).not.toBeChecked();
});

test("the plan is a way-finder: a finger near a wheel goes there, keyboard reaches every place", async ({ page }) => {
  await show(page, "round");
  const plan = await page.getByRole("img", { name: "Plan of the car" }).boundingBox();
  if (!plan) throw new Error("the plan is not drawn");
  await page.mouse.click(plan.x + plan.width * 0.27, plan.y + plan.height * 0.7);
  await expect(page.getByRole("heading", { name: "Front left" })).toBeVisible();
  await page.getByRole("button", { name: /Rear right/ }).focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { name: "Rear right" })).toBeVisible();
  // Standing at the right side, the nose lies right.
  const spot = await page.getByRole("button", { name: /Front right/ }).boundingBox();
  expect(spot?.x).toBeGreaterThan(plan.x + plan.width / 2);
});

test("a sheet keeps the focus, and Escape, back and its button end it; the focus returns", async ({ page }) => {
  await show(page, "round");
  const opener = page.getByRole("button", { name: "Can’t get at it" });
  const sheet = page.getByRole("dialog", { name: "Can’t get at it" });
  const ends: readonly (() => Promise<unknown>)[] = [
    () => page.keyboard.press("Escape"),
    () => page.goBack(),
    () => sheet.getByRole("button", { name: "Close" }).click(),
  ];
  for (const end of ends) {
    await opener.click();
    await expect(sheet).toBeVisible();
    await expect(sheet.getByRole("heading", { name: "Can’t get at it" })).toBeFocused();
    for (let i = 0; i < 5; i++) {
      await page.keyboard.press("Tab");
      await expect(sheet.locator(":focus")).toHaveCount(1);
    }
    // What lies behind can't take the focus, even when asked to.
    await opener.evaluate((element) => element.focus());
    await expect(sheet.locator(":focus")).toHaveCount(1);
    await end();
    await expect(sheet).toBeHidden();
    await expect(opener).toBeFocused();
  }
  expect(page.url()).toContain("page=round");
});

test("can't get at it: two presses with the usual reason, and the reply says which", async ({ page }) => {
  await show(page, "round");
  const last = page.getByRole("button", { name: "Can’t get at it" });
  await last.click();
  await page.getByRole("button", { name: "too hot" }).click();
  await expect(page.getByRole("dialog")).toBeHidden();
  await expect(last).toHaveAttribute("aria-pressed", "true");
  await expect(last).toContainText("too-hot");
  await last.click();
  await page.getByRole("button", { name: "Not fitted on this car" }).click();
  await expect(last).toContainText("not-fitted");
});

test("a reading by finger, by hardware keys and by pasting", async ({ page }) => {
  await show(page, "reading", "&value=");
  const entry = page.getByRole("textbox", { name: "Bearing end float" });
  for (const key of ["0", "Decimal comma", "2", "4"])
    await page.getByRole("button", { name: key, exact: true }).click();
  await expect(entry).toHaveValue("0,24");
  await expect(page.getByRole("button", { name: "Keep 0,24" })).toBeEnabled();
  await page.getByRole("button", { name: "Rub out" }).click();
  await entry.press("End");
  await entry.press("5");
  await expect(entry).toHaveValue("0,25");
  await entry.fill("4 thou");
  await expect(entry).toHaveValue("4 thou");
});

test("before a figure is entered no limit is to be seen; after it they are", async ({ page }) => {
  await show(page, "reading", "&value=");
  const scale = page.locator(".scale svg");
  await expect(scale).not.toContainText("0,25");
  await page.getByRole("button", { name: "1", exact: true }).click();
  await expect(scale).toContainText("0,25");
});

test("a chosen reply is told by more than its fill: tick and, in daylight, a frame of 3 px", async ({ page }) => {
  await show(page, "round", "&theme=daylight");
  const chosen = page.getByRole("button", { pressed: true });
  await expect(chosen.locator("svg")).toBeVisible();
  expect(await chosen.evaluate((element) => getComputedStyle(element).borderTopWidth)).toBe("3px");
});

test("forced colours: a chosen reply and the keys keep an edge", async ({ page }) => {
  await page.emulateMedia({ forcedColors: "active" });
  await show(page, "reading");
  const key = page.getByRole("button", { name: "5", exact: true });
  expect(await key.evaluate((element) => getComputedStyle(element).borderTopWidth)).not.toBe("0px");
  await show(page, "round");
  const [chosen, other] = await Promise.all(
    [page.getByRole("button", { pressed: true }), page.getByRole("button", { name: "Rough" })].map((reply) =>
      reply.evaluate((element) => getComputedStyle(element).backgroundColor),
    ),
  );
  expect(chosen).not.toBe(other);
});

test("reduced motion: nothing moves", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await show(page, "round");
  const moving = await page.evaluate(
    () => [...document.querySelectorAll("*")].filter((e) => getComputedStyle(e).transitionDuration !== "0s").length,
  );
  expect(moving).toBe(0);
});

test("on paper the ground is white and keys, thumb zone and sections are gone", async ({ page }) => {
  await show(page, "findings", "&theme=under-the-car");
  await page.emulateMedia({ media: "print" });
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(
    "rgb(255, 255, 255)",
  );
  await expect(page.getByRole("navigation")).toBeHidden();
  expect(
    await page
      .locator(".signal.danger")
      .first()
      .evaluate((element) => getComputedStyle(element).backgroundColor),
  ).toBe("rgb(173, 16, 40)");
});
