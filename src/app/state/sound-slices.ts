/**
 * A recording under way, slice by slice in what this phone remembers, until it is one sound of the visit. What is found
 * after the page was ended is made into a sound that says it was cut off. Knows no microphone.
 */
import { effect } from "@preact/signals";
import type { IdText, Store, VisitState } from "../../core/record/index.js";
import type { Journal, Opened, Phone } from "./journal.js";
import { leftOpenKey, writeOpen } from "./left-open.js";
import type { PointAt } from "./standing.js";
import { sound } from "./visit-acts.js";

type Settings = Pick<Store, "setting" | "keepSetting">;

/** What is being recorded, and where it belongs. */
export interface SoundOpen {
  readonly id: string;
  readonly visit: string;
  readonly at: PointAt;
  readonly type: string;
}
export const isSoundOpen = (value: unknown): value is SoundOpen =>
  typeof value === "object" && value !== null && "id" in value && "visit" in value && "at" in value && "type" in value;

interface Slice {
  readonly of: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}
const isSlice = (value: unknown): value is Slice =>
  typeof value === "object" && value !== null && "of" in value && "bytes" in value && value.bytes instanceof Uint8Array;

/** Names are used again by the next recording: what lies there is told apart by whose slice it is. */
const sliceKey = (index: number): string => `sound.slice.${index}`;

/** Writes down what is to be recorded, before anything is heard. */
export const beginSound = (store: Settings, open: SoundOpen): Promise<void> => writeOpen(store, "sound", open);

/** Keeps one slice durably. */
export async function keepSlice(
  store: Settings,
  of: string,
  index: number,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<void> {
  await store.keepSetting(sliceKey(index), { of, bytes } satisfies Slice);
}

/** All slices of a recording, in order; the first one missing ends it. */
async function slicesOf(store: Settings, id: string): Promise<readonly Uint8Array<ArrayBuffer>[]> {
  const slices: Uint8Array<ArrayBuffer>[] = [];
  for (;;) {
    const kept = await store.setting(sliceKey(slices.length));
    if (!kept.ok || !isSlice(kept.value) || kept.value.of !== id) return slices;
    slices.push(kept.value.bytes);
  }
}

function joined(slices: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(slices.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const slice of slices) {
    bytes.set(slice, at);
    at += slice.length;
  }
  return bytes;
}

/** Forgets a recording and its slices: it was thrown away, or is a sound of the visit by now. */
export async function forgetSound(store: Settings, id: string): Promise<void> {
  await writeOpen(store, "sound", undefined);
  const { length } = await slicesOf(store, id);
  for (let index = 0; index < length; index++) await store.keepSetting(sliceKey(index), null);
}

/** A minute is far fewer slices; own choice: so many empty names in a row, and there is none behind them. */
const EMPTY_AT_LAST = 100;

/**
 * Drops what was heard and is no sound yet, of visits that are deleted: every slice but those of a recording open for
 * another visit. Slices that could not be told apart before (a gap between them) go as well.
 */
export async function forgetSlices(store: Settings, visits: readonly string[]): Promise<void> {
  const kept = await store.setting(leftOpenKey("sound"));
  const open = kept.ok && isSoundOpen(kept.value) ? kept.value : undefined;
  const isGone = open !== undefined && visits.includes(open.visit);
  if (isGone) await writeOpen(store, "sound", undefined);
  for (let index = 0, empty = 0; empty < EMPTY_AT_LAST; index++) {
    const slice = await store.setting(sliceKey(index));
    if (!slice.ok) return;
    const isKept = isSlice(slice.value);
    empty = isKept ? 0 : empty + 1;
    if (isSlice(slice.value) && (isGone || slice.value.of !== open?.id)) await store.keepSetting(sliceKey(index), null);
  }
}

/** The visit once it is read, or why it is not. */
function openedVisit(
  journal: Needs["journal"],
  stream: string,
): Promise<Exclude<Opened<VisitState>, { readonly is: "opening" }>> {
  const kept = journal.keptVisit(stream);
  return new Promise((resolve) => {
    let stop: (() => void) | undefined;
    stop = effect(() => {
      const now = kept.value;
      if (now.is === "opening") return;
      resolve(now);
      queueMicrotask(() => stop?.());
    });
  });
}

interface Needs {
  readonly store: Settings;
  readonly journal: Journal;
  readonly phone: Phone;
}

/**
 * Makes the slices one sound of its visit. `ms`: how long it ran; absent: it was cut off. True once it is kept, or there
 * was nothing to keep; until then the slices stay.
 */
export async function finishSound({ store, journal, phone }: Needs, open: SoundOpen, ms?: number): Promise<boolean> {
  const slices = await slicesOf(store, open.id);
  const bytes = joined(slices);
  if (bytes.length > 0) {
    const hash = await phone.hash(bytes);
    const opened = await openedVisit(journal, open.visit);
    // Nothing of it is left to read: it was deleted for good meanwhile, and what was heard there goes as well.
    if (opened.is === "missing" || (opened.is === "open" && !opened.state.opened)) {
      await forgetSlices(store, [open.visit]);
      return true;
    }
    const kept = opened.is === "open" ? opened.state : undefined;
    const isThere = kept?.sounds.some(({ value }) => value.blob === hash);
    const body = { blob: hash, type: open.type, ms: ms ?? 0, ...open.at, ...(ms === undefined ? { cut: true } : {}) };
    if (!isThere && !(await sound(journal, open.visit, body, bytes))) return false;
  }
  await forgetSound(store, open.id);
  return true;
}

/** A sound as lists need it. */
export interface SoundOfList {
  readonly id: IdText;
  readonly blob: string;
  readonly ms: number;
  readonly cut: boolean;
}
