/**
 * Door of device/photo: looking through the camera, and pictures made ready to be kept off the main thread. The worker
 * itself is worker.ts.
 */
import type { Camera } from "../../core/record/camera.js";
import { cameraOn, drawFrame } from "./viewfinder.js";

export { type PictureWorker, startPictureQueue } from "./queue.js";

/** This phone's camera at the back. */
export const browserCamera: Camera<HTMLVideoElement, Blob> = {
  // Old browsers and pages that are not secure have no such member, whatever the types say.
  open: (screen, onLost) =>
    cameraOn({ devices: navigator.mediaDevices as MediaDevices | undefined, draw: drawFrame }).open(screen, onLost),
};
