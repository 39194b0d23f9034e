/**
 * Places what is written under a ruler, moved to a lower row where it would touch. Widths are estimated from the
 * number of letters: a drawing can't measure type.
 */
import type { ScaleBox } from "./scale-terms.js";
import { n, type Shape, shape } from "./tree.js";

/** Width of a sign as a share of the type size, measured on the app's own face: tabular figures, words, heavy words. */
export const LETTER = { figure: 0.515, words: 0.47, strong: 0.52 } as const;
const ROW = 1.25;
/** Room between neighbours, px. */
export const GAP = 4;
/** Room to the edge of the drawing, px. */
const EDGE = 4;

/** Something written at a place of the ruler; words stand below all figures, what is strong in the first row with room. */
export interface Label {
  readonly text: string;
  readonly x: number;
  readonly look: keyof typeof LETTER;
}
export interface Placed {
  readonly shapes: readonly Shape[];
  /** Where the drawing ends below them. */
  readonly foot: number;
}

/** Half the room a label takes, px. */
export const halfOf = (label: Pick<Label, "text" | "look">, text: number): number =>
  (label.text.length * LETTER[label.look] * text) / 2;

/** The middle of a label moved inward so that none of it is cut off. */
export const inside = (x: number, half: number, width: number): number =>
  Math.min(width - EDGE - half, Math.max(EDGE + half, x));

/** Room taken in a row, px. */
interface Taken {
  readonly from: number;
  readonly to: number;
}

const isFree = (row: readonly Taken[] | undefined, from: number, to: number): boolean =>
  (row ?? []).every((taken) => to <= taken.from || from >= taken.to);

/** Labels in rows below `top`: give figures first, then words, then what is strong. */
export function placeLabels(labels: readonly Label[], box: ScaleBox, top: number): Placed {
  const rows: Taken[][] = [];
  let wordsFrom = 0;
  const shapes = labels.map((label) => {
    const half = halfOf(label, box.text);
    const x = inside(label.x, half, box.width);
    let row = label.look === "words" ? Math.max(1, wordsFrom) : 0;
    while (!isFree(rows[row], x - half, x + half)) row++;
    for (let i = rows.length; i <= row; i++) rows[i] = [];
    rows[row]?.push({ from: x - half - GAP, to: x + half + GAP });
    if (label.look === "figure") wordsFrom = Math.max(wordsFrom, row + 1);
    return shape(
      "text",
      { class: label.look, x: n(x), y: n(top + box.text * (1.15 + ROW * row)), "text-anchor": "middle" },
      [label.text],
    );
  });
  return { shapes, foot: Math.ceil(top + box.text * (rows.length === 0 ? 0.6 : ROW * rows.length + 0.4)) };
}
