/** The kinds of a viewing, as rows of a plan's table: plan-kinds.ts joins them to the others. */
import { type KindOf, replaces } from "./kinds.js";
import { type Check, fields, name, oneOf, orNull, text } from "./shape.js";
import { date } from "./shape-figures.js";
import { CLAIM_FROM, CLAIM_WORDS, type ViewingKind } from "./viewing-bodies.js";

const PLAN = ["plan"] as const;
const said: Check = (value, path) =>
  typeof value === "string" && value.trim() === "" ? { path, expected: "words" } : text(value, path);

export const VIEWING_ROWS: { readonly [K in ViewingKind]: KindOf<K> } = {
  claim: {
    v: 1,
    streams: PLAN,
    check: fields({ claim: name, says: orNull(fields({ text: said, from: oneOf(CLAIM_FROM) })), replaces }),
    slots: (b) => [`claim|${b.claim}`],
  },
  "claim.seen": {
    v: 1,
    streams: PLAN,
    check: fields({
      claim: name,
      seen: orNull(fields({ word: oneOf(CLAIM_WORDS), words: text, on: date })),
      replaces,
    }),
    slots: (b) => [`claim-seen|${b.claim}`],
  },
  "papers.until": {
    v: 1,
    streams: PLAN,
    check: fields({ until: orNull(date), replaces }),
    slots: () => ["papers-until|"],
  },
};
