/**
 * Takes a kept recording apart in this browser: decoded, mixed to one channel, measured. Refuses to play it and to
 * throw: what can't be read is said.
 */
import type { Listened, SoundEar } from "../../core/record/sound.js";
import { hear } from "./hear.js";

/** What browsers record at; everything is brought to it, so that lines lie on the same frequencies. */
const RATE = 48_000;
/** A minute is the longest anybody is asked to record; more is not needed to measure it. */
const MOST_S = 60;

type Decoder = Pick<BaseAudioContext, "decodeAudioData">;

function mixed(audio: AudioBuffer): Float32Array {
  const length = Math.min(audio.length, RATE * MOST_S);
  const out = new Float32Array(length);
  for (let channel = 0; channel < audio.numberOfChannels; channel++) {
    const samples = audio.getChannelData(channel);
    for (let i = 0; i < length; i++) out[i] = (out[i] ?? 0) + (samples[i] ?? 0) / audio.numberOfChannels;
  }
  return out;
}

/** An ear on `decoder`; a test hands in its own. */
export const earOn = (decoder: () => Decoder): SoundEar => ({
  async listen(bytes): Promise<Listened> {
    try {
      // Decoding takes the bytes away: it gets its own.
      const audio = await decoder().decodeAudioData(bytes.slice().buffer);
      return hear(mixed(audio), RATE);
    } catch {
      return { is: "nothing", why: "unreadable" };
    }
  },
});

export const browserEar: SoundEar = earOn(() => new OfflineAudioContext(1, 1, RATE));
