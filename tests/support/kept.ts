/** Waits for the app's word that something is durable. Says nothing of what the screen shows meanwhile. */
import type { Page } from "@playwright/test";
import { KEPT_EVENT, type KeptDetail } from "../../src/app/kept-event.js";

/**
 * Does `act`, then waits until entries told by it are durable: of this kind where one is named, since an entry of an
 * earlier act may become durable in between.
 */
export async function untilKept(page: Page, act: () => Promise<void>, kind?: string): Promise<void> {
  const durable = page.evaluate(
    ([name, wanted]) =>
      new Promise<void>((resolve) => {
        const told = (event: Event): void => {
          const { kept } = (event as CustomEvent<KeptDetail>).detail;
          if (wanted !== "" && !kept.some((one) => one.kind === wanted)) return;
          document.removeEventListener(name, told);
          resolve();
        };
        document.addEventListener(name, told);
      }),
    [KEPT_EVENT, kind ?? ""] as const,
  );
  await act();
  await durable;
}
