/**
 * Builds the gallery of parts as the app is built, policy included, and serves it. The gallery itself is no part of
 * the built app.
 */
import { mkdtempSync, renameSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import preact from "@preact/preset-vite";
import { build } from "vite";
import { pagePolicy } from "../../src/build/page-policy.js";
import { serve } from "../../src/cli/serve.js";
import type { BuiltPage } from "./build-page.js";

const top = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

export async function buildGallery(): Promise<BuiltPage> {
  const dir = mkdtempSync(join(tmpdir(), "leadlamp-gallery-"));
  await build({
    configFile: false,
    root: top("src/app"),
    publicDir: top("public"),
    base: "./",
    logLevel: "warn",
    build: {
      outDir: dir,
      emptyOutDir: true,
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      target: ["chrome111", "safari16.4", "firefox115"],
      rolldownOptions: { input: top("src/app/gallery.html") },
    },
    plugins: [preact({ devToolsEnabled: false, prefreshEnabled: false }), pagePolicy("")],
  });
  renameSync(join(dir, "gallery.html"), join(dir, "index.html"));
  const serving = await serve({ dir, port: 0 });
  return {
    address: serving.address,
    close: async () => {
      await serving.close();
      rmSync(dir, { recursive: true, force: true });
    },
  };
}
