/**
 * Service worker: keeps the whole app on the phone and answers from there. A new version waits until the
 * person agrees (message SKIP_WAITING). Refuses to know the record: it never touches what a person entered.
 */
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  type PrecacheEntry,
  precacheAndRoute,
} from "workbox-precaching";
import { NavigationRoute, registerRoute } from "workbox-routing";

declare const self: ServiceWorkerGlobalScope & { readonly __WB_MANIFEST: (PrecacheEntry | string)[] };

precacheAndRoute(self.__WB_MANIFEST, { ignoreURLParametersMatching: [/.*/] });
cleanupOutdatedCaches();

// Every address of the app is the one page; the addresses of screens live in its hash or below its folder.
registerRoute(new NavigationRoute(createHandlerBoundToURL("index.html")));

self.addEventListener("message", (event) => {
  const message: unknown = event.data;
  if (typeof message === "object" && message !== null && "type" in message && message.type === "SKIP_WAITING") {
    event.waitUntil(self.skipWaiting());
  }
});

// So that the very first visit is served from the phone too, lazy screens included, without a reload.
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
