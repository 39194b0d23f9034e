/**
 * Builds one of the pages under tests/support/pages as the app is built, policy included, and serves it. For tests of
 * a device folder alone in a real browser.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { pagePolicy } from "../../src/build/page-policy.js";
import { serve } from "../../src/cli/serve.js";

export interface BuiltPage {
  readonly address: string;
  close(): Promise<void>;
}

/** `name`: a folder under tests/support/pages. */
export async function buildPage(name: string): Promise<BuiltPage> {
  const dir = mkdtempSync(join(tmpdir(), `leadlamp-${name}-`));
  await build({
    configFile: false,
    root: fileURLToPath(new URL(`./pages/${name}/`, import.meta.url)),
    base: "./",
    logLevel: "warn",
    worker: { format: "es" },
    build: { outDir: dir, emptyOutDir: true, assetsInlineLimit: 0, modulePreload: false },
    plugins: [pagePolicy("")],
  });
  const serving = await serve({ dir, port: 0 });
  return {
    address: serving.address,
    close: async () => {
      await serving.close();
      rmSync(dir, { recursive: true, force: true });
    },
  };
}
