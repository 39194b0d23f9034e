/** Sizes of type and single lines as pieces. Knows how a line stands on the page; refuses to know blocks. */
import type { Piece } from "./flow.js";
import { HAIR, INK2, PAGE, type Pen, type TextLook } from "./pen.js";
import { wrapped } from "./wrap.js";

export interface Type extends TextLook {
  /** From one line to the next. */
  readonly lead: number;
}

export const TYPE = {
  title: { size: 20, lead: 25, bold: true },
  subtitle: { size: 10, lead: 14, colour: INK2 },
  heading2: { size: 13, lead: 17, bold: true },
  heading3: { size: 10.5, lead: 13.5, bold: true },
  strong: { size: 14, lead: 19, bold: true },
  body: { size: 9.5, lead: 12.5 },
  bold: { size: 9.5, lead: 12.5, bold: true },
  second: { size: 9.5, lead: 12.5, colour: INK2 },
  // 8 points of this face stand as high as 9 of most: nothing printed is smaller.
  small: { size: 8, lead: 10.2, colour: INK2 },
  cell: { size: 8.5, lead: 10.6 },
  head: { size: 8, lead: 10.2, bold: true, colour: INK2 },
} as const satisfies Readonly<Record<string, Type>>;

export const LEFT = PAGE.margin;
export const ROOM = PAGE.width - 2 * PAGE.margin;

export const linesOf = (pen: Pen, text: string, room: number, type: Type): readonly string[] =>
  wrapped(text, room, (one) => pen.width(one, type));

/** Where letters stand in a line that begins at `y`: their capitals in its middle. */
export const baseLine = (y: number, { lead, size }: Type): number => y + lead / 2 + size * 0.34;

export function linePiece(text: string, x: number, type: Type, above = 0): Piece {
  return { height: type.lead, above, draw: (pen, y) => pen.text(text, x, baseLine(y, type), type) };
}

/** A text as pieces, one a line. */
export const textPieces = (pen: Pen, text: string, x: number, room: number, type: Type, above = 0): readonly Piece[] =>
  linesOf(pen, text, room, type).map((line, index) => linePiece(line, x, type, index === 0 ? above : 0));

/** A line across in the middle of its height. */
export const rulePiece = (x: number, room: number, height: number, wide = 0.5, colour: string = HAIR): Piece => ({
  height,
  draw: (pen, y) =>
    pen.path(
      [
        { op: "m", c: [x, y + height / 2] },
        { op: "l", c: [x + room, y + height / 2] },
      ],
      { line: { colour, wide } },
    ),
});
