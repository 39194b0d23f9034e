/** From spots and what was typed to a mark; undefined while something is missing. Pure. */
import type { PictureMark } from "../../core/record/index.js";
import { readTyped } from "../../core/units/index.js";
import { allSpots, isWhole, type Marking } from "./marking.js";

/** A spot is set to so many CSS pixels, as an eye at arm's length tells a crosshair from a line; own choice. */
const PICK_PX = 1.5;

export interface MadeOf {
  readonly marking: Marking;
  readonly words: string;
  readonly value: string;
  readonly unit: string;
  /** How wide the picture is shown, in CSS pixels, and how wide it is kept. */
  readonly shown: number;
  readonly width: number;
  readonly scale: string | undefined;
  readonly decimalComma: boolean;
}

/** How far off a spot may be, as a part of the width: never finer than one pixel of the picture. */
export const pickOf = (shown: number, width: number): number =>
  Math.min(0.4, Math.max(PICK_PX / Math.max(1, shown), 1 / Math.max(1, width)));

export function markMade({
  marking,
  words,
  value,
  unit,
  shown,
  width,
  scale,
  decimalComma,
}: MadeOf): PictureMark | undefined {
  const [first, second] = allSpots(marking);
  if (!isWhole(marking) || !first) return undefined;
  const pick = pickOf(shown, width);
  const isApart = second !== undefined && (first[0] !== second[0] || first[1] !== second[1]);
  if (marking.tool === "words") {
    const said = words.trim();
    return said === "" ? undefined : { type: "words", at: first, words: said };
  }
  if (!second || !isApart) return undefined;
  if (marking.tool === "arrow") return { type: "arrow", from: first, to: second };
  if (marking.tool === "ring") return { type: "ring", at: first, rim: second };
  if (marking.tool === "length")
    return scale === undefined ? undefined : { type: "length", from: first, to: second, pick, by: scale };
  const read = readTyped(value, { quantity: "length", unit, decimalComma });
  if (!read.ok || read.value.value <= 0) return undefined;
  const known = { value: read.value.text, unit: read.value.unit };
  return { type: "scale", from: first, to: second, pick, known };
}
