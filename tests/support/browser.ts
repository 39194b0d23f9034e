/**
 * Which browser the end-to-end tests drive: the system's Chromium or Chrome, else Playwright's own, else one
 * installed on the spot. Refuses to know the tests.
 */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { chromium } from "@playwright/test";

/** No sandbox: the tests may run as root. The rest keeps the browser from talking to anybody but our server. */
export const BROWSER_FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // Two tests run beside each other on two cores: scripts made faster and tidied up on further threads took two fifths
  // of the time of a page, mostly for code that had already run.
  "--js-flags=--single-threaded",
] as const;

/**
 * A camera and a microphone that are not there, for what looks and listens. Five pictures a second, the fewest there can
 * be: without graphics each is drawn by the same two cores that run the tests, and nobody watches.
 */
export const FAKE_DEVICES = "--use-fake-device-for-media-stream=fps=5";
/** The person says yes to camera and microphone before being asked. */
export const SAYS_YES = "--use-fake-ui-for-media-stream";
/** A recording plays without anybody having pressed. */
export const PLAYS_UNASKED = "--autoplay-policy=no-user-gesture-required";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
const FIXED = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
];

/** Path of the browser to use; undefined when this machine has none. LEADLAMP_BROWSER names one outright. */
export function findBrowser(): string | undefined {
  const named = process.env["LEADLAMP_BROWSER"];
  if (named !== undefined && named !== "") return named;
  const folders = (process.env["PATH"] ?? "").split(delimiter);
  const onPath = NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...onPath, ...FIXED, chromium.executablePath()].find((path) => existsSync(path));
}

const runs = (command: string, words: readonly string[]): boolean =>
  spawnSync(command, words, { stdio: "inherit", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } }).status ===
  0;

/** Finds a browser or installs one; undefined when that was not possible. */
export function findOrInstallBrowser(): string | undefined {
  const found = findBrowser();
  if (found !== undefined) return found;
  if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.log("No Chromium or Chrome found: installing Debian's chromium …");
    if (runs("apt-get", ["update"]) && runs("apt-get", ["install", "-y", "--no-install-recommends", "chromium"])) {
      return findBrowser();
    }
  }
  console.log("No Chromium or Chrome found: asking Playwright for its own …");
  runs(process.execPath, [join("node_modules", "@playwright", "test", "cli.js"), "install", "chromium"]);
  return findBrowser();
}

/** What to tell a person whose machine has no browser for the tests. */
export const NO_BROWSER =
  "The end-to-end tests need Chromium or Chrome and none could be found or installed. Install one " +
  "(Debian: apt-get install chromium; any system: npx playwright install chromium, or Google Chrome), " +
  "or name one with LEADLAMP_BROWSER=/path/to/it, and run npm test again.";
