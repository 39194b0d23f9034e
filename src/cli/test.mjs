/**
 * `npm test`: installs what is missing and runs every check and test there is, in order, on a bare clone.
 * `--checks` runs only what needs no test runner. Plain Node until everything is installed. Refuses to
 * end well while anything failed, or while nothing was tested.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { makeReady } from "./install.mjs";

/** @typedef {{ passed: number, failed: number, skipped: number }} Tally */
/** @typedef {{ name: string, heading: string, commands: readonly (readonly string[])[], needs?: string, tally?: () => Tally }} Step */

const root = fileURLToPath(new URL("../..", import.meta.url));
const results = join(root, "test-results");
const bin = (/** @type {readonly string[]} */ ...parts) => join(root, "node_modules", ...parts);

/** @param {string} file */
const readJson = (file) => JSON.parse(readFileSync(join(results, file), "utf8"));

/** @returns {Tally} */
function unitTally() {
  const report = readJson("unit.json");
  const skipped = report.numPendingTests + report.numTodoTests;
  return { passed: report.numPassedTests, failed: report.numFailedTests, skipped };
}

/** @returns {Tally} */
function endToEndTally() {
  const { expected, unexpected, flaky, skipped } = readJson("e2e.json").stats;
  return { passed: expected, failed: unexpected + flaky, skipped };
}

const tsc = bin("typescript", "bin", "tsc");
const tsx = ["--import", "tsx"];

/** @type {readonly Step[]} */
const CHECKS = [
  {
    name: "types",
    heading: "Types: everything, the pure core, the service worker",
    commands: [[tsc], [tsc, "-p", "src/core"], [tsc, "-p", "src/sw"]],
  },
  {
    name: "style",
    heading: "Style and lint",
    commands: [[bin("@biomejs", "biome", "bin", "biome"), "ci", "--error-on-warnings", "--max-diagnostics=40", "."]],
  },
  {
    name: "imports",
    heading: "Import rules",
    commands: [[bin("dependency-cruiser", "bin", "dependency-cruise.mjs"), "src", "tests"]],
  },
  { name: "unused", heading: "Unused files, exports and packages", commands: [[bin("knip", "bin", "knip.js")]] },
];

/** @type {readonly Step[]} */
const BUILDING = [
  { name: "build", heading: "Build", commands: [[bin("vite", "bin", "vite.js"), "build", "--logLevel", "warn"]] },
  { name: "bytes", heading: "Byte budgets", needs: "build", commands: [[...tsx, bin("size-limit", "bin.js")]] },
];

/** @type {Step} */
const SHEETS = {
  name: "sheets",
  heading: "Check sheets and their cases",
  commands: [[...tsx, "src/cli/main.ts", "sheets"]],
};

/** @type {Step} */
const UNIT = {
  name: "unit",
  heading: "Unit, property, golden, store and boundary tests",
  commands: [
    [
      bin("vitest", "vitest.mjs"),
      "run",
      "--reporter=dot",
      "--reporter=json",
      "--outputFile.json=test-results/unit.json",
    ],
  ],
  tally: unitTally,
};

/** @type {Step} */
const END_TO_END = {
  name: "end to end",
  heading: "End to end, on the built app in a browser",
  needs: "build",
  commands: [[bin("@playwright", "test", "cli.js"), "test", "-c", "tests/e2e/playwright.config.ts"]],
  tally: endToEndTally,
};

/**
 * @param {Step} step
 * @returns {boolean}
 */
function run(step) {
  const env = { ...process.env, PLAYWRIGHT_JSON_OUTPUT_NAME: join(results, "e2e.json") };
  return step.commands
    .map((words) => spawnSync(process.execPath, words, { cwd: root, stdio: "inherit", env }).status === 0)
    .every(Boolean);
}

/** @returns {Promise<boolean>} whether there is a browser to test in */
async function browserIsThere() {
  const { register } = await import("tsx/esm/api");
  const stop = register();
  const { findOrInstallBrowser, NO_BROWSER } = await import("../../tests/support/browser.js");
  await stop();
  if (findOrInstallBrowser() !== undefined) return true;
  console.error(NO_BROWSER);
  return false;
}

makeReady(root);
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

const onlyChecks = process.argv.includes("--checks");
const steps = onlyChecks ? [...CHECKS, ...BUILDING] : [...CHECKS, UNIT, SHEETS, ...BUILDING, END_TO_END];

/** @type {Map<string, boolean>} */
const went = new Map();
/** @type {Tally} */
const total = { passed: 0, failed: 0, skipped: 0 };
const lines = [];

for (const step of steps) {
  console.log(`\n━━ ${step.heading} ━━`);
  const began = Date.now();
  const blocked = step.needs !== undefined && went.get(step.needs) !== true;
  if (blocked) console.error(`Not run: it needs "${step.needs}", which failed.`);
  const ready = !blocked && (step !== END_TO_END || (await browserIsThere()));
  let good = ready && run(step);
  if (ready && step.tally) {
    try {
      const tally = step.tally();
      total.passed += tally.passed;
      total.failed += tally.failed;
      total.skipped += tally.skipped;
      if (tally.passed === 0 || tally.failed > 0 || tally.skipped > 0) good = false;
      if (!good && tally.failed === 0) total.failed += 1;
    } catch (error) {
      console.error(`${step.name}: no result could be read (${error instanceof Error ? error.message : error})`);
      good = false;
      total.failed += 1;
    }
  } else if (!good) {
    total.failed += 1;
  }
  went.set(step.name, good);
  const seconds = ((Date.now() - began) / 1000).toFixed(1).padStart(7);
  lines.push(`${good ? "good  " : "FAILED"} ${seconds} s  ${step.heading}`);
}

console.log(`\n━━ All of it ━━\n${lines.join("\n")}\n`);
if (!onlyChecks)
  console.log(`${total.passed} passed, ${total.failed} failed${total.skipped > 0 ? `, ${total.skipped} skipped` : ""}`);
process.exitCode = total.failed > 0 || total.skipped > 0 || (!onlyChecks && total.passed === 0) ? 1 : 0;
