/**
 * How soon the built app stands: the very first visit over a slow network on a slow processor, and opening it again
 * without any network. Needs `npm run build` and a browser.
 */
import { type Browser, chromium, type Page } from "@playwright/test";
import { serve } from "../../src/cli/serve.js";
import { BROWSER_FLAGS, findBrowser, NO_BROWSER } from "../support/browser.js";
import { Walker } from "../support/walker.js";
import { type Bench, percentile } from "./row.js";

const RUNS = 7;
const SLOWED = 4;
/** What Lighthouse calls slow 4G: 1.6 Mbit/s down, 750 kbit/s up, 150 ms there and back; values from memory, unverified. */
const SLOW_4G = { offline: false, latency: 150, downloadThroughput: 1_600_000 / 8, uploadThroughput: 750_000 / 8 };

/** Largest contentful paint so far, in ms from the start of the visit. */
const largestPaint = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        new PerformanceObserver((list) => resolve(list.getEntries().at(-1)?.startTime ?? Number.NaN)).observe({
          type: "largest-contentful-paint",
          buffered: true,
        });
      }),
  );

async function firstVisit(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", SLOW_4G);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  await page.goto(address);
  await page.getByRole("heading", { level: 1 }).waitFor();
  await page.waitForTimeout(500);
  const paint = await largestPaint(page);
  await context.close();
  return paint;
}

async function relaunches(browser: Browser, address: string, stopServer: () => Promise<void>): Promise<number[]> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const first = new Walker(await context.newPage(), address);
  await first.open("#/demo");
  await first.wholeAppKept();
  await first.open("#/");
  await first.page.close();
  await stopServer();
  const times: number[] = [];
  for (let run = 0; run < RUNS; run++) {
    const page = await context.newPage();
    await page.goto(address);
    await page.getByRole("heading", { level: 1 }).waitFor();
    times.push(await page.evaluate(() => performance.now()));
    await page.close();
  }
  await context.close();
  return times;
}

export const bench: Bench = async () => {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(NO_BROWSER);
  const serving = await serve({ port: 0 });
  const browser = await chromium.launch({ executablePath, args: [...BROWSER_FLAGS] });
  try {
    const paints: number[] = [];
    for (let run = 0; run < RUNS; run++) paints.push(await firstVisit(browser, serving.address));
    const again = await relaunches(browser, serving.address, () => serving.close());
    return [
      {
        what: "The very first visit, slow 4G, processor at a quarter",
        unit: "ms",
        figures: { "largest paint, median": percentile(paints, 0.5), "largest paint, worst": percentile(paints, 1) },
        goal: "within 1500 ms (architecture §10)",
      },
      {
        what: "Opened again without a network, with the demo in it",
        unit: "ms",
        figures: {
          "first screen stands, median": percentile(again, 0.5),
          "first screen stands, worst": percentile(again, 1),
        },
        goal: "within 500 ms (architecture §10)",
      },
    ];
  } finally {
    await browser.close();
    await serving.close();
  }
};
