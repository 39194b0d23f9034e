/** A picture's marks in words and as they are drawn; lengths worked out with how far off they may be. Pure. */
import type { NamedMark, PictureMark, Spot } from "../../core/record/index.js";
import { type DrawnMark, lengthOf, type PictureLength, type PictureSize, toldIn } from "../../core/report/index.js";
import { figure, t } from "../texts/marks.js";
import { unitShown } from "../texts/units.js";

const MM_PER_INCH = 25.4;

export interface MarkLine {
  readonly mark: string;
  readonly number: number;
  readonly says: string;
  readonly second: string;
  readonly drawn: DrawnMark;
}
export interface MarksView {
  readonly lines: readonly MarkLine[];
  readonly drawn: readonly DrawnMark[];
  /** The newest known length there is to measure by. */
  readonly scale: string | undefined;
  /** Whether a length is told, and with it where it holds. */
  readonly measures: boolean;
}

/** One of nine parts of the picture. */
function whereOf([x, y]: Spot): string {
  const third = (part: number): "0" | "1" | "2" => (part < 1 / 3 ? "0" : part > 2 / 3 ? "2" : "1");
  return t(`marks.spot.${third(x)}${third(y)}`);
}

/** `24.9 ± 0.3 mm (0.98 ± 0.02 in)`, and short for beside the line. */
export function lengthWords(length: PictureLength): { readonly long: string; readonly short: string } {
  const [mm, inch] = [toldIn(length, 1), toldIn(length, MM_PER_INCH)];
  const text = (value: number, decimals: number): string => figure(value.toFixed(decimals));
  const both = { mm: text(mm.value, mm.decimals), mmOff: text(mm.off, mm.decimals) };
  const inches = { in: text(inch.value, inch.decimals), inOff: text(inch.off, inch.decimals) };
  return { long: t("marks.length", { ...both, ...inches }), short: t("marks.length.short", both) };
}

type Scale = Extract<PictureMark, { readonly type: "scale" }>;
const scaleNamed = (marks: readonly NamedMark[], name: string): Scale | undefined => {
  const found = marks.findLast(({ mark, stands }) => mark === name && stands.value.type === "scale")?.stands.value;
  return found?.type === "scale" ? found : undefined;
};

interface Told {
  readonly says: string;
  /** Written beside its number. */
  readonly at: string;
  readonly second?: string;
}

function told(drawn: PictureMark, marks: readonly NamedMark[], size: PictureSize): Told {
  switch (drawn.type) {
    case "arrow":
      return { says: t("marks.is.arrow", { at: whereOf(drawn.to) }), at: "" };
    case "ring":
      return { says: t("marks.is.ring", { at: whereOf(drawn.at) }), at: "" };
    case "words":
      return { says: t("marks.is.words", { words: drawn.words, at: whereOf(drawn.at) }), at: drawn.words };
    case "scale": {
      const length = `${figure(drawn.known.value)} ${unitShown(drawn.known.unit)}`;
      return { says: t("marks.is.scale", { length }), at: length };
    }
    case "length": {
      const length = lengthOf(drawn, scaleNamed(marks, drawn.by), size);
      if (typeof length === "string") return { says: t(`marks.${length}`), at: "" };
      const { long, short } = lengthWords(length);
      const by = marks.findIndex(({ mark }) => mark === drawn.by) + 1;
      return { says: t("marks.is.length", { length: long }), at: short, second: t("marks.by", { n: by }) };
    }
  }
}

export function marksView(marks: readonly NamedMark[], size: PictureSize): MarksView {
  const lines = marks.map(({ mark, stands }, index): MarkLine => {
    const { says, at, second = "" } = told(stands.value, marks, size);
    const number = index + 1;
    return { mark, number, says, second, drawn: { drawn: stands.value, label: `${number} ${at}`.trim() } };
  });
  return {
    lines,
    drawn: lines.map(({ drawn }) => drawn),
    scale: marks.findLast(({ stands }) => stands.value.type === "scale")?.mark,
    measures: marks.some(({ stands }) => stands.value.type === "length" || stands.value.type === "scale"),
  };
}

/** The marks as one sentence: the drawing's text alternative. */
export const marksSentence = ({ lines }: MarksView): string =>
  lines.map(({ number, says }) => `${number}: ${says}`).join("; ");
