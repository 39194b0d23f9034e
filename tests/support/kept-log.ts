/**
 * Writes down, outside the browser, what the app acknowledged as durable, and reads what is really in its database.
 * Refuses to trust either about the other.
 */
import { appendFileSync, existsSync, readFileSync } from "node:fs";
import type { BrowserContext, Page } from "@playwright/test";
import { KEPT_EVENT, type KeptDetail } from "../../src/app/kept-event.js";

/** One acknowledged entry, where the app was, and the reply that was pressed last before it. */
export interface Acknowledged {
  readonly id: string;
  readonly kind: string;
  readonly hash: string;
}

declare global {
  /** Put into every page by {@link logKept}. */
  var leadlampKept: ((detail: KeptDetail, hash: string) => Promise<void>) | undefined;
}

type Kept = KeptDetail["kept"][number];
const idOf = ({ stream, writer, seq, nonce }: Omit<Kept, "kind">): string => `${stream} ${writer} ${seq} ${nonce}`;

/** From now on every acknowledgement in `context` is appended to `file`, in a process that is not killed. */
export async function logKept(context: BrowserContext, file: string): Promise<void> {
  await context.exposeBinding("leadlampKept", (_, detail: KeptDetail, hash: string) => {
    const lines = detail.kept.map((entry) =>
      JSON.stringify({ id: idOf(entry), kind: entry.kind, hash } satisfies Acknowledged),
    );
    appendFileSync(file, lines.map((line) => `${line}\n`).join(""));
  });
  await context.addInitScript((name) => {
    document.addEventListener(name, (event) => {
      if (event instanceof CustomEvent) void globalThis.leadlampKept?.(event.detail, location.hash);
    });
  }, KEPT_EVENT);
}

/** Everything acknowledged so far. */
export function acknowledged(file: string): readonly Acknowledged[] {
  if (!existsSync(file)) return [];
  const lines = readFileSync(file, "utf8").split("\n");
  // Written by logKept, whole lines only.
  return lines.filter((line) => line !== "").map((line) => JSON.parse(line) as Acknowledged);
}

/** Identities of every entry in the page's database, read past the app. */
export async function entriesInDatabase(page: Page): Promise<ReadonlySet<string>> {
  const keys = await page.evaluate(async () => {
    const found: string[] = [];
    for (const { name } of await indexedDB.databases()) {
      if (name === undefined) continue;
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open(name);
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      if (database.objectStoreNames.contains("entries")) {
        const all = database.transaction("entries").objectStore("entries").getAllKeys();
        await new Promise((resolve) => all.addEventListener("success", resolve));
        found.push(...all.result.map((key) => (Array.isArray(key) ? key.join(" ") : String(key))));
      }
      database.close();
    }
    return found;
  });
  return new Set(keys);
}
