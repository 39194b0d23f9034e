/**
 * What people graded themselves, laid over what the rules said: findings off the list and grades by hand, and the
 * words of such findings beside those of the sheets. Comes with what judges; judges nothing of its own.
 */

import type { Assessment, OffList } from "../../core/assess/contract.js";
import { addOffList, applyRegrades } from "../../core/assess/index.js";
import type { VisitState } from "../../core/record/contract.js";
import { offListId } from "../../core/terms/index.js";
import type { Knowledge, OwnJob } from "./knowledge.js";

/** Findings off the list that stand, as judging takes them; nobody's name is made up for one without. */
const offListOf = ({ found, people }: VisitState): readonly OffList[] =>
  [...found].flatMap(([name, standing]) =>
    standing.map(({ id, value: { job, ...seen }, by, at }) => ({
      ...seen,
      name,
      id,
      by: people.get(by)?.at(-1)?.value.name ?? "",
      at: at.wall,
      // What is more than advisory is work, also while nobody has said which.
      hasJob: job !== undefined || seen.grade !== "advisory",
    })),
  );

const regradesOf = ({ regrades }: VisitState) =>
  [...regrades.values()].flatMap((standing) => standing.map(({ id, value }) => ({ ...value, id })));

/** The rules' judgement with findings off the list beside it and grades by hand over both. */
export function withHand(ruled: Assessment, visit: VisitState): Assessment {
  const regrades = regradesOf(visit);
  const both = addOffList(ruled, offListOf(visit));
  return regrades.length > 0 ? applyRegrades(both, regrades) : both;
}

/** Jobs of findings off the list, in the words said last; of one without a job its own words. */
export function ownJobsOf({ found }: Pick<VisitState, "found">): ReadonlyMap<string, OwnJob> {
  return new Map(
    [...found].flatMap(([name, standing]) => {
      const last = standing.at(-1)?.value;
      const job = standing.findLast(({ value }) => value.job !== undefined)?.value.job;
      return last ? [[offListId(name), job ?? { words: last.words }] as const] : [];
    }),
  );
}

/** The same look-ups with the words of findings off the list; where people differ, the words said last. */
export function withOwnWords(known: Knowledge, { found }: Pick<VisitState, "found">): Knowledge {
  if (found.size === 0) return known;
  const faults = { ...known.words.faults };
  for (const [name, standing] of found) {
    const last = standing.at(-1)?.value;
    if (last) faults[offListId(name)] = { says: last.words };
  }
  return { ...known, words: { ...known.words, faults }, ownJobs: ownJobsOf({ found }) };
}
