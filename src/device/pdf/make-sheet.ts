/** Makes the whole sheet: measures, lays out, draws page after page. Runs in the worker; knows neither it nor the store. */
import type { PrintedSheet, PrintWish } from "../../core/report/index.js";
import { groupsOf } from "./blocks.js";
import { type Group, laid } from "./flow.js";
import { type Faces, HAIR, PAGE, type Pen, startPen } from "./pen.js";
import type { Pictures } from "./pictures.js";
import { baseLine, LEFT, linesOf, ROOM, TYPE, textPieces } from "./typeset.js";

/** The foot with the line over it lies within the margins. */
const FOOT = 20;

export async function makeSheet(
  wish: PrintWish,
  faces: Faces,
  pictures: Pictures,
  onProgress: (done: number, of: number) => void,
): Promise<PrintedSheet> {
  const { pages, madeAt } = wish;
  const pen = startPen({ faces, title: pages.title, subject: pages.subtitle, lang: pages.lang, madeAt });
  const missing = new Set<string>();
  const groups = groupsOf(pen, pages, wish.marks, { of: pictures, noPicture: wish.noPicture, missing });
  // Measuring has met every sign by now.
  linesOf(pen, pages.foot, ROOM, TYPE.small);
  const placed = laid([...groups, ...signsGroup(pen, wish.noSigns)], PAGE.height - 2 * PAGE.margin - FOOT);
  for (const [at, page] of placed.entries()) {
    if (at > 0) pen.newPage();
    for (const { piece, y } of page) await piece.draw(pen, PAGE.margin + y);
    drawFoot(pen, pages.foot, filled(wish.pageOf, { page: at + 1, pages: placed.length }));
    onProgress(at + 1, placed.length);
  }
  return {
    bytes: pen.bytes(),
    pages: placed.length,
    missingSigns: [...pen.missing],
    missingPictures: [...missing],
  };
}

const filled = (text: string, values: Readonly<Record<string, string | number>>): string =>
  text.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));

/** What could not be printed, by its code: the sign itself has no form here. */
function signsGroup(pen: Pen, noSigns: string): readonly Group[] {
  if (pen.missing.size === 0) return [];
  const codes = [...pen.missing].map(
    (sign) => `U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`,
  );
  return [{ pieces: textPieces(pen, filled(noSigns, { signs: codes.join(", ") }), LEFT, ROOM, TYPE.small, 12) }];
}

function drawFoot(pen: Pen, foot: string, page: string): void {
  const y = PAGE.height - PAGE.margin - TYPE.small.lead;
  pen.path(
    [
      { op: "m", c: [LEFT, y - 3] },
      { op: "l", c: [LEFT + ROOM, y - 3] },
    ],
    { line: { colour: HAIR, wide: 0.5 } },
  );
  const room = ROOM - pen.width(page, TYPE.small) - 20;
  const [first = "", ...more] = linesOf(pen, foot, room, TYPE.small);
  pen.text(more.length > 0 ? `${first} …` : first, LEFT, baseLine(y, TYPE.small), TYPE.small);
  pen.text(page, LEFT + ROOM, baseLine(y, TYPE.small), TYPE.small, "end");
}
