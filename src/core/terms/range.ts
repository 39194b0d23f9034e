/** The range a figure must lie in, with its edges in or out. Knows only numbers. */

/** `over`/`under` leave the edge out, `from`/`to` take it in; none of them: any finite number. */
export interface FigureRange {
  readonly over?: number;
  readonly from?: number;
  readonly to?: number;
  readonly under?: number;
}

/** Whether a figure is a finite number within the range. */
export const isWithin = (value: number, { over, from, to, under }: FigureRange): boolean =>
  Number.isFinite(value) &&
  (over === undefined || value > over) &&
  (from === undefined || value >= from) &&
  (to === undefined || value <= to) &&
  (under === undefined || value < under);

/** `over 0, at most 90` */
export function rangeText({ over, from, to, under }: FigureRange): string {
  const lower = over !== undefined ? `over ${over}` : from !== undefined ? `at least ${from}` : "";
  const upper = under !== undefined ? `under ${under}` : to !== undefined ? `at most ${to}` : "";
  return [lower, upper].filter((part) => part !== "").join(", ") || "a finite number";
}
