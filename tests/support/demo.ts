/**
 * The demo, brought in before a walk through it begins. The first test of a worker has the app write it, as a person does;
 * what that left in the browser's databases is laid into those of every later one, since writing it takes seconds and
 * comes to the same each time. Refuses to know what lies in it.
 */
import { expect, type Page } from "@playwright/test";
import { DEMO_CAR } from "../../src/app/demo/names.js";
import { paramOf } from "../../src/app/state/routes.js";
import type { Walker } from "./walker.js";

/** Databases as text, and all bytes that lay in them one after the other. */
interface Kept {
  readonly text: string;
  readonly bytes: Buffer;
}

interface KeptStore {
  readonly name: string;
  readonly keyPath: string | string[] | null;
  readonly indexes: readonly {
    readonly name: string;
    readonly keyPath: string | string[];
    readonly unique: boolean;
    readonly multiEntry: boolean;
  }[];
  readonly keys: readonly IDBValidKey[];
  readonly values: readonly unknown[];
}

interface KeptDatabase {
  readonly name: string;
  readonly version: number;
  readonly stores: readonly KeptStore[];
}

/** It only tells a hang from a busy machine. */
const WRITTEN_WITHIN_MS = 60_000;

/** What the demo came to at this address, on this day: it tells of days ago. */
let left: { readonly address: string; readonly on: string; readonly kept: Kept } | undefined;

/** Brings the demo in and stands at its car. Nothing else was opened in this window before. */
export async function openDemo(walker: Walker): Promise<void> {
  const { page, address } = walker;
  const on = new Date().toDateString();
  const isThere = left?.address === address && left.on === on;
  if (left && isThere) await layDown(page, address, left.kept);
  // The app goes to the demo's car where it finds it, and writes the demo where it does not.
  await walker.open("#/demo", WRITTEN_WITHIN_MS);
  await expect(page).toHaveURL(new RegExp(`#/car/${paramOf(DEMO_CAR)}`));
  if (!isThere) left = { address, on, kept: await takeUp(page) };
}

/** Takes up all that the page's origin keeps in databases. */
async function takeUp(page: Page): Promise<Kept> {
  const { text, base64 } = await page.evaluate(async () => {
    const answer = <Value>(request: IDBRequest<Value>): Promise<Value> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const taken: KeptDatabase[] = [];
    for (const { name } of await indexedDB.databases()) {
      if (name === undefined) continue;
      const database = await answer(indexedDB.open(name));
      const { version, objectStoreNames } = database;
      const transaction = database.transaction([...objectStoreNames]);
      const stores = [...objectStoreNames].map(async (each): Promise<KeptStore> => {
        const store = transaction.objectStore(each);
        const indexes = [...store.indexNames].map((index) => {
          const { name, keyPath, unique, multiEntry } = store.index(index);
          return { name, keyPath, unique, multiEntry };
        });
        const [keys, values] = await Promise.all([answer(store.getAllKeys()), answer(store.getAll())]);
        return { name: each, keyPath: store.keyPath, indexes, keys, values };
      });
      taken.push({ name, version, stores: await Promise.all(stores) });
      database.close();
    }
    const parts: ArrayBuffer[] = [];
    let length = 0;
    const text = JSON.stringify(taken, (_, value: unknown) => {
      if (!(value instanceof ArrayBuffer)) return value;
      parts.push(value);
      length += value.byteLength;
      return { bytesFrom: length - value.byteLength, to: length };
    });
    const told = new FileReader();
    await new Promise((resolve) => {
      told.onload = resolve;
      told.readAsDataURL(new Blob(parts));
    });
    return { text, base64: String(told.result).replace(/^[^,]*,/, "") };
  });
  return { text, bytes: Buffer.from(base64, "base64") };
}

/** Lays databases down as they were taken up, from a page of the app's origin on which the app does not run. */
async function layDown(page: Page, address: string, { text, bytes }: Kept): Promise<void> {
  const beside = `${address}kept/`;
  const answers = new Map<string, string | Buffer>([
    [beside, ""],
    [`${beside}text`, text],
    [`${beside}bytes`, bytes],
  ]);
  for (const [at, body] of answers) await page.route(at, (route) => route.fulfill({ contentType: "text/html", body }));
  await page.goto(beside);
  await page.evaluate(async () => {
    const bytes = await (await fetch("bytes")).arrayBuffer();
    const isBytes = (value: unknown): value is { readonly bytesFrom: number; readonly to: number } =>
      typeof value === "object" && value !== null && "bytesFrom" in value;
    const databases: readonly KeptDatabase[] = JSON.parse(await (await fetch("text")).text(), (_, value: unknown) =>
      isBytes(value) ? bytes.slice(value.bytesFrom, value.to) : value,
    );
    for (const { name, version, stores } of databases)
      await new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open(name, version);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
        // In the transaction that makes the stores: all of it is there, or none.
        opening.onupgradeneeded = () => {
          for (const { name: each, keyPath, indexes, keys, values } of stores) {
            const store = opening.result.createObjectStore(each, { keyPath });
            for (const { name: index, keyPath: of, ...how } of indexes) store.createIndex(index, of, how);
            for (const [at, value] of values.entries()) store.put(value, keyPath === null ? keys[at] : undefined);
          }
        };
      });
  });
  for (const at of answers.keys()) await page.unroute(at);
}
