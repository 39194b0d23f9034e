/** The worker that takes a recording apart: samples in, what they hold out, one recording a worker. */
import { hear } from "./hear.js";
import type { Samples } from "./messages.js";

self.onmessage = ({ data }: MessageEvent<Samples>): void => self.postMessage(hear(data.samples, data.rate), {});
