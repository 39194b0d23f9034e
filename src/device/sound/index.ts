/** Door of device/sound: recording what the microphone hears, in slices, and taking a recording apart. */
import type { SoundEar, SoundRecorder } from "../../core/record/sound.js";
import { recorderOn } from "./recorder.js";

/** This phone's microphone. */
export const browserSound: SoundRecorder = {
  start: (onSlice, onLost) =>
    recorderOn({
      // Old browsers and pages that are not secure have no such members, whatever the types say.
      devices: navigator.mediaDevices as MediaDevices | undefined,
      Recorder: (globalThis as { readonly MediaRecorder?: typeof MediaRecorder }).MediaRecorder,
      isWebKit: "GestureEvent" in globalThis,
    }).start(onSlice, onLost),
};

/** Takes recordings apart; what that needs is fetched with the first. */
export const browserEar: SoundEar = {
  listen: async (bytes) => (await import("./ear.js")).browserEar.listen(bytes),
};
