/**
 * What an owner does after a look, and how far that is: told the workshop, handed on the file, put the days into a
 * calendar, kept a copy. Done counts for what was entered by then; what came later undoes it. Pure but for the shelf it
 * is handed, which only this phone has.
 */
import { type CopyMade, isStub, type VisitState } from "../../core/record/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import type { TextShelf } from "./settings.js";

export const STEPS = ["message", "file", "dates", "copy"] as const;
export type StepName = (typeof STEPS)[number];
export type StepStands = "open" | "done" | "before-last";

/** When a step was last done, as this phone's clock had it. */
export interface StepsDone {
  readonly message?: number;
  readonly file?: number;
  readonly dates?: number;
  readonly spring?: IsoDate;
}

const keyOf = (visit: string): string => `leadlamp.what-now.${visit}`;

/** What this phone remembers of a visit's steps; nothing where it remembers something else. */
export function stepsDone(shelf: TextShelf, visit: string): StepsDone {
  try {
    const kept: unknown = JSON.parse(shelf.get(keyOf(visit)) ?? "{}");
    if (typeof kept !== "object" || kept === null) return {};
    const of = new Map<string, unknown>(Object.entries(kept));
    const times = (["message", "file", "dates"] as const).flatMap((name) => {
      const at = of.get(name);
      return typeof at === "number" ? [[name, at] as const] : [];
    });
    const spring = of.get("spring");
    const isDay = typeof spring === "string" && /^\d{4}-\d{2}-\d{2}$/.test(spring);
    return { ...Object.fromEntries(times), ...(isDay ? { spring } : {}) };
  } catch {
    return {};
  }
}

export const rememberSteps = (shelf: TextShelf, visit: string, steps: StepsDone): void =>
  shelf.put(keyOf(visit), JSON.stringify(steps));

/** Closing a visit, or opening it again, says nothing about the car. */
const NO_NEWS: readonly string[] = ["visit.closed", "visit.reopened", "person"];

/** When something was last entered. */
export const lastEntered = ({ ledger }: Pick<VisitState, "ledger">): number =>
  [...ledger.log.values()].reduce(
    (last, entry) => (isStub(entry) || NO_NEWS.includes(entry.kind) ? last : Math.max(last, entry.at.wall)),
    0,
  );

const stands = (at: number | undefined, last: number): StepStands =>
  at === undefined ? "open" : at >= last ? "done" : "before-last";

/** A copy counts only where it holds this visit. */
export function stepsStand(
  visit: Pick<VisitState, "ledger" | "stream">,
  done: StepsDone,
  copy: CopyMade | undefined,
): Readonly<Record<StepName, StepStands>> {
  const last = lastEntered(visit);
  const held = copy !== undefined && visit.stream in copy.streams ? copy.at : undefined;
  return {
    message: stands(done.message, last),
    file: stands(done.file, last),
    dates: stands(done.dates, last),
    copy: stands(held, last),
  };
}
