/** One good body of every kind that tells of a picture, version 1, and a mark of every sort. */
import { type PictureBodies, type PictureMark, pictureKey } from "../../src/core/record/index.js";
import { HASH_A } from "./sample.js";

const picture = pictureKey(HASH_A);
const line = { from: [0.25, 0.5], to: [0.75, 0.5] } as const;

/** A picture 1000 wide, its known length half of it. */
export const MARKS: { readonly [T in PictureMark["type"]]: Extract<PictureMark, { readonly type: T }> } = {
  arrow: { type: "arrow", from: [0, 0], to: [0.5, 1] },
  ring: { type: "ring", at: [0.5, 0.5], rim: [0.6, 0.5] },
  words: { type: "words", at: [0.1, 0.9], words: "chafed here" },
  scale: { type: "scale", ...line, pick: 0.002, known: { value: "25.0", unit: "mm" } },
  length: { type: "length", from: [0.3, 0.2], to: [0.3, 0.4], pick: 0.002, by: "m4" },
};

export const PICTURE_BODIES: PictureBodies = {
  "picture.mark": { picture, mark: "m1", drawn: MARKS.ring, replaces: ["visit:v/w1/2/n2"] },
  "picture.after": { picture, after: "visit:u/w1/7/n7", replaces: [] },
};
