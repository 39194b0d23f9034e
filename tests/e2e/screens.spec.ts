/**
 * Every screen of the route table, opened for the first time when the host is gone, its colours in both themes: axe finds
 * nothing, nothing is wider than the phone or too small to read, the policy is kept, and the app's own links lead to
 * each. LEADLAMP_SHOTS=folder leaves a picture of each to look at.
 */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { demoAddresses } from "../../src/app/demo/addresses.js";
import { axeFinds } from "../support/axe-finds.js";
import { expect, bare as test } from "../support/harness.js";
import { loadedOnce } from "../support/loaded-once.js";
import { beginSheetWork, openScreen, Ways } from "../support/route-walk.js";
import { tooSmall } from "../support/small-text.js";

const SHOTS = process.env["LEADLAMP_SHOTS"];
const WIDTHS = [390, 360, 320] as const;

/** Colours are looked at in both themes; all else, sizes too, is the same in both and looked at in the first. */
const THEMES = [
  { theme: "dark", widths: WIDTHS, rules: "all" },
  { theme: "light", widths: [], rules: "colour" },
] as const;

const says = "axe finds nothing under the car or in daylight, nothing is wider than the phone or too small to read";

test(`every screen opens for the first time without a network: ${says}, links lead to it`, async ({ context }) => {
  test.setTimeout(600_000);
  const { walker, offences } = await loadedOnce(context);
  const { page } = walker;
  const ways = new Ways();
  await walker.openDemo();
  await walker.open(demoAddresses().find(({ name }) => name === "sheet")?.href ?? "");
  await beginSheetWork(walker);
  for (const { name, href: hash } of demoAddresses()) {
    await page.emulateMedia({ colorScheme: THEMES[0].theme, reducedMotion: "reduce" });
    await openScreen(walker, hash);
    for (const { theme, widths, rules } of THEMES) {
      await page.emulateMedia({ colorScheme: theme });
      await expect(page.locator("html")).toHaveCSS("color-scheme", theme);
      if (SHOTS !== undefined) {
        mkdirSync(SHOTS, { recursive: true });
        await page.screenshot({ path: join(SHOTS, `${name}-${theme}.png`), fullPage: true });
      }
      expect.soft(await axeFinds(page, rules), `${name} ${hash}, ${theme}`).toEqual([]);
      for (const width of widths) {
        await page.setViewportSize({ width, height: 844 });
        const wider = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect.soft(wider, `${name} at ${width} px`).toBeLessThanOrEqual(0);
        // A drawing measures itself after the page has its new width.
        const later = expect.configure({ soft: true, timeout: 5_000 });
        await later.poll(() => tooSmall(page), `${name} at ${width} px, too small to read`).toEqual([]);
      }
      await page.setViewportSize({ width: 390, height: 844 });
    }
    await ways.note(page, hash);
  }
  // Judged again is what stands after a figure was kept.
  await walker.keepFigure("lim.float-taper", "0.1", "dangerous");
  const again = (await page.locator('a[href*="/judge-again"]').first().getAttribute("href")) ?? "";
  await ways.note(page, new URL(page.url()).hash);
  await openScreen(walker, again);
  await ways.lookFurther(walker);
  expect(ways.unreached(), "no link leads there").toEqual([]);
  expect(offences.seen, "what the app may never do").toEqual([]);
});
