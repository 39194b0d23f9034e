/** Visits of the same car after this one, each with its judgement: what is answered there was looked at again too. */
import { lookedOn, type VisitState } from "../../core/record/index.js";
import type { App } from "./app.js";
import { deskOf } from "./desks.js";
import type { JudgedVisit } from "./release-anew.js";

/**
 * Oldest first; undefined while one is still being judged. One that cannot be laid out has no judgement, and one that
 * cannot be read is none: neither proves anything.
 */
export function laterJudged(app: App, visit: VisitState): readonly JudgedVisit[] | undefined {
  const on = lookedOn(visit);
  const streams = (app.journal.summaries.value ?? [])
    .flatMap((one) =>
      one.of === "visit" && one.car === visit.opened?.value.car && one.stream !== visit.stream && one.on > on
        ? [one]
        : [],
    )
    .sort((a, b) => (a.on < b.on ? -1 : 1))
    .map(({ stream }) => stream);
  const read = streams.map((stream) => judgedOn(app, stream));
  return read.includes("waiting") ? undefined : read.filter((one) => typeof one === "object");
}

function judgedOn(app: App, stream: string): JudgedVisit | "waiting" | "unread" {
  const opened = app.journal.keptVisit(stream).value;
  if (opened.is === "opening") return "waiting";
  if (opened.is !== "open") return "unread";
  const { replies, frozen, sheets } = opened.state;
  // Nothing is answered in it, or nothing frozen to judge it by: there is no judgement to wait for.
  if (replies.size === 0 || !frozen || sheets.length === 0) return { visit: opened.state, assessment: undefined };
  const desk = deskOf(app, stream);
  const [assessment, trouble] = [desk.assessment.value, desk.trouble.value];
  if (assessment || trouble) return { visit: opened.state, assessment };
  return "waiting";
}
