/** Pictures as a phone's camera makes them, drawn in a browser's page: shaded, grained, none like the other. */
import type { Page } from "@playwright/test";

const WIDTH = 2048;
const HEIGHT = 1536;
/** Of what a phone writes. */
const QUALITY = 0.88;

export interface CameraPicture {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

/** One picture; `seed` sets its colours and where its parts lie. */
export async function cameraPicture(page: Page, seed: number): Promise<CameraPicture> {
  const text = await page.evaluate(
    async ({ width, height, quality, seed: own }) => {
      const canvas = new OffscreenCanvas(width, height);
      const context = canvas.getContext("2d");
      if (!context) throw new Error("this browser draws no canvas");
      let state = own * 2_654_435_761 + 1;
      const chance = (): number => {
        state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
        return state / 2 ** 32;
      };
      const colour = (): string => `hsl(${chance() * 360} ${chance() * 40}% ${20 + chance() * 55}%)`;
      const shade = context.createLinearGradient(0, 0, width * chance(), height);
      shade.addColorStop(0, colour());
      shade.addColorStop(1, colour());
      context.fillStyle = shade;
      context.fillRect(0, 0, width, height);
      for (let part = 0; part < 120; part++) {
        const [x, y, radius] = [chance() * width, chance() * height, 20 + chance() * 260];
        const round = context.createRadialGradient(x, y, radius * 0.2, x, y, radius);
        round.addColorStop(0, colour());
        round.addColorStop(1, colour());
        context.fillStyle = round;
        context.beginPath();
        context.ellipse(x, y, radius, radius * (0.2 + chance()), chance() * 3, 0, 7);
        context.fill();
      }
      // The grain of a small sensor: brighter or darker by up to five of 255.
      const image = context.getImageData(0, 0, width, height);
      for (let at = 0; at < image.data.length; at += 4) {
        const grain = (chance() - 0.5) * 10;
        for (let channel = at; channel < at + 3; channel++) image.data[channel] = (image.data[channel] ?? 0) + grain;
      }
      context.putImageData(image, 0, 0);
      const blob = await canvas.convertToBlob({ type: "image/jpeg", quality });
      return new Promise<string>((resolve) => {
        const reader = new FileReader();
        reader.onload = () => resolve(String(reader.result));
        reader.readAsDataURL(blob);
      });
    },
    { width: WIDTH, height: HEIGHT, quality: QUALITY, seed },
  );
  const buffer = Buffer.from(text.slice(text.indexOf(",") + 1), "base64");
  return { name: `seen-${seed}.jpg`, mimeType: "image/jpeg", buffer };
}
