/** The kinds that tell of a kept picture, beside those of every stream. Loaded by what draws marks; a reply needs none. */
import { NAME_PATTERN, parseId } from "./identity.js";
import { KINDS, type KindOf, replaces } from "./kinds.js";
import { MARK_WORDS_AT_MOST, type PictureKind } from "./picture-bodies.js";
import { both, byType, type Check, fields, matches, name, oneOf, orNull } from "./shape.js";

const VISIT = ["visit"] as const;

const part = (value: unknown): boolean => typeof value === "number" && value >= 0 && value <= 1;
const spot: Check = (value, path) =>
  Array.isArray(value) && value.length === 2 && value.every(part)
    ? undefined
    : { path, expected: "two parts of the picture, each 0 to 1" };
/** Nobody is never off, and who may be half a picture off has measured nothing. */
const pick: Check = (value, path) =>
  typeof value === "number" && value > 0 && value < 0.5
    ? undefined
    : { path, expected: "a part of the width above 0 and below a half" };
const short: Check = both(name, (value, path) =>
  String(value).length > MARK_WORDS_AT_MOST
    ? { path, expected: `${MARK_WORDS_AT_MOST} characters at most` }
    : undefined,
);
const own = matches("letters, digits, dot, dash or underscore, 80 at most", NAME_PATTERN);
const key = matches("a picture by its bytes, like sha256-…", /^sha256-[0-9a-f]{64}$/);
const line = { from: spot, to: spot };
const id: Check = (value, path) =>
  typeof value === "string" && parseId(value) ? undefined : { path, expected: "an entry id" };

const drawn = byType({
  arrow: fields({ type: oneOf(["arrow"]), ...line }),
  ring: fields({ type: oneOf(["ring"]), at: spot, rim: spot }),
  words: fields({ type: oneOf(["words"]), at: spot, words: short }),
  scale: fields({ type: oneOf(["scale"]), ...line, pick, known: fields({ value: short, unit: name }) }),
  length: fields({ type: oneOf(["length"]), ...line, pick, by: own }),
});

type Rows = { readonly [K in PictureKind]: KindOf<K> };
const ROWS: Rows = {
  "picture.mark": {
    v: 1,
    streams: VISIT,
    check: fields({ picture: key, mark: own, drawn: orNull(drawn), replaces }),
    slots: (b) => [`mark|${b.picture}/${b.mark}`],
  },
  "picture.after": {
    v: 1,
    streams: VISIT,
    check: fields({ picture: key, after: id, replaces }),
    slots: (b) => [`after|${b.picture}`],
  },
};

export const PICTURE_KINDS: typeof KINDS & Rows = { ...KINDS, ...ROWS };
