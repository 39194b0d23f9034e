/** Counts what a person presses on a page: clicks of mouse, finger and keyboard alike. Presses nothing itself. */
import type { Page } from "@playwright/test";

/** Gives how many presses there were since; call before the page is opened. */
export async function countTaps(page: Page): Promise<() => number> {
  let taps = 0;
  await page.exposeFunction("leadlampTapped", () => {
    taps += 1;
  });
  await page.addInitScript(() => {
    const tapped = (globalThis as unknown as { leadlampTapped: () => Promise<void> }).leadlampTapped;
    addEventListener("click", (event) => event.isTrusted && void tapped(), { capture: true });
  });
  return () => taps;
}
