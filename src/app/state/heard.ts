/** Complaints of a car read off the visits and plans that are laid out: own ones, and those carried on. Answers none. */
import { type ComplaintStands, complaintsOf, type HeardIn } from "../../core/plan/index.js";
import { lookedOn, type VisitState } from "../../core/record/index.js";
import type { Journal } from "./journal.js";

/** Undefined while a plan is still being read: nothing unread is taken for unanswered. */
export function heardIn(
  journal: Journal,
  visit: VisitState,
  earlier: readonly VisitState[],
): readonly ComplaintStands[] | undefined {
  const told = [...earlier, visit].map((one) => withAnswers(journal, one));
  const read = told.filter((one) => one !== undefined);
  const here = read.at(-1);
  return here && read.length === told.length ? complaintsOf(here, read.slice(0, -1)) : undefined;
}

/** How many earlier visits of the car can't be read: what was complained of then is not known here, and is told so. */
export function earlierUnread(journal: Pick<Journal, "summaries" | "keptVisit">, visit: VisitState): number {
  const car = visit.opened?.value.car;
  const on = lookedOn(visit);
  const before = (journal.summaries.value ?? []).filter(
    (one) => one.of === "visit" && one.car === car && !visit.streams.includes(one.stream) && one.on < on,
  );
  return before.filter(({ stream }) => journal.keptVisit(stream).value.is === "trouble").length;
}

function withAnswers(journal: Journal, visit: VisitState): HeardIn | undefined {
  const plan = journal.plan(visit.stream).value;
  // A plan that can't be read says nothing: its visit's complaints are then shown as open.
  if (plan.is === "opening") return undefined;
  return { visit, answers: plan.is === "open" ? plan.state.answers : new Map() };
}
