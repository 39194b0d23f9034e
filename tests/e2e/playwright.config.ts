/** How the end-to-end tests are run: the built app, one Chromium, no retries, no clock-based excuses. */
import { fileURLToPath } from "node:url";
import { defineConfig } from "@playwright/test";
import { BROWSER_FLAGS, findBrowser } from "../support/browser.js";

const browser = findBrowser();
const byHand = process.env["PLAYWRIGHT_JSON_OUTPUT_NAME"] === undefined;
const top = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

export default defineConfig({
  testDir: ".",
  testMatch: "*.spec.ts",
  outputDir: top("test-results/e2e"),
  timeout: 120_000,
  expect: { timeout: 20_000 },
  fullyParallel: true,
  workers: 2,
  retries: 0,
  forbidOnly: true,
  // npm test names a file for the figures; by hand the list alone is enough.
  reporter: byHand ? [["list"]] : [["list"], ["json"]],
  use: {
    browserName: "chromium",
    viewport: { width: 390, height: 844 },
    deviceScaleFactor: 2,
    hasTouch: true,
    locale: "en-GB",
    // Drawn up at every step, it costs a fifth of the time: by hand it helps, in a whole run nobody opens it.
    trace: byHand ? "retain-on-failure" : "off",
    screenshot: "only-on-failure",
    launchOptions: { args: [...BROWSER_FLAGS], ...(browser === undefined ? {} : { executablePath: browser }) },
  },
});
