/**
 * What was heard at a point, drawn: here or left and right, and last time; where the wheel and its bearing would be
 * heard; what stands out and what that is near to. Pure; concludes nothing.
 */
import { lookedOn, type VisitState } from "../../core/record/index.js";
import type { Heard, HeardPeak, Listened } from "../../core/record/sound.js";
import type { LineMark, LinesInput, LineTrace } from "../../core/report/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { day, rounded } from "../texts/figures.js";
import { t } from "../texts/heard.js";
import type { PointAt } from "./standing.js";
import type { MarkAt } from "./turning.js";

/** A recording to be drawn, and which it is in words. */
export interface ToHear {
  readonly id: string;
  readonly blob: string;
  readonly which: string;
  readonly look: LineTrace["look"];
}

type Sounds = VisitState["sounds"];
const lastAt = (sounds: Sounds, at: PointAt): Sounds[number] | undefined =>
  sounds.findLast(({ value }) => value.point === at.point && value.place === at.place && value.state === at.state);
const dayOf = (visit: VisitState): string => day(Date.parse(lookedOn(visit)));

/** The newest of this place in full, of the other side dashed, of the newest earlier visit that has one dotted. */
export function toHear(
  tree: PlaceTree,
  visit: VisitState,
  earlier: readonly VisitState[],
  at: PointAt,
): readonly ToHear[] {
  const [twin] = tree.related("opposite", at.place);
  const now = t("heard.this-visit");
  const own = lastAt(visit.sounds, at);
  const other = twin === undefined ? undefined : lastAt(visit.sounds, { ...at, place: twin });
  const before = earlier.findLast((one) => lastAt(one.sounds, at) !== undefined);
  const last = before && lastAt(before.sounds, at);
  const isRight = tree.sideOf(at.place) === "right";
  const sides = twin === undefined ? undefined : isRight ? (["right", "left"] as const) : (["left", "right"] as const);
  const one = (sound: Sounds[number] | undefined, which: string, look: ToHear["look"]): readonly ToHear[] =>
    sound ? [{ id: sound.id, blob: sound.value.blob, which, look }] : [];
  return [
    ...one(own, t(sides ? `heard.${sides[0]}` : "heard.here", { when: now }), "full"),
    ...one(other, t(sides ? `heard.${sides[1]}` : "heard.here", { when: now }), "dashed"),
    ...one(last, t("heard.last", { when: before ? dayOf(before) : "" }), "dotted"),
  ];
}

/** A recording with what came of listening to it; `gone`: its bytes are not here. */
export interface HeardOne extends ToHear {
  readonly listened: Listened | { readonly is: "gone" };
}

export interface HeardView {
  readonly pitch: LinesInput;
  readonly beat: LinesInput;
  /** The same in words, a line each. */
  readonly lines: readonly string[];
  /** Recordings that could not be drawn, with why. */
  readonly silent: readonly string[];
  readonly marks: readonly string[];
}

/** dB shown: everything is drawn on one scale, from the loudest a file can hold down. */
const LOWEST_DB = -100;
const PITCHES = [20, 50, 100, 300, 1000, 3000, 8000];
const BEATS = [0, 20, 40, 60, 80, 100, 120];

const markWords = (mark: MarkAt): string => {
  const words = t(`heard.mark.${mark.id}`);
  return mark.about ? t("heard.about", { mark: words }) : words;
};
const middle = ({ from, to }: MarkAt): number => Math.sqrt(from * to);
const asMarks = (marks: readonly MarkAt[]): readonly LineMark[] =>
  marks.map((mark) => ({ id: mark.id, at: middle(mark), text: markWords(mark) }));

/** Marks whose stretch a peak may lie in, in words; empty where there are none. */
function nearTo(peak: HeardPeak, marks: readonly MarkAt[]): string {
  const near = marks.filter(({ from, to }) => peak.at + peak.within >= from && peak.at - peak.within <= to);
  return near.length === 0 ? "" : t("heard.near", { marks: near.map(markWords).join(", ") });
}

const middleOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** A peak with those of its own multiples that stand out too: something that comes round sharply has them all. */
interface Series {
  readonly peak: HeardPeak;
  readonly multiples: boolean;
}

/** Peaks that are no multiple of a deeper one, strongest first as they came. */
function seriesOf(peaks: readonly HeardPeak[]): readonly Series[] {
  const isMultipleOf = (peak: HeardPeak, base: HeardPeak): boolean => {
    const times = Math.round(peak.at / base.at);
    return times >= 2 && Math.abs(peak.at - times * base.at) <= peak.within * times;
  };
  const bases: HeardPeak[] = [];
  for (const peak of [...peaks].sort((a, b) => a.at - b.at))
    if (!bases.some((base) => isMultipleOf(peak, base))) bases.push(peak);
  return peaks
    .filter((peak) => bases.includes(peak))
    .map((peak) => ({ peak, multiples: peaks.some((other) => isMultipleOf(other, peak)) }));
}

/** What one recording has in words: its length and loudness, then what stands out and what that is near to. */
function linesFor(which: string, heard: Heard, marks: readonly MarkAt[]): readonly string[] {
  const first = t("heard.spoken", {
    which,
    n: rounded(heard.seconds, 1),
    level: rounded(middleOf(heard.levels), 0),
  });
  const also = (multiples: boolean): string => (multiples ? t("heard.multiples") : "");
  const tones = seriesOf(heard.peaks).map(({ peak, multiples }) =>
    t("heard.tone", { which, at: rounded(peak.at, 0), near: nearTo(peak, marks), also: also(multiples) }),
  );
  const swells = seriesOf(heard.beatPeaks).map(({ peak, multiples }) =>
    t("heard.swell", {
      also: also(multiples),
      which,
      at: rounded(peak.at, 1),
      swing: rounded(100 * peak.height, 0),
      near: nearTo(peak, marks),
    }),
  );
  return [first, ...(tones.length + swells.length === 0 ? [t("heard.plain", { which })] : [...tones, ...swells])];
}

/** The least swing, per cent, drawn over the whole height, so that hiss alone does not look like a beat. Own choice. */
const LEAST_SWING = 20;

export function heardView(ones: readonly HeardOne[], marks: readonly MarkAt[]): HeardView {
  const drawn = ones.flatMap((one) => (one.listened.is === "heard" ? [{ ...one, heard: one.listened.heard }] : []));
  const trace = ({ id, which, look }: ToHear, points: LineTrace["points"]): LineTrace => ({
    id,
    text: which,
    look,
    points,
  });
  const swings = drawn.map((one) => ({
    one,
    points: one.heard.beats.map(({ at, height }) => ({ at, height: 100 * height })),
  }));
  const most = Math.max(LEAST_SWING, ...swings.flatMap(({ points }) => points.map(({ height }) => height)));
  const top = Math.ceil(most / 10) * 10;
  return {
    pitch: {
      traces: drawn.map((one) => trace(one, one.heard.bands)),
      axis: { from: 20, to: 8000, by: "octaves" },
      figures: PITCHES.map((at) => ({ at, text: rounded(at, 0) })),
      heights: { from: LOWEST_DB, to: 0, figures: [-80, -40, 0].map((at) => ({ at, text: rounded(at, 0) })) },
      marks: asMarks(marks),
    },
    beat: {
      traces: swings.map(({ one, points }) => trace(one, points)),
      axis: { from: 0, to: 120, by: "steps" },
      figures: BEATS.map((at) => ({ at, text: rounded(at, 0) })),
      heights: { from: 0, to: top, figures: [0, top / 2, top].map((at) => ({ at, text: rounded(at, 0) })) },
      marks: asMarks(marks),
    },
    lines: drawn.flatMap(({ which, heard }) => linesFor(which, heard, marks)),
    silent: ones.flatMap(({ which, listened }) =>
      listened.is === "heard"
        ? []
        : [t(listened.is === "gone" ? "heard.why.gone" : `heard.why.${listened.why}`, { which })],
    ),
    marks: marks.map((mark) =>
      t("heard.marks", { mark: markWords(mark), from: rounded(mark.from, 1), to: rounded(mark.to, 1) }),
    ),
  };
}
