/** The demo's one picture, drawn here and kept as any picture is: through the worker, made small, without tags. */
import type { PictureKeeper, PictureOutcome } from "../../core/record/photo.js";

const WIDTH = 1280;
const HEIGHT = 960;

/** A rim seen from inside with dark flung grease: a drawing, and says so. */
function draw(canvas: OffscreenCanvas): void {
  const pen = canvas.getContext("2d");
  if (!pen) return;
  pen.fillStyle = "#6f7673";
  pen.fillRect(0, 0, WIDTH, HEIGHT);
  const ring = (radius: number, colour: string): void => {
    pen.fillStyle = colour;
    pen.beginPath();
    pen.arc(WIDTH / 2, HEIGHT / 2, radius, 0, Math.PI * 2);
    pen.fill();
  };
  ring(430, "#2a2d2c");
  ring(360, "#9aa19d");
  ring(150, "#444a47");
  ring(60, "#1b1d1c");
  pen.strokeStyle = "#1a1410";
  pen.lineWidth = 16;
  for (let streak = 0; streak < 9; streak++) {
    const angle = 0.4 + streak * 0.21;
    pen.beginPath();
    pen.moveTo(WIDTH / 2 + 160 * Math.cos(angle), HEIGHT / 2 + 160 * Math.sin(angle));
    pen.lineTo(
      WIDTH / 2 + (250 + 12 * (streak % 4)) * Math.cos(angle + 0.08),
      HEIGHT / 2 + (250 + 12 * (streak % 4)) * Math.sin(angle + 0.08),
    );
    pen.stroke();
  }
  pen.fillStyle = "#f2efe7";
  pen.font = "600 44px sans-serif";
  pen.fillText("Demo drawing, no real car", 48, HEIGHT - 56);
}

/** The picture made ready to keep; undefined where this browser can't draw off the screen. */
export async function demoPicture(pictures: PictureKeeper<Blob, AbortSignal>): Promise<PictureOutcome | undefined> {
  if (typeof OffscreenCanvas === "undefined") return undefined;
  const canvas = new OffscreenCanvas(WIDTH, HEIGHT);
  draw(canvas);
  return pictures.keep(await canvas.convertToBlob({ type: "image/jpeg", quality: 0.85 }));
}
