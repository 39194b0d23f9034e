/**
 * The test function of the end-to-end tests: the built app on a port of its own, and a page that fails its test when
 * the app breaks its policy, throws or asks another origin. Refuses to know any screen.
 */
import { test as base, expect } from "@playwright/test";
import { type Serving, serve } from "../../src/cli/serve.js";
import { watchOffences } from "./offences.js";

interface Wishes {
  /**
   * Whether the windows keep the whole app, as a phone does. Fetching all of it costs every test more than a second;
   * only what is about being without a signal, about updates or about what is fetched asks for it. The others run in
   * a browser without service workers, which the app knows.
   */
  readonly keepsApp: boolean;
}

interface PerWorker {
  /** The built app, served for this worker alone. */
  readonly site: Serving;
}

/**
 * For what brings a page or a browser of its own. Knows the same things of a worker as {@link test}: with others, the
 * runner would end its worker and browser and begin anew at every change from one kind of test to the other.
 */
export const bare = base.extend<object, PerWorker>({
  site: [
    // Playwright reads a fixture's needs off this pattern and refuses any other first argument.
    async ({ browserName: _none }, use) => {
      const serving = await serve({ port: 0 });
      await use(serving);
      await serving.close();
    },
    { scope: "worker" },
  ],
});

export const test = bare.extend<Wishes>({
  keepsApp: [false, { option: true }],
  context: async ({ context, site, keepsApp }, use) => {
    if (!keepsApp)
      await context.addInitScript(() => Object.defineProperty(navigator, "serviceWorker", { value: undefined }));
    const offences = await watchOffences(context, new URL(site.address).origin);
    await use(context);
    expect(offences.seen, "what the app may never do").toEqual([]);
  },
});

export { expect };
