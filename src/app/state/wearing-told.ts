/** What is wearing, as a hand-over takes it: only what is on its way to a limit or past one. Pure; knows no words. */
import type { TrendTold } from "../../core/report/index.js";
import { DAY_MS, type IsoDate } from "../../core/terms/index.js";
import { type Wearing, wearingList } from "./wearing-view.js";

const isoOf = (days: number): IsoDate => new Date(Math.floor(days) * DAY_MS).toISOString().slice(0, 10);

/** The parts that are wearing, as the hand-over takes them: the newest series, its edge, from when to when. */
export const trendsTold = (all: readonly Wearing[]): readonly TrendTold[] =>
  wearingList(all).wearing.map(({ id, place, title, where, unit, series, reach, passed }) => {
    const { earliest, latest } = reach.along?.days ?? {};
    const past = reach.is === "past" ? reach : passed;
    const look = reach.along?.look?.day;
    return {
      id: `${id}@${place}`,
      title,
      where,
      unit,
      readings: (series.runs.at(-1) ?? []).map(({ day, value, uncertainty }) => ({
        on: isoOf(day),
        value,
        uncertainty,
      })),
      edge: reach.edge.at,
      grade: reach.edge.grade,
      ...(past ? { passed: { edge: past.edge.at, grade: past.edge.grade } } : {}),
      ...(reach.is === "reaches" && earliest !== undefined
        ? { reaches: { from: isoOf(earliest), ...(latest === undefined ? {} : { to: isoOf(latest) }) } }
        : {}),
      ...(look === undefined ? {} : { lookAgain: isoOf(look) }),
    };
  });
