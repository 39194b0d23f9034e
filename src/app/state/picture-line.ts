/**
 * Pictures on their way into the record: made small one at a time, kept one by one, each stoppable without the others.
 * Goes on while the screens change; waits while storage refuses. Knows no screen and no camera.
 */
import { effect, type ReadonlySignal, signal } from "@preact/signals";
import type { App } from "./app.js";
import type { PictureSpot } from "./picture-spot.js";
import { picture, type SaidOfPicture } from "./visit-acts.js";

/** Something that can be made into a picture: a shot, or a file with its name. */
export type PictureSource = Blob & { readonly name?: string };

export interface Waiting {
  readonly id: number;
  readonly visit: string;
  readonly spot: PictureSpot;
  /** The file's name; empty for a shot. */
  readonly name: string;
  /** `unread`: the phone no longer gives the file away. */
  readonly is: "waiting" | "working" | "unread";
}

/** How far the line is: `done` of `all` since it was last empty. */
export interface Progress {
  readonly waiting: readonly Waiting[];
  readonly done: number;
  readonly all: number;
}

export interface PictureLine {
  readonly now: ReadonlySignal<Progress>;
  /** `more`: what is said of each picture in the same act. */
  add(visit: string, sources: readonly PictureSource[], spot: PictureSpot, more?: SaidOfPicture): void;
  /** Leaves one out; the others go on. */
  leaveOut(id: number): void;
}

const EMPTY: Progress = { waiting: [], done: 0, all: 0 };

type Needs = Pick<App, "journal" | "pictures">;

/** Resolves when nothing is refused: what waits on the screen already would only grow. */
function untilKept({ journal }: Needs): Promise<void> {
  return new Promise((resolve) => {
    let stop: (() => void) | undefined;
    stop = effect(() => {
      if (journal.unkept.value.some(({ problem }) => problem)) return;
      resolve();
      queueMicrotask(() => stop?.());
    });
  });
}

export function openPictureLine(needs: Needs): PictureLine {
  const now = signal<Progress>(EMPTY);
  const sources = new Map<number, PictureSource>();
  const saids = new Map<number, SaidOfPicture>();
  let abort: { readonly id: number; readonly by: AbortController } | undefined;
  let last = 0;
  let busy = false;

  const change = (id: number, is: Waiting["is"]): void => {
    now.value = { ...now.peek(), waiting: now.peek().waiting.map((one) => (one.id === id ? { ...one, is } : one)) };
  };
  /** Out of the line; an empty line counts anew. */
  const leave = (id: number, kept: boolean): void => {
    sources.delete(id);
    saids.delete(id);
    const { waiting, done, all } = now.peek();
    const rest = waiting.filter((one) => one.id !== id);
    if (rest.length === waiting.length) return;
    const goesOn = rest.some(({ is }) => is !== "unread");
    now.value = goesOn
      ? { waiting: rest, done: done + (kept ? 1 : 0), all: kept ? all : all - 1 }
      : { ...EMPTY, waiting: rest };
  };

  const keepOne = async (one: Waiting, source: PictureSource): Promise<void> => {
    const by = new AbortController();
    abort = { id: one.id, by };
    change(one.id, "working");
    try {
      const made = await needs.pictures.keep(source, by.signal);
      if (by.signal.aborted) return leave(one.id, false);
      await picture(needs.journal, one.visit, made, one.spot, one.name, saids.get(one.id));
      leave(one.id, true);
    } catch (error) {
      if (by.signal.aborted) leave(one.id, false);
      else {
        change(one.id, "unread");
        sources.delete(one.id);
        if (!(error instanceof DOMException)) reportError(error);
      }
    } finally {
      abort = undefined;
    }
  };

  const work = async (): Promise<void> => {
    if (busy) return;
    busy = true;
    for (;;) {
      await untilKept(needs);
      const next = now.peek().waiting.find(({ is }) => is === "waiting");
      const source = next && sources.get(next.id);
      if (!next || !source) break;
      await keepOne(next, source);
    }
    busy = false;
  };

  return {
    now,
    add: (visit, added, spot, said) => {
      const more = added.map((source): Waiting => {
        const id = ++last;
        sources.set(id, source);
        if (said) saids.set(id, said);
        return { id, visit, spot, name: source.name ?? "", is: "waiting" };
      });
      const { waiting, done, all } = now.peek();
      now.value = { waiting: [...waiting, ...more], done, all: all + more.length };
      void work();
    },
    leaveOut: (id) => {
      if (abort?.id === id) abort.by.abort();
      else leave(id, false);
    },
  };
}

const lines = new WeakMap<App, PictureLine>();

/** The one line of this app. */
export function pictureLineOf(app: App): PictureLine {
  const there = lines.get(app) ?? openPictureLine(app);
  lines.set(app, there);
  return there;
}
