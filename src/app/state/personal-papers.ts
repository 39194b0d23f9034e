/**
 * Other people's papers in a visit: pictures and notes made while papers lay on the table, and whether the day has come
 * on which they were to go. A day deletes nothing by itself, since a phone's clock may be wrong. Pure.
 */
import { idText, isEntry, type PlanState, type VisitState } from "../../core/record/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import { type Paper, papersOf } from "./papers-view.js";

/** The car state in which papers are looked at, in every sheet. */
const PAPERS = "p1-papers";

interface Pinned {
  readonly state?: string;
}
const stateOf = (body: unknown): string | undefined =>
  typeof body === "object" && body !== null ? (body as Pinned).state : undefined;

/** What was taken back is still kept, so it stands here too. */
export function personalPapers(visit: VisitState): readonly Paper[] {
  const log = [...visit.ledger.log.values()].filter(isEntry);
  const pinned = new Set(log.filter(({ body }) => stateOf(body) === PAPERS).map((entry) => idText(entry)));
  return papersOf(visit).filter(
    ({ is, ids }) => (is === "picture" || is === "note") && ids.some((id) => pinned.has(id)),
  );
}

/** The day they are to go; of two that differ the later one, so that nothing goes that somebody still keeps. */
export const dayPapersGo = ({ papersUntil }: Pick<PlanState, "papersUntil">): IsoDate | undefined =>
  papersUntil
    .map(({ value }) => value)
    .sort()
    .at(-1);

/** Whether the day has come. */
export const isDue = (plan: Pick<PlanState, "papersUntil">, today: IsoDate): boolean => {
  const until = dayPapersGo(plan);
  return until !== undefined && until <= today;
};
