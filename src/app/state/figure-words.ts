/** A figure of the limits book in words: its value in two units, where it comes from, what it holds for. Pure. */
import { FIGURE_TRUST, type FigureFor, type FigureSource, type FigureTold } from "../../core/record/index.js";
import type { CarLimit, Limit, OddFigure } from "../../core/sheet/run.js";
import { GRADES } from "../../core/terms/index.js";
import { convert, isQuantity, readTyped } from "../../core/units/index.js";
import { day, figure, t } from "../texts/limits.js";
import { unitShown } from "../texts/units.js";
import { tradeUnits } from "./trade-units.js";

const listed = (parts: readonly (string | undefined)[], between = ", "): string =>
  parts.filter((one) => one !== undefined && one !== "").join(between);
const onDay = (on: string | undefined): string | undefined => (on === undefined ? undefined : day(Date.parse(on)));

/** Where it came: `Workshop manual, edition 2nd, page 12`. */
function cameText({ way, title, edition, page, who, on }: FigureSource): string {
  switch (way) {
    case "book":
      return listed([title, edition && t("told.edition", { edition }), page && t("told.page", { page })]);
    case "letter":
      return listed([t("figure.way.letter"), who && t("told.from", { who }), onDay(on)]);
    case "word":
      return listed([who === undefined ? t("figure.way.word") : t("told.word", { who }), onDay(on)]);
    case "stamped":
      return title === undefined ? t("told.stamped.bare") : t("told.stamped", { title });
    case "measured":
      return listed([
        title === undefined ? t("figure.trust.measured") : t("told.measured", { title }),
        who && t("told.by", { who }),
        onDay(on),
      ]);
    case "practice":
      return t("figure.trust.practice");
  }
}

export function forText({ build, engine, from, to }: FigureFor): string {
  const numbers =
    from !== undefined && to !== undefined
      ? t("told.for.numbers", { from, to })
      : from !== undefined
        ? t("told.for.from", { from })
        : to !== undefined
          ? t("told.for.to", { to })
          : undefined;
  return listed([build && t("told.for.build", { build }), engine && t("told.for.engine", { engine }), numbers]);
}

/** All that is told of a figure as one line: what every judgement shows beside its basis. */
export const sourceText = ({ source, condition, holdsFor }: Omit<FigureTold, "odd">): string =>
  listed(
    [
      listed([
        cameText(source),
        source.trust === "maker-sister" ? t("told.sister") : undefined,
        source.trust === "supplier" ? t("told.supplier") : undefined,
      ]),
      condition,
      holdsFor && forText(holdsFor),
    ],
    "; ",
  );

/** `the maker's, for this build: 1 of 5 in order of trust`; alone where the source has said it already. */
export function trustText({ trust, way }: Pick<FigureSource, "trust" | "way">): string {
  const rank = t("figure.trusted", { rank: FIGURE_TRUST.indexOf(trust) + 1, of: FIGURE_TRUST.length });
  return trust === way ? rank : `${t(`figure.trust.${trust}`)}: ${rank}`;
}

/** Digits of a converted figure: as many as a book gives. */
const DIGITS = 4;

/** The same in the sheet's unit; typed in that, in the trade's unit that says it with the handiest number: `8 thou`. */
export function otherUnit(limit: Limit, value: number, unit: string): string | undefined {
  const { quantity } = limit;
  if (!isQuantity(quantity)) return undefined;
  const codes = unit === limit.unit ? tradeUnits(quantity).filter((code) => code !== unit) : [limit.unit];
  const converted = codes.map((code) => ({ code, number: convert(value, unit, code, quantity) }));
  const [handiest] = converted.sort((a, b) => unhandy(a.number) - unhandy(b.number));
  if (handiest === undefined) return undefined;
  return `${figure(Number(handiest.number.toPrecision(DIGITS)))} ${unitShown(handiest.code)}`.trim();
}

/** How far a number is from one with a digit or two before its point. */
const unhandy = (value: number): number => (value === 0 ? 0 : Math.abs(Math.log10(Math.abs(value)) - 1));

/** Every edge of a figure as kept, each in its other unit; empty where it cannot be read. */
export function convertedText(limit: Limit, own: CarLimit): string {
  const { quantity } = limit;
  const bands = own.bands ?? { [own.grade ?? "major"]: own.value };
  return listed(
    GRADES.map((grade) => {
      const typed = bands[grade];
      if (typed === undefined || !isQuantity(quantity)) return undefined;
      const read = readTyped(typed, { quantity, unit: own.unit });
      return read.ok ? otherUnit(limit, read.value.value, own.unit) : undefined;
    }),
    " · ",
  );
}

/** Each likely slip as a question. `value` and `unit` as typed. */
export const slipTexts = (
  { slips }: OddFigure,
  { value, unit, text }: { readonly value: number; readonly unit: string; readonly text: string },
): readonly string[] =>
  slips.map((slip) => {
    const typed = `${figure(text)} ${unitShown(unit)}`.trim();
    const meant = (number: number): string => `${figure(Number(number.toPrecision(DIGITS)))} ${unitShown(unit)}`.trim();
    if (slip.is === "unit")
      return t("odd.unit", { value: figure(text), meant: unitShown(slip.unit), typed: unitShown(unit) });
    return slip.is === "factor"
      ? t("odd.factor", { meant: meant(value / slip.factor), value: typed })
      : t("odd.sign", { meant: meant(-value), value: typed });
  });
