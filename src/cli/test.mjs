/**
 * `npm test`: installs what is missing and runs every check and test there is on a bare clone: first what is one
 * process each, two beside each other, then the tests, which keep every core busy by themselves. `--checks` runs only
 * what needs no test runner. Plain Node until everything is installed. Refuses to end well while anything failed, or
 * while nothing was tested.
 */
import { spawn } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { makeReady } from "./install.mjs";

/** @typedef {{ passed: number, failed: number, skipped: number }} Count */
/** @typedef {Count & { faults: readonly string[], again?: readonly string[] }} Tally `faults`: where each failed test stands, its name, how it failed; `again`: the same of those that passed at the second try */
/** @typedef {{ name: string, heading: string, commands: readonly (readonly string[])[], needs?: string, tally?: () => Tally }} Step */
/** @typedef {{ good: boolean, ran: boolean, seconds: number, told: string }} Outcome */

const root = fileURLToPath(new URL("../..", import.meta.url));
const results = join(root, "test-results");
const bin = (/** @type {readonly string[]} */ ...parts) => join(root, "node_modules", ...parts);

/** @param {string} file */
const readJson = (file) => JSON.parse(readFileSync(join(results, file), "utf8"));

/** How much of a failure's own words is told again at the end. */
const FAULT_CHARACTERS = 1500;

/**
 * @param {string} where
 * @param {string} title
 * @param {unknown} says
 */
const fault = (where, title, says) =>
  `${where.replace(`${root}`, "")} › ${title}\n${String(says ?? "nothing said").slice(0, FAULT_CHARACTERS)}`;

/** @returns {Tally} */
function unitTally() {
  const report = readJson("unit.json");
  const skipped = report.numPendingTests + report.numTodoTests;
  const faults = [];
  for (const file of report.testResults) {
    const failed = file.assertionResults.filter((/** @type {any} */ one) => one.status === "failed");
    for (const one of failed) faults.push(fault(file.name, one.fullName, one.failureMessages[0]));
    if (file.status === "failed" && failed.length === 0) faults.push(fault(file.name, "the file itself", file.message));
  }
  return { passed: report.numPassedTests, failed: report.numFailedTests, skipped, faults };
}

/**
 * What went wrong in the tests that ended `well`, or in those that did not.
 * @param {any} suite of Playwright's report
 * @param {boolean} well
 * @returns {string[]}
 */
function faultsIn(suite, well) {
  const told = (suite.specs ?? []).flatMap((/** @type {any} */ spec) => {
    const results = spec.tests.flatMap((/** @type {any} */ one) => one.results);
    const error = results.find((/** @type {any} */ one) => one.error)?.error;
    const counts = spec.ok === well && (!well || error !== undefined);
    const line = error?.location?.line;
    return counts ? [fault(line === undefined ? spec.file : `${spec.file}:${line}`, spec.title, error?.message)] : [];
  });
  return [...told, ...(suite.suites ?? []).flatMap((/** @type {any} */ inner) => faultsIn(inner, well))];
}

/** @returns {Tally} */
function endToEndTally() {
  const report = readJson("e2e.json");
  const { expected, unexpected, flaky, skipped } = report.stats;
  const faults = (/** @type {boolean} */ well) =>
    report.suites.flatMap((/** @type {any} */ suite) => faultsIn(suite, well));
  return { passed: expected + flaky, failed: unexpected, skipped, faults: faults(false), again: faults(true) };
}

const tsc = bin("typescript", "bin", "tsc");
const tsx = ["--import", "tsx"];

/** Where the import checker leaves what it saw in this run: tests/boundaries asks the same of the same files. */
const cruised = join(results, "imports");
const seenIn = (/** @type {string} */ folder) => ["--cache", folder, "--cache-strategy", "content"];

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
    commands: [[bin("dependency-cruiser", "bin", "dependency-cruise.mjs"), "src", "tests", ...seenIn(cruised)]],
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

/** One race met in a whole run is told; more are no chance. */
const MOST_AGAIN = 1;

/** So many steps of one process run at a time: `npm test` is meant for two cores. */
const SIDE_BY_SIDE = 2;

/**
 * @param {readonly string[]} words for Node
 * @param {"inherit" | "pipe"} output
 * @returns {Promise<{ good: boolean, told: string }>} with what it printed when that was to be kept back
 */
function command(words, output) {
  const named = { PLAYWRIGHT_JSON_OUTPUT_NAME: join(results, "e2e.json"), LEADLAMP_IMPORTS_SEEN: cruised };
  const env = { ...process.env, ...named };
  const child = spawn(process.execPath, words, { cwd: root, stdio: ["inherit", output, output], env });
  let told = "";
  for (const stream of [child.stdout, child.stderr]) stream?.setEncoding("utf8").on("data", (part) => (told += part));
  return new Promise((resolve) => {
    child.once("error", (error) => resolve({ good: false, told: `${told}${error.message}\n` }));
    child.once("close", (status) => resolve({ good: status === 0, told }));
  });
}

/**
 * @param {string} told why
 * @returns {Outcome}
 */
const notRun = (told) => ({ good: false, ran: false, seconds: 0, told: `${told}\n` });

/**
 * Runs all commands of a step, one after another, also after one has failed.
 * @param {Step} step
 * @param {"inherit" | "pipe"} output
 * @param {Outcome | undefined} needed outcome of the step it needs
 * @returns {Promise<Outcome>}
 */
async function run(step, output, needed) {
  if (step.needs !== undefined && !needed?.good) return notRun(`Not run: it needs "${step.needs}", which failed.`);
  const began = Date.now();
  const ended = [];
  for (const words of step.commands) ended.push(await command(words, output));
  return {
    good: ended.every(({ good }) => good),
    ran: true,
    seconds: (Date.now() - began) / 1000,
    told: ended.map(({ told }) => told).join(""),
  };
}

/** @returns {Promise<string | undefined>} why there is no browser to test in; undefined when there is one */
async function browserMissing() {
  const { register } = await import("tsx/esm/api");
  const stop = register();
  const { findOrInstallBrowser, NO_BROWSER } = await import("../../tests/support/browser.js");
  await stop();
  return findOrInstallBrowser() === undefined ? NO_BROWSER : undefined;
}

makeReady(root);
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

const onlyChecks = process.argv.includes("--checks");

/** @type {Map<string, Outcome>} */
const went = new Map();
/** @type {Count} */
const total = { passed: 0, failed: 0, skipped: 0 };
/** @type {string[]} */
const lines = [];
/** Told once more below everything else: what failed long before the end is not to be looked for. @type {string[]} */
const faults = [];
/** Told with it: what passed at the second try is a race to be looked into. @type {string[]} */
const again = [];

/** @param {Step} step */
const heading = (step) => console.log(`\n━━ ${step.heading} ━━`);

/**
 * Tells what was kept back and adds an outcome to the total: a step that failed counts at least once.
 * @param {Step} step
 * @param {Outcome} outcome
 */
function take(step, outcome) {
  process.stdout.write(outcome.told);
  let { good } = outcome;
  let failed = 0;
  if (outcome.ran && step.tally) {
    try {
      const tally = step.tally();
      if (tally.passed === 0 || tally.failed > 0 || tally.skipped > 0) good = false;
      total.passed += tally.passed;
      total.skipped += tally.skipped;
      failed = tally.failed;
      faults.push(...tally.faults);
      again.push(...(tally.again ?? []));
    } catch (error) {
      console.error(`${step.name}: no result could be read (${error instanceof Error ? error.message : error})`);
      good = false;
    }
  }
  total.failed += good ? 0 : Math.max(failed, 1);
  went.set(step.name, { ...outcome, good });
  lines.push(`${good ? "good  " : "FAILED"} ${outcome.seconds.toFixed(1).padStart(7)} s  ${step.heading}`);
}

/** Whatever core is free takes the next, the longest first, so that both end together; told in the same order. */
const beside = [...CHECKS.slice(0, 1), ...(onlyChecks ? [] : [SHEETS]), ...BUILDING, ...CHECKS.slice(1)];
/** @type {{ step: Step, outcome: Promise<Outcome> }[]} */
const running = [];
/** @type {(() => Promise<void>)[]} */
const waiting = [];
for (const step of beside) {
  const needed = running.find((other) => other.step.name === step.needs)?.outcome;
  /** @type {Promise<Outcome>} */
  const outcome = new Promise((resolve) => {
    waiting.push(async () => resolve(await run(step, "pipe", await needed)));
  });
  running.push({ step, outcome });
}
const takeTurns = async () => {
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) await next();
};
for (let core = 0; core < SIDE_BY_SIDE; core++) void takeTurns();
for (const { step, outcome } of running) {
  const ended = await outcome;
  heading(step);
  take(step, ended);
}

for (const step of onlyChecks ? [] : [UNIT, END_TO_END]) {
  heading(step);
  const missing = step === END_TO_END ? await browserMissing() : undefined;
  take(step, missing === undefined ? await run(step, "inherit", went.get(step.needs ?? "")) : notRun(missing));
}

if (again.length > MOST_AGAIN) total.failed += again.length;
if (again.length > 0) console.log(`\n━━ Passed only at the second try ━━\n${again.join("\n\n")}`);
if (faults.length > 0) console.log(`\n━━ What failed ━━\n${faults.join("\n\n")}`);
console.log(`\n━━ All of it ━━\n${lines.join("\n")}\n`);
const more = [
  ...(total.skipped > 0 ? [`, ${total.skipped} skipped`] : []),
  ...(again.length > 0 ? [`, ${again.length} only at the second try`] : []),
];
if (!onlyChecks) console.log(`${total.passed} passed, ${total.failed} failed${more.join("")}`);
process.exitCode = total.failed > 0 || total.skipped > 0 || (!onlyChecks && total.passed === 0) ? 1 : 0;
