/**
 * Lays pieces on pages: what belongs together stays together, a heading keeps what follows, a table's head is repeated
 * on every page it goes on. Pure; knows heights only, not what is drawn.
 */
import type { Pen } from "./pen.js";

/** Something with a height that is never broken. `x`, `y`: its upper left corner, in points. */
export interface Piece {
  readonly height: number;
  /** Room above; dropped at the top of a page. */
  readonly above?: number | undefined;
  draw(pen: Pen, y: number): void | Promise<void>;
}

export interface Group {
  readonly pieces: readonly Piece[];
  /** Stays on one page where one page holds it. */
  readonly together?: boolean | undefined;
  /** Never the last thing on a page. */
  readonly withNext?: boolean | undefined;
  readonly newPage?: boolean | undefined;
  /** Stands above the first of the groups that share it, and again on each page they go on. */
  readonly head?: Piece | undefined;
}

export interface Placed {
  readonly piece: Piece;
  readonly y: number;
}

const taken = (piece: Piece, isFirst: boolean): number => (isFirst ? 0 : (piece.above ?? 0)) + piece.height;
const sum = (pieces: readonly Piece[]): number => pieces.reduce((all, one) => all + taken(one, false), 0);

/** Pages of placed pieces, from the top of what may be printed; `room` is its height. */
export function laid(groups: readonly Group[], room: number): readonly (readonly Placed[])[] {
  const pages: Placed[][] = [[]];
  let y = 0;
  let head: Piece | undefined;

  const turn = (): void => {
    pages.push([]);
    y = 0;
  };
  const put = (piece: Piece): void => {
    const isFirst = y === 0;
    pages.at(-1)?.push({ piece, y: y + (isFirst ? 0 : (piece.above ?? 0)) });
    y += taken(piece, isFirst);
  };
  /** What has to fit for a group to begin here: all of it, or its first piece; with the first of what it keeps. */
  const needed = (at: number): number => {
    const group = groups[at];
    if (!group) return 0;
    const own = group.together ? sum(group.pieces) : sum(group.pieces.slice(0, 1));
    const withHead = group.head && group.head !== head ? own + taken(group.head, false) : own;
    const alone = group.together ? withHead : Math.min(withHead, room);
    return group.withNext ? sum(group.pieces) + needed(at + 1) : alone;
  };

  for (const [at, group] of groups.entries()) {
    const wants = needed(at);
    if (y > 0 && (group.newPage || (y + wants > room && !(wants > room && startsWell(group, y, room))))) {
      turn();
      if (group.head && group.head === head) put(group.head);
    }
    if (group.head !== head) {
      head = group.head;
      if (head) put(head);
    }
    for (const piece of group.pieces) {
      if (y > 0 && y + taken(piece, false) > room) {
        turn();
        if (head) put(head);
      }
      put(piece);
    }
  }
  return pages;
}

/** What no page holds whole may as well begin here, where at least a third of the page is left. */
const startsWell = (group: Group, y: number, room: number): boolean => !group.withNext && y < (room * 2) / 3;
