import { expect, test } from "vitest";
import { earOn } from "./ear.js";

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

test("both channels are heard as one, and the kept bytes stay with their owner", async () => {
  const given: ArrayBuffer[] = [];
  const ear = earOn(() => ({
    decodeAudioData: async (bytes: ArrayBuffer) => {
      given.push(bytes);
      return audio([tone(440), tone(880)]);
    },
  }));
  const kept = new Uint8Array([1, 2, 3]);
  const listened = await ear.listen(kept);
  if (listened.is !== "heard") throw new Error(listened.why);
  expect(listened.heard.peaks.map(({ at }) => Math.round(at / 10)).sort()).toEqual([44, 88]);
  expect(given[0]).not.toBe(kept.buffer);
  expect(kept).toEqual(new Uint8Array([1, 2, 3]));
});

test("what the browser can't decode is said to be unreadable", async () => {
  const ear = earOn(() => ({ decodeAudioData: () => Promise.reject(new Error("EncodingError")) }));
  expect(await ear.listen(new Uint8Array([1]))).toEqual({ is: "nothing", why: "unreadable" });
});
