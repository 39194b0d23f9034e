/** Door of device/photo: pictures made ready to be kept, off the main thread. The worker itself is worker.ts. */
export { type PictureWorker, startPictureQueue } from "./queue.js";
