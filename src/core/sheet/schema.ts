/**
 * The shape of a check sheet and of the shared files, as data (zod/mini). One truth: types are inferred here,
 * the JSON Schema in public/ is made from here. Knows the shape only; cross-checks live beside it.
 */
import * as z from "zod/mini";
import { AUDIENCES, BASES, GRADES, PURPOSES, SURENESS } from "../terms/index.js";
import {
  Access,
  Brings,
  CarState,
  Caution,
  cel,
  Fact,
  fieldName,
  Gauge,
  id,
  idList,
  PlaceDef,
  placeKind,
  said,
  sharedTexts,
  texted,
  word,
} from "./schema-shared.js";

z.config({ jitless: true });

const grade = z.enum(GRADES);
const wordsField = z.strictObject({
  words: z.array(word).check(z.minLength(2)),
  /** Several words may be chosen together. */
  several: z.optional(z.boolean()),
  /** With `several`: words that exclude every other. */
  exclusive: z.optional(z.array(z.string())),
  /** Reply may be left out without leaving the point unanswered. */
  optional: z.optional(z.boolean()),
});
const readingField = z.strictObject({
  quantity: z.string(),
  /** Default unit, UCUM. */
  unit: z.string(),
  /** Plausible window in `unit`; outside it the app asks again, it does not refuse. */
  window: z.tuple([z.number(), z.number()]),
  /** How many readings the aggregation asks for. */
  shots: z.optional(z.int()),
  /** Extra results beside a number, e.g. `no-echo`. */
  results: z.optional(z.array(word)),
  /** Asked on the screen as a stopwatch; a number: seconds after which it says that the time is up. */
  stopwatch: z.optional(z.union([z.boolean(), z.int().check(z.positive())])),
  optional: z.optional(z.boolean()),
});
const countField = z.strictObject({
  count: z.strictObject({ from: z.int(), to: z.int() }),
  optional: z.optional(z.boolean()),
});
const yesField = z.strictObject({ yes: z.literal(true), optional: z.optional(z.boolean()) });
const dateCodeField = z.strictObject({
  dateCode: z.enum(["week-year", "year", "month-year"]),
  optional: z.optional(z.boolean()),
});
export const Field = z.union([wordsField, readingField, countField, yesField, dateCodeField]);

export const Point = z.strictObject({
  id,
  place: placeKind,
  states: z.array(z.string()).check(z.minLength(1)),
  /** In order: the first is what the bare point id means in a condition. */
  fields: z.record(fieldName, Field),
  /** What 'no fault seen' enters, per field; absent: the point must be answered by itself. */
  unremarkable: z.optional(z.record(z.string(), z.union([z.string(), z.array(z.string())]))),
  tool: z.optional(z.string()),
  /** Set-up error ±, in the unit of the reading field; added whatever gauge is named. */
  "set-up-error": z.optional(z.number()),
  who: z.array(z.enum(AUDIENCES)).check(z.minLength(1)),
  "safety-critical": z.optional(z.boolean()),
  needs: z.optional(z.array(z.enum(["reading", "picture", "sound"]))),
  /** Asked only when this is true (feel first, measure second), or when a person or a rule opens it. */
  "asked-when": z.optional(cel),
  /** Another point answered in the same entry; asked once, used by both. */
  "same-entry": z.optional(z.string()),
  /** The fuller point of another sheet this one stands in for: not asked while that sheet is open too. */
  "instead-of": z.optional(z.string()),
});

const bands = z.strictObject({
  advisory: z.optional(z.number()),
  minor: z.optional(z.number()),
  major: z.optional(z.number()),
  dangerous: z.optional(z.number()),
});
export const Limit = z.strictObject({
  id,
  /** Point, `point_field` or derived value it judges. */
  of: z.string(),
  quantity: z.string(),
  unit: z.string(),
  direction: z.enum(["over", "at-or-over", "under", "at-or-under"]),
  bands,
  basis: z.enum(BASES),
  /** Published: document and clause. Practice: what is usually done and why. */
  source: z.string(),
  aggregate: z.enum(["max", "min", "mean", "median", "spread", "each"]),
  /** Kind of place it holds for. */
  class: placeKind,
  /** What brings the value towards it from visit to visit: use (by the odometer), age (by the calendar), either. */
  wears: z.optional(z.enum(["use", "age", "either"])),
  /** The default only tells plainly wrong from plausible: the car maker's own figure is asked for in the limits book. */
  wants: z.optional(z.enum(["maker"])),
  applies: z.optional(cel),
});

export const Derived = z.strictObject({
  id,
  place: placeKind,
  quantity: z.string(),
  unit: z.string(),
  formula: z.optional(cel),
  /** First of these that is known; says so when it falls back. */
  prefer: z.optional(z.array(z.string())),
});

const Effect = z.union([
  z.enum(["finding"]),
  z.strictObject({ raise: z.string() }),
  z.strictObject({ "lower-sure": idList }),
  z.strictObject({ "not-checked": idList }),
  z.strictObject({ "discard-reading": z.string() }),
  z.strictObject({ order: z.strictObject({ before: z.string(), after: z.string() }) }),
  z.strictObject({ open: idList }),
]);

export const Rule = z.strictObject({
  id,
  scope: placeKind,
  /** Where it concludes when not here: a relation, or every such place where `where` is true, else the wider one. */
  at: z.optional(z.union([z.string(), z.strictObject({ each: placeKind, where: cel, else: z.string() })])),
  effect: Effect,
  /** What it names; rules naming the same fault at the same place merge. */
  fault: z.optional(id),
  /** Fixed, or `{limit-of: whl.float, at-least?: minor}`: the band of that reading. */
  grade: z.optional(z.union([grade, z.strictObject({ "limit-of": z.string(), "at-least": z.optional(grade) })])),
  /** A worse fixed grade while this is true. */
  worse: z.optional(z.strictObject({ grade, when: cel })),
  when: cel,
  /** Each true one raises how sure by a step; not known opens the point. */
  supports: z.optional(z.array(cel)),
  sure: z.optional(z.enum(SURENESS)),
  /** Worst credible outcome: 1 loss of brakes, steering or wheel, fire … 4 comfort (planning of urgency). */
  consequence: z.optional(z.literal([1, 2, 3, 4])),
  likelihood: z.optional(z.enum(["A", "B", "C", "D", "E"])),
  "must-stand": z.optional(z.boolean()),
  jobs: z.optional(idList),
  cautions: z.optional(idList),
  /** Points to offer next: `point`, or `point@relation`. */
  opens: z.optional(idList),
  "answers-to": z.optional(z.string()),
  /** Why ours is stricter than the item it answers to. */
  stricter: z.optional(z.string()),
  provisional: z.optional(z.boolean()),
});

/** What a life hangs on: work there is looked at by a second person. */
const SECOND_LOOKS = ["brakes", "steering", "wheels", "fuel"] as const;

export const Job = z.strictObject({
  id,
  place: placeKind,
  /** Access states that must be open; paid in the access graph, not here. */
  access: idList,
  /** Own minutes once access is open: low, likely, high. */
  minutes: z.tuple([z.int(), z.int(), z.int()]),
  minutesBasis: z.enum(BASES),
  parts: z.optional(
    z.array(
      z.strictObject({
        part: z.string(),
        set: z.optional(z.string()),
        count: z.optional(z.int()),
        reuse: z.optional(z.literal("never")),
      }),
    ),
  ),
  consumables: z.optional(idList),
  /** Also looked at there: a relation, e.g. `opposite`. */
  "look-too": z.optional(z.string()),
  /** Points measured again afterwards. */
  after: z.optional(idList),
  /** Jobs this one must follow. */
  follows: z.optional(idList),
  /** Once, and after everything else: geometry. */
  last: z.optional(z.boolean()),
  /** Jobs this one cannot do without afterwards, done once for all of them: one bleed. */
  "ends-in": z.optional(idList),
  /** Greater jobs that already contain this work at the same place, the greatest first. */
  "included-in": z.optional(idList),
  /** A second person looks at it before the car leaves, because of this. Common practice, no source. */
  "second-look": z.optional(z.enum(SECOND_LOOKS)),
  /** Must be re-checked after this many km. */
  "recheck-km": z.optional(z.int()),
  cautions: z.optional(idList),
});

export const Gate = z.strictObject({
  id,
  /** Car state (or act: `lift`, `drive-away`, `touch`, `spark`) it guards. */
  guards: z.string(),
  starts: z.enum(["cleared", "not-cleared"]),
  trips: z.array(cel),
  clears: z.optional(z.array(cel)),
  /** Points of the pre-step set, shown whatever sheets are open. */
  set: z.optional(idList),
  cautions: idList,
});

const NextLook = z.strictObject({
  fault: z.optional(z.string()),
  grade: z.optional(grade),
  job: z.optional(z.string()),
  km: z.optional(z.int()),
  months: z.optional(z.int()),
});

/** Named replies as typed → what must come out, and the near miss that must stay quiet. */
const typed = z.union([z.string(), z.number(), z.boolean(), z.array(z.union([z.string(), z.number()]))]);
/** Keys `point@place`, `point_field@place`, `point@place#state`; no place means the car. */
const caseReplies = z.record(z.string(), typed);
const factValues = z.record(z.string(), z.union([z.string(), z.number(), z.boolean()]));
export const SheetCase = z.strictObject({
  /** The rule (or gate) this case fires. */
  fires: z.string(),
  replies: caseReplies,
  facts: z.optional(factValues),
  /** Odometer of this visit in km, for rules that look at how fast something changes. */
  odometer: z.optional(z.number()),
  earlier: z.optional(
    z.array(z.strictObject({ at: z.string(), odometer: z.optional(z.number()), replies: caseReplies })),
  ),
  /** `fault@place: grade`; `{at: place}` for an effect that is no finding; `gate.id: tripped | cleared | not cleared`. */
  expect: z.record(z.string(), z.string()),
  /** One reply changed to another known reply: the rule must then be false, not unknown. */
  "near-miss": z.optional(caseReplies),
  /** Facts changed instead of a reply. */
  "near-miss-facts": z.optional(factValues),
});

/** Shown texts of one language. Keys: point ids, `point.field.word`, fault ids, job ids …; outside the meaning hash. */
export const PointText = z.strictObject({
  /** Short name for lists. */
  name: z.string(),
  ask: z.strictObject({
    technician: z.optional(z.string()),
    buyer: z.optional(z.string()),
    owner: z.optional(z.string()),
  }),
  how: z.optional(z.string()),
  trap: z.optional(z.string()),
  /** Owner only: why this is left to the workshop. */
  leave: z.optional(z.string()),
  fields: z.optional(z.record(z.string(), z.string())),
  words: z.optional(
    z.record(z.string(), z.union([z.string(), z.strictObject({ technician: z.string(), owner: z.string() })])),
  ),
});
const FaultText = z.strictObject({ says: z.string(), owner: z.optional(z.string()), cause: z.optional(z.string()) });
const GateText = z.strictObject({ name: said, tripped: said, first: said });
export const SheetTexts = z.strictObject({
  language: z.string(),
  title: said,
  about: said,
  points: z.record(z.string(), PointText),
  /** Per fault; `rules` says it more closely for one rule. */
  faults: z.record(z.string(), FaultText),
  rules: z.optional(z.record(z.string(), FaultText)),
  jobs: z.record(z.string(), z.strictObject({ name: z.string(), does: z.string(), owner: z.optional(z.string()) })),
  parts: z.optional(z.record(z.string(), z.string())),
  limits: z.optional(z.record(z.string(), z.string())),
  derived: z.optional(z.record(z.string(), z.string())),
  gates: z.optional(z.record(z.string(), GateText)),
  notes: z.optional(z.record(z.string(), z.string())),
  brings: z.optional(z.partial(z.strictObject(sharedTexts))),
});

export const Sheet = z.strictObject({
  format: z.literal("leadlamp-sheet/1"),
  id,
  label: z.string(),
  /** What a visit must be for to open with this sheet; every visit where nothing is said, none where the list is empty. */
  "opens-for": z.optional(z.array(z.enum(PURPOSES))),
  /** Car fact values this sheet asks for, as points of state w0-talk. */
  points: z.array(Point),
  limits: z.array(Limit),
  derived: z.array(Derived),
  rules: z.array(Rule),
  jobs: z.array(Job),
  gates: z.array(Gate),
  nextLooks: z.array(NextLook),
  cases: z.array(SheetCase),
  brings: z.optional(Brings),
  texts: z.record(z.string(), SheetTexts),
});

const Complaint = z.strictObject({
  id,
  suspects: z.array(z.strictObject({ suspect: z.string(), weight: z.int() })),
  points: idList,
});
export const CommonTexts = z.strictObject({
  language: z.string(),
  ...sharedTexts,
  aids: z.optional(texted),
  gates: z.record(z.string(), GateText),
  complaints: z.record(
    z.string(),
    z.strictObject({ name: z.string(), says: z.array(z.string()), suspects: z.record(z.string(), z.string()) }),
  ),
  /** Faults, rules and parts that only the shared files name. */
  faults: z.optional(z.record(z.string(), FaultText)),
  rules: z.optional(z.record(z.string(), FaultText)),
  parts: z.optional(z.record(z.string(), said)),
});
/** What all sheets share: checklists/common joined. */
export const Common = z.strictObject({
  format: z.literal("leadlamp-common/1"),
  places: z.array(PlaceDef),
  states: z.array(CarState),
  gauges: z.array(Gauge),
  /** What a point needs in the hand that measures nothing: stethoscope, torch, rag. A point's `tool` is a gauge or one of these. */
  aids: z.optional(z.array(id)),
  cautions: z.array(Caution),
  gates: z.array(Gate),
  access: z.array(Access),
  facts: z.array(Fact),
  complaints: z.array(Complaint),
  /** Rules across sheets; apply when all their sheets are open. */
  rules: z.array(Rule),
  cases: z.array(SheetCase),
  texts: z.record(z.string(), CommonTexts),
});

export type Field = z.infer<typeof Field>;
export type Point = z.infer<typeof Point>;
export type Limit = z.infer<typeof Limit>;
export type Derived = z.infer<typeof Derived>;
export type Effect = z.infer<typeof Effect>;
export type Rule = z.infer<typeof Rule>;
export type Job = z.infer<typeof Job>;
export type Gate = z.infer<typeof Gate>;
export type SheetCase = z.infer<typeof SheetCase>;
export type SheetTexts = z.infer<typeof SheetTexts>;
export type PointText = z.infer<typeof PointText>;
export type Sheet = z.infer<typeof Sheet>;
export type Complaint = z.infer<typeof Complaint>;
export type NextLook = z.infer<typeof NextLook>;
export type CommonTexts = z.infer<typeof CommonTexts>;
export type Common = z.infer<typeof Common>;
