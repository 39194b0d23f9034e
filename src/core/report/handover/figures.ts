/** How figures, days, hours and money are written in a hand-over. Rounds no reading; knows no section. */
import type { ByWhen } from "../../assess/contract.js";
import type { Three } from "../../terms/index.js";
import { QUANTITIES, show, showTyped, type Unit, unitOf, unitsOf } from "../../units/index.js";
import type { Figure, LimitTold, MoneyTold } from "./input.js";
import type { DueDate } from "./model.js";
import { type HandoverKey, type HandoverWords, say } from "./words.js";

/** Most decimals a worked-out value is written with. */
const MOST_DECIMALS = 3;
const HOUR = 60;
/** Holds a figure and its unit, or the thousands of a figure, together. */
const THIN = "\u202f";

/** A number without noise, with the decimal sign of the words; thousands apart from five digits on. */
export function numberText(words: HandoverWords, value: number): string {
  if (!Number.isFinite(value)) return "–";
  const plain = String(Number(value.toFixed(MOST_DECIMALS)));
  return decimalText(words, plain.includes("e") ? value.toPrecision(MOST_DECIMALS) : plain);
}

function decimalText(words: HandoverWords, text: string): string {
  const [whole = "", part] = text.split(".");
  const grouped = whole.replace("-", "").length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, THIN) : whole;
  return showTyped(part === undefined ? grouped : `${grouped}.${part}`, words.decimalComma);
}

/** By the very code: spelled freely, the year's `a` would be an ampere. */
const BY_CODE: ReadonlyMap<string, Unit> = new Map(
  QUANTITIES.flatMap((quantity) => unitsOf(quantity).map((unit) => [unit.code, unit] as const)).reverse(),
);

/** A UCUM unit as people write it; one that is not known as its code. */
export const unitText = (unit: string): string =>
  unit === "1" ? "" : ((BY_CODE.get(unit) ?? unitOf(unit))?.shown ?? unit);

const withUnit = (figure: string, unit: string): string => {
  const written = unitText(unit);
  return written === "" ? figure : `${figure} ${written}`;
};

/** A figure with its unit; one that was typed keeps its digits. */
export function figureText(words: HandoverWords, { value, unit }: Figure): string {
  const isPlain = typeof value === "string" && /^-?\d+(\.\d+)?$/.test(value);
  const written = typeof value === "number" ? numberText(words, value) : isPlain ? decimalText(words, value) : value;
  return withUnit(written, unit);
}

/** Value with its uncertainty: `1.26 ± 0.05 mm`. */
export function judgedText(words: HandoverWords, value: number, uncertainty: number, unit: string): string {
  const isDoubtful = uncertainty > 0 && [value, uncertainty].every((one) => Math.abs(one) < PLAIN_BELOW);
  if (!isDoubtful) return withUnit(numberText(words, value), unit);
  const [first, second] = alike(value, uncertainty).map((text) => decimalText(words, text));
  return withUnit(`${first} ± ${second}`, unit);
}

/** From here on a number is written with a power of ten. */
const PLAIN_BELOW = 1e15;
/** Figures an uncertainty is written with; more of them say nothing. */
const DOUBT_FIGURES = 2;
/** No gauge of the trade reads finer. */
const FINEST = 9;

/** Both ending at the same decimal; noughts that both end in are left out. */
function alike(value: number, uncertainty: number): readonly string[] {
  const [, exponent] = uncertainty.toExponential(DOUBT_FIGURES - 1).split("e");
  const place = Number(exponent) + 1 - DOUBT_FIGURES;
  const step = 10 ** Math.max(place, 0);
  const decimals = Math.min(Math.max(-place, 0), FINEST);
  let texts = [value, uncertainty].map((one) => (Math.round(one / step) * step).toFixed(0));
  if (decimals > 0) texts = [value, uncertainty].map((one) => one.toFixed(decimals));
  while (texts.every((text) => /\.\d*0$/.test(text))) texts = texts.map((text) => text.replace(/\.?0$/, ""));
  return texts.map((text) => (Number(text) === 0 ? text.replace("-", "") : text));
}

/** `over 0.15 mm: major (published, standard 4, clause 2)`. */
export function limitText(words: HandoverWords, limit: LimitTold): string {
  const edge = withUnit(numberText(words, limit.edge), limit.unit);
  const known = say(words, `basis.${limit.basis}`);
  // A source that begins with what it rests on says it once.
  const named = limit.source.startsWith(known) ? limit.source.slice(known.length) : `, ${limit.source}`;
  const source = limit.source === "" ? "" : named;
  const basis = `${known}${limit.isDefault ? `, ${say(words, "basis.default")}` : ""}`;
  return say(words, `limit.${limit.direction}`, { edge, grade: say(words, `grade.${limit.grade}`), basis, source });
}

/** `25 Nov 2026`; what is no day stays as it is. */
export function dayText(words: HandoverWords, date: string): string {
  const found = /^(\d{4})-(\d{2})-(\d{2})/.exec(date);
  if (!found) return date;
  const [, year = "", month = "", day = ""] = found;
  const name = words.texts[`month.${Number(month)}` as HandoverKey];
  return name === undefined ? date : say(words, "day", { day: Number(day), month: name, year });
}

const clockOf = (date: string): string | undefined => /T(\d{2}:\d{2})/.exec(date)?.[1];
/** Day, and the time where one is told. */
export function momentText(words: HandoverWords, date: string): string {
  const time = clockOf(date);
  return time === undefined ? dayText(words, date) : `${dayText(words, date)}, ${time}`;
}

const hours = (words: HandoverWords, minutes: number): string => show(minutes / HOUR, 1, words.decimalComma);
/** `0.6–1.1–1.5 h` low, likely, high; minutes where all of it stays under an hour; one figure where all are equal. */
export function hoursText(words: HandoverWords, [low, likely, high]: Three): string {
  const isShort = high < HOUR;
  const write = (minutes: number): string => (isShort ? String(minutes) : hours(words, minutes));
  const unit = say(words, isShort ? "unit.min" : "unit.h");
  return `${low === high ? write(likely) : [low, likely, high].map(write).join("–")} ${unit}`;
}

type Currency = Pick<MoneyTold, "currency" | "minorDigits">;

/** Letters of the currency, then the figure: no typeface lacks them. Whole units where `isRound`. */
export function moneyText(
  words: HandoverWords,
  minor: number,
  { currency, minorDigits }: Currency,
  isRound = false,
): string {
  const scale = 10 ** minorDigits;
  const text = isRound ? String(Math.round(minor / scale)) : (minor / scale).toFixed(minorDigits);
  return `${currency}${THIN}${decimalText(words, text)}`;
}

/** `EUR 260`; `EUR 260, between EUR 210 and 400`; with what four of five do not pass, that in place of the highest. */
export function moneyRange(
  words: HandoverWords,
  [low, likely, high]: Three,
  money: Currency,
  most: number | undefined = undefined,
): string {
  const whole = (minor: number): string => moneyText(words, minor, money, true);
  const [least, middle, top] = [whole(low), whole(likely), whole(most ?? high)];
  if (least === top) return middle;
  const told = { likely: middle, low: least, high: top.slice(money.currency.length + 1) };
  return say(words, most === undefined ? "money.range" : "money.range.most", told);
}

/** Until when: what the class says, with the nearest known figures. */
export function byWhenText(words: HandoverWords, { class: due, distance, date }: ByWhen): string {
  return [say(words, `by-when.${due}`), ...untilText(words, { on: date, distance })].join(", ");
}

/** `within 500 km`, `at 66 000 km on the odometer`, `by 3 Mar 2027`: what is known of them. */
export const untilText = (
  words: HandoverWords,
  { on, distance, odometer }: Pick<DueDate, "on" | "distance" | "odometer">,
): readonly string[] => [
  ...(distance ? [say(words, "within", { distance: figureText(words, distance) })] : []),
  ...(odometer ? [say(words, "at-odometer", { odometer: figureText(words, odometer) })] : []),
  ...(on ? [say(words, "by", { day: dayText(words, on) })] : []),
];
