/** The words of the camera, of pictures and of sounds, with those of the round; looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enMedia } from "./en-media.js";
import { enRound } from "./en-round.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enRound, ...enMedia };
type MediaKey = keyof typeof words;

export function t<Key extends MediaKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}

export { clock, day } from "./figures.js";
