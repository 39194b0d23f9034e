/** Blocks of a hand-over as groups of pieces. Knows what each looks like on paper; refuses to know what it says. */
import {
  type Block,
  type CautionBlock,
  type Drawing,
  type FindingBlock,
  type HandoverPages,
  type MarkKind,
  markDrawing,
  type PictureBlock,
} from "../../core/report/index.js";
import type { Group, Piece } from "./flow.js";
import { INK, type Pen } from "./pen.js";
import { type PictureRoom, pictureRows } from "./pictures.js";
import { MARK, type MarkWords, tableGroups } from "./table.js";
import { baseLine, LEFT, linePiece, linesOf, ROOM, rulePiece, TYPE, type Type, textPieces } from "./typeset.js";
import { drawVector } from "./vector.js";

const BLANK: Piece = { height: 6, draw: () => undefined };
/** Paragraphs of so many lines and fewer are not broken. */
const SHORT = 5;
const together = (pieces: readonly Piece[]): Group => ({ pieces, together: true });
const paragraph = (pieces: readonly Piece[]): Group => ({ pieces, together: pieces.length <= SHORT });

/** Title, subtitle, then every block in order. */
export function groupsOf(pen: Pen, pages: HandoverPages, marks: MarkWords, room: PictureRoom): readonly Group[] {
  const title = [
    ...textPieces(pen, pages.title, LEFT, ROOM, TYPE.title),
    ...textPieces(pen, pages.subtitle, LEFT, ROOM, TYPE.subtitle, 2),
    rulePiece(LEFT, ROOM, 12, 1.5, INK),
  ];
  const groups: Group[] = [{ ...together(title), withNext: true }];
  let pictures: PictureBlock[] = [];
  const hang = (): void => {
    groups.push(...pictureRows(pen, pictures, LEFT, ROOM, room).map((row) => together([row])));
    pictures = [];
  };
  let heading = "";
  for (const block of pages.blocks) {
    if (block.is === "picture") {
      pictures.push(block.picture);
      continue;
    }
    hang();
    groups.push(...blockGroups(pen, block, marks, room, heading));
    if (block.is === "heading") heading = block.text;
  }
  hang();
  return groups;
}

function blockGroups(
  pen: Pen,
  block: Exclude<Block, { readonly is: "picture" }>,
  marks: MarkWords,
  room: PictureRoom,
  heading: string,
): readonly Group[] {
  switch (block.is) {
    case "heading": {
      const type = block.level === 2 ? TYPE.heading2 : TYPE.heading3;
      const pieces = textPieces(pen, block.text, LEFT, ROOM, type, block.level === 2 ? 16 : 10);
      return [
        {
          pieces: block.level === 2 ? outlined(pieces, block.text) : pieces,
          together: true,
          withNext: true,
          ...(block.newPage ? { newPage: true } : {}),
        },
      ];
    }
    case "text": {
      const type = block.look === "strong" ? TYPE.strong : block.look === "small" ? TYPE.small : TYPE.body;
      return [paragraph(textPieces(pen, block.text, LEFT, ROOM, type, 3))];
    }
    case "list": {
      const signs = block.items.map((_, at) => (block.numbered ? `${at + 1}.` : "–"));
      // As wide as the widest number: two digits never touch the words.
      const wide = Math.max(...signs.map((sign) => pen.width(sign, TYPE.second))) + ITEM_GAP;
      return block.items.map((item, at) => itemGroup(pen, item, signs[at] ?? "", wide));
    }
    case "pairs":
      return [
        { pieces: [BLANK], withNext: true },
        ...block.pairs.map(([name, value]) => pairGroup(pen, name, value, TYPE.body)),
      ];
    case "table": {
      const { caption } = block.table;
      const named =
        caption === heading
          ? []
          : [{ ...together(textPieces(pen, caption, LEFT, ROOM, TYPE.bold, 6)), withNext: true }];
      return [...named, { pieces: [BLANK], withNext: true }, ...tableGroups(pen, block.table, marks)];
    }
    case "caution":
      return [together([cautionPiece(pen, block.caution)])];
    case "finding":
      return [findingGroup(pen, block.finding, room)];
    case "drawing":
      return [together([drawingPiece(block.drawing), ...textPieces(pen, block.label, LEFT, ROOM, TYPE.small, 2)])];
    case "key":
      return [together(keyPieces(pen, block.marks))];
    case "signature": {
      const drawn = block.drawing === undefined ? [] : [signaturePiece(block.drawing)];
      return [together([...drawn, ...textPieces(pen, block.words, LEFT, ROOM, TYPE.body, 3)])];
    }
    case "sign":
      return [together(block.lines.map((line) => signPiece(line)))];
  }
}

/** What a chapter begins with stands in the outline of the file too. */
function outlined(pieces: readonly Piece[], title: string): readonly Piece[] {
  const [first, ...rest] = pieces;
  if (!first) return pieces;
  const draw = (own: Pen, y: number): void | Promise<void> => {
    own.outline(title);
    return first.draw(own, y);
  };
  return [{ ...first, draw }, ...rest];
}

const ITEM_GAP = 7;
function itemGroup(pen: Pen, item: string, sign: string, wide: number): Group {
  const lines = textPieces(pen, item, LEFT + wide, ROOM - wide, TYPE.body, 1.5);
  const [first, ...rest] = lines;
  if (!first) return together([]);
  const signed: Piece = {
    ...first,
    draw: (own, y) => {
      own.text(sign, LEFT + wide - ITEM_GAP, baseLine(y, TYPE.body), TYPE.second, "end");
      return first.draw(own, y);
    },
  };
  return paragraph([signed, ...rest]);
}

const NAME = 150;
function pairGroup(pen: Pen, name: string, value: string, type: Type): Group {
  const names = linesOf(pen, name, NAME - 10, TYPE.second);
  const values = linesOf(pen, value, ROOM - NAME, type);
  const count = Math.max(names.length, values.length);
  return paragraph(
    Array.from({ length: count }, (_, at) => ({
      height: type.lead,
      draw: (own: Pen, y: number) => {
        own.text(names[at] ?? "", LEFT, baseLine(y, type), TYPE.second);
        own.text(values[at] ?? "", LEFT + NAME, baseLine(y, type), type);
      },
    })),
  );
}

/** As on the screen: the same in print, whatever prints it. */
const SIGNALS: Readonly<Record<CautionBlock["signal"], { readonly ground: string; readonly ink: string }>> = {
  danger: { ground: "#ad1028", ink: "#ffffff" },
  warning: { ground: "#ff8200", ink: "#000000" },
  caution: { ground: "#ffd100", ink: "#000000" },
  notice: { ground: "#005387", ink: "#ffffff" },
};
/** The safety alert symbol: a triangle with its mark left out. */
const ALERT = {
  width: 28,
  height: 25,
  d: "M14 .8L27.4 24.2H.6ZM12.4 8.6L13 16.2H15L15.6 8.6ZM12.5 17.8V20.8H15.5V17.8Z",
};
const PANEL = { bar: 24, inner: 10 };

/** The signal word on its colour, the message on plain ground; one frame around both. */
function cautionPiece(pen: Pen, { signal, word, not, lines }: CautionBlock): Piece {
  const { ground, ink } = SIGNALS[signal];
  const x = LEFT + PANEL.inner;
  const room = ROOM - 2 * PANEL.inner;
  const pieces = [
    ...textPieces(pen, not, x, room, TYPE.heading3),
    ...lines.flatMap((line) => textPieces(pen, line, x, room, TYPE.body, 2)),
  ];
  const high = pieces.reduce((sum, one) => sum + (one.above ?? 0) + one.height, 0);
  const height = PANEL.bar + high + 14;
  return {
    height,
    above: 8,
    draw: async (own, y) => {
      own.rect(LEFT, y, ROOM, PANEL.bar, { fill: ground });
      own.rect(LEFT, y, ROOM, height, { line: { colour: ground, wide: 1.2 } });
      const isAlert = signal !== "notice";
      if (isAlert) {
        const shape = { tag: "path", attrs: { d: ALERT.d, fill: ink, "fill-rule": "evenodd" }, children: [] };
        drawVector(own, { width: ALERT.width, height: ALERT.height, shapes: [shape] }, x, y + 4, 18, 16);
      }
      own.text(word.toUpperCase(), x + (isAlert ? 25 : 0), y + 17, { size: 14, bold: true, colour: ink });
      let at = y + PANEL.bar + 6;
      for (const piece of pieces) {
        at += piece.above ?? 0;
        await piece.draw(own, at);
        at += piece.height;
      }
    },
  };
}

/** What cannot wait keeps its because step by step; of a smaller finding it runs on, so that many stand together. */
const isGrave = ({ mark }: FindingBlock): boolean => mark === "dangerous" || mark === "major";
const stopped = (text: string): string => (/[.!?…]$/.test(text) ? text : `${text}.`);

/** Mark and letter stand in a gutter; the because hangs on a line down it. */
const GUTTER = 38;
const KIND = 70;
function findingGroup(pen: Pen, of: FindingBlock, room: PictureRoom): Group {
  const x = LEFT + GUTTER;
  const wide = ROOM - GUTTER;
  const [first, ...rest] = textPieces(pen, of.title, x, wide, TYPE.heading3, 5);
  const where = of.where === "" ? of.word : `${of.word}. ${of.where}`;
  const headed: Piece[] = first
    ? [
        {
          ...first,
          draw: (own, y) => {
            drawVector(own, markDrawing(of.mark), LEFT, y + 1, MARK.wide, MARK.high);
            own.text(of.letter, LEFT + 17, baseLine(y, TYPE.heading3), TYPE.heading3);
            return first.draw(own, y);
          },
        },
      ]
    : [];
  return together([
    ...headed,
    ...rest,
    ...textPieces(pen, where, x, wide, TYPE.bold),
    ...of.says.flatMap((says) => textPieces(pen, says, x, wide, TYPE.body)),
    ...(isGrave(of)
      ? of.steps.flatMap((step, at) => stepPieces(pen, step, at === of.steps.length - 1))
      : textPieces(
          pen,
          of.steps
            .map(({ kind, says }) => `${kind}: ${says}`)
            .map(stopped)
            .join(" "),
          x,
          wide,
          TYPE.cell,
        )),
    ...(of.after.length === 0 ? [] : textPieces(pen, of.after.join(" "), x, wide, TYPE.small, 1)),
    ...pictureRows(pen, of.pictures, x, wide, room),
    rulePiece(LEFT, ROOM, 6),
  ]);
}

/** One step of the because: a tick on the line down the gutter, what kind of step, what it says. */
function stepPieces(pen: Pen, { kind, says }: FindingBlock["steps"][number], isLast: boolean): readonly Piece[] {
  const x = LEFT + GUTTER;
  const kinds = linesOf(pen, kind, KIND - 6, TYPE.second);
  const lines = linesOf(pen, says, ROOM - GUTTER - KIND, TYPE.body);
  const count = Math.max(kinds.length, lines.length);
  const trace = x - 12;
  const { lead } = TYPE.body;
  return Array.from({ length: count }, (_, at) => ({
    height: lead,
    draw: (own: Pen, y: number) => {
      const ends = isLast && at === 0 ? y + lead / 2 : isLast ? y : y + lead;
      const line = { line: { colour: INK, wide: 0.8 } };
      if (ends > y)
        own.path(
          [
            { op: "m", c: [trace, y] },
            { op: "l", c: [trace, ends] },
          ],
          line,
        );
      if (at === 0)
        own.path(
          [
            { op: "m", c: [trace, y + lead / 2] },
            { op: "l", c: [trace + 7, y + lead / 2] },
          ],
          line,
        );
      own.text(kinds[at] ?? "", x, baseLine(y, TYPE.body), TYPE.second);
      own.text(lines[at] ?? "", x + KIND, baseLine(y, TYPE.body), TYPE.body);
    },
  }));
}

/** As wide as the page, but no higher than a third of it. */
const DRAWN_HIGH = 250;
function drawingPiece(drawing: Drawing): Piece {
  const scale = Math.min(ROOM / drawing.width, DRAWN_HIGH / drawing.height);
  const [width, height] = [drawing.width * scale, drawing.height * scale];
  return { height, above: 6, draw: (pen, y) => drawVector(pen, drawing, LEFT + (ROOM - width) / 2, y, width, height) };
}

/** As large as a hand writes. */
const SIGNED = { wide: 180, high: 70 };
function signaturePiece(drawing: Drawing): Piece {
  const scale = Math.min(SIGNED.wide / drawing.width, SIGNED.high / drawing.height);
  const [width, height] = [drawing.width * scale, drawing.height * scale];
  return { height, above: 8, draw: (pen, y) => drawVector(pen, drawing, LEFT, y, width, height) };
}

/** Marks with their words, as many beside each other as go. */
function keyPieces(pen: Pen, marks: readonly { readonly mark: MarkKind; readonly word: string }[]): readonly Piece[] {
  const rows: { readonly mark: MarkKind; readonly word: string; readonly x: number }[][] = [[]];
  let x = LEFT;
  for (const { mark, word } of marks) {
    const wide = MARK.wide + 6 + pen.width(word, TYPE.body) + 18;
    if (x + wide > LEFT + ROOM) {
      rows.push([]);
      x = LEFT;
    }
    rows.at(-1)?.push({ mark, word, x });
    x += wide;
  }
  return rows.map((row) => ({
    height: 20,
    draw: (own: Pen, y: number) => {
      for (const one of row) {
        drawVector(own, markDrawing(one.mark), one.x, y + 3, MARK.wide, MARK.high);
        own.text(one.word, one.x + MARK.wide + 6, baseLine(y + 3, TYPE.body), TYPE.body);
      }
    },
  }));
}

const SIGN = { high: 56, line: 40, wide: 260 };
const signPiece = (words: string): Piece => ({
  height: SIGN.high,
  draw: (pen, y) => {
    pen.path(
      [
        { op: "m", c: [LEFT, y + SIGN.line] },
        { op: "l", c: [LEFT + SIGN.wide, y + SIGN.line] },
      ],
      {
        line: { colour: INK, wide: 0.8 },
      },
    );
    return linePiece(words, LEFT, TYPE.small).draw(pen, y + SIGN.line + 2);
  },
});
