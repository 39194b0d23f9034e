/** The inferred types of the schema without its code, so that the `run` door carries no schema library. */
export type {
  Common,
  CommonTexts,
  Complaint,
  Derived,
  Effect,
  Field,
  Gate,
  Job,
  Limit,
  NextLook,
  Point,
  PointText,
  Rule,
  Sheet,
  SheetCase,
  SheetTexts,
} from "./schema.js";
export type { Access, Brings, CarState, Caution, Fact, Gauge, PlaceDef } from "./schema-shared.js";
