/** What is said of a reading when visits are compared: the part was renewed, the reading is doubtful. Types and words only. */

export const WEAR_SAID = ["renewed", "doubtful", "same"] as const;
/** `renewed`: from this reading on it is another part · `doubtful`: not to be gone by · `same`: the same part all the same. */
export type WearSaid = (typeof WEAR_SAID)[number];

/** A reading of the visit whose plan this stands in; `field` is empty of a value worked out. */
export interface WearAt {
  readonly of: string;
  readonly field: string;
  readonly place: string;
}
/** Null takes it back. */
export interface WearBodies {
  "wear.said": WearAt & { readonly says: WearSaid | null; readonly replaces: readonly string[] };
}
