/** The kind that says what a reading means beside those of other visits. Stands in the plan of its own visit. */
import type { KindOf } from "./kinds.js";
import { replaces } from "./kinds.js";
import { fields, name, oneOf, orNull, text } from "./shape.js";
import { WEAR_SAID, type WearAt, type WearBodies } from "./wear-bodies.js";

/** Names a reading in a plan's map, and the slot of what is said of it. */
export const wearKey = ({ of, field, place }: WearAt): string => `${of}.${field}@${place}`;

export const WEAR_ROWS: { readonly [K in keyof WearBodies]: KindOf<K> } = {
  "wear.said": {
    v: 1,
    streams: ["plan"],
    check: fields({ of: name, field: text, place: name, says: orNull(oneOf(WEAR_SAID)), replaces }),
    slots: (b) => [`wear|${wearKey(b)}`],
  },
};
