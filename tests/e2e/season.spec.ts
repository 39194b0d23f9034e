/**
 * The owner's seasons as whole journeys without a signal: the car is put away, and five months later it is woken. Taps are
 * counted as a person makes them; the time is the app's own clock.
 */
import { readFileSync } from "node:fs";
import type { Locator, Page } from "@playwright/test";
import { t as files } from "../../src/app/texts/files.js";
import { t as reading } from "../../src/app/texts/reading.js";
import { t } from "../../src/app/texts/season.js";
import { expect, test } from "../support/harness.js";
import { onward, pressable, Walker } from "../support/walker.js";

const AUTUMN = Date.parse("2026-11-28T10:00:00Z");
const SPRING = Date.parse("2027-04-24T10:00:00Z");
const SHEET = "Lay-up and wake-up";
/** A quarter of an hour at six or seven taps a minute; more is no longer done twice a year. Own choice. */
const MOST_TAPS = 90;

/** What went in, told beside what came out; and what the owner is told when they differ. */
const PUT_IN = "Last time, 28 Nov 2026, Bungs and covers put in: 4";
const MISSING = "Fewer bungs came out than you put in";

test.use({ keepsApp: true });

/** Taps of a journey, and the app's clock from its first to its last. */
class Journey {
  taps = 0;
  /** Address of the point answered last. */
  answered = "";
  private begun = 0;
  constructor(readonly page: Page) {}

  async begin(): Promise<void> {
    this.taps = 0;
    this.begun = await this.page.evaluate(() => Date.now());
  }

  async tap(target: Locator): Promise<void> {
    this.taps += 1;
    await target.click();
  }

  async tell(name: string): Promise<void> {
    const seconds = Math.round(((await this.page.evaluate(() => Date.now())) - this.begun) / 1000);
    console.log(`season, ${name}: ${this.taps} taps, ${seconds} s by the app's clock`);
    expect(this.taps).toBeLessThanOrEqual(MOST_TAPS);
  }
}

/** What an owner says at each point, by its replies' words; `figure` is typed, `cannot` has no gauge at hand. */
type Said = readonly (string | { readonly figure: string } | "cannot")[];
const PUT_AWAY: Readonly<Record<string, Said>> = {
  "rest.lay-date": ["Dry, not heated"],
  "rest.lay-doc": ["Covered"],
  "rest.lay-wash": ["Clean and dry"],
  "rest.lay-oil": ["Fresh"],
  "rest.lay-fuel": ["Full, fresh fuel"],
  "rest.lay-bat": ["Left connected"],
  "rest.lay-tyre": ["Half a bar more"],
  "rest.lay-brake": ["Off, chocked"],
  "rest.lay-clutch": ["Held down"],
  "rest.lay-cabin": ["Drying bags", "Mouse traps"],
  "rest.lay-plug": [{ figure: "4" }],
  "rest.lay-tag": ["Tag hangs there"],
  "rest.lay-rh": ["cannot"],
};
const WAKE_UP: Readonly<Record<string, Said>> = {
  "rest.up-stood": [{ figure: "5" }],
  "rest.up-leak": ["Dry"],
  "rest.up-tag": [{ figure: "3" }, "Lists more"],
  "rest.up-look": ["Nothing"],
  "rest.up-levels": ["All as they were"],
  "rest.up-bat": ["Sound"],
  "rest.up-fuel": ["Dry", "Two of us"],
  "rest.up-pedal": ["Stays up"],
};

const pointOf = (page: Page): string => decodeURIComponent(new URL(page.url()).hash.split("/").at(-1) ?? "");

/** A count is a box or a row of numbers; a reading is typed on its own screen. */
async function sayFigure(walker: Walker, journey: Journey, figure: string): Promise<void> {
  const { page } = walker;
  const box = page.locator("main .point-field input").first();
  if (await box.isVisible()) {
    await journey.tap(box);
    await page.keyboard.type(figure);
    await page.keyboard.press("Tab");
    return;
  }
  await journey.tap(pressable(page, t("round.reading")).first());
  for (const digit of figure) await journey.tap(page.getByRole("button", { name: digit, exact: true }));
  await journey.tap(page.getByRole("button", { name: new RegExp(`^${reading("reading.keep", { value: "" })}`) }));
  await journey.tap(pressable(page, reading("reading.done")).first());
}

async function say(walker: Walker, journey: Journey, said: Said): Promise<void> {
  const { page } = walker;
  for (const one of said) {
    if (typeof one === "object") await sayFigure(walker, journey, one.figure);
    else if (one === "cannot") {
      await journey.tap(page.locator("main .reply[aria-haspopup]"));
      await journey.tap(page.locator("dialog").getByText(t("reason.no-tool"), { exact: false }).first());
    } else {
      journey.taps += 1;
      await walker.pressReply(page.locator("main .replies .reply").filter({ hasText: one }).first());
    }
  }
}

/** Answers what is asked, in the order it is asked in, until something has no answer here; the points, in order. */
async function walk(
  walker: Walker,
  journey: Journey,
  answers: Readonly<Record<string, Said>>,
): Promise<readonly string[]> {
  const { page } = walker;
  const met: string[] = [];
  for (;;) {
    await expect(page).toHaveURL(/\/round\/[^/]+\/[^/]+\/[^/]+$/);
    const point = pointOf(page);
    const said = answers[point];
    if (said === undefined || met.includes(point)) return met;
    journey.answered = page.url();
    met.push(point);
    // What was said last time never stands before one's own reply.
    if (said.length > 0) await expect(page.locator(".pool .last-time")).toHaveCount(0);
    await say(walker, journey, said);
    if (point === "rest.up-tag")
      await expect(page.locator(".last-time").filter({ hasText: PUT_IN }).first()).toBeVisible();
    if (met.length === Object.keys(answers).length) return met;
    await goOn(journey);
  }
}

/** It goes on by itself where nothing is left to say; else by its button. */
async function goOn(journey: Journey): Promise<void> {
  const { page, answered } = journey;
  await page.waitForURL((now) => now.href !== answered, { timeout: 1_500 }).catch(() => undefined);
  if (page.url() === answered) await journey.tap(onward(page));
}

/** Opens one step of the page after the look. */
const step = (journey: Journey): Promise<void> => journey.tap(pressable(journey.page, /^Next: /).first());

async function downloaded(page: Page, act: () => Promise<void>): Promise<string> {
  const asked = page.waitForEvent("download");
  await act();
  return (await asked).path();
}

test("put away in autumn and woken in spring, without a signal: only its own half is asked, last time stands under today, and four steps end it", async ({
  page,
  context,
  site,
}) => {
  await page.clock.install({ time: AUTUMN });
  const walker = new Walker(page, site.address);
  const journey = new Journey(page);
  await walker.open("#/");
  await walker.wholeAppKept();
  await context.setOffline(true);
  await walker.newCar("Winter sleeper");
  await journey.begin();
  await openSeason(walker, journey, t("season.put-away"));
  expect([...(await walk(walker, journey, PUT_AWAY))].sort()).toEqual(Object.keys(PUT_AWAY).sort());
  await journey.tap(pressable(page, t("round.what-now")));
  await expect(page.getByRole("heading", { level: 1, name: t("what-now.title") })).toBeVisible();
  await expect(page.getByRole("main")).not.toContainText(/\bsafe\b/i);
  await expect(page.getByRole("main")).toContainText("The battery was left connected");

  await step(journey);
  await expect(page.locator("dialog .message")).toContainText("28 Nov 2026");
  await journey.tap(page.getByRole("button", { name: t("message.hand") }));
  await expect(page.locator("dialog")).toContainText(t("message.copied"));
  await journey.tap(page.getByRole("button", { name: t("app.close") }));

  await step(journey);
  await journey.tap(page.getByRole("button", { name: files("car-file.make") }));
  await downloaded(page, () => journey.tap(page.getByRole("button", { name: files("files.hand") })));
  await journey.tap(page.getByRole("button", { name: t("app.close") }));

  await step(journey);
  await journey.tap(page.getByRole("button", { name: "1 Apr 2027" }));
  const calendar = await downloaded(page, () =>
    journey.tap(page.getByRole("button", { name: t("season-dates.hand") })),
  );
  const events = readFileSync(calendar, "utf8");
  expect(events).toContain("DTSTART;VALUE=DATE:20261228");
  expect(events).toContain("RRULE:FREQ=MONTHLY;UNTIL=20270331");
  expect(events).toContain("DTSTART;VALUE=DATE:20270401");
  await journey.tap(page.getByRole("button", { name: t("app.close") }));

  await step(journey);
  await journey.tap(page.getByRole("button", { name: files("files.whole") }));
  await downloaded(page, () => journey.tap(page.getByRole("button", { name: files("files.hand") })));
  await journey.tap(page.getByRole("button", { name: t("app.close") }));
  await expect(page.getByRole("main")).toContainText(t("what-now.all"));
  await journey.tell("putting away");

  await page.clock.setSystemTime(SPRING);
  await journey.tap(pressable(page, t("what-now.to-car")));
  await journey.begin();
  await openSeason(walker, journey, t("season.wake-up"));
  expect([...(await walk(walker, journey, WAKE_UP))].sort()).toEqual(Object.keys(WAKE_UP).sort());
  // Four went in and three came out: the first start is shut off, and the page says what to tell.
  await goOn(journey);
  await expect(page.getByRole("main")).toContainText("First start");
  await journey.tap(pressable(page, t("round.elsewhere")));
  await journey.tap(pressable(page, t("round.what-now")));
  await expect(page.getByText(/^0/)).toBeVisible();
  await step(journey);
  await expect(page.locator("dialog .message")).toContainText("24 Apr 2027");
  await expect(page.locator("dialog .message")).toContainText(MISSING);
  await journey.tap(page.getByRole("button", { name: t("message.hand") }));
  await expect(page.locator("dialog")).toContainText(t("message.copied"));
  await journey.tell("waking up");
});

async function openSeason(walker: Walker, journey: Journey, which: string): Promise<void> {
  const { page } = walker;
  await journey.tap(pressable(page, t("car.new-visit")).first());
  await journey.tap(page.getByRole("radio", { name: t("purpose.season"), exact: true }));
  await journey.tap(page.getByRole("radio", { name: which }));
  // The other sheets of the season are their own affair.
  const sheets = page.getByRole("group", { name: t("new-visit.sheets") }).getByRole("checkbox");
  for (const sheet of await sheets.all()) {
    const words = (await sheet.textContent()) ?? "";
    if (!words.includes(SHEET) && (await sheet.isChecked())) await sheet.click();
  }
  await journey.tap(page.getByRole("button", { name: t("new-visit.open") }));
}
