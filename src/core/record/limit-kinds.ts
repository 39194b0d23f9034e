/** The kinds that tell of figures in a limits book, beside those of every stream. Loaded by its screens; a reply needs none. */
import { NAME_PATTERN, parseId } from "./identity.js";
import { KINDS, type KindOf } from "./kinds.js";
import { FIGURE_TRUST, FIGURE_WAYS, FIGURE_WORDS_AT_MOST, type LimitKind } from "./limit-bodies.js";
import { both, type Check, fields, isPlainObject, matches, name, number, oneOf } from "./shape.js";
import { date } from "./shape-figures.js";

const CAR = ["car"] as const;

const short: Check = both(name, (value, path) =>
  String(value).length > FIGURE_WORDS_AT_MOST
    ? { path, expected: `${FIGURE_WORDS_AT_MOST} characters at most` }
    : undefined,
);
const nonce = matches("the nonce of an entry", NAME_PATTERN);
const id: Check = (value, path) =>
  typeof value === "string" && parseId(value) ? undefined : { path, expected: "an entry id" };

const source = fields(
  { trust: oneOf(FIGURE_TRUST), way: oneOf(FIGURE_WAYS) },
  { title: short, edition: short, page: short, who: short, on: date },
);
const odd = both(fields({ low: number, high: number, unit: name }), (value, path) =>
  isPlainObject(value) && Number(value["low"]) > Number(value["high"])
    ? { path: `${path}.high`, expected: "not below low" }
    : undefined,
);
const told = fields(
  { source },
  { condition: short, holdsFor: fields({}, { build: short, engine: short, from: short, to: short }), odd },
);
/** An entry that tells nothing is none. */
const tells: Check = (body, path) =>
  isPlainObject(body) && body["told"] === undefined && body["why"] === undefined
    ? { path, expected: "told, why or both" }
    : undefined;

export const LIMIT_ROWS: { readonly [K in LimitKind]: KindOf<K> } = {
  "limit.told": {
    v: 1,
    streams: CAR,
    check: both(fields({ key: name, of: nonce }, { told, why: short }), tells),
    slots: (b) => [`told|${b.key}`],
  },
  "limit.looked": {
    v: 1,
    streams: CAR,
    check: fields({ key: name, of: id, who: short }, { words: short }),
    slots: (b) => [`looked|${b.key}`],
  },
};

export const LIMIT_KINDS: typeof KINDS & typeof LIMIT_ROWS = { ...KINDS, ...LIMIT_ROWS };
