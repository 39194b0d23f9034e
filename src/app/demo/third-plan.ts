/**
 * What is planned after the visit under way: how far the money goes, what may be opened, what is ordered, what is loose.
 * Said on the evening of the visit and on the day the demo is brought in. Sums and prices are invented.
 */
import type { Agreed, Bodies, ComplaintAnswer, PartFigures, PlanScope } from "../../core/record/index.js";
import { PEOPLE } from "./names.js";

/** With tax, minor units: what cannot wait is paid, not all of the rest. */
export const BUDGET = { minor: 410_000, gross: true } as const;

/** The talk when the car was taken in, by item. */
export const INTAKE: Readonly<Record<string, string>> = {
  "corner.FL": "Nothing seen",
  "corner.FR": "Nothing seen",
  "corner.RL": "Nothing seen",
  "corner.RR": "Marked: lacquer chipped on the edge of the arch",
  dash: "No lamp lit",
  fuel: "Quarter",
  left: "Things: red folder, spare key, tool roll",
  keys: "Two",
  drive: "In the yard only",
  decides: `${PEOPLE.ottilie.name}, by telephone after five`,
};

export const SCOPE: PlanScope = {
  apart: ["lift", "wheel-off", "hub-off", "caliper-off", "covers-off"],
  capMinutes: 1800,
  capMinor: 420_000,
  leftOut: [{ what: "The seal round the roof", why: "Looked at again in spring, with the carpets dry." }],
};

/** The bearing that cannot wait. */
export const BEARING = { job: "job.whl.bearing", place: "RR" } as const;
export const BEARING_PART = { ...BEARING, part: "wheel-bearing" } as const;
/** Of its supplier among the examples of a house. */
export const bearingFigures = (pricedOn: string): PartFigures => ({
  name: "Rear wheel bearing, matched",
  count: 1,
  price: [18_900, 21_500, 26_000],
  carriage: 1_400,
  supplier: "maker",
  leadDays: 9,
  pricedOn,
  counterpart: "hub-seal",
});

/** Hours of one job by hand: this car's calipers have been out once, and it showed. */
export const CALIPER_HOURS: Omit<Bodies["plan.minutes"], "replaces"> = {
  job: "job.brk.caliper",
  place: "axle-F",
  minutes: [120, 180, 300],
  why: "The right-hand piston hardly moves and the nipple is rusted in.",
};

export const leftLoose = (on: string): Omit<Bodies["left-loose"], "replaces"> => ({
  loose: "demo-hub-nut",
  what: "loose",
  words: "Hub nut, rear right, finger tight and not locked: the car is not to be moved on its wheels",
  place: "RR",
  on,
});

/** Beyond the estimate, asked and agreed to before it is done. */
export const hubAsWell = (on: string): Omit<Bodies["estimate.addition"], "replaces"> => {
  const agreed: Agreed = { who: PEOPLE.ottilie.name, how: "by telephone", on };
  return {
    addition: "demo-hub",
    words: "Hub as well, rear right",
    minutes: [10, 20, 40],
    price: [12_000, 14_500, 19_000],
    reason: "The race has turned on its seat; a new bearing would turn there too.",
    agreed,
  };
};

/** The wheel that was off for the look is on again: nobody else has looked at it yet, and it was not answered again. */
export const SECURED = { job: "job.whl.secure", place: "FL" } as const;

export const wetAnswered = (on: string): ComplaintAnswer => ({
  word: "found",
  findings: [{ fault: "drn.wet-floor", place: "behind-seat-L" }],
  words: "Wet under the foam as well, and the mount above it scales",
  who: PEOPLE.ines.name,
  on,
});
