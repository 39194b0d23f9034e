/** Door of device/sound: recording what the microphone hears, in slices. */
import type { SoundRecorder } from "../../core/record/sound.js";
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
