/** Pictures from the phone's own camera or the album, handed to the line. What they are for is written down first. */
import { useApp } from "../state/app.js";
import { writeOpen } from "../state/left-open.js";
import { pictureLineOf } from "../state/picture-line.js";
import type { PictureSpot } from "../state/picture-spot.js";

/** `href`: the camera's address for this spot, gone back to should the phone end the page; resolves to how many came. */
export function usePicking(visit: string, spot: PictureSpot, href: string) {
  const app = useApp();
  return async (camera: boolean): Promise<number> => {
    // Written at once, not waited for: the chooser must open within the tap.
    void writeOpen(app.store, "camera", { href, phone: camera });
    try {
      const picked = await app.files.pick({ accept: "image/*", camera, several: !camera });
      pictureLineOf(app).add(visit, picked, spot);
      return picked.length;
    } finally {
      const isHere = location.hash === href;
      void writeOpen(app.store, "camera", isHere ? { href, phone: false } : undefined);
    }
  };
}
