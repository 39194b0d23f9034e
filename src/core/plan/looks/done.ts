/** Whether somebody has looked again since. An answer given too soon after the work is none. */
import { addMonths } from "../by-when.js";
import type { PointAt } from "../release/works.js";
import { dayNumber } from "../schedule/days.js";
import type { IsoDate } from "../terms.js";
import type { LookWanted } from "./contract.js";

/** The newest real answer to a point in a later visit, with the odometer of that visit where it was read. */
export type AnsweredOn = (at: PointAt) => { readonly on: IsoDate; readonly km?: number | undefined } | undefined;

/** Half of the way or half of the time: what is said at once tells nothing of how it wears. Our own rule. */
const SHARE = 0.5;

/** Every point answered in a later visit, at half of the way or of the time at least; where neither is known, not. */
export function wasLooked(wanted: LookWanted, answeredOn: AnsweredOn): boolean {
  const { points, from, rows } = wanted;
  const start = dayNumber(from.on);
  return (
    points.length > 0 &&
    points.every((point) => {
      const answer = answeredOn(point);
      const day = answer && dayNumber(answer.on);
      if (!answer || day === undefined || start === undefined) return false;
      return rows.some(({ km, months, on }) => {
        const due = on ?? (months === undefined ? undefined : addMonths(from.on, months));
        const end = due === undefined ? undefined : dayNumber(due);
        const isFar =
          km !== undefined && from.km !== undefined && answer.km !== undefined && answer.km - from.km >= km * SHARE;
        return isFar || (end !== undefined && day > start && day - start >= (end - start) * SHARE);
      });
    })
  );
}
