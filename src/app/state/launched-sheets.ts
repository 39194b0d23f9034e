/**
 * Sheet files the phone opens with this app. Whatever screen stands, each leads to the list of sheets and waits here
 * until that takes it.
 */
import { signal } from "@preact/signals";
import type { App } from "./app.js";
import { to } from "./routes.js";

const waiting = signal<readonly File[]>([]);

/** A file the phone opened with this app. */
export function sheetLaunched(router: Pick<App["router"], "go">, file: File): void {
  waiting.value = [...waiting.peek(), file];
  router.go(to("sheets"));
}

/** The file that came first and was not taken yet. Read in a screen, it draws that anew when one comes. */
export const launchedSheet = (): File | undefined => waiting.value[0];

/** Takes it, so that it is read in once. */
export function takenLaunched(file: File): void {
  waiting.value = waiting.peek().filter((one) => one !== file);
}
