/**
 * What was open when a page was ended by the phone: the camera, a recording. Written down durably before it opens and
 * crossed out when it closes, so that whatever is found at a start was cut off. Another tab in which it is still open
 * holds a lock and is left alone.
 */
import type { Store } from "../../core/record/index.js";

export type LeftOpen = "camera" | "sound";
type Settings = Pick<Store, "setting" | "keepSetting">;

/** Under what name it is kept; main.tsx asks for the same. */
export const leftOpenKey = (what: LeftOpen): string => `open.${what}`;

/** What the camera was opened for. */
export interface CameraOpen {
  readonly href: string;
  /** The phone's own camera, behind which phones end pages. */
  readonly phone: boolean;
}
export const isCameraOpen = (value: unknown): value is CameraOpen =>
  typeof value === "object" && value !== null && "href" in value && typeof value.href === "string" && "phone" in value;

// Old browsers have no locks; then whatever is found is taken as left open.
const locks = (): LockManager | undefined =>
  (globalThis.navigator as (Navigator & { readonly locks?: LockManager }) | undefined)?.locks;

/** Holds the lock that says this page lives; returns how to let go. */
export function holdAlive(what: LeftOpen): () => void {
  let letGo = (): void => undefined;
  const open = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  void locks()?.request(leftOpenKey(what), { mode: "shared" }, () => open);
  return () => letGo();
}

/** Whether another page has it open right now. */
export async function isAliveElsewhere(what: LeftOpen): Promise<boolean> {
  const held = await locks()?.query();
  return held?.held?.some(({ name }) => name === leftOpenKey(what)) ?? false;
}

/** Writes it down, durably; `undefined` crosses it out. A refused store is no reason not to go on. */
export async function writeOpen(store: Settings, what: LeftOpen, value: unknown): Promise<void> {
  await store.keepSetting(leftOpenKey(what), value ?? null);
}

/** What was written down and not crossed out. */
export async function readOpen(store: Settings, what: LeftOpen): Promise<unknown> {
  const kept = await store.setting(leftOpenKey(what));
  return kept.ok ? (kept.value ?? undefined) : undefined;
}
