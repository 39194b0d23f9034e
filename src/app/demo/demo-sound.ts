/** The demo's sounds, reckoned and not recorded: a hub that runs quiet, one that begins to grumble and one that does, as plain WAV. */
import type { Bodies, KeptBytes } from "../../core/record/index.js";
import type { DemoNoise } from "./tell.js";

const RATE = 8000;
const SECONDS = 2;
const HEADER = 44;

export interface MadeSound {
  readonly body: Pick<Bodies["sound"], "blob" | "type" | "ms">;
  readonly blobs: readonly KeptBytes[];
}

/** A hiss like a hub that turns, with a beat of rough rolling over it where it grumbles. Between -1 and 1. */
function sampleAt(noise: DemoNoise, at: number, hiss: number): number {
  const soft = 0.04 * hiss;
  if (noise === "quiet") return soft;
  const rough = noise === "grumble" ? 1 : 0.25;
  const beat = Math.max(0, Math.sin(2 * Math.PI * 7 * at)) ** 3;
  return soft + rough * beat * (0.4 * Math.sin(2 * Math.PI * 62 * at) + 0.3 * hiss);
}

/** One channel of eight bits; the hiss comes from a fixed row of numbers, so the bytes are always the same. */
function wav(noise: DemoNoise): Uint8Array<ArrayBuffer> {
  const length = RATE * SECONDS;
  const bytes = new Uint8Array(HEADER + length);
  const view = new DataView(bytes.buffer);
  const text = (at: number, all: string): void => {
    for (const [i, letter] of [...all].entries()) view.setUint8(at + i, letter.charCodeAt(0));
  };
  text(0, "RIFF");
  view.setUint32(4, HEADER - 8 + length, true);
  text(8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, RATE, true);
  view.setUint32(28, RATE, true);
  view.setUint16(32, 1, true);
  view.setUint16(34, 8, true);
  text(36, "data");
  view.setUint32(40, length, true);
  let row = 1;
  for (let i = 0; i < length; i++) {
    row = (row * 16_807) % 2_147_483_647;
    bytes[HEADER + i] = 128 + Math.round(120 * sampleAt(noise, i / RATE, row / 1_073_741_823.5 - 1));
  }
  return bytes;
}

export async function demoSound(
  noise: DemoNoise,
  hash: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>,
): Promise<MadeSound> {
  const bytes = wav(noise);
  const blob = { hash: await hash(bytes), type: "audio/wav", bytes };
  return { body: { blob: blob.hash, type: blob.type, ms: SECONDS * 1000 }, blobs: [blob] };
}
