/**
 * One limit's page of the book: every figure it ever had on this car, place by place, told in words; and whether a
 * second person is to look at one. Pure; judges nothing.
 */
import {
  type CarState,
  type FigureSaid,
  foldLimitBook,
  type LimitBookState,
  limitKeysOf,
  limitLine,
} from "../../core/record/index.js";
import type { BareSheet, Limit } from "../../core/sheet/run.js";
import { day, t } from "../texts/limits.js";
import { unitShown } from "../texts/units.js";
import { convertedText, sourceText, trustText } from "./figure-words.js";
import { carLimitText } from "./limits-view.js";

/** Sheets on what a life hangs on. Common practice, no source; the same as for a second look at work. */
const SAFETY_SHEETS: ReadonlySet<string> = new Set(["brk", "steer", "whl", "tyre", "fuel"]);

/** Whether a wrong figure here could cost brakes, steering, a wheel or a fire: by its sheet, or by the work it leads to. */
export function isSafetyFigure(sheet: Pick<BareSheet, "id" | "rules" | "jobs">, limit: Pick<Limit, "of">): boolean {
  if (SAFETY_SHEETS.has(sheet.id)) return true;
  const jobs = sheet.rules
    .filter(({ grade }) => typeof grade === "object" && grade["limit-of"] === limit.of)
    .flatMap((rule) => rule.jobs ?? []);
  return sheet.jobs.some((job) => job["second-look"] !== undefined && jobs.includes(job.id));
}

export interface FigureLine {
  readonly id: string;
  readonly said: FigureSaid;
  /** `over 4 thou: major`. */
  readonly title: string;
  /** The same in the other unit. */
  readonly converted: string;
  /** What is told of it, a line each. */
  readonly says: readonly string[];
  /** Who entered it and when; who compared it with its source. */
  readonly by: readonly string[];
  /** A second person is to look at it, and none has. */
  readonly isUnread: boolean;
}

/** The figures of one place, or of all such places. */
export interface PlaceLine {
  readonly key: string;
  readonly place?: string;
  readonly standing: readonly FigureLine[];
  /** Replaced, taken out and taken back, the newest first. */
  readonly before: readonly FigureLine[];
}

/** A person's name as the car knows it. */
export const nameIn = (car: CarState, by: string): string =>
  car.people.get(by)?.at(-1)?.value.name || t("differ.nameless");

export function figureLine(car: CarState, limit: Limit, said: FigureSaid, isSafety: boolean): FigureLine {
  const who = nameIn(car, said.by);
  const when = day(said.at.wall);
  const { told, why, looked } = said;
  const usual = told?.odd;
  return {
    id: said.id,
    said,
    title: said.limit === null ? t("table.out") : carLimitText(limit, said.limit),
    converted: said.limit === null ? "" : convertedText(limit, said.limit),
    says: [
      ...(told ? [sourceText(told), trustText(told.source)] : []),
      ...(!told && said.limit ? [[t(`basis.${said.limit.basis}`), said.limit.source].filter(Boolean).join(", ")] : []),
      ...(usual ? [t("odd.kept", { low: usual.low, high: usual.high, unit: unitShown(usual.unit) })] : []),
      ...(why === undefined ? [] : [t("told.why", { why })]),
    ],
    by: [
      said.limit === null ? t("told.out", { who, when }) : t("told.entered", { who, when }),
      ...looked.map(({ value, at }) =>
        [t("told.looked", { who: value.who, when: day(at.wall) }), value.words].filter(Boolean).join(": "),
      ),
    ],
    isUnread: isSafety && said.is === "standing" && said.limit !== null && looked.length === 0,
  };
}

/** Every place the book ever held a figure for on this limit; figures for all places first. */
export function placeLines(
  car: CarState,
  limit: Limit,
  isSafety: boolean,
  book: LimitBookState = foldLimitBook(car.ledger.log.values()),
): readonly PlaceLine[] {
  return [...limitKeysOf(car, limit.id)].sort().map((key): PlaceLine => {
    const lines = limitLine(car, key, book).map((said) => figureLine(car, limit, said, isSafety));
    const stands = ({ said }: FigureLine): boolean => said.is === "standing" && said.limit !== null;
    const place = key === limit.id ? undefined : key.slice(limit.id.length + 1);
    return {
      key,
      ...(place === undefined ? {} : { place }),
      standing: lines.filter(stands),
      before: lines.filter((line) => !stands(line)).reverse(),
    };
  });
}
