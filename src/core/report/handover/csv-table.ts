/**
 * Comma-separated values (RFC 4180) for a table program. Numbers stay numbers with a decimal point; free words that a
 * table program would take for a formula get an apostrophe in front. Knows no column.
 */
import { oneLine } from "./clean.js";

/** Undefined: an empty cell, never a nought. */
export type Cell = string | number | undefined;

export interface CsvOptions {
  /** A mark in front by which some table programs know UTF-8. */
  readonly bom?: boolean | undefined;
}

/** What table programs take for the beginning of a formula (OWASP, CSV injection). */
const FORMULA = /^[=+\-@\t\r]/;

function cellText(cell: Cell): string {
  if (cell === undefined) return "";
  if (typeof cell === "number") return Number.isFinite(cell) ? String(cell) : "";
  const plain = oneLine(cell);
  const guarded = FORMULA.test(plain) || FORMULA.test(cell) ? `'${plain}` : plain;
  return /[",\n\r]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}

/** A table with its headings, every line ended. */
export function csvTable(
  head: readonly string[],
  rows: readonly (readonly Cell[])[],
  { bom = false }: CsvOptions = {},
): string {
  const lines = [head, ...rows].map((row) => `${row.map(cellText).join(",")}\r\n`);
  return `${bom ? "\ufeff" : ""}${lines.join("")}`;
}

/** A typed figure as a number where it is one; a fraction stays as it was typed. */
export const numberIn = (typed: string | undefined): Cell =>
  typed !== undefined && /^-?\d+(\.\d+)?$/.test(typed) ? Number(typed) : typed;
