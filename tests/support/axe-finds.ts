/**
 * What axe finds on a page as it stands. Brings axe into each loaded page once, and runs it there: in a page of this
 * app there is no frame of another origin, for whose sake a second page would be opened every time.
 */
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";

/** In place of axe's source where it is already there. */
const NOTHING_MORE = "undefined";

/** The rules a theme can break: all others look at what is the same in both. */
const RULES_OF_COLOUR = ["color-contrast", "link-in-text-block"];

/** One line for each rule broken, with the elements that break it. `colour`: only what another theme can break. */
export async function axeFinds(page: Page, which: "all" | "colour" = "all"): Promise<readonly string[]> {
  const isThere = await page.evaluate(() => "axe" in globalThis);
  const axe = new AxeBuilder(isThere ? { page, axeSource: NOTHING_MORE } : { page });
  if (which === "colour") axe.withRules(RULES_OF_COLOUR);
  const { violations } = await axe.setLegacyMode().analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}
