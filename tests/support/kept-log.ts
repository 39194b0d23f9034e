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

/** What is really in the database: identities of all entries, and the point the newest reply answers. */
export interface InDatabase {
  readonly ids: ReadonlySet<string>;
  /** As the app writes it into addresses: `STATE/PLACE/POINT`. */
  readonly newestReply: string | undefined;
}

/** What the page's database holds beside the record under names that begin with `prefix`, read past the app. */
export const settingsInDatabase = (page: Page, prefix: string): Promise<readonly string[]> =>
  page.evaluate(async (begin) => {
    const found: string[] = [];
    for (const { name } of await indexedDB.databases()) {
      if (name === undefined) continue;
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open(name);
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      if (database.objectStoreNames.contains("settings")) {
        const store = database.transaction("settings").objectStore("settings");
        const [names, values] = [store.getAllKeys(), store.getAll()];
        await new Promise((resolve) => values.addEventListener("success", resolve));
        found.push(...values.result.filter((_, n) => String(names.result[n]).startsWith(begin)).map(String));
      }
      database.close();
    }
    return found;
  }, prefix);

/** Reads the page's database past the app. */
export async function inDatabase(page: Page): Promise<InDatabase> {
  const found = await page.evaluate(async () => {
    const keys: string[] = [];
    let newest: { readonly wall: number; readonly count: number; readonly at: string } | undefined;
    for (const { name } of await indexedDB.databases()) {
      if (name === undefined) continue;
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open(name);
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      if (database.objectStoreNames.contains("entries")) {
        const store = database.transaction("entries").objectStore("entries");
        const [all, values] = [store.getAllKeys(), store.getAll()];
        await new Promise((resolve) => values.addEventListener("success", resolve));
        keys.push(...all.result.map((key) => (Array.isArray(key) ? key.join(" ") : String(key))));
        for (const { logged } of values.result) {
          if (logged.kind !== "reply") continue;
          const { wall, count } = logged.at;
          const { state, place, point } = logged.body.key;
          if (!newest || wall > newest.wall || (wall === newest.wall && count > newest.count)) {
            newest = { wall, count, at: `${state}/${place}/${point}` };
          }
        }
      }
      database.close();
    }
    return { keys, newest: newest?.at };
  });
  return { ids: new Set(found.keys), newestReply: found.newest };
}
