/**
 * Door of device/sound: recording what the microphone hears, in slices, and taking a recording apart. The worker itself
 * is worker.ts; whoever asks starts it.
 */
import type { SoundEar, SoundRecorder } from "../../core/record/sound.js";
import type { EarWorker } from "./ear.js";
import { recorderOn } from "./recorder.js";
import address from "./worker.js?worker&url";

/** This phone's microphone, and what takes its recordings apart: fetched with the first one. */
export const browserSound = (start: (address: string) => EarWorker): SoundRecorder & SoundEar => ({
  listen: async (bytes) => (await import("./ear.js")).browserEar(() => start(address)).listen(bytes),
  start: (onSlice, onLost) =>
    recorderOn({
      // Old browsers and pages that are not secure have no such members, whatever the types say.
      devices: navigator.mediaDevices as MediaDevices | undefined,
      Recorder: (globalThis as { readonly MediaRecorder?: typeof MediaRecorder }).MediaRecorder,
      isWebKit: "GestureEvent" in globalThis,
    }).start(onSlice, onLost),
});
