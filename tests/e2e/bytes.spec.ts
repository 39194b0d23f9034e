/** What a browser really fetches until the first screen and the first reply: no more than the budgets weigh. */
import { gzipSync } from "node:zlib";
import type { Page, Response } from "@playwright/test";
import { expect, test } from "../support/harness.js";
import { FIRST_REPLY, FIRST_SCREEN, readContents, scriptsFor, stylesOf } from "../support/loaded.js";
import { Walker } from "../support/walker.js";

/** Kilobytes of 1,000 (architecture §10). */
const UNTIL_FIRST_SCREEN_KB = 45;
const UNTIL_FIRST_REPLY_KB = 100;
/** Title of the sheet tests/support/loaded.ts weighs; what a visit does not open must not be fetched for it. */
const WEIGHED_SHEET = "Wheel bearings and wheel fixing";

interface Fetched {
  readonly file: string;
  readonly gzip: number;
}

interface Watch {
  readonly fetched: Fetched[];
  /** Ends watching, once all that was fetched is weighed. */
  readonly end: () => Promise<void>;
}

/** Notes scripts and styles as the page itself asks for them; what the service worker fetches ahead is its own affair. */
function watchFetched(page: Page, address: string): Watch {
  const fetched: Fetched[] = [];
  const weighing: Promise<void>[] = [];
  const weigh = async (response: Response): Promise<void> => {
    const body = await response.body();
    fetched.push({ file: response.url().slice(address.length), gzip: gzipSync(body, { level: 9 }).length });
  };
  const note = (response: Response): void => {
    if (["script", "stylesheet"].includes(response.request().resourceType())) weighing.push(weigh(response));
  };
  page.on("response", note);
  const end = async (): Promise<void> => {
    page.off("response", note);
    await Promise.all(weighing);
  };
  return { fetched, end };
}

const kilobytes = (parts: readonly Fetched[]): number => parts.reduce((sum, { gzip }) => sum + gzip, 0) / 1000;

test.use({ keepsApp: true });

test("what is fetched until the first screen and the first reply is within the budgets and what they weigh", async ({
  page,
  site,
}) => {
  const contents = readContents();
  const { fetched, end } = watchFetched(page, site.address);
  const walker = new Walker(page, site.address);

  await page.goto(site.address);
  await walker.stands();
  const atFirstScreen = fetched.filter(({ file }) => scriptsFor(contents, FIRST_SCREEN).includes(file));
  expect(atFirstScreen.map(({ file }) => file).sort()).toEqual([...scriptsFor(contents, FIRST_SCREEN)].sort());
  expect(kilobytes(atFirstScreen)).toBeLessThanOrEqual(UNTIL_FIRST_SCREEN_KB);

  await walker.newCar("Weighed car");
  await walker.newVisit({ onlySheet: WEIGHED_SHEET });
  await expect(walker.replies().first()).toBeVisible();
  const untilPressed = fetched.length;
  await walker.firstReply();
  await page.waitForLoadState("networkidle");
  await end();
  const before = fetched.slice(0, untilPressed);
  const weighed = [...scriptsFor(contents, FIRST_REPLY)];
  const allowed = new Set([...weighed, ...stylesOf(contents, weighed)]);
  console.log(
    `first screen ${kilobytes(atFirstScreen).toFixed(1)} kB, until the first reply ${kilobytes(before).toFixed(1)} kB, ` +
      `with what follows it ${kilobytes(fetched).toFixed(1)} kB gzipped`,
  );
  expect(before.map(({ file }) => file).filter((file) => !allowed.has(file))).toEqual([]);
  expect(kilobytes(before)).toBeLessThanOrEqual(UNTIL_FIRST_REPLY_KB);

  const modules = fetched.flatMap(({ file }) => contents[file]?.modules ?? []);
  expect(modules.length).toBeGreaterThan(50);
  expect(modules.filter((it) => /(expr|sheet)\/author\.ts$|node_modules\/(@marcbachmann|zod|yaml)\//.test(it))).toEqual(
    [],
  );
});
