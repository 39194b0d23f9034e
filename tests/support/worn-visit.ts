/** Puts a visit with many replies into the app's database from within its page, past the screens. Knows no sheet. */
import { fileURLToPath } from "node:url";
import type { Page } from "@playwright/test";
import { build } from "vite";
import type { WornVisit } from "./pages/worn-visit/main.js";

/** Builds what runs in the page, as one script. */
async function script(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: "warn",
    build: {
      write: false,
      lib: {
        entry: fileURLToPath(new URL("./pages/worn-visit/main.ts", import.meta.url)),
        formats: ["iife"],
        name: "worn",
      },
    },
  });
  const [first] = Array.isArray(built) ? built : [built];
  const chunk = first && "output" in first ? first.output.find((one) => one.type === "chunk") : undefined;
  if (chunk?.type !== "chunk") throw new Error("what runs in the page did not build");
  return chunk.code;
}

/** How many replies were kept. */
export async function wear(page: Page, asked: WornVisit): Promise<number> {
  await page.evaluate(await script());
  return page.evaluate((one) => globalThis.leadlampWear(one), asked);
}
