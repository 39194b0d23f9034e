/** The kinds of a check sheet under work, in the house's stream. Refuses to know what a sheet holds. */
import { frozen, type KindOf, replaces } from "./kinds.js";
import { fields, listOf, matches, orNull, plain, text } from "./shape.js";
import type { SheetDraftBodies } from "./sheet-draft-bodies.js";

const HOUSE = ["house"] as const;
/** Parts of a slot's name, so none may hold the sign that parts them. */
const part = matches("1 to 200 characters without “|”", /^[^|]{1,200}$/);

export const SHEET_DRAFT_ROWS: { readonly [K in keyof SheetDraftBodies]: KindOf<K> } = {
  "house.draft": {
    v: 1,
    streams: HOUSE,
    check: fields({ draft: part, base: orNull(frozen), replaces }),
    slots: (b) => [`draft|${b.draft}`],
  },
  "house.draft-item": {
    v: 1,
    streams: HOUSE,
    check: fields({
      draft: part,
      list: part,
      item: part,
      to: orNull(fields({ texts: plain }, { value: plain })),
      replaces,
    }),
    slots: (b) => [`item|${b.draft}|${b.list}|${b.item}`],
  },
  "house.draft-order": {
    v: 1,
    streams: HOUSE,
    check: fields({ draft: part, list: part, order: listOf(text), replaces }),
    slots: (b) => [`order|${b.draft}|${b.list}`],
  },
};
