/**
 * Keeps pictures one at a time through one worker: in the order asked, stoppable, the worker ended when idle and
 * replaced when it dies. Refuses to decode anything itself and to know where pictures go.
 */
import type { PictureKeeper, PictureOutcome } from "../../core/record/photo.js";
import { original } from "./as-it-came.js";
import type { KeepAnswer, KeepRequest } from "./messages.js";

/** What the queue needs of a worker; a test hands in its own. */
export interface PictureWorker {
  postMessage(message: KeepRequest): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<KeepAnswer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** Ended after ten idle seconds: its memory is the phone's. Own choice. */
const IDLE_MS = 10_000;
/** Longer than the slowest phone needs for its largest picture; then the worker counts as dead. Own choice. */
const DEAD_AFTER_MS = 60_000;
/** A picture that kills two workers is kept as it came. */
const TRIES = 2;

interface Waiting {
  readonly source: Blob;
  readonly abort: AbortSignal | undefined;
  readonly done: (outcome: PictureOutcome) => void;
  readonly failed: (error: unknown) => void;
}

const stopped = (abort: AbortSignal | undefined): unknown => abort?.reason ?? new DOMException("stopped", "AbortError");

/** Starts the queue; `makeWorker` is called when a picture waits and no worker runs. */
export function startPictureQueue(makeWorker: () => PictureWorker): PictureKeeper<Blob, AbortSignal> {
  const waiting: Waiting[] = [];
  let busy = false;
  let worker: PictureWorker | undefined;
  let idle: ReturnType<typeof setTimeout> | undefined;
  let lastId = 0;

  const end = (): void => {
    worker?.terminate();
    worker = undefined;
  };

  /** One attempt: the answer, or undefined when the worker died over it. Rejects when stopped or unreadable. */
  const attempt = ({ source, abort }: Waiting): Promise<PictureOutcome | undefined> =>
    new Promise((resolve, reject) => {
      const id = ++lastId;
      const settle = (then: () => void): void => {
        clearTimeout(dead);
        abort?.removeEventListener("abort", stop);
        then();
      };
      const lose = (): void => {
        end();
        settle(() => resolve(undefined));
      };
      const stop = (): void => {
        end();
        settle(() => reject(stopped(abort)));
      };
      const dead = setTimeout(lose, DEAD_AFTER_MS);
      abort?.addEventListener("abort", stop, { once: true });
      worker ??= makeWorker();
      worker.onerror = lose;
      worker.onmessage = ({ data }) => {
        if (data.id !== id) return;
        if ("outcome" in data) settle(() => resolve(data.outcome));
        else settle(() => reject(new DOMException(data.unreadable, "NotReadableError")));
      };
      worker.postMessage({ id, source });
    });

  const keepOne = async (next: Waiting): Promise<PictureOutcome> => {
    for (let tried = 0; tried < TRIES; tried++) {
      if (next.abort?.aborted) throw stopped(next.abort);
      const outcome = await attempt(next);
      if (outcome) return outcome;
    }
    return original(new Uint8Array(await next.source.arrayBuffer()), "cannot-read", next.source.type);
  };

  const work = async (): Promise<void> => {
    if (busy) return;
    busy = true;
    clearTimeout(idle);
    for (let next = waiting[0]; next !== undefined; next = waiting[0]) {
      await keepOne(next).then(next.done, next.failed);
      waiting.shift();
    }
    busy = false;
    idle = setTimeout(end, IDLE_MS);
  };

  return {
    keep: (source, abort) =>
      new Promise((done, failed) => {
        waiting.push({ source, abort, done, failed });
        void work();
      }),
    get waiting() {
      return waiting.length;
    },
  };
}
