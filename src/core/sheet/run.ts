/** The door the app uses: a built sheet's types and pure look-ups. Knows no schema library, no parser, no file format. */

export { withBrought, withBroughtTexts } from "./brings.js";
export type {
  BareCommon,
  BareCommonTexts,
  BareSheet,
  BuiltCommon,
  BuiltSheet,
  Complaints,
  ListedSheet,
  Plans,
} from "./built.js";
export { EDITION_LISTED, isEdition } from "./built.js";
export type { CarLimit, PlaceChange } from "./car.js";
export { canonicalText, editionText } from "./edition.js";
export { type EngineIn, engineIn } from "./engine-in.js";
export { celName, type FieldRef, fieldOf, findField, mainField } from "./names.js";
export { buildPlaces, type PlaceTree } from "./places.js";
export type * from "./schema-types.js";
export { type OddFigure, oddFigure, type Slip, USUAL_BASIS, type UsualWindow, usualWindows } from "./usual-figures.js";
export { rankStates, type WalkStep, walk } from "./walk.js";
