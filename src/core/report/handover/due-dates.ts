/** Every day and distance somebody has to think of after the visit, nearest day first. Knows no words of its own. */
import type { HandoverInput } from "./input.js";
import type { DueDate, NumberedJob } from "./model.js";

/** Names of days at which wear is looked at again begin so. */
export const WEAR = "trend:";

/** Nothing done and nothing declined is due; a decision to do it by a day stands beside the day the rules name. */
export function dueDates(input: HandoverInput, work: readonly NumberedJob[]): readonly DueDate[] {
  const open = work.filter(({ doneOn, decision }) => doneOn === undefined && decision?.is !== "no");
  const dates: readonly DueDate[] = [
    ...open.flatMap(({ id, number, title, where, byWhen: { date, distance } }) =>
      date === undefined && distance === undefined
        ? []
        : [{ id: `job:${id}`, is: "job" as const, number, words: title, where, on: date, distance }],
    ),
    ...open.flatMap(({ id, number, title, where, decision }) =>
      decision?.is === "by" && (decision.by?.date !== undefined || decision.by?.distance !== undefined)
        ? [
            {
              id: `decided:${id}`,
              is: "decided" as const,
              number,
              words: title,
              where,
              on: decision.by.date,
              distance: decision.by.distance,
            },
          ]
        : [],
    ),
    ...(input.dates ?? []).map(({ id, is, words, on, distance }) => ({
      id: `date:${id}`,
      is,
      words,
      where: "",
      on,
      distance,
    })),
    ...(input.trends ?? []).flatMap(({ id, title, where, lookAgain }) =>
      lookAgain === undefined
        ? []
        : [{ id: `${WEAR}${id}`, is: "look-again" as const, words: title, where, on: lookAgain }],
    ),
    ...(input.visit.next === undefined
      ? []
      : [{ id: "next-visit", is: "next-visit" as const, words: "", where: "", on: input.visit.next }]),
  ];
  return [...dates].sort((a, b) => ((a.on ?? LAST) < (b.on ?? LAST) ? -1 : (a.on ?? LAST) > (b.on ?? LAST) ? 1 : 0));
}

/** Sorts behind every day. */
const LAST = "9999-12-31";
