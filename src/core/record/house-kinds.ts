/** The kinds of a house's stream, beside those of every stream. Loaded by what reads the house; a reply needs none. */
import { ROUNDINGS, TAX_LEVELS } from "./house-bodies.js";
import { NAME_PATTERN } from "./identity.js";
import { frozen, type HouseKind, KINDS, type KindOf, replaces } from "./kinds.js";
import {
  both,
  type Check,
  count,
  fields,
  flag,
  isPlainObject,
  listOf,
  matches,
  name,
  number,
  oneOf,
  orNull,
  text,
} from "./shape.js";
import { date, inOrder, span } from "./shape-figures.js";
import { SHEET_DRAFT_ROWS } from "./sheet-draft-kinds.js";

const HOUSE = ["house"] as const;
const LONGEST_ROW = 1000;
const own = matches("letters, digits, dot, dash or underscore, 80 at most", NAME_PATTERN);
const atMost = (most: number, item: Check, atLeast = 0): Check =>
  both(listOf(item, atLeast), (value, path) =>
    Array.isArray(value) && value.length > most ? { path, expected: `a list of ${most} at most` } : undefined,
  );

/** The id a body is filed under is the id of what it holds. */
const filedUnder =
  (field: string): Check =>
  (body, path) => {
    const held = isPlainObject(body) ? body[field] : undefined;
    if (!isPlainObject(body) || !isPlainObject(held)) return undefined;
    return body["id"] === held["id"] ? undefined : { path: `${path}.id`, expected: String(held["id"]) };
  };

const gauge = fields(
  { id: name, name, quantity: name, unit: text, resolution: number, error: number },
  { checked: date, tool: name },
);

const rate = fields({ id: own, name, perHour: count });
const group = fields({ id: own, name, basisPoints: count });
const digits = oneOf([0, 1, 2, 3, 4, 5, 6]);
const profile = fields(
  {
    label: text,
    groups: atMost(LONGEST_ROW, group, 1),
    labourGroup: own,
    partsGroup: own,
    rounding: oneOf(ROUNDINGS),
    level: oneOf(TAX_LEVELS),
  },
  { digits },
);
/** Labour and parts are taxed by groups that are there. */
const groupsFit: Check = (value, path) => {
  if (!isPlainObject(value) || !Array.isArray(value["groups"])) return undefined;
  const ids = value["groups"].map((one: unknown) => (isPlainObject(one) ? one["id"] : undefined));
  const stray = ["labourGroup", "partsGroup"].find((field) => !ids.includes(value[field]));
  return stray === undefined ? undefined : { path: `${path}.${stray}`, expected: "one of the groups" };
};
const terms = fields(
  {
    currency: matches("a currency's three letters", /^[A-Z]{3}$/),
    labourRates: atMost(LONGEST_ROW, rate),
    tax: both(profile, groupsFit),
  },
  { digits: oneOf([0, 1, 2, 3, 4]) },
);

const shut = both(fields({ from: date, to: date }, { why: text }), inOrder);
const atLeastOne: Check = (value, path) =>
  count(value, path) ?? (value === 0 ? { path, expected: "a whole number from 1" } : undefined);
const calendar = fields({
  zone: matches("a time zone, like Europe/Lisbon", /^[A-Za-z0-9_+-]{1,40}(?:\/[A-Za-z0-9_+-]{1,40}){0,2}$/),
  week: atMost(7, listOf(span), 7),
  closed: listOf(shut),
  people: atLeastOne,
  lifts: count,
});
const supplier = fields(
  { id: own, name, week: atMost(7, oneOf([1, 2, 3, 4, 5, 6, 7])), closed: listOf(shut) },
  { leadDays: count, carriageDays: count, outwork: flag },
);

export const HOUSE_KINDS: typeof KINDS & { readonly [K in HouseKind]: KindOf<K> } = {
  ...KINDS,
  ...SHEET_DRAFT_ROWS,
  "house.sheet": {
    v: 1,
    streams: HOUSE,
    check: fields({ id: name, sheet: orNull(frozen), replaces }),
    slots: (b) => [`sheet|${b.id}`],
  },
  "house.gauge": {
    v: 1,
    streams: HOUSE,
    check: both(fields({ id: name, gauge: orNull(gauge), replaces }), filedUnder("gauge")),
    slots: (b) => [`gauge|${b.id}`],
  },
  "house.terms": {
    v: 1,
    streams: HOUSE,
    check: fields({ terms: orNull(terms), replaces }),
    slots: () => ["terms|"],
  },
  "house.calendar": {
    v: 1,
    streams: HOUSE,
    check: fields({ calendar: orNull(calendar), replaces }),
    slots: () => ["calendar|"],
  },
  "house.supplier": {
    v: 1,
    streams: HOUSE,
    check: both(fields({ id: own, supplier: orNull(supplier), replaces }), filedUnder("supplier")),
    slots: (b) => [`supplier|${b.id}`],
  },
};
