/**
 * The app's state without a screen: the small sheets on a shelf, a store in memory that can refuse, a journal, a visit
 * laid out. Refuses to know Preact components.
 */
import { createHash } from "node:crypto";
import { effect, type ReadonlySignal } from "@preact/signals";
import { newCar, openVisit } from "../../src/app/state/car-acts.js";
import { type Desk, layOut } from "../../src/app/state/desk.js";
import type { FrozenCommonFile, FrozenSheetFile } from "../../src/app/state/frozen.js";
import { type Journal, openJournal, type Phone } from "../../src/app/state/journal.js";
import { type Knowledge, knowledgeOf } from "../../src/app/state/knowledge.js";
import type { TextShelf } from "../../src/app/state/settings.js";
import type { Shelf } from "../../src/app/state/shelf.js";
import { type Entry, type MemoryWorld, memoryWorld, openMemoryStore, type Store } from "../../src/core/record/index.js";
import { buildPlaces, type CommonTexts, type Complaints, type SheetTexts } from "../../src/core/sheet/run.js";
import type { Audience, ReplyKey, ReplyValue } from "../../src/core/terms/index.js";
import { miniSheets } from "./mini-sheet.js";
import { planned } from "./small-car.js";

const { common, sheet } = miniSheets();
const { texts: commonTexts, complaints: listed, ...bareCommon } = common;
const { texts: sheetTexts, ...bareSheet } = sheet;
const built = planned(bareCommon, [bareSheet]);

function english<Texts>(texts: Readonly<Record<string, Texts>>): Texts {
  const found = texts["en"];
  if (!found) throw new Error("the small sheets speak English");
  return found;
}
const inEnglish: { readonly common: CommonTexts; readonly sheet: SheetTexts } = {
  common: english(commonTexts),
  sheet: english(sheetTexts),
};

/** The complaints the app knows now. */
export const miniComplaints: Complaints = { listed, texts: inEnglish.common.complaints };

/** The small sheets as the build lists them. */
export function miniShelf(): Shelf {
  const [hub] = built.sheets;
  if (!hub) throw new Error("the small sheet is there");
  return {
    sheets: [
      {
        id: "hub",
        edition: hub.edition,
        titles: { en: "Hubs" },
        load: async () => hub,
        source: async () => ({ sheet: hub.sheet, edition: hub.edition }),
        texts: { en: async () => inEnglish.sheet },
      },
    ],
    common: {
      edition: built.common.edition,
      load: async () => built.common,
      source: async () => ({ common: built.common.common, edition: built.common.edition }),
      texts: { en: async () => inEnglish.common },
    },
    complaints: { en: async () => miniComplaints },
  };
}

export const miniKnowledge = (): Knowledge => ({
  ...knowledgeOf(bareCommon, inEnglish.common, [{ sheet: bareSheet, texts: inEnglish.sheet }]),
  complaints: miniComplaints,
});
export const miniTree = () => buildPlaces(bareCommon.places).tree;

export const commonFrozen: FrozenCommonFile = {
  format: "leadlamp-frozen-common/1",
  edition: built.common.edition,
  common: bareCommon,
  texts: commonTexts,
};
export const sheetFrozen: FrozenSheetFile = {
  format: "leadlamp-frozen-sheet/1",
  edition: built.sheets[0]?.edition ?? "",
  sheet: bareSheet,
  texts: sheetTexts,
};

export interface Bench {
  readonly world: MemoryWorld;
  readonly store: Store;
  readonly journal: Journal;
  readonly phone: Phone;
  readonly remembered: TextShelf;
  /** Every entry told as durable, in order. */
  readonly kept: Entry[];
  /** While true the store refuses every write, as a full phone does. */
  refuse: boolean;
  readonly desk: (visit: string, shelf?: Shelf) => Desk;
}

const hash = async (bytes: Uint8Array): Promise<string> => createHash("sha256").update(bytes).digest("hex");

/** `world`: shared by two benches, as two windows share a phone. */
export function bench(world: MemoryWorld = memoryWorld(), person = { id: "p1", name: "Ines" }): Bench {
  let count = 0;
  let now = 1_800_000_000_000;
  const tag = `${person.id}${world.tabs.size}`;
  const nonce = (): string => `${tag}-${String(++count).padStart(6, "0")}`;
  const phone: Phone = { now: () => (now += 1000), nonce, hash };
  const full = (): void => {
    if (made.refuse) throw new DOMException("no room", "QuotaExceededError");
  };
  const store = openMemoryStore(world, {
    nonce,
    hashOf: hash,
    fault: (operation) => {
      if (operation.startsWith("put") || operation === "complete") full();
    },
  });
  const kept: Entry[] = [];
  const journal = openJournal(
    store,
    phone,
    () => person,
    (entries) => kept.push(...entries),
  );
  const compiler = { compile: async () => Promise.reject(new Error("nothing here needs the parser")) };
  const judging = () => import("../../src/app/state/judging.js");
  const texts = new Map<string, string>();
  const remembered: TextShelf = {
    get: (key) => texts.get(key) ?? null,
    put: (key, text) => void texts.set(key, text),
    drop: (key) => void texts.delete(key),
  };
  const made: Bench = {
    world,
    store,
    journal,
    phone,
    remembered,
    kept,
    refuse: false,
    desk: (visit, shelf = miniShelf()) => layOut({ journal, store, shelf, compiler, judging, remembered }, visit),
  };
  return made;
}

/** A car and a visit on the bench. */
export async function benchVisit(on: Bench, who: Audience = "technician"): Promise<{ car: string; visit: string }> {
  const car = await newCar(on.journal, "Bench car");
  const opening = { car: car ?? "", purpose: "workshop" as const, who, on: "2026-11-25T10:00:00+01:00" };
  const files = { common: commonFrozen, sheets: [sheetFrozen], limits: [] };
  const visit = await openVisit(on.journal, on.phone, { ...opening, ...files });
  if (car === undefined || visit === undefined) throw new Error("the bench keeps what it is given");
  return { car, visit };
}

export const key = (point: string, place: string, field: string, state = "w7-hang"): ReplyKey => ({
  point,
  place,
  state,
  field,
});
export const words = (...all: readonly string[]): ReplyValue => ({ type: "words", words: all });

/** Resolves when a signal holds what `is` looks for. */
export const until = <Value>(signal: ReadonlySignal<Value>, is: (value: Value) => boolean): Promise<Value> =>
  new Promise((resolve) => {
    const stop = effect(() => {
      const value = signal.value;
      if (is(value))
        queueMicrotask(() => {
          stop();
          resolve(value);
        });
    });
  });
