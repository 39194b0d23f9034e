/**
 * A finding off the list while it is written: what is missing, and what is kept of it.
 * Pure; what is typed outlives the page through the phone's small shelf.
 */
import type { FreeFinding, VisitState } from "../../core/record/contract.js";
import { GRADES, type Grade } from "../../core/terms/index.js";

/** The address of one that has no name yet. */
export const NEW = "new";

export interface OffListForm {
  readonly name: string;
  readonly place: string;
  readonly words: string;
  readonly grade: Grade | "";
  readonly reason: string;
  readonly mustStand: boolean;
  readonly job: string;
  readonly hours: string;
}

const HOURS = /^\d{1,3}(?:[.,]\d{1,2})?$/;

/** What is still wrong with it, by field. */
export type OffListMissing = "words" | "grade" | "reason" | "hours";
export const missingIn = (form: OffListForm): readonly OffListMissing[] => [
  ...(form.words.trim() === "" ? ["words" as const] : []),
  ...(form.grade === "" ? ["grade" as const] : []),
  ...(form.reason.trim() === "" ? ["reason" as const] : []),
  ...(form.hours.trim() !== "" && !HOURS.test(form.hours.trim()) ? ["hours" as const] : []),
];

/** What is kept of a form; undefined while something is missing. Hours without words of a job are no job. */
export function findingIn(form: OffListForm): FreeFinding | undefined {
  const { grade } = form;
  if (grade === "" || missingIn(form).length > 0) return undefined;
  const job = form.job.trim();
  const hours = form.hours.trim().replace(",", ".");
  return {
    place: form.place,
    words: form.words.trim(),
    grade,
    reason: form.reason.trim(),
    mustStand: form.mustStand,
    ...(job === "" ? {} : { job: { words: job, ...(hours === "" ? {} : { hours }) } }),
  };
}

/** The form of a finding that stands; where two mendings differ, of the one said last. */
export function formOf(visit: Pick<VisitState, "found">, name: string): OffListForm | undefined {
  const last = visit.found.get(name)?.at(-1)?.value;
  return (
    last && {
      name,
      place: last.place,
      words: last.words,
      grade: last.grade,
      reason: last.reason,
      mustStand: last.mustStand,
      job: last.job?.words ?? "",
      hours: last.job?.hours ?? "",
    }
  );
}

export const emptyForm = (name: string, place: string): OffListForm => ({
  name,
  place,
  words: "",
  grade: "",
  reason: "",
  mustStand: false,
  job: "",
  hours: "",
});

/** A form typed before the page went away; undefined for anything else that stands in its place. */
export function formTyped(text: string): OffListForm | undefined {
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof kept !== "object" || kept === null) return undefined;
  const like: object = emptyForm("", "");
  const entries = Object.entries(like).map(([field, value]) => {
    const found = Object.entries(kept).find(([name]) => name === field)?.[1];
    return typeof found === typeof value ? [field, found] : undefined;
  });
  if (!entries.every((entry) => entry !== undefined)) return undefined;
  // Every field is there with the type the empty form has: checked just above; the grade is checked here.
  const form = Object.fromEntries(entries) as OffListForm;
  return form.grade === "" || GRADES.includes(form.grade) ? form : undefined;
}
