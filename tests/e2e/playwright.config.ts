/** How the end-to-end tests are run: the built app, one Chromium, no clock-based excuses. */
import { fileURLToPath } from "node:url";
import { defineConfig } from "@playwright/test";
import { BROWSER_FLAGS, FAKE_DEVICES, findBrowser, PLAYS_UNASKED } from "../support/browser.js";

const browser = findBrowser();
const byHand = process.env["PLAYWRIGHT_JSON_OUTPUT_NAME"] === undefined;
const top = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

export default defineConfig({
  testDir: ".",
  testMatch: "*.spec.ts",
  outputDir: top("test-results/e2e"),
  // It only tells a hang from a busy machine.
  timeout: 180_000,
  expect: { timeout: 20_000 },
  fullyParallel: true,
  workers: 2,
  // In a whole run one test of a hundred that met a race is tried once more, and told by name; by hand it is a failure.
  retries: byHand ? 0 : 1,
  forbidOnly: true,
  // npm test names a file for the figures; by hand the list alone is enough.
  reporter: byHand ? [["list"]] : [["list"], ["json"]],
  use: {
    browserName: "chromium",
    viewport: { width: 390, height: 844 },
    // A quarter of the points to draw where nobody looks at a picture.
    deviceScaleFactor: process.env["LEADLAMP_SHOTS"] === undefined ? 1 : 2,
    hasTouch: true,
    locale: "en-GB",
    // Drawn up at every step, it costs a fifth of the time: by hand it helps, in a whole run nobody opens it.
    trace: byHand ? "retain-on-failure" : "off",
    screenshot: "only-on-failure",
    // One browser serves all tests of a worker: what differs (who may look and listen) each test says to its window.
    launchOptions: {
      args: [...BROWSER_FLAGS, FAKE_DEVICES, PLAYS_UNASKED],
      ...(browser === undefined ? {} : { executablePath: browser }),
    },
  },
});
