/**
 * Takes a kept recording apart: decoded and mixed to one channel here, measured beside the screen. Refuses to play it
 * and to throw: what can't be read is said.
 */
import type { Listened, SoundEar } from "../../core/record/sound.js";
import type { Samples } from "./messages.js";

/** What browsers record at; everything is brought to it, so that lines lie on the same frequencies. */
const RATE = 48_000;
/** A minute is the longest anybody is asked to record; more is not needed to measure it. */
const MOST_S = 60;

type Decoder = Pick<BaseAudioContext, "decodeAudioData">;

/** What is needed of a worker; a test hands in its own. */
export interface EarWorker {
  postMessage(message: Samples, transfer: ArrayBuffer[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Listened>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

function mixed(audio: AudioBuffer): Float32Array<ArrayBuffer> {
  const length = Math.min(audio.length, RATE * MOST_S);
  const out = new Float32Array(length);
  for (let channel = 0; channel < audio.numberOfChannels; channel++) {
    const samples = audio.getChannelData(channel);
    for (let i = 0; i < length; i++) out[i] = (out[i] ?? 0) + (samples[i] ?? 0) / audio.numberOfChannels;
  }
  return out;
}

/** One worker for one recording: it is thrown away with all it held. */
function measured(worker: EarWorker, samples: Float32Array<ArrayBuffer>): Promise<Listened> {
  return new Promise<Listened>((resolve, reject) => {
    worker.onmessage = ({ data }) => resolve(data);
    worker.onerror = (event) => reject(new Error(event.message || "The listening worker could not be started"));
    worker.postMessage({ samples, rate: RATE }, [samples.buffer]);
  }).finally(() => worker.terminate());
}

export const earOn = (decoder: () => Decoder, start: () => EarWorker): SoundEar => ({
  async listen(bytes): Promise<Listened> {
    try {
      // Decoding takes the bytes away: it gets its own.
      const audio = await decoder().decodeAudioData(bytes.slice().buffer);
      return await measured(start(), mixed(audio));
    } catch {
      return { is: "nothing", why: "unreadable" };
    }
  },
});

export const browserEar = (start: () => EarWorker): SoundEar => earOn(() => new OfflineAudioContext(1, 1, RATE), start);
