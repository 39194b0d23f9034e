/** Pictures three beside each other, each with its caption and the marks drawn on it; a box where one cannot be drawn. */
import type { PictureBlock } from "../../core/report/index.js";
import type { Piece } from "./flow.js";
import { HAIR, type Pen } from "./pen.js";
import { baseLine, linesOf, TYPE } from "./typeset.js";
import { drawVector } from "./vector.js";

/** A picture ready for paper, or undefined where its bytes are not there or cannot be read. */
export type Pictures = (
  hash: string,
  most: number,
) => Promise<{ readonly type: string; readonly bytes: Uint8Array } | undefined>;

/** Told of every picture a box stands for. */
export interface PictureRoom {
  readonly of: Pictures;
  readonly noPicture: string;
  readonly missing: Set<string>;
}

const GAP = 12;
const ACROSS = 3;
/** 45 mm: three of them take a sixth of a page. Marks and a crack are still seen; larger ones lie in the page file. */
const HIGHEST = 128;
/** Dots an inch at which a scratch can still be seen on paper. Common practice, no source. */
const DOTS = 200;
const POINTS_AN_INCH = 72;

interface Box {
  readonly width: number;
  readonly height: number;
}

function boxOf({ width, height }: PictureBlock, room: number): Box {
  if (!(width > 0 && height > 0)) return { width: room, height: room * 0.6 };
  const scale = Math.min(room / width, HIGHEST / height);
  return { width: width * scale, height: height * scale };
}

async function drawPicture(
  pen: Pen,
  one: PictureBlock,
  box: Box,
  x: number,
  y: number,
  room: PictureRoom,
): Promise<void> {
  const longest = Math.ceil((Math.max(box.width, box.height) * DOTS) / POINTS_AN_INCH);
  const found = await room.of(one.hash, longest);
  const { width, height } = box;
  if (!found) {
    room.missing.add(one.hash);
    pen.rect(x, y, width, height, { line: { colour: HAIR, wide: 0.8, dash: [3, 3] } });
    for (const [at, line] of linesOf(pen, room.noPicture, width - 16, TYPE.cell).entries())
      pen.text(line, x + 8, baseLine(y + 6 + at * TYPE.cell.lead, TYPE.cell), TYPE.cell);
    return;
  }
  pen.picture(one.hash, found.type, found.bytes, x, y, width, height);
  if (one.marks) drawVector(pen, one.marks, x, y, width, height);
}

/** Rows of three. */
export function pictureRows(
  pen: Pen,
  all: readonly PictureBlock[],
  left: number,
  width: number,
  room: PictureRoom,
): readonly Piece[] {
  const own = (width - GAP * (ACROSS - 1)) / ACROSS;
  const count = Math.ceil(all.length / ACROSS);
  const rows = Array.from({ length: count }, (_, at) => all.slice(at * ACROSS, (at + 1) * ACROSS));
  return rows.map((row): Piece => {
    const boxes = row.map((one) => boxOf(one, own));
    const captions = row.map((one) => linesOf(pen, one.caption, own, TYPE.small));
    const high = Math.max(...boxes.map(({ height }) => height));
    const words = Math.max(...captions.map(({ length }) => length));
    return {
      height: high + 3 + words * TYPE.small.lead,
      above: 6,
      draw: async (drawn, y) => {
        for (const [at, one] of row.entries()) {
          const x = left + at * (own + GAP);
          const box = boxes[at];
          if (box) await drawPicture(drawn, one, box, x, y, room);
          for (const [line, text] of (captions[at] ?? []).entries())
            drawn.text(text, x, baseLine(y + high + 3 + line * TYPE.small.lead, TYPE.small), TYPE.small);
        }
      },
    };
  });
}
