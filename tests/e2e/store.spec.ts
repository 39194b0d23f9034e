/** The storage contract in a real browser: the same checks that run in memory and on a stand-in for IndexedDB. */
import type { PageResult } from "../store/browser-page.js";
import { contract } from "../store/contract.js";
import { faults } from "../store/faults.js";
import { lifecycle } from "../store/lifecycle.js";
import { type BuiltPage, buildPage } from "../support/build-page.js";
import { expect, bare as test } from "../support/harness.js";

let built: BuiltPage;
test.beforeAll(async () => {
  built = await buildPage("store");
});
test.afterAll(() => built.close());

test("a real browser's storage keeps the contract of the record's store", async ({ page }) => {
  test.setTimeout(180_000);
  await page.goto(built.address);
  await page.waitForFunction(() => window.result.done, undefined, { timeout: 170_000 });
  const result = await page.evaluate((): PageResult => window.result);
  expect(result.failed).toEqual([]);
  expect(result.passed).toHaveLength(contract.length + faults.length + lifecycle.length);
});
