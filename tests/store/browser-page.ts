/**
 * Runs the storage contract in a real browser's page and leaves the outcome in `window.result`: one line per check,
 * and `done` once all have run. Refuses to know what drives the page.
 */
import { contract } from "./contract.js";
import { faults } from "./faults.js";
import { indexedDbSubject } from "./indexeddb-subject.js";
import { lifecycle } from "./lifecycle.js";

export interface PageResult {
  readonly passed: string[];
  readonly failed: { readonly name: string; readonly why: string }[];
  done: boolean;
}

declare global {
  interface Window {
    result: PageResult;
  }
}

const result: PageResult = { passed: [], failed: [], done: false };
window.result = result;

async function tell(name: string, run: () => Promise<void>): Promise<void> {
  try {
    await run();
    result.passed.push(name);
  } catch (error) {
    result.failed.push({ name, why: error instanceof Error ? `${error.name}: ${error.message}` : String(error) });
  }
}

async function runAll(): Promise<void> {
  const subject = indexedDbSubject("in this browser");
  for (const check of [...contract, ...faults]) {
    const bench = await subject.bench();
    await tell(check.name, () => check.run(bench));
    await bench.close();
  }
  for (const check of lifecycle) await tell(check.name, check.run);
  result.done = true;
  document.title = result.failed.length === 0 ? "All kept" : "Some failed";
}

void runAll();
