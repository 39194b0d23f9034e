/** The limits book: every default of the sheets at hand beside the car's own figure. Pure. */
import { type CarState, limitKey } from "../../core/record/index.js";
import type { CarLimit, Limit, SheetTexts } from "../../core/sheet/run.js";
import { GRADES } from "../../core/terms/index.js";
import { isQuantity, unitsOf } from "../../core/units/index.js";
import { figure, t } from "../texts/index.js";
import { unitShown, unitWords } from "../texts/units.js";
import type { FrozenSheetFile } from "./frozen.js";
import { textsOf } from "./shelf.js";
import { tradeUnits } from "./trade-units.js";

export interface LimitLine {
  readonly id: string;
  /** Id of its sheet, and what that is called. */
  readonly of: string;
  readonly sheet: string;
  readonly title: string;
  /** Edges as text: the car's figure where there is one, else the default. */
  readonly second: string;
  readonly mine: boolean;
  /** The default is a rough bound, and the maker's own figure is not in the book. */
  readonly wanted: boolean;
  /** What a word is looked for in. */
  readonly text: string;
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
      const title = limitTitle(limit, texts);
      return {
        id: limit.id,
        of: file.sheet.id,
        sheet: texts.title,
        title,
        second: own
          ? `${carLimitText(limit, own)}. ${t(`basis.${own.basis}`)}`
          : `${bandsText(limit, limit.bands)}. ${t(`basis.${limit.basis}`)}, ${t("basis.default")}`,
        mine: own !== undefined,
        wanted: limit.wants === "maker" && own === undefined,
        text: searched([title, texts.title, limit.source, ...all.map(({ value }) => value.source ?? "")].join(" ")),
      };
    });
  });

const plain = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

/** 'Run-out' is found by 'run', 'out' and 'runout'. */
const searched = (text: string): string => plain(`${text} ${text.replaceAll("-", "")}`);

/** Limits of which every typed word begins a word of the name, the sheet or the source; those of the name first. */
export function findLimits(lines: readonly LimitLine[], typed: string): readonly LimitLine[] {
  const words = plain(typed)
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
  if (words.length === 0) return [];
  const begins = (text: string, word: string): boolean =>
    ` ${text.replace(/[^\p{L}\p{N}]+/gu, " ")}`.includes(` ${word}`);
  const rank = ({ title }: LimitLine): number => words.filter((word) => begins(plain(title), word)).length;
  return lines.filter(({ text }) => words.every((word) => begins(text, word))).sort((a, b) => rank(b) - rank(a));
}

/** What open visits need of the book. */
export interface BookNeeds {
  /** Sheets open in them. */
  readonly sheets: ReadonlySet<string>;
  /** Limits that judge a reading in one of them. */
  readonly judging: ReadonlySet<string>;
}

export interface BookView {
  readonly wanted: readonly LimitLine[];
  readonly own: readonly LimitLine[];
  readonly used: readonly LimitLine[];
  readonly sheets: readonly { readonly sheet: string; readonly lines: readonly LimitLine[] }[];
}

/** The book in the order it is wanted in: each limit stands once at the head, and again under its sheet. */
export function bookView(lines: readonly LimitLine[], needs: BookNeeds): BookView {
  const titles = [...new Set(lines.map(({ sheet }) => sheet))];
  return {
    wanted: lines.filter(({ wanted, of }) => wanted && needs.sheets.has(of)),
    own: lines.filter(({ mine }) => mine),
    used: lines.filter(({ id, mine, wanted }) => needs.judging.has(id) && !mine && !wanted),
    sheets: titles.map((sheet) => ({ sheet, lines: lines.filter((line) => line.sheet === sheet) })),
  };
}

/** Units a figure may be written in: the sheet's and the trade's first, then every other of the quantity. */
export function unitChoices({ quantity, unit }: Limit): readonly { readonly value: string; readonly words: string }[] {
  if (!isQuantity(quantity)) return [];
  const codes = [unit, ...tradeUnits(quantity), ...unitsOf(quantity).map(({ code }) => code)];
  return [...new Set(codes)].map((code) => ({ value: code, words: unitWords(code) }));
}
