/**
 * A copy of the built app that can be turned into its own next version while it is served. Refuses to know what is
 * different about it but a mark on the page.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Serving, serve } from "../../src/cli/serve.js";

export interface TwoVersions {
  readonly serving: Serving;
  /** From now on the host has version `n` (2, 3 …): `<html data-version="n">`, and a service worker that knows it. */
  deploy(n: number): void;
  close(): Promise<void>;
}

const builtApp = fileURLToPath(new URL("../../dist/", import.meta.url));

/** Serves a copy of the built app. */
export async function serveVersions(): Promise<TwoVersions> {
  const dir = mkdtempSync(join(tmpdir(), "leadlamp-versions-"));
  cpSync(builtApp, dir, { recursive: true });
  const [page, worker] = [readFileSync(join(dir, "index.html"), "utf8"), readFileSync(join(dir, "sw.js"), "utf8")];
  const revision = /(["']?revision["']?:["'`])[0-9a-f]{32}(["'`],["']?url["']?:["'`]index\.html)/;
  if (!revision.test(worker)) throw new Error("the service worker's list names no index.html");
  const serving = await serve({ dir, port: 0 });
  return {
    serving,
    deploy: (n) => {
      writeFileSync(join(dir, "index.html"), page.replace("<html ", `<html data-version="${n}" `));
      writeFileSync(join(dir, "sw.js"), worker.replace(revision, `$1${String(n).padStart(32, "0")}$2`));
    },
    close: async () => {
      await serving.close();
      rmSync(dir, { recursive: true, force: true });
    },
  };
}
