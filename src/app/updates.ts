/**
 * The service worker seen from a page: whether the app is wholly on this phone, and whether a newer version
 * waits for the person's word. Refuses to update by itself, and to know what the worker does.
 */
import { type ReadonlySignal, signal } from "@preact/signals";
import { trustedScript } from "./trusted.js";

/** `none`: this browser or address allows no service worker. `failed`: it could not be kept; works only online. */
export type Kept = "none" | "fetching" | "kept" | "failed";

export interface Updates {
  /** Whether every part of the app is kept on this phone. */
  readonly kept: ReadonlySignal<Kept>;
  /** A newer version is on this phone and waits. */
  readonly waiting: ReadonlySignal<boolean>;
  /** The person's yes: the newer version takes over and every open tab reloads. */
  agree(): void;
}

/** An old page whose parts are gone must not linger: reload even when the browser never says that it switched. */
const SWITCH_WITHIN_MS = 5_000;
/** A phone may keep the app open for days. */
const LOOK_AGAIN_MS = 60 * 60 * 1000;

/** Looks for a newer version whenever the app comes back into view, at most once an hour. */
function lookAgain(registration: ServiceWorkerRegistration): void {
  let last = performance.now();
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible" || performance.now() - last < LOOK_AGAIN_MS) return;
    last = performance.now();
    // Without a signal there is nothing to look for; the next time it comes into view will do.
    registration.update().catch(() => undefined);
  });
}

/** Registers the service worker at `script` and follows it. Call once, when the first screen stands. */
export function startUpdates(script = "./sw.js"): Updates {
  const kept = signal<Kept>("none");
  const waiting = signal(false);
  if (!("serviceWorker" in navigator)) return { kept, waiting, agree: () => undefined };

  const workers = navigator.serviceWorker;
  let registration: ServiceWorkerRegistration | undefined;
  // The very first worker takes over a page that came from the network: nothing to reload for.
  let takenOver = workers.controller !== null;
  workers.addEventListener("controllerchange", () => {
    if (takenOver) location.reload();
    takenOver = true;
  });

  const follow = async (): Promise<void> => {
    kept.value = "fetching";
    const { Workbox } = await import("workbox-window");
    const workbox = new Workbox(trustedScript(script));
    workbox.addEventListener("waiting", () => {
      waiting.value = true;
    });
    registration = await workbox.register({ immediate: true });
    await workbox.active;
    kept.value = "kept";
    if (registration) lookAgain(registration);
  };
  follow().catch(() => {
    kept.value = "failed";
  });

  const agree = (): void => {
    registration?.waiting?.postMessage({ type: "SKIP_WAITING" });
    setTimeout(() => location.reload(), SWITCH_WITHIN_MS);
  };
  return { kept, waiting, agree };
}
