/**
 * The ruler of an estimate: lamp over the likely figure, its foot from low to high, the budget as the strongest stroke.
 * Money and hours alike. Pure geometry; refuses to reckon: every figure comes with its text.
 */
import { halfOf, inside, type Label, placeLabels } from "./label-rows.js";
import type { RangeFigure, RangeInput } from "./range-terms.js";
import type { ScaleBox } from "./scale-terms.js";
import { graduation } from "./scale-window.js";
import { type Drawing, n, type Shape, shape } from "./tree.js";

const MARGIN = 20;
/** Heights below the likely figure, px: lamp, its foot, ruler, foot of the strokes. */
const LAMP = 6;
const APEX_FOOT = 12;
const RULER = 46;
const STROKE_FOOT = 55;
const APEX = 3;
/** A foot narrower than this can't be seen. */
const LEAST_FOOT = 4;
/** Air beyond the outermost figure, as a share of the span. */
const AIR = 0.12;
/** The light takes at least this share of the ruler; a budget further off stands behind a gap at the end. */
const LEAST_SHARE = 0.3;
/** The gap before a budget that lies further off, px. */
const FAR = 18;
/** Strokes of an estimate stand wider apart than those of a gauge: nobody reads a sum to the unit. */
const COARSER = 4;

interface Ruler {
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
  /** Where the budget stands when it is off the ruler. */
  readonly far?: "low" | "high" | undefined;
}

/** The stretch shown: low to high and the budget, with air, never below nothing. */
function stretch({ low, high, p80, budget }: RangeInput): Omit<Ruler, "left" | "right"> {
  const least = Math.min(low.at, p80?.at ?? low.at);
  const most = Math.max(high.at, p80?.at ?? high.at);
  const own = most - least || Math.abs(most) * AIR || 1;
  const reach = own / LEAST_SHARE - own;
  const at = budget?.at;
  const far = at === undefined ? undefined : at > most + reach ? "high" : at < least - reach ? "low" : undefined;
  const near = far === undefined ? (at ?? least) : least;
  const [a, b] = [Math.min(least, near), Math.max(most, near)];
  const air = (b - a || own) * AIR;
  return { from: a >= 0 ? Math.max(0, a - air) : a - air, to: b + air, far };
}

const xOf = (ruler: Ruler, at: number): number =>
  ruler.left + ((at - ruler.from) / (ruler.to - ruler.from)) * (ruler.right - ruler.left);

/** The lamp with its light: the foot is never so narrow that it can't be seen. */
function lightShapes(x: { readonly low: number; readonly likely: number; readonly high: number }, top: number) {
  const low = Math.min(x.low, x.likely - LEAST_FOOT);
  const high = Math.max(x.high, x.likely + LEAST_FOOT);
  const at = n(x.likely - APEX);
  return [
    shape("path", {
      class: "cone",
      d: `M${at} ${n(top + APEX_FOOT)}H${n(x.likely + APEX)}L${n(high)} ${n(top + RULER)}H${n(low)}Z`,
    }),
    shape("path", {
      class: "lamp",
      d: `M${n(x.likely - 5.5)} ${n(top + LAMP)}H${n(x.likely + 5.5)}L${n(x.likely + APEX)} ${n(top + APEX_FOOT)}H${at}Z`,
    }),
  ];
}

function graduationPath(ruler: Ruler, y: number): Shape {
  const g = graduation(ruler.to - ruler.from, (ruler.right - ruler.left) / COARSER);
  let d = "";
  for (let i = Math.ceil(ruler.from / g.step - 1e-6); i * g.step <= ruler.to + g.step * 1e-6; i++) {
    d += `M${n(xOf(ruler, i * g.step))} ${n(y)}v${i % g.long === 0 ? -11 : -6}`;
  }
  return shape("path", { class: "fine", d });
}

/** The whole ruler for a box of `width` px and text of `text` px; text is never scaled with the drawing. */
export function rangeDrawing(input: RangeInput, box: ScaleBox): Drawing {
  const { low, likely, high, p80, budget } = input;
  const ends = stretch(input);
  const [first, last] = [MARGIN, Math.max(box.width - MARGIN, MARGIN + 40)];
  const left = ends.far === "low" ? first + FAR : first;
  const right = ends.far === "high" ? last - FAR : last;
  const ruler: Ruler = { ...ends, left, right };
  const top = Math.ceil(box.text * 1.15);
  const y = top + RULER;
  const x = (figure: RangeFigure): number => xOf(ruler, figure.at);
  const budgetX = (figure: RangeFigure): number =>
    ends.far === "high" ? last : ends.far === "low" ? first : x(figure);
  const gap = ends.far === "high" ? `M${n(right)} ${n(y)}H${n(last)}` : `M${n(first)} ${n(y)}H${n(left)}`;
  const feet = low.at === high.at ? [low] : [low, high];
  const named: readonly Label[] = [
    ...feet.map((figure): Label => ({ text: figure.text, x: x(figure), look: "figure" })),
    ...(p80 === undefined ? [] : [{ text: p80.text, x: x(p80), look: "words" as const }]),
    ...(budget === undefined ? [] : [{ text: budget.text, x: budgetX(budget), look: "strong" as const }]),
  ];
  const below = placeLabels(named, box, top + STROKE_FOOT);
  const head = { text: likely.text, look: "strong" } as const;
  const headX = inside(x(likely), halfOf(head, box.text), box.width);
  return {
    width: box.width,
    height: below.foot,
    shapes: [
      shape("text", { class: "strong", x: n(headX), y: n(box.text * 0.85), "text-anchor": "middle" }, [likely.text]),
      ...lightShapes({ low: x(low), likely: x(likely), high: x(high) }, top),
      shape("path", { class: "base", d: `M${n(left)} ${n(y)}H${n(right)}` }),
      ...(ends.far === undefined ? [] : [shape("path", { class: "base far", d: gap })]),
      graduationPath(ruler, y),
      ...(p80 === undefined
        ? []
        : [shape("path", { class: "p80", d: `M${n(x(p80))} ${n(top + APEX_FOOT)}V${n(top + STROKE_FOOT)}` })]),
      ...(budget === undefined
        ? []
        : [shape("path", { class: "budget", d: `M${n(budgetX(budget))} ${n(top + LAMP)}V${n(top + STROKE_FOOT)}` })]),
      ...below.shapes,
    ],
  };
}
