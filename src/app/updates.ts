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
  /** The person's yes: the newer version takes over and every open window loads again. */
  agree(): void;
}

/** An old page whose parts are gone must not linger: load again even when the browser never says that it switched. */
const SWITCH_WITHIN_MS = 15_000;
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

/** Tells of each worker that has fetched everything, or could not. */
function followInstalling(registration: ServiceWorkerRegistration, tell: (state: ServiceWorkerState) => void): void {
  const follow = (worker: ServiceWorker | null): void =>
    worker?.addEventListener("statechange", () => tell(worker.state));
  follow(registration.installing);
  registration.addEventListener("updatefound", () => follow(registration.installing));
}

/**
 * Loads the page again when another worker takes over. Call once, before anything else: a worker that takes over while
 * the first screen is still being made would else leave an old page on a new worker.
 */
export function followSwitch(): void {
  const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;
  if (!workers) return;
  // The very first worker takes over a page that came from the network: nothing to load again for.
  let takenOver = workers.controller !== null;
  workers.addEventListener("controllerchange", () => {
    if (takenOver) location.reload();
    takenOver = true;
  });
}

/** Registers the service worker at `script` and follows it. Call once, when the first screen stands. */
export function startUpdates(script = "./sw.js"): Updates {
  const kept = signal<Kept>("none");
  const waiting = signal(false);
  const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;
  if (!workers) return { kept, waiting, agree: () => undefined };

  let registration: ServiceWorkerRegistration | undefined;

  const look = (): void => {
    waiting.value = registration?.waiting != null && registration.active != null;
    if (registration?.active) kept.value = "kept";
  };
  kept.value = "fetching";
  workers.register(trustedScript(script)).then(
    (registered) => {
      registration = registered;
      followInstalling(registered, (state) => {
        if (state === "redundant" && !registered.active) kept.value = "failed";
        else look();
      });
      look();
      lookAgain(registered);
    },
    () => {
      kept.value = "failed";
    },
  );

  const agree = (): void => {
    registration?.waiting?.postMessage({ type: "SKIP_WAITING" });
    setTimeout(() => location.reload(), SWITCH_WITHIN_MS);
  };
  return { kept, waiting, agree };
}
