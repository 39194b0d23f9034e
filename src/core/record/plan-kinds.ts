/** The kinds of a plan's stream, beside those of every stream. Loaded by what plans; a reply needs none of them. */
import { DECISION_ROWS } from "./decision-kinds.js";
import { NAME_PATTERN } from "./identity.js";
import { KINDS, type KindOf, replaces, visitName } from "./kinds.js";
import { JOB_STEPS, LOOSE, PART_STEPS, type PlanKind, USES } from "./plan-bodies.js";
import { jobKey, partKey } from "./plan-keys.js";
import { RELEASE_ROWS } from "./release-kinds.js";
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
  oneOf,
  orNull,
  plain,
  text,
} from "./shape.js";
import { date, three } from "./shape-figures.js";
import { VIEWING_ROWS } from "./viewing-kinds.js";
import { WEAR_ROWS } from "./wear-kinds.js";

const PLAN = ["plan"] as const;

const own = matches("letters, digits, dot, dash or underscore, 80 at most", NAME_PATTERN);
const yes: Check = (value, path) => (value === true ? undefined : { path, expected: "true" });
const jobAt = { job: name, place: name };
const partAt = { ...jobAt, part: name };
const budget = fields({ minor: count, gross: yes });
const figures = fields(
  { count },
  {
    name,
    price: three,
    deposit: count,
    carriage: count,
    supplier: name,
    leadDays: count,
    pricedOn: date,
    counterpart: name,
    aloneBecause: text,
  },
);
const checks = fields({ right: flag, count: flag, condition: flag }, { counterpart: flag });
const agreed = fields({ who: name, how: text, on: date });
const scope = fields(
  { apart: listOf(name), leftOut: listOf(fields({ what: name, why: text })) },
  { capMinutes: count, capMinor: count },
);

/** `field` is there for this step, and for no other where `only` says so. */
const withStep =
  (step: string, field: string, only: boolean): Check =>
  (body, path) => {
    if (!isPlainObject(body)) return undefined;
    const isThere = Object.hasOwn(body, field);
    if (body["step"] === step ? isThere : !(only && isThere)) return undefined;
    return {
      path: `${path}.${field}`,
      expected: isThere ? `not to be there but with ${step}` : `to be there with ${step}`,
    };
  };

type Rows = { readonly [K in PlanKind]: KindOf<K> };
const ROWS: Rows = {
  ...RELEASE_ROWS,
  ...DECISION_ROWS,
  ...WEAR_ROWS,
  ...VIEWING_ROWS,
  "plan.begun": { v: 1, streams: PLAN, check: fields({ visit: visitName }), slots: () => ["begun|"] },
  "plan.begins": { v: 1, streams: PLAN, check: fields({ on: orNull(date), replaces }), slots: () => ["begins|"] },
  "plan.use": { v: 1, streams: PLAN, check: fields({ use: orNull(oneOf(USES)), replaces }), slots: () => ["use|"] },
  "plan.budget": {
    v: 1,
    streams: PLAN,
    check: fields({ budget: orNull(budget), replaces }),
    slots: () => ["budget|"],
  },
  "plan.wanted": {
    v: 1,
    streams: PLAN,
    check: fields({ ...jobAt, wanted: orNull(oneOf(["in", "out"])), replaces }, { reason: text }),
    slots: (b) => [`wanted|${jobKey(b)}`],
  },
  "plan.minutes": {
    v: 1,
    streams: PLAN,
    check: fields({ ...jobAt, minutes: orNull(three), replaces }, { why: text }),
    slots: (b) => [`minutes|${jobKey(b)}`],
  },
  "plan.part": {
    v: 1,
    streams: PLAN,
    check: fields({ ...partAt, figures: orNull(figures), replaces }),
    slots: (b) => [`part|${partKey(b)}`],
  },
  "part.step": {
    v: 1,
    streams: PLAN,
    check: both(
      fields({ ...partAt, step: oneOf(PART_STEPS), on: date }, { promised: date, next: date, checks, words: text }),
      withStep("checked", "checks", true),
    ),
    slots: (b) => [`part-step|${partKey(b)}`],
  },
  "job.step": {
    v: 1,
    streams: PLAN,
    check: both(
      fields({ ...jobAt, step: oneOf(JOB_STEPS), on: date }, { next: date, minutes: count, words: text }),
      withStep("waiting", "next", false),
    ),
    slots: (b) => [`job-step|${jobKey(b)}`],
  },
  "left-loose": {
    v: 1,
    streams: PLAN,
    check: fields({ loose: own, what: oneOf(LOOSE), words: text, on: date, replaces }, { place: name }),
    slots: (b) => [`loose|${b.loose}`],
  },
  "left-loose.cleared": {
    v: 1,
    streams: PLAN,
    check: fields({ loose: own, on: date, words: text }),
    slots: (b) => [`cleared|${b.loose}`],
  },
  "estimate.given": { v: 1, streams: PLAN, check: fields({ estimate: plain, on: date }), slots: () => ["estimate|"] },
  "estimate.addition": {
    v: 1,
    streams: PLAN,
    check: fields(
      { addition: own, words: text, minutes: three, price: three, reason: text, agreed: orNull(agreed), replaces },
      { gross: count },
    ),
    slots: (b) => [`addition|${b.addition}`],
  },
  "plan.scope": { v: 1, streams: PLAN, check: fields({ scope: orNull(scope), replaces }), slots: () => ["scope|"] },
  "plan.intake": {
    v: 1,
    streams: PLAN,
    check: fields({ item: name, says: orNull(text), replaces }),
    slots: (b) => [`intake|${b.item}`],
  },
};

export const PLAN_KINDS: typeof KINDS & Rows = { ...KINDS, ...ROWS };
