/** The door the app uses: a built sheet's types and pure look-ups. Knows no schema library, no parser, no file format. */
export type { CarLimit, PlaceChange } from "./car.js";
export type * from "./schema-types.js";
export type { BareCommon, BareSheet, BuiltCommon, BuiltSheet, ListedSheet, Plans } from "./built.js";
export { buildPlaces, type PlaceTree } from "./places.js";
export { celName, fieldOf, findField, type FieldRef, mainField } from "./names.js";
export { walk, type WalkStep } from "./walk.js";
export { canonicalText, editionText } from "./edition.js";
