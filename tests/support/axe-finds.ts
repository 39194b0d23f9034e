/**
 * What axe finds on a page as it stands. Brings axe into each loaded page once, and runs it there: in a page of this
 * app there is no frame of another origin, for whose sake a second page would be opened every time.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";

/** axe as its package ships it for pages: half the letters of what the builder would bring in, and that twice. */
const SOURCE = readFileSync(
  createRequire(createRequire(import.meta.url).resolve("@axe-core/playwright")).resolve("axe-core/axe.min.js"),
  "utf8",
);
/** In place of axe's source, which is already there. */
const NOTHING_MORE = "undefined";

/** The rules a theme can break: all others look at what is the same in both. */
const RULES_OF_COLOUR = ["color-contrast", "link-in-text-block"];

/**
 * What was found right is not listed element by element, with a selector for each: that took longer than looking, and
 * nobody reads it.
 */
const ONLY_WHAT_IS_BROKEN: Parameters<AxeBuilder["options"]>[0] = { resultTypes: ["violations"], selectors: false };

/** One line for each rule broken, with the elements that break it. `colour`: only what another theme can break. */
export async function axeFinds(page: Page, which: "all" | "colour" = "all"): Promise<readonly string[]> {
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(`${SOURCE};${NOTHING_MORE}`);
  const axe = new AxeBuilder({ page, axeSource: NOTHING_MORE }).options({ ...ONLY_WHAT_IS_BROKEN });
  if (which === "colour") axe.withRules(RULES_OF_COLOUR);
  const { violations } = await axe.setLegacyMode().analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}
