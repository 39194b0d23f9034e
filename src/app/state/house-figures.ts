/** Figures and times of a house's terms as typed: money, per cent, whole numbers, opening times. Pure; guesses nothing. */
import type { OpenSpan, ShutDays } from "../../core/record/index.js";

/** A decimal as whole parts of ten to the `digits`: `68,5` with two is 6850. Undefined for anything else. */
export function scaled(text: string, digits: number): number | undefined {
  const [, whole, part = ""] = /^(\d{1,10})(?:[.,](\d*))?$/.exec(text.trim()) ?? [];
  if (whole === undefined || part.length > digits) return undefined;
  return Number(whole + part.padEnd(digits, "0"));
}

/** The same written again, with a point. */
export function unscaled(value: number, digits: number): string {
  const text = String(value).padStart(digits + 1, "0");
  return digits === 0 ? text : `${text.slice(0, -digits)}.${text.slice(-digits)}`;
}

/** A whole number from nought as typed; undefined for anything else. */
export const wholeOf = (text: string): number | undefined => scaled(text, 0);

const HOUR = 60;
const DAY = 24 * HOUR;
const two = (n: number): string => String(n).padStart(2, "0");
const clockText = (minute: number): string => `${Math.floor(minute / HOUR)}:${two(minute % HOUR)}`;
const SPAN = /^(\d{1,2})(?:[:.](\d{2}))?\s*[-\u2013]\s*(\d{1,2})(?:[:.](\d{2}))?$/;

/** `8:00-12:00, 13:00-17:00` for the spans of one day. */
export const spansText = (spans: readonly OpenSpan[]): string =>
  spans.map(([open, close]) => `${clockText(open)}-${clockText(close)}`).join(", ");

/** The spans a text names, in order and apart; empty text is a day shut. Undefined where it names none. */
export function spansOf(text: string): readonly OpenSpan[] | undefined {
  if (text.trim() === "") return [];
  const spans: OpenSpan[] = [];
  let before = 0;
  for (const part of text.split(/[,;]/)) {
    const found = SPAN.exec(part.trim());
    if (!found) return undefined;
    const [, from, fromMinute = "0", to, toMinute = "0"] = found;
    const open = Number(from) * HOUR + Number(fromMinute);
    const close = Number(to) * HOUR + Number(toMinute);
    if (Number(fromMinute) >= HOUR || Number(toMinute) >= HOUR) return undefined;
    if (open < before || open >= close || close > DAY) return undefined;
    spans.push([open, close]);
    before = close;
  }
  return spans;
}

/** Shut days while they are typed; each row whole, or none at all. */
export interface ShutRow {
  readonly from: string;
  readonly to: string;
  readonly why?: string;
}
/** The rows as shut days, without empty ones; undefined where one is half filled in or runs backwards. */
export function shutOf(rows: readonly ShutRow[]): readonly ShutDays[] | undefined {
  const filled = rows.filter(({ from, to }) => from !== "" || to !== "");
  return filled.every(({ from, to }) => from !== "" && from <= to) ? filled : undefined;
}
