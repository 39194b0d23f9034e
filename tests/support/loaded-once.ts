/** The app loaded once, in any folder of a host that is gone from then on. Refuses to walk through it. */
import type { BrowserContext } from "@playwright/test";
import { serve } from "../../src/cli/serve.js";
import { type Offences, watchOffences } from "./offences.js";
import { Walker } from "./walker.js";

export interface LoadedOnce {
  readonly walker: Walker;
  /** What the app may never do, as far as it was seen. */
  readonly offences: Offences;
}

/** Loads all of the app, takes its server away and loads the page again. */
export async function loadedOnce(context: BrowserContext): Promise<LoadedOnce> {
  const serving = await serve({ port: 0, under: "/any/folder/" });
  try {
    const offences = await watchOffences(context, new URL(serving.address).origin);
    const walker = new Walker(await context.newPage(), serving.address);
    await walker.open();
    await walker.wholeAppKept();
    await serving.close();
    await walker.page.reload();
    await walker.stands();
    return { walker, offences };
  } finally {
    await serving.close();
  }
}
