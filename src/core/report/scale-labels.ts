/**
 * Figures and words under the ruler, moved to a lower row where they would touch. Widths are estimated from the
 * number of letters: a drawing can't measure type.
 */
import type { ScaleBox, ScaleInput } from "./scale-terms.js";
import { graduation, type ScaleWindow } from "./scale-window.js";
import { n, type Shape, shape } from "./tree.js";

/** Width of a sign as a share of the type size, measured on the app's own face: tabular figures, and words. */
const LETTER = { figure: 0.515, words: 0.47 } as const;
const ROW = 1.25;
const GAP = 4;

interface Label {
  readonly text: string;
  readonly x: number;
  readonly look: "figure" | "words";
}

interface Ruled {
  readonly window: ScaleWindow;
  readonly left: number;
  readonly right: number;
  readonly x: (value: number) => number;
}

function limitLabels(input: ScaleInput, ruler: Ruled): readonly Label[] {
  const { nominal } = input;
  const named = [
    ...ruler.window.edges.map((e) => ({ at: e.at, text: e.text, caption: e.caption })),
    ...(nominal === undefined ? [] : [{ at: nominal.at, text: nominal.text, caption: nominal.caption }]),
  ].sort((a, b) => a.at - b.at);
  const figures = named.map((e): Label => ({ text: e.text, x: ruler.x(e.at), look: "figure" }));
  const words = named.flatMap((e): readonly Label[] =>
    e.caption === undefined ? [] : [{ text: e.caption, x: ruler.x(e.at), look: "words" }],
  );
  return [...figures, ...words];
}

/** Figures of the long graduations while no limit may be shown; a short ruler gets its two ends. */
function graduationLabels(input: ScaleInput, ruler: Ruled, box: ScaleBox): readonly Label[] {
  const { from, to } = ruler.window;
  const write = input.write ?? ((value: number): string => n(value));
  const g = graduation(to - from, ruler.right - ruler.left, input.resolution);
  const long = g.step * g.long;
  const labels: Label[] = [];
  for (let i = Math.ceil(from / long - 1e-6); i * long <= to + long * 1e-6; i++) {
    labels.push({ text: write(i * long), x: ruler.x(i * long), look: "figure" });
  }
  const widest = Math.max(1, ...labels.map((l) => l.text.length)) * LETTER.figure * box.text + GAP;
  const every = Math.max(1, Math.ceil((widest * labels.length) / (ruler.right - ruler.left)));
  return labels.filter((_, i) => i % every === 0);
}

/** Placed labels and where the drawing ends below them. */
export function labelRows(
  input: ScaleInput,
  ruler: Ruled,
  box: ScaleBox,
  top: number,
): { readonly shapes: readonly Shape[]; readonly foot: number } {
  const showsLimits = ruler.window.edges.length > 0 || (input.limitsShown && input.reading !== undefined);
  const labels = showsLimits ? limitLabels(input, ruler) : graduationLabels(input, ruler, box);
  /** Right end of what stands in each row already; words start below all figures. */
  const rows: number[] = [];
  let wordsFrom = 0;
  const shapes = labels.map((label) => {
    const half = (label.text.length * LETTER[label.look] * box.text) / 2;
    const x = Math.min(box.width - 4 - half, Math.max(4 + half, label.x));
    if (label.look === "figure") wordsFrom = Math.max(wordsFrom, rows.length);
    let row = label.look === "words" ? Math.max(1, wordsFrom) : 0;
    while ((rows[row] ?? Number.NEGATIVE_INFINITY) > x - half) row++;
    for (let i = rows.length; i < row; i++) rows[i] = Number.NEGATIVE_INFINITY;
    rows[row] = x + half + GAP;
    if (label.look === "figure") wordsFrom = Math.max(wordsFrom, row + 1);
    return shape(
      "text",
      { class: label.look, x: n(x), y: n(top + box.text * (1.15 + ROW * row)), "text-anchor": "middle" },
      [label.text],
    );
  });
  return { shapes, foot: Math.ceil(top + box.text * (rows.length === 0 ? 0.6 : ROW * rows.length + 0.4)) };
}
