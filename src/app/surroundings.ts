/** What the browser offers around the app: signal, storage's promise, installing, vibration. Knows no record. */
import { type ReadonlySignal, signal } from "@preact/signals";
import type { Surroundings } from "./state/app.js";
import type { TextShelf } from "./state/settings.js";
import type { Updates } from "./updates.js";

/** The browser's offer to install, which its own types do not know yet. */
interface InstallOffer extends Event {
  prompt(): Promise<unknown>;
}
const isInstallOffer = (event: Event): event is InstallOffer => "prompt" in event && typeof event.prompt === "function";

function followOnline(): ReadonlySignal<boolean> {
  const online = signal(navigator.onLine);
  const follow = (): void => {
    online.value = navigator.onLine;
  };
  addEventListener("online", follow);
  addEventListener("offline", follow);
  return online;
}

function followInstall(): ReadonlySignal<(() => Promise<void>) | undefined> {
  const install = signal<(() => Promise<void>) | undefined>(undefined);
  addEventListener("beforeinstallprompt", (event) => {
    if (!isInstallOffer(event)) return;
    event.preventDefault();
    install.value = async () => {
      await event.prompt();
      install.value = undefined;
    };
  });
  return install;
}

/** Everything around, with the service worker's word in `updates`. */
export function surroundings(updates: Updates, version: string): Surroundings {
  const persisted = signal<boolean | undefined>(undefined);
  const storage = navigator.storage as StorageManager | undefined;
  void storage?.persisted?.().then((is) => {
    persisted.value = is;
  });
  return {
    online: followOnline(),
    updateWaits: updates.waiting,
    takeUpdate: updates.agree,
    partsKept: updates.kept,
    persisted,
    persist: async () => {
      const granted = (await storage?.persist?.()) ?? false;
      persisted.value = granted;
      return granted;
    },
    usedBytes: async () => (await storage?.estimate?.())?.usage,
    install: followInstall(),
    installed: matchMedia("(display-mode: standalone)").matches,
    vibrate: (pattern) => void navigator.vibrate?.([...pattern]),
    steadyMs: () => performance.now(),
    version,
  };
}

/** The browser's small text store; where it is refused, settings last as long as the page. */
export function textShelf(): TextShelf {
  const spare = new Map<string, string>();
  const tried = <Value>(work: () => Value, otherwise: () => Value): Value => {
    try {
      return work();
    } catch {
      return otherwise();
    }
  };
  return {
    get: (key) =>
      tried(
        () => localStorage.getItem(key),
        () => null,
      ) ??
      spare.get(key) ??
      null,
    put: (key, text) =>
      tried(
        () => localStorage.setItem(key, text),
        () => void spare.set(key, text),
      ),
    drop: (key) => {
      spare.delete(key);
      tried(
        () => localStorage.removeItem(key),
        () => undefined,
      );
    },
  };
}
