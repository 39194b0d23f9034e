/** A table as groups of pieces: its head on every page it goes on, no row broken that a page can hold. */

import type { TableBlock, TableRow } from "../../core/report/index.js";
import { MARK_HEIGHT, MARK_WIDTH, markDrawing } from "../../core/report/index.js";
import type { Group, Piece } from "./flow.js";
import { INK, type Pen } from "./pen.js";
import { baseLine, LEFT, linesOf, ROOM, rulePiece, TYPE, type Type, textPieces } from "./typeset.js";
import { drawVector } from "./vector.js";

const GAP = 9;
/** 5 mm: the least at which all marks stay apart. */
export const MARK = { high: 14.2, wide: (14.2 * MARK_WIDTH) / MARK_HEIGHT } as const;
const MARK_ROOM = MARK.wide + 6;

/** Words of the marks, by mark. */
export type MarkWords = Readonly<Record<string, string>>;

/** The word beside a row's mark; none where a cell says it already. */
function wordBeside({ mark, cells }: TableRow, words: MarkWords): string {
  const word = mark === undefined ? "" : (words[mark] ?? "");
  return cells.some((cell) => cell.includes(word)) ? "" : word;
}

interface Column {
  readonly x: number;
  readonly room: number;
  readonly isFigure: boolean;
}

/** Widest word and widest text of a column, head included. */
function wantsOf(pen: Pen, texts: readonly (readonly [string, Type])[]): readonly [least: number, all: number] {
  const width = (text: string, type: Type): number => pen.width(text, type);
  const least = texts.flatMap(([text, type]) => text.split(/ +/).map((word) => width(word, type)));
  return [Math.max(0, ...least), Math.max(0, ...texts.map(([text, type]) => width(text, type)))];
}

/** Columns as wide as their words want; what is missing is taken where words can be broken into lines. */
export function columnRooms(
  wants: readonly (readonly [least: number, all: number])[],
  room: number,
): readonly number[] {
  const least = wants.reduce((sum, [one]) => sum + one, 0);
  const all = wants.reduce((sum, [, one]) => sum + one, 0);
  if (least > room) return wants.map(([one]) => (one * room) / least);
  if (all <= room) {
    const widest = Math.max(...wants.map(([, one]) => one));
    const at = wants.findIndex(([, one]) => one === widest);
    return wants.map(([, one], index) => (index === at ? one + room - all : one));
  }
  return shared(wants, room - least);
}

/**
 * What is left over their widest words, by the root of what each still wants: one long text would else leave the other
 * columns a word a line. None gets more than it wants; what it leaves goes to the others.
 */
function shared(wants: readonly (readonly [least: number, all: number])[], free: number): readonly number[] {
  const rooms = wants.map(([least]) => least);
  let left = free;
  for (let round = 0; round < wants.length && left > 0.5; round++) {
    const weights = wants.map(([, all], at) => Math.sqrt(Math.max(0, all - (rooms[at] ?? 0))));
    const sum = weights.reduce((total, one) => total + one, 0);
    const give = left;
    for (const [at, [, all]] of wants.entries()) {
      const before = rooms[at] ?? 0;
      const more = Math.min((give * (weights[at] ?? 0)) / sum, all - before);
      rooms[at] = before + more;
      left -= more;
    }
  }
  return rooms;
}

function columnsOf(pen: Pen, { head, rows }: TableBlock, left: number): readonly Column[] {
  const texts = head.map(({ text }, at): readonly (readonly [string, Type])[] => [
    [text, TYPE.head],
    ...rows.map((row) => [row.cells[at] ?? "", TYPE.cell] as const),
  ]);
  const room = LEFT + ROOM - left - GAP * (head.length - 1);
  const rooms = columnRooms(
    texts.map((one) => wantsOf(pen, one)),
    room,
  );
  let x = left;
  return head.map(({ isFigure }, at) => {
    const own = rooms[at] ?? 0;
    const column = { x, room: own, isFigure: isFigure === true };
    x += own + GAP;
    return column;
  });
}

/** Lines of several cells beside each other, as pieces of one line each. */
function cellPieces(pen: Pen, cells: readonly string[], columns: readonly Column[], type: Type): Piece[] {
  const lines = columns.map(({ room }, at) => linesOf(pen, cells[at] ?? "", room + 0.01, type));
  const count = Math.max(1, ...lines.map(({ length }) => length));
  return Array.from({ length: count }, (_, line) => ({
    height: type.lead,
    draw: (own: Pen, y: number) => {
      for (const [at, { x, room, isFigure }] of columns.entries())
        own.text(lines[at]?.[line] ?? "", isFigure ? x + room : x, baseLine(y, type), type, isFigure ? "end" : "start");
    },
  }));
}

function headPiece(pen: Pen, { head }: TableBlock, columns: readonly Column[]): Piece {
  const lines = cellPieces(
    pen,
    head.map(({ text }) => text),
    columns,
    TYPE.head,
  );
  const rule = rulePiece(LEFT, ROOM, 4, 1, INK);
  return {
    height: lines.length * TYPE.head.lead + rule.height,
    draw: (own, y) => {
      for (const [at, line] of lines.entries()) void line.draw(own, y + at * TYPE.head.lead);
      void rule.draw(own, y + lines.length * TYPE.head.lead);
    },
  };
}

function rowGroup(pen: Pen, row: TableRow, columns: readonly Column[], head: Piece, word: string): Group {
  const second = columns[1]?.x ?? columns[0]?.x ?? LEFT;
  const cells = cellPieces(pen, row.cells, columns, TYPE.cell);
  const { mark } = row;
  const [first, ...rest] = cells;
  const marked: Piece[] =
    mark === undefined || !first
      ? cells
      : [
          {
            height: Math.max(first.height, rest.length === 0 ? MARK.high : 0),
            draw: (own, y) => {
              drawVector(own, markDrawing(mark), LEFT, y - 1, MARK.wide, MARK.high);
              own.text(word, LEFT + MARK_ROOM, baseLine(y, TYPE.cell), TYPE.head);
              return first.draw(own, y);
            },
          },
          ...rest,
        ];
  // Run on: each of its own line would make the list half as long again.
  const told = (row.notes ?? []).join(" ");
  const notes = told === "" ? [] : textPieces(pen, told, second, LEFT + ROOM - second, TYPE.small);
  return { pieces: [...marked, ...notes, rulePiece(LEFT, ROOM, 4)], together: true, head };
}

export function tableGroups(pen: Pen, table: TableBlock, words: MarkWords): readonly Group[] {
  const hasMarks = table.rows.some(({ mark }) => mark !== undefined);
  const beside = table.rows.map((row) => wordBeside(row, words));
  const widest = Math.max(0, ...beside.map((word) => pen.width(word, TYPE.head)));
  const left = hasMarks ? LEFT + MARK_ROOM + (widest > 0 ? widest + GAP : 0) : LEFT;
  const columns = columnsOf(pen, table, left);
  const head = headPiece(pen, table, columns);
  return table.rows.map((row, at) => rowGroup(pen, row, columns, head, beside[at] ?? ""));
}
