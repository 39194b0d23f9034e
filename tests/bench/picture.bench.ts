/**
 * A 12-megapixel picture kept by the worker: how long it takes, and the longest task it costs the main thread meanwhile.
 * Needs a browser. Figures only: what comes out is held by tests/e2e/pictures.spec.ts.
 */
import { chromium } from "@playwright/test";
import { BROWSER_FLAGS, findBrowser, NO_BROWSER } from "../support/browser.js";
import { buildPage } from "../support/build-page.js";
import { type Bench, percentile } from "./row.js";

const RUNS = 5;

export const bench: Bench = async () => {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(NO_BROWSER);
  const built = await buildPage("pictures");
  const browser = await chromium.launch({ executablePath, args: [...BROWSER_FLAGS] });
  try {
    const page = await browser.newPage();
    await page.goto(built.address);
    await page.waitForFunction(() => document.title === "Ready");
    const taken: number[] = [];
    const longest: number[] = [];
    for (let run = 0; run < RUNS; run++) {
      const kept = await page.evaluate(() => pictures.camera(4032, 3024, 6));
      taken.push(kept.ms);
      longest.push(Math.max(0, ...kept.tasks));
    }
    return [
      { what: "12 MP picture kept, p50", unit: "ms", figures: { ours: percentile(taken, 0.5) } },
      {
        what: "longest main-thread task meanwhile, p50 (0: none over 50 ms)",
        unit: "ms",
        figures: { ours: percentile(longest, 0.5) },
        goal: "no task over 50 ms (architecture §10)",
      },
    ];
  } finally {
    await browser.close();
    await built.close();
  }
};
