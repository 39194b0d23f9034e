/**
 * By when to look again: when half of what is left at the earliest has gone, and never later than a cap. Half the life
 * left is the practice of plant inspection codes (API 510 10th ed. 6.5.1.1, opened on a calculation sheet); that it is
 * done for cars, and both caps, are our choice. Knows no reading.
 */
import type { Along, Axis } from "./contract.js";

/** Our choice: the longest between two roadworthiness tests of old cars in much of Europe (two years, from memory), and more than an old car does in that time. */
const LONGEST_DAYS = 730;
const LONGEST_KM = 20_000;
const HALF = 2;

const half = (from: number, to: number, longest: number): number => from + Math.min((to - from) / HALF, longest);

/** From the newest reading; by distance also the day that is at the pace of these visits. */
export function lookAgain(
  axis: Axis,
  last: { readonly when: number; readonly day: number },
  earliest: number | undefined,
  earliestDay: number | undefined,
): Pick<Along, "look"> {
  if (earliest === undefined) return {};
  const day = earliestDay === undefined ? {} : { day: Math.floor(half(last.day, earliestDay, LONGEST_DAYS)) };
  const km = axis === "use" ? { km: half(last.when, earliest, LONGEST_KM) } : {};
  return { look: { ...day, ...km } };
}
