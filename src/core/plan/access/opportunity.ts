/** While it is apart: whether a job that is not due pays because its access is open anyway. Adds nothing by itself. */
import { fail, ok, problem, type Result } from "../../terms/index.js";
import { likely } from "../minutes.js";
import type { IsoDate } from "../terms.js";
import type { Marginal } from "./hours.js";

/** Up to this share of its stand-alone minutes a job counts as nearly open already. Our own rule. */
const NEARLY_OPEN = 0.5;

/** A point on the car's way: a distance, a day, or both. */
export interface Moment {
  readonly km?: number | undefined;
  readonly date?: IsoDate | undefined;
}

/** What is known about an optional job; what is left out is not known, and taken for nothing. */
export interface Offer {
  readonly job: string;
  /** What it adds to the jobs that are chosen. */
  readonly marginal: Marginal;
  /** Labour rate an hour, minor units. */
  readonly rate?: number | undefined;
  /** Price of the part that would be thrown away before its time, minor units. */
  readonly partPrice?: number | undefined;
  /** How much of the part's life is left, whole per cent. */
  readonly lifeLeft?: number | undefined;
  readonly due?: Moment | undefined;
  /** When this access is next expected to be open. */
  readonly opensNext?: Moment | undefined;
}

/** The figures behind an answer; a figure that is not known is left out. */
export interface Opportunity {
  readonly job: string;
  readonly suggest: boolean;
  readonly why: /** It falls due before the access is open again. */
    | "due-first"
    /** The labour saved is worth more than the life thrown away. */
    | "saves-more"
    /** Too little of its access is open to call it 'while it is apart'. */
    | "little-shared"
    | "saves-less"
    /** Price, rate or life left is not known, and nor is it known to fall due first. */
    | "not-known";
  readonly ratio: number;
  readonly minutesSaved: number;
  readonly moneySaved?: number;
  readonly moneyThrownAway?: number;
}

/** Whether to suggest the job while the chosen ones have the car apart, with the figures that say so. */
export function opportunity(offer: Offer): Result<Opportunity> {
  const { job, marginal, rate, partPrice, lifeLeft } = offer;
  const problems = (
    [
      ["rate", rate, Number.MAX_SAFE_INTEGER],
      ["partPrice", partPrice, Number.MAX_SAFE_INTEGER],
      ["lifeLeft", lifeLeft, 100],
    ] as const
  ).flatMap(([figure, found, most]) =>
    found === undefined || (Number.isSafeInteger(found) && found >= 0 && found <= most)
      ? []
      : [problem(`access.${figure}`, { path: job }, { job, found })],
  );
  if (problems.length > 0) return fail(...problems);

  const minutesSaved = likely(marginal.standAlone) - likely(marginal.added);
  // both in six-thousandths of a minor unit, so that they compare exactly; rounded where they are shown
  const saved = rate === undefined ? undefined : rate * minutesSaved * 100;
  const lost = lostWith(partPrice, lifeLeft);
  const why =
    marginal.ratio > NEARLY_OPEN
      ? "little-shared"
      : isBefore(offer.due, offer.opensNext)
        ? "due-first"
        : saved === undefined || lost === undefined
          ? "not-known"
          : saved > lost
            ? "saves-more"
            : "saves-less";
  return ok({
    job,
    suggest: why === "due-first" || why === "saves-more",
    why,
    ratio: marginal.ratio,
    minutesSaved,
    ...(saved === undefined ? {} : { moneySaved: Math.round(saved / 6000) }),
    ...(lost === undefined ? {} : { moneyThrownAway: Math.round(lost / 6000) }),
  });
}

/** Nothing is thrown away of a part that costs nothing or is worn out, whatever the other figure. */
function lostWith(price: number | undefined, lifeLeft: number | undefined): number | undefined {
  if (price === 0 || lifeLeft === 0) return 0;
  return price === undefined || lifeLeft === undefined ? undefined : price * lifeLeft * 60;
}

/** Known to come first, by distance or by day. */
function isBefore(due: Moment | undefined, next: Moment | undefined): boolean {
  if (due === undefined || next === undefined) return false;
  const byKm = due.km !== undefined && next.km !== undefined && due.km < next.km;
  return byKm || (due.date !== undefined && next.date !== undefined && due.date < next.date);
}
