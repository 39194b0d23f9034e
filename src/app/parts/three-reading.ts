/**
 * Reads three typed figures, low, likely and high, and says which of them are wrong. Minutes are written from the
 * right, so that no key for the colon is needed in gloves. Pure text; refuses to word anything.
 */
import type { FigureKind, ThreeFigures, ThreeTexts } from "./props-planning.js";

/** Longest time entered: 999:59. */
const MOST_DIGITS = 5;
const CLOCK = /^\d*:?\d*$/;

/** Digits pushed in from the right: `5` is `0:05`, `130` is `1:30`. Nothing typed stays nothing. */
function clock(digits: string): string {
  if (digits === "") return "";
  const padded = digits.replace(/^0+/, "").slice(0, MOST_DIGITS).padStart(3, "0");
  return `${padded.slice(0, -2)}:${padded.slice(-2)}`;
}

/** What stands in the box for what came from a key or by pasting; what is no time is left to be seen. */
export const written = (text: string, kind: FigureKind): string =>
  kind.of === "minutes" && CLOCK.test(text) ? clock(text.replace(":", "")) : text;

/** What the keys go on from: of a time only its digits. */
export const forKeys = (text: string, kind: FigureKind): string =>
  kind.of === "minutes" ? text.replace(/\D/g, "").replace(/^0+(?=\d)/, "") : text;

/** The figure as it is left: ninety minutes typed as `0:90` are `1:30`. */
export function settled(text: string, kind: FigureKind): string {
  const minutes = kind.of === "minutes" ? figureOf(text, kind) : undefined;
  if (minutes === undefined) return text;
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

/** Whole minutes or minor units; nothing when it is no such figure. */
export function figureOf(text: string, kind: FigureKind): number | undefined {
  if (kind.of === "minutes") {
    const time = /^(\d{1,3}):(\d{2})$/.exec(text);
    return time === null ? undefined : Number(time[1]) * 60 + Number(time[2]);
  }
  const money = /^(\d{1,10})(?:[.,](\d*))?$/.exec(text);
  const cents = money?.[2] ?? "";
  if (money === null || cents.length > kind.digits) return undefined;
  return Number(`${money[1] ?? ""}${cents.padEnd(kind.digits, "0")}`);
}

/** What is wrong with three figures as they stand, and at which box. Empty boxes are still to come, not wrong. */
export interface ThreeFault {
  readonly at: 0 | 1 | 2;
  readonly what: "unreadable" | "lowOverLikely" | "likelyOverHigh" | "lowOverHigh";
}
export interface ThreeRead {
  /** All three, read and rising; absent while anything is empty or wrong. */
  readonly figures?: ThreeFigures | undefined;
  readonly fault?: ThreeFault | undefined;
}

/** Reads the three and finds the first fault. */
export function threeRead(texts: ThreeTexts, kind: FigureKind): ThreeRead {
  const figures = texts.map((text) => figureOf(text, kind));
  const [low, likely, high] = figures;
  const unread = ([0, 1, 2] as const).find((i) => texts[i] !== "" && figures[i] === undefined);
  if (unread !== undefined) return { fault: { at: unread, what: "unreadable" } };
  if (low !== undefined && likely !== undefined && low > likely) return { fault: { at: 0, what: "lowOverLikely" } };
  if (likely !== undefined && high !== undefined && likely > high) return { fault: { at: 2, what: "likelyOverHigh" } };
  if (low !== undefined && high !== undefined && low > high) return { fault: { at: 0, what: "lowOverHigh" } };
  return low === undefined || likely === undefined || high === undefined ? {} : { figures: [low, likely, high] };
}
