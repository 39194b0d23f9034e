import { expect, test } from "vitest";
import { recorderOn, type SoundAround, typeFor } from "./recorder.js";

/** A recorder that writes what it is told to, and what is asked of the microphone. */
function phone(types: readonly string[], wishes: { refuses?: string; isWebKit?: boolean } = {}) {
  const log: string[] = [];
  let made: FakeRecorder | undefined;
  class FakeRecorder {
    static isTypeSupported = (type: string): boolean => types.includes(type);
    state = "inactive";
    ondataavailable: ((event: { data: Blob }) => void) | null = null;
    onstop: (() => void) | null = null;
    constructor(
      _stream: unknown,
      readonly wish: { mimeType: string },
    ) {
      made = this;
    }
    get mimeType(): string {
      return this.wish.mimeType;
    }
    start(every: number): void {
      this.state = "recording";
      log.push(`every ${every} ms`);
    }
    stop(): void {
      this.state = "inactive";
      this.ondataavailable?.({ data: new Blob(["last"]) });
      this.onstop?.();
    }
  }
  const track = { stop: () => log.push("microphone back"), addEventListener: () => undefined };
  const around = {
    devices: {
      getUserMedia: async (wish: MediaStreamConstraints) => {
        log.push(JSON.stringify(wish.audio));
        if (wishes.refuses) throw new DOMException("no", wishes.refuses);
        return { getTracks: () => [track] };
      },
    },
    Recorder: FakeRecorder,
    isWebKit: wishes.isWebKit === true,
    // Only the few members the recorder uses are there.
  } as unknown as SoundAround;
  return { log, around, say: (text: string) => made?.ondataavailable?.({ data: new Blob([text]) }) };
}

const WEBM = "audio/webm;codecs=opus";

test("slices are handed on in order, one at a time, and stopping waits for the last", async () => {
  const { around, say, log } = phone([WEBM]);
  const heard: string[] = [];
  const listening = await recorderOn(around).start(
    async (bytes) => {
      const text = new TextDecoder().decode(bytes);
      // The first one takes longest to keep.
      await new Promise((resolve) => setTimeout(resolve, text === "a" ? 20 : 0));
      heard.push(text);
    },
    () => undefined,
  );
  if (listening.is !== "recording") throw new Error("not recording");
  expect(listening.recording.type).toBe(WEBM);
  for (const text of ["a", "", "b"]) say(text);
  await listening.recording.stop();
  expect(heard).toEqual(["a", "b", "last"]);
  expect(log).toContain("microphone back");
});

test("nothing the machine sounds like is filtered out", async () => {
  const { around, log } = phone([WEBM]);
  await recorderOn(around).start(
    async () => undefined,
    () => undefined,
  );
  expect(JSON.parse(log[0] ?? "")).toEqual({
    echoCancellation: false,
    noiseSuppression: false,
    autoGainControl: false,
  });
});

test("the type is one the engine writes; WebKit is asked for the one it also plays", () => {
  expect(typeFor(phone([WEBM, "audio/mp4"]).around)).toBe(WEBM);
  expect(typeFor(phone([WEBM, "audio/mp4"], { isWebKit: true }).around)).toBe("audio/mp4");
  expect(typeFor(phone(["audio/mp4"]).around)).toBe("audio/mp4");
  expect(typeFor(phone([]).around)).toBeUndefined();
});

test.each([
  ["NotAllowedError", "refused"],
  ["NotFoundError", "none"],
  ["NotReadableError", "busy"],
])("what the browser calls %s is told as %s", async (refuses, why) => {
  const { around } = phone([WEBM], { refuses });
  expect(
    await recorderOn(around).start(
      async () => undefined,
      () => undefined,
    ),
  ).toEqual({ is: "none", why });
});

test("an engine that records nothing says so", async () => {
  const nothing = await recorderOn({ ...phone([]).around }).start(
    async () => undefined,
    () => undefined,
  );
  expect(nothing).toEqual({ is: "none", why: "not-offered" });
});
