/** A part's readings as the chart takes them: written values, edges in words, the light to the edge told first. Pure. */
import type { WearChartInput } from "../../core/report/index.js";
import { DAY_MS } from "../../core/terms/index.js";
import { t } from "../texts/wearing.js";
import type { Wearing } from "./wearing-view.js";
import { figureText } from "./worked-figures.js";

const yearOf = (day: number): number => new Date(day * DAY_MS).getUTCFullYear();

function years(from: number, to: number): readonly number[] {
  const all: number[] = [];
  for (let year = yearOf(from) + 1; year <= yearOf(to); year += 1) all.push(Date.UTC(year, 0, 1) / DAY_MS);
  return all;
}

export function wearChartInput(one: Wearing, small = false): WearChartInput {
  const { series, unit, reach, passed } = one;
  const { earliest, latest } = reach.along?.days ?? {};
  const told = [reach, ...(passed ? [passed] : []), ...series.reaches.filter((it) => it !== reach && it !== passed)];
  return {
    runs: series.runs.map((run) =>
      run.map(({ day, value, uncertainty }) => ({ day, value, uncertainty, text: figureText(value, "1") })),
    ),
    edges: told.map(({ edge }) => ({
      value: edge.at,
      text: `${figureText(edge.at, unit)} ${t(`grade.${edge.grade}`)}`,
    })),
    ...(reach.is === "reaches" && earliest !== undefined ? { cone: { edge: reach.edge.at, earliest, latest } } : {}),
    visits: [...series.runs.flat(), ...series.doubtful].map(({ day }) => day),
    years,
    year: (day) => String(yearOf(day)),
    small,
  };
}
