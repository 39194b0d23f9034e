import { expect, test } from "vitest";
import { cameraOn } from "./viewfinder.js";

/** A camera that writes down what is done to it. */
function phone(wishes: { torch?: boolean; refuses?: string; width?: number } = {}) {
  const log: string[] = [];
  const listeners = new Map<string, () => void>();
  const track = {
    readyState: "live",
    stop: () => log.push("stop"),
    addEventListener: (name: string, listen: () => void) => listeners.set(name, listen),
    removeEventListener: (name: string) => listeners.delete(name),
    getCapabilities: () => (wishes.torch ? { torch: true } : {}),
    applyConstraints: async ({ advanced }: { advanced: readonly { torch: boolean }[] }) => {
      log.push(`torch ${advanced[0]?.torch}`);
    },
  };
  const stream = { getVideoTracks: () => [track], getTracks: () => [track] };
  const screen = { srcObject: null as unknown, videoWidth: wishes.width ?? 640, play: async () => undefined };
  const devices = {
    getUserMedia: async (wish: MediaStreamConstraints) => {
      log.push(`asked ${JSON.stringify((wish.video as MediaTrackConstraints).facingMode)}`);
      if (wishes.refuses) throw new DOMException("no", wishes.refuses);
      return stream;
    },
  };
  return {
    log,
    track,
    screen,
    lose: () => listeners.get("ended")?.(),
    // Only the few members the viewfinder uses are there.
    element: screen as unknown as HTMLVideoElement,
    camera: cameraOn({
      devices: devices as unknown as MediaDevices,
      draw: async () => new Blob(["frame"], { type: "image/jpeg" }),
    }),
  };
}

test("the camera at the back is asked for, shown, and given back", async () => {
  const { camera, element, screen, log } = phone();
  const looked = await camera.open(element, () => undefined);
  if (looked.is !== "open") throw new Error("not open");
  expect(screen.srcObject).not.toBeNull();
  expect(looked.viewfinder.torch).toBeUndefined();
  expect(await (await looked.viewfinder.shoot()).text()).toBe("frame");
  looked.viewfinder.close();
  expect(log).toEqual(['asked {"ideal":"environment"}', "stop"]);
  expect(screen.srcObject).toBeNull();
});

test("a torch is offered only where the camera has one", async () => {
  const { camera, element, log } = phone({ torch: true });
  const looked = await camera.open(element, () => undefined);
  if (looked.is !== "open") throw new Error("not open");
  expect(await looked.viewfinder.torch?.(true)).toBe(true);
  expect(log).toContain("torch true");
});

test.each([
  ["NotAllowedError", "refused"],
  ["NotFoundError", "none"],
  ["NotReadableError", "busy"],
  ["SomethingNew", "busy"],
])("what the browser calls %s is told as %s", async (name, why) => {
  const { camera, element } = phone({ refuses: name });
  expect(await camera.open(element, () => undefined)).toEqual({ is: "none", why });
});

test("a browser that gives pages no camera says so", async () => {
  const camera = cameraOn({ devices: undefined, draw: async () => new Blob() });
  const { element } = phone();
  expect(await camera.open(element, () => undefined)).toEqual({ is: "none", why: "not-offered" });
});

test("a camera taken away is told, and no empty picture is made of it", async () => {
  let lost = 0;
  const { camera, element, track, lose } = phone();
  const looked = await camera.open(element, () => {
    lost++;
  });
  if (looked.is !== "open") throw new Error("not open");
  track.readyState = "ended";
  lose();
  expect(lost).toBe(1);
  await expect(looked.viewfinder.shoot()).rejects.toThrow("shows nothing");
});
