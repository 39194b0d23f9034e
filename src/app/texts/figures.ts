/**
 * How figures and times are written for the person: decimal point or comma, thousands apart by a thin
 * space, dates in short. Knows nothing of what a figure means and never rounds a reading.
 */
import { signal } from "@preact/signals";

/** Whether figures carry a decimal comma; follows the person's setting. */
export const decimalComma = signal(false);

/** A figure as typed or computed, with the person's decimal sign; text that is no decimal number stays as it is. */
export function figure(value: string | number): string {
  const text = String(value);
  if (!/^-?\d+(\.\d+)?$/.test(text)) return text;
  const [whole = "", part] = text.split(".");
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, "\u202f") : whole;
  return part === undefined ? grouped : `${grouped}${decimalComma.value ? "," : "."}${part}`;
}

/** A computed number to at most `decimals` places, without trailing zeros. */
export const rounded = (value: number, decimals: number): string => figure(String(Number(value.toFixed(decimals))));

const LANGUAGE = "en-GB";
const DAY = new Intl.DateTimeFormat(LANGUAGE, { day: "numeric", month: "short", year: "numeric" });
const MONTH = new Intl.DateTimeFormat(LANGUAGE, { month: "short", year: "numeric" });
const CLOCK = new Intl.DateTimeFormat(LANGUAGE, { hour: "2-digit", minute: "2-digit" });

/** `25 Nov 2026`. */
export const day = (wall: number): string => DAY.format(wall);
/** `Nov 2026`. */
export const month = (wall: number): string => MONTH.format(wall);
/** `10:42`. */
export const clock = (wall: number): string => CLOCK.format(wall);
