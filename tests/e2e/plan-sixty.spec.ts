/**
 * A work list of sixty jobs and more on the built app: planned beside the screen, in brackets as it is done, and the
 * budget answers a step. LEADLAMP_SHOTS=folder leaves pictures in both themes, and one at 320 px with larger targets.
 */
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { DEMO_THIRD } from "../../src/app/demo/names.js";
import { paramOf } from "../../src/app/state/routes.js";
import { t } from "../../src/app/texts/plan-work.js";
import { expect, test } from "../support/harness.js";
import { SIXTY_BUDGET, sixtyJobs } from "../support/sixty-jobs.js";
import { Walker } from "../support/walker.js";
import { wear } from "../support/worn-visit.js";

const SHOTS = process.env["LEADLAMP_SHOTS"];
const WORN = "visit:demo-worn";
const JOBS = 60;
const TARGET_PX = 48;

declare global {
  var leadlampTasks: { readonly at: number; readonly ms: number }[];
  var leadlampPlans: { readonly from: number; ms?: number }[];
}

/** Notes long tasks of the page, and how long the planning worker takes to answer. */
const watched = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    globalThis.leadlampTasks = [];
    globalThis.leadlampPlans = [];
    new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries())
        globalThis.leadlampTasks.push({ at: startTime, ms: duration });
    }).observe({ type: "longtask", buffered: true });
    const { postMessage } = Worker.prototype;
    Worker.prototype.postMessage = function ask(this: Worker, message: unknown) {
      const plan: { readonly from: number; ms?: number } = { from: performance.now() };
      globalThis.leadlampPlans.push(plan);
      const answered = (): void => {
        plan.ms = performance.now() - plan.from;
      };
      this.addEventListener("message", answered, { once: true });
      postMessage.call(this, message);
    };
  });

/** Nothing of the list reaches past the screen, and a finger finds every row. */
async function fits(page: Page): Promise<void> {
  const seen = await page.evaluate(() => ({
    wider: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    heights: [...document.querySelectorAll("main .job-head")].map((row) => row.getBoundingClientRect().height),
  }));
  expect(seen.wider).toBeLessThanOrEqual(0);
  expect(seen.heights.length).toBeGreaterThanOrEqual(JOBS);
  expect(Math.min(...seen.heights)).toBeGreaterThanOrEqual(TARGET_PX);
}

async function shot(page: Page, name: string): Promise<void> {
  if (SHOTS === undefined) return;
  for (const colorScheme of ["dark", "light"] as const) {
    await page.emulateMedia({ colorScheme });
    await page.screenshot({ path: join(SHOTS, `${name}-${colorScheme}.png`), fullPage: true });
  }
}

/** The narrowest phone with the largest targets; then as before. */
async function narrow(page: Page): Promise<void> {
  const size = page.viewportSize() ?? { width: 390, height: 844 };
  await page.setViewportSize({ width: 320, height: 640 });
  await page.evaluate(() => document.documentElement.setAttribute("data-targets", "large"));
  await fits(page);
  if (SHOTS !== undefined) await page.screenshot({ path: join(SHOTS, "sixty-narrow.png") });
  await page.evaluate(() => document.documentElement.removeAttribute("data-targets"));
  await page.setViewportSize(size);
}

test("sixty jobs due are listed, planned beside the screen, bracketed as they are done, and the budget answers", async ({
  page,
  site,
}) => {
  await watched(page);
  const { replies } = await sixtyJobs();
  const walker = new Walker(page, site.address);
  await walker.openDemo();
  await wear(page, { store: "leadlamp", like: DEMO_THIRD, visit: WORN, replies, budget: SIXTY_BUDGET });

  await page.goto("about:blank");
  await walker.open(`#/visit/${paramOf(WORN)}/work`);
  await expect.poll(() => page.locator("main .job").count()).toBeGreaterThanOrEqual(JOBS);
  await expect(page.getByRole("heading", { name: t("plan.shade") })).toBeVisible();
  await expect(page.getByText(t("plan.planning"))).toBeHidden();
  await fits(page);
  await shot(page, "sixty-urgency");

  await page.getByRole("radio", { name: t("plan.order.doing") }).click();
  await expect.poll(() => page.locator("main .work-bundle").count()).toBeGreaterThan(3);
  await fits(page);
  await shot(page, "sixty-doing");
  await page.locator("main .work-bundle").nth(2).scrollIntoViewIfNeeded();
  await narrow(page);

  await walker.open(`#/visit/${paramOf(WORN)}/plan/budget`);
  const reach = page.locator(".reach");
  const before = (await reach.textContent()) ?? "";
  const steps = page.getByRole("group", { name: t("budget.steps") });
  await steps.getByRole("button").first().click();
  await expect(reach).not.toHaveText(before);
  await expect(page.getByText(t("plan.planning"))).toBeHidden();
  const { plans, tasks } = await page.evaluate(() => ({
    plans: globalThis.leadlampPlans.flatMap(({ from, ms }) => (ms === undefined ? [] : [{ from, ms }])),
    tasks: globalThis.leadlampTasks,
  }));
  // The first is asked for while the list is being drawn for the first time; the step finds everything standing.
  const step = plans.at(-1);
  if (!step) throw new Error("nothing was planned beside the screen");
  const meanwhile = tasks.filter(({ at }) => at > step.from && at < step.from + step.ms);
  const longest = Math.max(0, ...meanwhile.map(({ ms }) => ms));
  console.log(
    `planned beside the screen in ${plans.map(({ ms }) => ms.toFixed(0)).join(", ")} ms, the screen busy for ${longest.toFixed(0)} ms at most`,
  );
  // How long it took is told, not judged: a busy machine may take its time.
  expect(plans.length).toBeGreaterThan(1);
  await shot(page, "sixty-budget");
});
