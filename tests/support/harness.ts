/**
 * The test function of the end-to-end tests: the built app on a port of its own, and a page that fails its test when
 * the app breaks its policy, throws or asks another origin. Refuses to know any screen.
 */
import { test as base, expect } from "@playwright/test";
import { type Serving, serve } from "../../src/cli/serve.js";
import { watchOffences } from "./offences.js";

interface PerWorker {
  /** The built app, served for this worker alone. */
  readonly site: Serving;
}

export const test = base.extend<object, PerWorker>({
  site: [
    // Playwright reads a fixture's needs off this pattern and refuses any other first argument.
    async ({ browserName: _none }, use) => {
      const serving = await serve({ port: 0 });
      await use(serving);
      await serving.close();
    },
    { scope: "worker" },
  ],
  context: async ({ context, site }, use) => {
    const offences = await watchOffences(context, new URL(site.address).origin);
    await use(context);
    expect(offences.seen, "what the app may never do").toEqual([]);
  },
});

export { expect };
