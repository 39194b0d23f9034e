/**
 * Records what the microphone hears with the type the engine really writes and plays, in short slices. Refuses to keep
 * anything and to know what it is a sound of.
 */
import type { NoMicrophone, SoundRecorder } from "../../core/record/sound.js";

/** What is needed of the browser; a test hands in its own. */
export interface SoundAround {
  readonly devices: Pick<MediaDevices, "getUserMedia"> | undefined;
  readonly Recorder: Pick<typeof MediaRecorder, "isTypeSupported" | "prototype"> | undefined;
  /** WebKit says yes to types it does not play again. */
  readonly isWebKit: boolean;
}

/** At most so much is lost when the page is ended. Own choice. */
export const SLICE_MS = 2_000;
const WEBM = "audio/webm;codecs=opus";
const MP4 = "audio/mp4";

/** What a bearing sounds like is what telephones take for noise: nothing may be filtered out. */
const WISH: MediaStreamConstraints = {
  video: false,
  audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
};

const WHY: Readonly<Record<string, NoMicrophone>> = {
  NotAllowedError: "refused",
  SecurityError: "refused",
  NotFoundError: "none",
  NotReadableError: "busy",
  AbortError: "busy",
};

/** The first type the engine writes, the one it also plays for certain first. */
export function typeFor({ Recorder, isWebKit }: Pick<SoundAround, "Recorder" | "isWebKit">): string | undefined {
  const order = isWebKit ? [MP4, WEBM] : [WEBM, MP4, "audio/ogg;codecs=opus"];
  return order.find((type) => Recorder?.isTypeSupported(type));
}

type OnSlice = (bytes: Uint8Array<ArrayBuffer>) => Promise<void>;

/** Hands slices on in the order they came, however long each takes. */
function inOrder(onSlice: OnSlice): { add: (slice: Blob) => void; done: () => Promise<void> } {
  let tail: Promise<void> = Promise.resolve();
  return {
    add: (slice) => {
      if (slice.size === 0) return;
      tail = tail.then(async () => onSlice(new Uint8Array(await slice.arrayBuffer())));
    },
    done: () => tail,
  };
}

/** The recorder of these surroundings. */
export function recorderOn(around: SoundAround): SoundRecorder {
  return {
    async start(onSlice, onLost) {
      const { devices, Recorder } = around;
      const type = typeFor(around);
      if (!devices || !Recorder || type === undefined) return { is: "none", why: "not-offered" };
      let stream: MediaStream;
      try {
        stream = await devices.getUserMedia(WISH);
      } catch (error) {
        return { is: "none", why: WHY[error instanceof Error ? error.name : ""] ?? "busy" };
      }
      // The same class; only what is used of it is asked of a test.
      const recorder = new (Recorder as typeof MediaRecorder)(stream, { mimeType: type });
      const slices = inOrder(onSlice);
      recorder.ondataavailable = ({ data }) => slices.add(data);
      const ended = new Promise<void>((resolve) => {
        recorder.onstop = () => resolve();
      });
      for (const track of stream.getTracks()) track.addEventListener("ended", onLost, { once: true });
      recorder.start(SLICE_MS);
      return {
        is: "recording",
        recording: {
          type: recorder.mimeType || type,
          stop: async () => {
            if (recorder.state !== "inactive") recorder.stop();
            await ended;
            for (const track of stream.getTracks()) track.stop();
            await slices.done();
          },
        },
      };
    },
  };
}
