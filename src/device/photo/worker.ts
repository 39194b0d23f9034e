/** The picture worker: takes one file, answers with what to keep. Holds nothing between two pictures. */
import type { PictureOutcome } from "../../core/record/photo.js";
import { makeKept } from "./make.js";
import type { KeepAnswer, KeepRequest } from "./messages.js";

function buffersOf(outcome: PictureOutcome): ArrayBuffer[] {
  if (outcome.kind === "original") return [outcome.bytes.buffer];
  return [outcome.picture.bytes.buffer, outcome.thumb.bytes.buffer];
}

self.addEventListener("message", (event: MessageEvent<KeepRequest>) => {
  const { id, source } = event.data;
  makeKept(source).then(
    (outcome) => self.postMessage({ id, outcome } satisfies KeepAnswer, { transfer: buffersOf(outcome) }),
    (error: unknown) => self.postMessage({ id, unreadable: String(error) } satisfies KeepAnswer),
  );
});
