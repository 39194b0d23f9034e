/**
 * The camera at the back seen inside the page. A shot is the frame that is seen: as quick as the finger, and what was
 * seen is what is kept; for the finest detail the phone's own camera stands beside it. Refuses to keep anything.
 */
import type { Camera, NoCamera, Viewfinder } from "../../core/record/camera.js";

/** What is needed of the browser; a test hands in its own. */
export interface CameraAround {
  /** Absent where the page is not secure or the browser is old. */
  readonly devices: Pick<MediaDevices, "getUserMedia"> | undefined;
  readonly draw: (screen: HTMLVideoElement) => Promise<Blob>;
}

/** Enough for the 2048 pixels that are kept; asking for more makes some phones slow. Own choice. */
const WISH: MediaStreamConstraints = {
  audio: false,
  video: { facingMode: { ideal: "environment" }, width: { ideal: 2560 }, height: { ideal: 1920 } },
};
const SHOT_QUALITY = 0.92;

const WHY: Readonly<Record<string, NoCamera>> = {
  NotAllowedError: "refused",
  SecurityError: "refused",
  NotFoundError: "none",
  OverconstrainedError: "none",
  NotReadableError: "busy",
  AbortError: "busy",
};
const nameOf = (error: unknown): string => (error instanceof Error ? error.name : "");

/** The torch is known to some engines only, and to their types not at all. */
interface TorchTrack {
  getCapabilities?: () => { readonly torch?: boolean };
  applyConstraints(wish: { readonly advanced: readonly { readonly torch: boolean }[] }): Promise<void>;
}

function torchOf(track: MediaStreamTrack): Viewfinder<Blob>["torch"] {
  // The same track, seen with the members that its own type leaves out.
  const lit = track as unknown as TorchTrack;
  if (lit.getCapabilities?.().torch !== true) return undefined;
  return (on) =>
    lit.applyConstraints({ advanced: [{ torch: on }] }).then(
      () => on,
      () => false,
    );
}

/** The frame a video shows now, as JPEG. */
export async function drawFrame(screen: HTMLVideoElement): Promise<Blob> {
  const canvas = new OffscreenCanvas(screen.videoWidth, screen.videoHeight);
  canvas.getContext("2d")?.drawImage(screen, 0, 0);
  const shot = await canvas.convertToBlob({ type: "image/jpeg", quality: SHOT_QUALITY });
  // Engines otherwise hold the canvas's memory until they tidy up.
  canvas.width = 1;
  canvas.height = 1;
  return shot;
}

/** The camera of these surroundings. */
export function cameraOn({ devices, draw }: CameraAround): Camera<HTMLVideoElement, Blob> {
  return {
    async open(screen, onLost) {
      if (!devices) return { is: "none", why: "not-offered" };
      let stream: MediaStream;
      try {
        stream = await devices.getUserMedia(WISH);
      } catch (error) {
        return { is: "none", why: WHY[nameOf(error)] ?? "busy" };
      }
      const [track] = stream.getVideoTracks();
      if (!track) return { is: "none", why: "none" };
      track.addEventListener("ended", onLost);
      screen.srcObject = stream;
      // Some phones start the picture only when told to; one that will not start is told by the shot.
      await screen.play().catch(() => undefined);
      const torch = torchOf(track);
      return {
        is: "open",
        viewfinder: {
          ...(torch ? { torch } : {}),
          shoot: async () => {
            if (track.readyState === "ended" || screen.videoWidth === 0)
              throw new DOMException("the camera shows nothing", "InvalidStateError");
            return draw(screen);
          },
          close: () => {
            track.removeEventListener("ended", onLost);
            for (const one of stream.getTracks()) one.stop();
            screen.srcObject = null;
          },
        },
      };
    },
  };
}
