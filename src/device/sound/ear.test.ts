import { expect, test } from "vitest";
import { type EarWorker, earOn } from "./ear.js";
import { hear } from "./hear.js";

const RATE = 48_000;
/** Only what is read of a decoded recording. */
const audio = (channels: readonly Float32Array[]): AudioBuffer =>
  ({
    length: channels[0]?.length ?? 0,
    numberOfChannels: channels.length,
    getChannelData: (channel: number) => channels[channel],
  }) as unknown as AudioBuffer;
const tone = (hz: number): Float32Array =>
  Float32Array.from({ length: 2 * RATE }, (_, i) => 0.5 * Math.sin((2 * Math.PI * hz * i) / RATE));

/** A worker on this very thread that writes down when it is thrown away. */
function worker(ended: string[], breaks = false): EarWorker {
  const made: EarWorker = {
    postMessage: ({ samples, rate }) =>
      queueMicrotask(() => {
        // Only what is read of the events.
        if (breaks) made.onerror?.({ message: "no memory" } as ErrorEvent);
        else made.onmessage?.({ data: hear(samples, rate) } as MessageEvent);
      }),
    terminate: () => ended.push("ended"),
    onmessage: null,
    onerror: null,
  };
  return made;
}

test("both channels are heard as one, the kept bytes stay with their owner, the worker is thrown away", async () => {
  const given: ArrayBuffer[] = [];
  const ended: string[] = [];
  const decode = async (bytes: ArrayBuffer) => {
    given.push(bytes);
    return audio([tone(440), tone(880)]);
  };
  const kept = new Uint8Array([1, 2, 3]);
  const listened = await earOn(
    () => ({ decodeAudioData: decode }),
    () => worker(ended),
  ).listen(kept);
  if (listened.is !== "heard") throw new Error(listened.why);
  expect(listened.heard.peaks.map(({ at }) => Math.round(at / 10)).sort()).toEqual([44, 88]);
  expect(given[0]).not.toBe(kept.buffer);
  expect(kept).toEqual(new Uint8Array([1, 2, 3]));
  expect(ended).toEqual(["ended"]);
});

test("what the browser can't decode, and a worker that breaks, are said to be unreadable", async () => {
  const refuses = { decodeAudioData: () => Promise.reject(new Error("EncodingError")) };
  const ended: string[] = [];
  const never = () => {
    throw new Error("no worker is wanted for what is not decoded");
  };
  expect(await earOn(() => refuses, never).listen(new Uint8Array([1]))).toEqual({ is: "nothing", why: "unreadable" });
  const decodes = { decodeAudioData: async () => audio([tone(440)]) };
  const broken = earOn(
    () => decodes,
    () => worker(ended, true),
  );
  expect(await broken.listen(new Uint8Array([1]))).toEqual({ is: "nothing", why: "unreadable" });
  expect(ended).toEqual(["ended"]);
});
