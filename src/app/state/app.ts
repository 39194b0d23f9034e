/**
 * Everything a screen may reach, gathered once by main.tsx and handed down: record, visits laid out, sheets, settings,
 * address, and what the phone offers behind interfaces. Holds no logic of its own.
 */
import type { ReadonlySignal, Signal } from "@preact/signals";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Planner } from "../../core/plan/index.js";
import type { Camera } from "../../core/record/camera.js";
import type { FileDoor, Packer } from "../../core/record/files.js";
import type { Store } from "../../core/record/index.js";
import type { PictureKeeper } from "../../core/record/photo.js";
import type { SoundEar, SoundRecorder } from "../../core/record/sound.js";
import type { SheetPrinter } from "../../core/report/printer.js";
import type { Judging } from "./desk.js";
import type { Journal, Phone } from "./journal.js";
import type { Router } from "./router.js";
import type { Settings, TextShelf } from "./settings.js";
import type { SheetTools } from "./sheet-tools.js";
import type { Compiler, Shelf } from "./shelf.js";

/** What the browser offers around the app itself. */
export interface Surroundings {
  readonly online: ReadonlySignal<boolean>;
  /** A newer version waits for the person's word. */
  readonly updateWaits: ReadonlySignal<boolean>;
  readonly takeUpdate: () => void;
  /** Whether every part of the app is on this phone. */
  readonly partsKept: ReadonlySignal<"none" | "fetching" | "kept" | "failed">;
  /** Whether the browser promised not to clear the record; undefined while that is not known. */
  readonly persisted: ReadonlySignal<boolean | undefined>;
  /** Asks the browser for that promise. */
  readonly persist: () => Promise<boolean>;
  /** Bytes used, as the browser estimates them: no gauge of free space. */
  readonly usedBytes: () => Promise<number | undefined>;
  /** The browser's own offer to put the app on the home screen; undefined when it makes none. */
  readonly install: ReadonlySignal<(() => Promise<void>) | undefined>;
  readonly installed: boolean;
  readonly vibrate: (pattern: readonly number[]) => void;
  readonly steadyMs: () => number;
  readonly version: string;
}

export interface App {
  readonly router: Router;
  readonly settings: Signal<Settings>;
  readonly remembered: TextShelf;
  /** Drops what is remembered beside the record of cars and visits of these names: glances, typed words. */
  readonly forget: (names: readonly string[]) => Promise<void>;
  readonly journal: Journal;
  readonly store: Store;
  readonly phone: Phone;
  readonly shelf: Shelf;
  readonly compiler: Compiler;
  /** Reads, checks and writes check sheets; with its parsers it is fetched when it is first wanted. */
  readonly sheetTools: () => Promise<SheetTools>;
  readonly judging: () => Promise<Judging>;
  readonly pictures: PictureKeeper<Blob, AbortSignal>;
  /** Looking through the camera inside the page; its code is fetched when it is first wanted. */
  readonly camera: () => Promise<Camera<HTMLVideoElement, Blob>>;
  readonly files: FileDoor<File>;
  /** Packs and opens copies beside the screen; its code is fetched when one is first wanted. */
  readonly packer: () => Promise<Packer<File>>;
  /** Recording what is heard and taking it apart; its code is fetched when it is first wanted. */
  readonly sound: () => Promise<SoundRecorder & SoundEar>;
  readonly around: Surroundings;
  /** Plans work lists beside the screen; its code is fetched when a plan is first wanted. */
  readonly planner: () => Promise<Planner>;
  /** Prints hand-overs beside the screen; its code is fetched when one is wanted. */
  readonly printer: () => Promise<SheetPrinter>;
  /** Brings the demo in, or finds it; its car and last visit. */
  readonly openDemo: () => Promise<void>;
}

export const AppContext = createContext<App | undefined>(undefined);

/** The app around a screen. */
export function useApp(): App {
  const app = useContext(AppContext);
  if (!app) throw new Error("A screen was drawn outside the app");
  return app;
}
