/** Visits of the same car after this one: what is answered there was looked at again too. Judges nothing. */
import { lookedOn, type VisitState } from "../../core/record/index.js";
import type { Journal } from "./journal.js";

/** Those that are read by now, oldest first. */
export function laterVisits(journal: Journal, visit: VisitState): readonly VisitState[] {
  const on = lookedOn(visit);
  return (journal.summaries.value ?? [])
    .flatMap((one) =>
      one.of === "visit" && one.car === visit.opened?.value.car && one.stream !== visit.stream && one.on > on
        ? [one]
        : [],
    )
    .sort((a, b) => (a.on < b.on ? -1 : 1))
    .flatMap(({ stream }) => {
      const opened = journal.keptVisit(stream).value;
      return opened.is === "open" ? [opened.state] : [];
    });
}
