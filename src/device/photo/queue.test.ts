import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { PictureOutcome } from "../../core/record/photo.js";
import type { KeepRequest } from "./messages.js";
import { type PictureWorker, startPictureQueue } from "./queue.js";

/** A worker that answers only when told to. */
class HandWorker implements PictureWorker {
  onmessage: PictureWorker["onmessage"] = null;
  onerror: PictureWorker["onerror"] = null;
  asked: KeepRequest[] = [];
  ended = false;
  postMessage(message: KeepRequest): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.ended = true;
  }
  answer(outcome: PictureOutcome): void {
    const id = this.asked.at(-1)?.id ?? -1;
    this.onmessage?.(new MessageEvent("message", { data: { id, outcome } }));
  }
  cannotRead(): void {
    const id = this.asked.at(-1)?.id ?? -1;
    this.onmessage?.(new MessageEvent("message", { data: { id, unreadable: "gone" } }));
  }
  die(): void {
    this.onerror?.(new Event("error") as ErrorEvent);
  }
}

const bytes = { type: "image/jpeg", bytes: new Uint8Array(1), hash: "00", width: 1, height: 1 };
const picture = (hash: string): PictureOutcome => ({ kind: "picture", picture: { ...bytes, hash }, thumb: bytes });

let workers: HandWorker[];
const make = (): HandWorker => {
  const worker = new HandWorker();
  workers.push(worker);
  return worker;
};
const turn = (): Promise<unknown> => vi.advanceTimersByTimeAsync(0);
const worker = (index: number): HandWorker => {
  const one = workers[index];
  if (!one) throw new Error(`worker ${index} was never made`);
  return one;
};

beforeEach(() => {
  workers = [];
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test("pictures are worked on one at a time, in the order taken", async () => {
  const queue = startPictureQueue(make);
  const first = queue.keep(new Blob(["1"]));
  const second = queue.keep(new Blob(["2"]));
  await turn();
  expect(queue.waiting).toBe(2);
  expect(worker(0).asked).toHaveLength(1);
  worker(0).answer(picture("first"));
  expect(await first).toEqual(picture("first"));
  await turn();
  expect(worker(0).asked).toHaveLength(2);
  worker(0).answer(picture("second"));
  expect(await second).toEqual(picture("second"));
  await turn();
  expect(queue.waiting).toBe(0);
  expect(workers).toHaveLength(1);
});

test("the worker is ended after ten idle seconds and made anew for the next picture", async () => {
  const queue = startPictureQueue(make);
  const first = queue.keep(new Blob(["1"]));
  await turn();
  worker(0).answer(picture("first"));
  await first;
  await vi.advanceTimersByTimeAsync(9_000);
  expect(worker(0).ended).toBe(false);
  await vi.advanceTimersByTimeAsync(2_000);
  expect(worker(0).ended).toBe(true);
  const second = queue.keep(new Blob(["2"]));
  await turn();
  worker(1).answer(picture("second"));
  expect(await second).toEqual(picture("second"));
});

test("stopping the picture in work ends its worker; the next one gets its own", async () => {
  const queue = startPictureQueue(make);
  const stop = new AbortController();
  const first = queue.keep(new Blob(["1"]), stop.signal);
  const second = queue.keep(new Blob(["2"]));
  await turn();
  stop.abort();
  await expect(first).rejects.toMatchObject({ name: "AbortError" });
  await turn();
  expect(worker(0).ended).toBe(true);
  worker(1).answer(picture("second"));
  expect(await second).toEqual(picture("second"));
});

test("a picture stopped while it waits never reaches a worker", async () => {
  const queue = startPictureQueue(make);
  const stop = new AbortController();
  const first = queue.keep(new Blob(["1"]));
  const second = queue.keep(new Blob(["2"]), stop.signal);
  second.catch(() => undefined);
  stop.abort();
  await turn();
  worker(0).answer(picture("first"));
  await first;
  await expect(second).rejects.toMatchObject({ name: "AbortError" });
  expect(worker(0).asked).toHaveLength(1);
});

test("a worker that dies is replaced once and the picture tried again", async () => {
  const queue = startPictureQueue(make);
  const kept = queue.keep(new Blob(["1"]));
  await turn();
  worker(0).die();
  await turn();
  worker(1).answer(picture("again"));
  expect(await kept).toEqual(picture("again"));
});

test("a picture that kills two workers is kept as it came, and named", async () => {
  const queue = startPictureQueue(make);
  const kept = queue.keep(new Blob(["abc"], { type: "image/odd" }));
  await turn();
  worker(0).die();
  await turn();
  worker(1).die();
  vi.useRealTimers();
  expect(await kept).toEqual({
    kind: "original",
    why: "cannot-read",
    type: "image/odd",
    bytes: new TextEncoder().encode("abc"),
    // SHA-256 of "abc", FIPS 180-2 appendix B.1.
    hash: "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
  });
});

test("a worker that says nothing for a minute counts as dead", async () => {
  const queue = startPictureQueue(make);
  const kept = queue.keep(new Blob(["1"]));
  await vi.advanceTimersByTimeAsync(61_000);
  expect(worker(0).ended).toBe(true);
  worker(1).answer(picture("again"));
  expect(await kept).toEqual(picture("again"));
});

test("a file that can no longer be read is refused, and the queue goes on", async () => {
  const queue = startPictureQueue(make);
  const gone = queue.keep(new Blob(["1"]));
  const next = queue.keep(new Blob(["2"]));
  await turn();
  worker(0).cannotRead();
  await expect(gone).rejects.toMatchObject({ name: "NotReadableError" });
  await turn();
  worker(0).answer(picture("next"));
  expect(await next).toEqual(picture("next"));
});
