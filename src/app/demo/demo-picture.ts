/** The demo's pictures, drawn here: each says that it is a drawing. Small enough to need no worker, and without tags. */
import type { Bodies, KeptBytes } from "../../core/record/index.js";
import type { DemoScene } from "./tell.js";

const WIDTH = 960;
const HEIGHT = 720;
const THUMB = 320;

export interface MadePicture {
  readonly body: Omit<Bodies["picture"], "replaces">;
  readonly blobs: readonly KeptBytes[];
}
type Pen = OffscreenCanvasRenderingContext2D;

const box = (pen: Pen, colour: string, x: number, y: number, wide: number, high: number): void => {
  pen.fillStyle = colour;
  pen.fillRect(x, y, wide, high);
};
const disc = (pen: Pen, colour: string, x: number, y: number, radius: number): void => {
  pen.fillStyle = colour;
  pen.beginPath();
  pen.arc(x, y, radius, 0, Math.PI * 2);
  pen.fill();
};
const rings = (pen: Pen, all: readonly (readonly [radius: number, colour: string])[]): void => {
  for (const [radius, colour] of all) disc(pen, colour, WIDTH / 2, HEIGHT / 2, radius);
};

/** A rim from inside with so many streaks flung from its middle. */
function rim(pen: Pen, streaks: number): void {
  box(pen, "#6f7673", 0, 0, WIDTH, HEIGHT);
  rings(pen, [
    [322, "#2a2d2c"],
    [270, "#9aa19d"],
    [112, "#444a47"],
    [45, "#1b1d1c"],
  ]);
  pen.strokeStyle = "#1a1410";
  pen.lineWidth = 12;
  for (let streak = 0; streak < streaks; streak++) {
    const angle = 0.4 + streak * 0.21;
    const far = 188 + 9 * (streak % 4);
    pen.beginPath();
    pen.moveTo(WIDTH / 2 + 120 * Math.cos(angle), HEIGHT / 2 + 120 * Math.sin(angle));
    pen.lineTo(WIDTH / 2 + far * Math.cos(angle + 0.08), HEIGHT / 2 + far * Math.sin(angle + 0.08));
    pen.stroke();
  }
}

const SCENES: Readonly<Record<DemoScene, (pen: Pen) => void>> = {
  /** A rim from inside with dark flung grease, and the same a year before with a seal that only sweats. */
  grease: (pen) => rim(pen, 9),
  seep: (pen) => rim(pen, 2),
  /** A tube from below with a bared, rusty patch and two punch dots. */
  tube(pen) {
    box(pen, "#4b504e", 0, 0, WIDTH, HEIGHT);
    box(pen, "#23282a", 0, 210, WIDTH, 260);
    box(pen, "#2f3639", 0, 240, WIDTH, 60);
    box(pen, "#8a5a36", 330, 250, 300, 180);
    for (let spot = 0; spot < 40; spot++)
      disc(
        pen,
        spot % 3 === 0 ? "#5e3a22" : "#a7744a",
        340 + ((spot * 71) % 280),
        260 + ((spot * 37) % 160),
        5 + (spot % 5),
      );
    box(pen, "#b9bfbd", 440, 310, 90, 60);
    disc(pen, "#1b1d1c", 455, 340, 5);
    disc(pen, "#1b1d1c", 515, 340, 5);
  },
  /** A caliper piston with a crazed, burnt dust boot and a blued disc edge. */
  boot(pen) {
    box(pen, "#565b59", 0, 0, WIDTH, HEIGHT);
    box(pen, "#4a5a78", 0, 0, 130, HEIGHT);
    rings(pen, [
      [250, "#3a2c22"],
      [200, "#17120f"],
      [150, "#8f9694"],
      [110, "#6f7674"],
    ]);
    pen.strokeStyle = "#7a5b44";
    pen.lineWidth = 4;
    for (let crack = 0; crack < 24; crack++) {
      const angle = crack * 0.262;
      pen.beginPath();
      pen.moveTo(WIDTH / 2 + 160 * Math.cos(angle), HEIGHT / 2 + 160 * Math.sin(angle));
      pen.lineTo(WIDTH / 2 + 240 * Math.cos(angle + 0.05), HEIGHT / 2 + 240 * Math.sin(angle + 0.05));
      pen.stroke();
    }
  },
  /** A carpet with a dark wet patch and its tide line, white paper on it. */
  carpet(pen) {
    box(pen, "#6a4a3c", 0, 0, WIDTH, HEIGHT);
    disc(pen, "#8d7767", 520, 420, 262);
    disc(pen, "#3b2820", 520, 420, 250);
    box(pen, "#e9e7df", 460, 350, 150, 110);
    box(pen, "#c3c6c4", 500, 390, 110, 70);
  },
  /** A plate with nothing on it, taken in passing. */
  label(pen) {
    box(pen, "#3c4240", 0, 0, WIDTH, HEIGHT);
    box(pen, "#c9ccc8", 240, 220, 480, 240);
    for (const row of [0, 1, 2]) box(pen, "#8b918e", 280, 270 + row * 56, 300 - row * 60, 18);
    for (const [x, y] of [
      [264, 244],
      [696, 244],
      [264, 436],
      [696, 436],
    ] as const)
      disc(pen, "#5a605d", x, y, 10);
  },
};

type Hash = (bytes: Uint8Array<ArrayBuffer>) => Promise<string>;

async function encoded(canvas: OffscreenCanvas, quality: number, hash: Hash): Promise<KeptBytes> {
  const blob = await canvas.convertToBlob({ type: "image/jpeg", quality });
  const bytes = new Uint8Array(await blob.arrayBuffer());
  return { hash: await hash(bytes), type: blob.type, bytes };
}

/** The picture with its small copy; undefined where this browser can't draw off the screen. */
export async function demoPicture(scene: DemoScene, hash: Hash): Promise<MadePicture | undefined> {
  if (typeof OffscreenCanvas === "undefined") return undefined;
  const canvas = new OffscreenCanvas(WIDTH, HEIGHT);
  const small = new OffscreenCanvas(THUMB, (THUMB * HEIGHT) / WIDTH);
  const [pen, smallPen] = [canvas.getContext("2d"), small.getContext("2d")];
  if (!pen || !smallPen) return undefined;
  SCENES[scene](pen);
  pen.fillStyle = "#f2efe7";
  pen.font = "600 34px sans-serif";
  pen.fillText("Demo drawing, no real car", 36, HEIGHT - 40);
  smallPen.drawImage(canvas, 0, 0, small.width, small.height);
  const [picture, thumb] = await Promise.all([encoded(canvas, 0.8, hash), encoded(small, 0.7, hash)]);
  const body = { blob: picture.hash, thumb: thumb.hash, type: picture.type, width: WIDTH, height: HEIGHT };
  return { body, blobs: [picture, thumb] };
}
