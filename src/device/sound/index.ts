/** Door of device/sound: recording what the microphone hears, in slices, and taking a recording apart. */
import type { SoundEar, SoundRecorder } from "../../core/record/sound.js";
import { recorderOn } from "./recorder.js";

/** This phone's microphone, and what takes its recordings apart: fetched with the first one. */
export const browserSound: SoundRecorder & SoundEar = {
  listen: async (bytes) => (await import("./ear.js")).browserEar.listen(bytes),
  start: (onSlice, onLost) =>
    recorderOn({
      // Old browsers and pages that are not secure have no such members, whatever the types say.
      devices: navigator.mediaDevices as MediaDevices | undefined,
      Recorder: (globalThis as { readonly MediaRecorder?: typeof MediaRecorder }).MediaRecorder,
      isWebKit: "GestureEvent" in globalThis,
    }).start(onSlice, onLost),
};
