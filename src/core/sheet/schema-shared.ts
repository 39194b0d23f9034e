/**
 * The shape of what check sheets share (places, car states, gauges, cautions, access, facts), whether the shared files
 * hold it or a sheet brings it. Knows no point and no rule.
 */
import * as z from "zod/mini";
import { BASES } from "../terms/index.js";

z.config({ jitless: true });

export const id = z.string().check(z.regex(/^[a-z][a-z0-9]*([._-][A-Za-z0-9]+)*$/));
/** CEL text; in YAML always quoted or a block. */
export const cel = z.string().check(z.minLength(1), z.maxLength(2000));
export const idList = z.array(z.string());
/** `corner`, `axle`, `side`, `car`, `pickup` …: the kinds that occur in common/places.yaml. */
export const placeKind = z.string().check(z.regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/));
/** Place ids keep the trade's capitals: `FR`, `axle-F`, `pickup-FL-lower-fore`. */
const placeId = z.string().check(z.regex(/^[A-Za-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*$/));
/** Reply words, field names, facts: small letters, digits and hyphens. Never displayed. */
export const word = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/));
export const fieldName = z.string().check(z.regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/));
export const said = z.string().check(z.minLength(1));

export const Caution = z.strictObject({ id, signal: z.enum(["danger", "warning", "caution", "notice"]) });
export const PlaceDef = z.strictObject({
  id: placeId,
  kind: placeKind,
  /** The place it lies in; `car` is the root. */
  in: z.optional(z.string()),
  /** Named relations to other places. */
  relations: z.optional(z.record(z.string(), z.union([z.string(), z.array(z.string())]))),
  /** Centre on the plan of the car, 0–100 nose to tail, 0–100 left to right. */
  at: z.optional(z.tuple([z.number(), z.number()])),
});
export const Gauge = z.strictObject({
  id,
  quantity: z.string(),
  unit: z.string(),
  resolution: z.number(),
  error: z.number(),
  basis: z.enum(BASES),
  source: z.string(),
});
export const CarState = z.strictObject({
  id,
  order: z.int(),
  lifted: z.boolean(),
  /** Which drawing of the car stands beside the points; `none` for what lies on the bench or is read at a table. */
  plan: z.enum(["body", "chassis", "none"]),
  /** Seconds after the car stopped within which this state holds: a clock on the screen counts them down. */
  within: z.optional(z.int().check(z.positive())),
  /** What the engine does in it: it runs and the car stands, it drives the car, or it is hot from driving. Absent: it stands cold. */
  engine: z.optional(z.enum(["running", "driving", "hot"])),
});
export const Access = z.strictObject({
  id,
  place: placeKind,
  needs: z.optional(idList),
  setUp: z.tuple([z.int(), z.int(), z.int()]),
  putBack: z.tuple([z.int(), z.int(), z.int()]),
  basis: z.enum(BASES),
  consumables: z.optional(idList),
});
export const Fact = z.strictObject({
  id: fieldName,
  words: z.optional(z.array(word)),
  quantity: z.optional(z.string()),
  unit: z.optional(z.string()),
  kind: z.enum(["word", "number", "year", "yes"]),
});
/**
 * What a sheet needs beyond the shared files. Several sheets may bring the same thing; it is one thing then, so all must
 * say the same of it.
 */
export const Brings = z.strictObject({
  places: z.optional(z.array(PlaceDef)),
  states: z.optional(z.array(CarState)),
  gauges: z.optional(z.array(Gauge)),
  aids: z.optional(z.array(id)),
  cautions: z.optional(z.array(Caution)),
  access: z.optional(z.array(Access)),
  facts: z.optional(z.array(Fact)),
});

export const texted = z.record(z.string(), z.string());
/** Words of what all share, and of what a sheet brings. */
export const sharedTexts = {
  places: texted,
  states: z.record(z.string(), z.strictObject({ name: z.string(), how: z.string() })),
  cautions: z.record(z.string(), z.strictObject({ not: z.string(), why: z.string(), can: z.string(), do: z.string() })),
  gauges: texted,
  aids: texted,
  access: texted,
  facts: z.record(z.string(), z.strictObject({ name: z.string(), words: z.optional(texted) })),
};

export type Caution = z.infer<typeof Caution>;
export type Brings = z.infer<typeof Brings>;
export type PlaceDef = z.infer<typeof PlaceDef>;
export type Gauge = z.infer<typeof Gauge>;
export type CarState = z.infer<typeof CarState>;
export type Access = z.infer<typeof Access>;
export type Fact = z.infer<typeof Fact>;
