/** Which figures and words stand under the ruler of a reading. Refuses to know where: label-rows.ts places them. */
import { GAP, type Label, LETTER, type Placed, placeLabels } from "./label-rows.js";
import type { ScaleBox, ScaleInput } from "./scale-terms.js";
import { graduation, type ScaleWindow } from "./scale-window.js";
import { n } from "./tree.js";

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
export function labelRows(input: ScaleInput, ruler: Ruled, box: ScaleBox, top: number): Placed {
  const showsLimits = ruler.window.edges.length > 0 || (input.limitsShown && input.reading !== undefined);
  const labels = showsLimits ? limitLabels(input, ruler) : graduationLabels(input, ruler, box);
  return placeLabels(labels, box, top);
}
