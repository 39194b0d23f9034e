/** Where each part stands, by the steps told of it. Knows no price and orders nothing. */
import type { PartChecks, PartStepName, PlanBodies } from "../../record/index.js";
import { type Problem, problem } from "../../terms/index.js";
import { dayNumber } from "../schedule/days.js";
import type { IsoDate } from "../terms.js";
import { inOrder, type Told } from "./steps.js";

/** `passed`: looked at and as it should be · `failed`: looked at and not, to be sent back. */
export type PartPlace = "ordered" | "promised" | "arrived" | "passed" | "failed" | "fitted" | "sent-back";

export interface PartStands {
  readonly job: string;
  readonly place: string;
  readonly part: string;
  readonly stands: PartPlace;
  /** The day of the step that put it there. */
  readonly since: IsoDate;
  /** What the supplier promised last for this order. */
  readonly promised?: IsoDate;
  /** When to ask again. */
  readonly next?: IsoDate;
  /** Whole days past the promise, or past the day to ask again where nothing was promised; while it is still to come. */
  readonly overdueDays?: number;
  /** What was not as it should be when it was looked at. */
  readonly failed: readonly (keyof PartChecks)[];
  /** How often it was asked after since it was ordered. */
  readonly chased: number;
}

type Step = PlanBodies["part.step"];
const CHECKS = ["right", "counterpart", "count", "condition"] as const;
/** Still with the supplier, or on its way. */
const TO_COME: ReadonlySet<PartPlace> = new Set(["ordered", "promised"]);

/** One order under way, as its steps have left it. */
interface Order extends Omit<PartStands, "job" | "place" | "part" | "overdueDays"> {
  readonly isChecked: boolean;
}

/** Where one part stands at a day, and what is wanting in what was told of it. */
export function partStands(told: Told<Step>, at: IsoDate): PartTold | undefined {
  const steps = inOrder(told);
  const [first] = steps;
  if (!first) return undefined;
  const { job, place, part } = first;
  const { isChecked, ...order } = steps.reduce(after, begun(first.on));
  const overdueDays = TO_COME.has(order.stands) ? daysPast(order.promised ?? order.next, at) : undefined;
  const gap = gapIn({ ...order, isChecked });
  return {
    part: { job, place, part, ...order, ...(overdueDays === undefined ? {} : { overdueDays }) },
    gaps: gap === undefined ? [] : [problem(gap, {}, { job, place, part })],
  };
}

interface PartTold {
  readonly part: PartStands;
  readonly gaps: readonly Problem[];
}

const begun = (since: IsoDate): Order => ({ stands: "ordered", since, failed: [], chased: 0, isChecked: false });

/** The order after one more step; ordering anew begins anew. */
function after(order: Order, { step, on, promised, next, checks }: Step): Order {
  const before = step === "ordered" ? begun(on) : order;
  const looked = step === "checked" && checks ? { failed: failing(checks), isChecked: true } : {};
  const now: Order = {
    ...before,
    ...(promised === undefined ? {} : { promised }),
    ...(next === undefined ? {} : { next }),
    ...looked,
    chased: before.chased + (step === "chased" ? 1 : 0),
    since: on,
  };
  return { ...now, stands: placeAfter(step, now) };
}

/** `now.stands` is still the place before the step. */
function placeAfter(step: PartStepName, now: Order): PartPlace {
  switch (step) {
    case "ordered":
    case "promised":
      return now.promised === undefined ? "ordered" : "promised";
    case "chased":
      // Asked about once it is here, it stays where it is.
      return TO_COME.has(now.stands) && now.promised !== undefined ? "promised" : now.stands;
    case "checked":
      return now.failed.length > 0 ? "failed" : "passed";
    default:
      return step;
  }
}

function gapIn({ stands, promised, next, isChecked, failed }: Order): string | undefined {
  if (TO_COME.has(stands) && promised === undefined && next === undefined) return "progress.no-promise";
  if (stands !== "fitted") return undefined;
  if (!isChecked) return "progress.fitted-unchecked";
  return failed.length > 0 ? "progress.fitted-failed" : undefined;
}

const failing = (checks: PartChecks): readonly (keyof PartChecks)[] =>
  CHECKS.filter((check) => checks[check] === false);

/** Whole days from one day to a later one; undefined while it is not later. */
export function daysPast(due: IsoDate | undefined, at: IsoDate): number | undefined {
  const [from, to] = [due === undefined ? undefined : dayNumber(due), dayNumber(at)];
  return from !== undefined && to !== undefined && to > from ? to - from : undefined;
}
