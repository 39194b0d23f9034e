/**
 * The seven marks: four grades, sound, and the two kinds of not looked at. Three codes at once: number of cuts,
 * solid/hollow/broken, outline. Refuses to know colour: everything is currentColor.
 */
import type { Grade } from "../terms/index.js";
import { type Drawing, type Shape, shape } from "./tree.js";

/** Worst first, as they stand in the count strip. */
export const MARKS = ["dangerous", "major", "minor", "advisory", "sound", "not-looked", "cannot-reach"] as const;
export type MarkKind = Grade | "sound" | "not-looked" | "cannot-reach";
