/** A car as sheets see it: a maker's figure in the limits book, a change of places. */
import type { Basis, Grade } from "../terms/index.js";
import type { PlaceDef } from "./schema-types.js";

/** A figure in the car's limits book. */
export interface CarLimit {
  /** Id of the default limit it overrides. */
  readonly limit: string;
  readonly place?: string;
  /** One edge of `grade` (default major), or several in `bands`; as typed. */
  readonly value?: string;
  readonly bands?: Readonly<Partial<Record<Grade, string>>>;
  readonly unit: string;
  readonly grade?: Grade;
  readonly basis: Basis;
  readonly source?: string;
}

/** A place this car has beside, or lacks from, common/places.yaml. Ids are never reused. */
export type PlaceChange = { readonly add: PlaceDef } | { readonly remove: string };
