/** What kinds of places are called. Knows no place. */
import { enKinds } from "./en-kinds.js";

const KIND = "kind.";
/** 'Joints', 'Tubes': a kind of place as a heading; undefined for one the catalogue does not know. */
export function kindOfPlace(kind: string): string | undefined {
  return Object.entries(enKinds).find(([key]) => key === KIND + kind)?.[1];
}
