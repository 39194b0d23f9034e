/** The limits book: every default of the sheets at hand beside the car's own figure. Pure. */
import { type CarState, limitKey } from "../../core/record/index.js";
import type { CarLimit, Limit, SheetTexts } from "../../core/sheet/run.js";
import { GRADES } from "../../core/terms/index.js";
import { isQuantity } from "../../core/units/index.js";
import { figure, t } from "../texts/index.js";
import { unitShown, unitWords } from "../texts/units.js";
import type { FrozenSheetFile } from "./frozen.js";
import { textsOf } from "./shelf.js";
import { tradeUnits } from "./trade-units.js";

export interface LimitLine {
  readonly id: string;
  readonly sheet: string;
  readonly title: string;
  /** Edges as text: the car's figure where there is one, else the default. */
  readonly second: string;
  readonly mine: boolean;
}

/** Name of a limit: its own text, else the name of the point it judges. */
export function limitTitle(limit: Limit, texts: SheetTexts): string {
  const point = texts.points[limit.of]?.name ?? texts.derived?.[limit.of];
  return texts.limits?.[limit.id] ?? point ?? limit.id;
}

/** `over 0.25 mm: major`, mildest first. */
export function bandsText(
  limit: Pick<Limit, "direction" | "unit">,
  bands: Readonly<Partial<Record<(typeof GRADES)[number], string | number | undefined>>>,
  unit = limit.unit,
): string {
  return GRADES.flatMap((grade) => {
    const value = bands[grade];
    return value === undefined
      ? []
      : [t(`limit.${limit.direction}`, { value: figure(value), unit: unitShown(unit), grade: t(`grade.${grade}`) })];
  }).join(" · ");
}

/** What a figure in the book says. */
export const carLimitText = (limit: Limit, own: CarLimit): string =>
  bandsText(limit, own.bands ?? { [own.grade ?? "major"]: own.value }, own.unit);

/** The car's figures on one default limit, one per place they hold for. */
export const figuresOn = (
  car: CarState,
  limit: string,
): readonly { readonly key: string; readonly value: CarLimit }[] =>
  [...car.limits.values()].flatMap((standing) =>
    standing.flatMap(({ value }) => (value.limit === limit ? [{ key: limitKey(value), value }] : [])),
  );

export const limitLines = (car: CarState, files: readonly FrozenSheetFile[]): readonly LimitLine[] =>
  files.flatMap((file) => {
    const texts = textsOf(file);
    return file.sheet.limits.map((limit) => {
      const all = figuresOn(car, limit.id);
      const own = all[0]?.value;
      return {
        id: limit.id,
        sheet: texts.title,
        title: limitTitle(limit, texts),
        second: own
          ? `${carLimitText(limit, own)}. ${t(`basis.${own.basis}`)}`
          : `${bandsText(limit, limit.bands)}. ${t(`basis.${limit.basis}`)}, ${t("basis.default")}`,
        mine: own !== undefined,
      };
    });
  });

/** Units a figure may be written in. */
export const unitChoices = (limit: Limit): readonly { readonly value: string; readonly words: string }[] =>
  (isQuantity(limit.quantity)
    ? [limit.unit, ...tradeUnits(limit.quantity).filter((code) => code !== limit.unit)]
    : []
  ).map((code) => ({ value: code, words: unitWords(code) }));
