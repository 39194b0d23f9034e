/** A phone with something on it, copies of it, and archives made by hand: for tests of copies. Invented data. */
import { zipSync } from "fflate";
import {
  type CopyPlan,
  type CopyWhat,
  type Draft,
  draftCar,
  draftVisit,
  gatherCopy,
  type KeptBytes,
  type Logged,
  memoryWorld,
  openMemoryStore,
  type Store,
  writeVolume,
} from "../../src/core/record/index.js";
import type { Result } from "../../src/core/terms/index.js";
import { startPack } from "../../src/device/files/pack.js";
import { sha256 } from "../../src/device/files/parts.js";
import { act, bytesOf, fresh, newCar, newVisit, opening, pictureDraft, replyDraft, words } from "../store/sample.js";

export const newStore = (): Store => openMemoryStore(memoryWorld(), { nonce: () => fresh("r"), hashOf: sha256 });

export function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

export interface Filled {
  readonly store: Store;
  readonly car: string;
  readonly visit: string;
  readonly blobs: readonly KeptBytes[];
}

/** A phone with one car, one visit with frozen files, replies and pictures. */
export async function filledPhone(pictures = 3, store = newStore()): Promise<Filled> {
  const [car, visit] = [newCar(), newVisit()];
  const frozen = await Promise.all(
    ["sheet", "common", "limits"].map((one) => bytesOf(JSON.stringify({ one, car, of: visit }), "application/json")),
  );
  const [sheet, common, limits] = frozen.map(({ hash }) => hash) as [string, string, string];
  const taken = await Promise.all(Array.from({ length: pictures }, (_, i) => bytesOf(`picture ${i} of ${visit}`)));
  const opened = opening(car, {
    sheets: [{ id: "whl", edition: "e1", label: "Wheel bearings 1", blob: sheet }],
    common,
    limits,
  });
  const drafts: Draft[] = [
    draftCar(act(), car, "Little one"),
    draftVisit(act(), visit, opened),
    replyDraft(visit, "whl.spin", words("rough")),
    ...taken.map(({ hash }) => pictureDraft(visit, hash)),
  ];
  const blobs = [...frozen, ...taken];
  good(await store.append(drafts, blobs));
  return { store, car, visit, blobs };
}

const STAMP = { made: "2026-03-02T10:00:00.000Z", set: "set-1", app: "0.1.0" };

/** Every volume of a copy. */
export async function volumesOf(store: Store, plan: CopyPlan, passphrase?: string): Promise<readonly File[]> {
  const files: File[] = [];
  for (const index of plan.volumes.keys()) {
    // The least work there is: what is tested is the way, not the strength.
    const packing = startPack(`copy-${index + 1}.zip`, passphrase, new Date(STAMP.made), 10);
    files.push(good(await writeVolume(store, plan, index, STAMP, packing)));
  }
  return files;
}

/** A copy in one volume. */
export async function copyOf(store: Store, what: CopyWhat, passphrase?: string): Promise<File> {
  const [file] = await volumesOf(store, good(await gatherCopy(store, what)), passphrase);
  if (!file) throw new Error("A copy has a volume");
  return file;
}

/** Everything a store keeps of one's own: lines and bytes. */
export async function wholeOf(
  store: Store,
): Promise<{ readonly log: readonly Logged[]; readonly blobs: readonly string[] }> {
  const plan = await gatherCopy(store, { holds: "everything" });
  const log: Logged[] = [];
  for (const stream of good(await store.streams())) log.push(...good(await store.entries(stream)));
  const blobs = plan.ok ? [...plan.value.frozen, ...plan.value.volumes.flat()].map(({ hash }) => hash).sort() : [];
  return { log, blobs };
}

/** The files of an archive, to be changed and put together again. */
export type Loose = Record<string, Uint8Array>;
export const archive = (files: Loose): File => new File([new Uint8Array(zipSync(files))], "made-by-hand.zip");
