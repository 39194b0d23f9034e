/** The whole limits book of a car as a table: every default, and every figure that ever stood in its place. Pure. */
import {
  type CarState,
  type FigureSaid,
  foldLimitBook,
  type LimitBookState,
  limitKeysOf,
  limitLine,
} from "../../core/record/index.js";
import { type Cell, csvTable, numberIn } from "../../core/report/index.js";
import type { CarLimit, Limit } from "../../core/sheet/run.js";
import { GRADES } from "../../core/terms/index.js";
import { convert, isQuantity, readTyped } from "../../core/units/index.js";
import { t } from "../texts/limits.js";
import { forText, sourceText } from "./figure-words.js";
import type { FrozenSheetFile } from "./frozen.js";
import { nameIn } from "./limit-book.js";
import { limitTitle } from "./limits-view.js";
import { textsOf } from "./shelf.js";

/** Columns in order; units as UCUM codes. */
const COLUMNS = [
  ...(["sheet", "limit", "name", "place", "is", "direction", "grade", "value", "unit"] as const),
  ...(["in-sheet", "sheet-unit", "basis", "trust", "source", "condition", "for"] as const),
  ...(["by", "on", "why", "looked", "odd"] as const),
];
type Row = Readonly<Partial<Record<(typeof COLUMNS)[number], Cell>>>;

/** A figure in the sheet's unit; an empty cell where it cannot be read. */
function inSheet({ quantity, unit }: Limit, typed: string, from: string): Cell {
  if (!isQuantity(quantity)) return undefined;
  const read = readTyped(typed, { quantity, unit: from });
  return read.ok ? convert(read.value.value, from, unit, quantity) : undefined;
}

const isoDay = (wall: number): string => new Date(wall).toISOString().slice(0, 10);

const defaultRows = ({ bands, unit, basis, source }: Limit): readonly Row[] =>
  GRADES.flatMap((grade): readonly Row[] => {
    const edge = bands[grade];
    if (edge === undefined) return [];
    const figure = { value: edge, unit, "in-sheet": edge, "sheet-unit": unit };
    return [{ is: t("table.default"), grade: t(`grade.${grade}`), ...figure, basis, source }];
  });

const edgeRows = (limit: Limit, own: CarLimit): readonly Row[] =>
  GRADES.flatMap((grade): readonly Row[] => {
    const typed = (own.bands ?? { [own.grade ?? "major"]: own.value })[grade];
    if (typed === undefined) return [];
    const figure = { value: numberIn(typed), unit: own.unit, "in-sheet": inSheet(limit, typed, own.unit) };
    return [{ grade: t(`grade.${grade}`), ...figure, "sheet-unit": limit.unit, basis: own.basis }];
  });

/** A figure of the book, edge by edge, or one row for its being taken out. */
function saidRows(car: CarState, limit: Limit, place: string, said: FigureSaid): readonly Row[] {
  const { told, why, looked, at, by } = said;
  const stands = t(`told.is.${said.is}`);
  const whole: Row = {
    place,
    is: said.limit === null ? `${t("table.out")}: ${stands}` : stands,
    trust: told && t(`figure.trust.${told.source.trust}`),
    source: told ? sourceText(told) : said.limit?.source,
    condition: told?.condition,
    for: told?.holdsFor && forText(told.holdsFor),
    by: nameIn(car, by),
    on: isoDay(at.wall),
    why,
    looked: looked.map(({ value }) => value.who).join(", "),
    odd: told?.odd && `${told.odd.low} / ${told.odd.high} ${told.odd.unit}`,
  };
  return said.limit === null ? [whole] : edgeRows(limit, said.limit).map((edge) => ({ ...whole, ...edge }));
}

const ownRows = (car: CarState, limit: Limit, book: LimitBookState): readonly Row[] =>
  limitKeysOf(car, limit.id).flatMap((key) =>
    limitLine(car, key, book).flatMap((said) => saidRows(car, limit, key.slice(limit.id.length + 1), said)),
  );

/** A row for every edge: defaults first, then the book's figures from the oldest on. */
export function limitsCsv(car: CarState, files: readonly FrozenSheetFile[]): string {
  const book = foldLimitBook(car.ledger.log.values());
  const rows = files.flatMap((file) => {
    const texts = textsOf(file);
    return file.sheet.limits.flatMap((limit) => {
      const { id, direction } = limit;
      const named: Row = { sheet: texts.title, limit: id, name: limitTitle(limit, texts), direction };
      return [...defaultRows(limit), ...ownRows(car, limit, book)].map((row) => ({ ...named, ...row }));
    });
  });
  const heads = COLUMNS.map((column) => t(`table.${column}`));
  return csvTable(
    heads,
    rows.map((row) => COLUMNS.map((column) => row[column])),
    { bom: true },
  );
}
