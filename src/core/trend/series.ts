/** Puts the readings of one part in order and parts them where they are no longer of one part. Draws no line. */
import type { Break, Mark, Seen, Series, SeriesInput, Way } from "./contract.js";
import { edgesAround } from "./edges.js";
import { reachOf } from "./reach.js";

/** How far the later reading lies back against the wear. */
const cameBack = (way: Way, before: Seen, after: Seen): number =>
  way === "down" ? after.value - before.value : before.value - after.value;

/** The difference of two readings carries both their uncertainties: √(U² + U²), √2 · U where they are equal. */
const isMoreThanChance = (back: number, before: Seen, after: Seen): boolean =>
  back > Math.hypot(before.uncertainty, after.uncertainty);

const sameList = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((one) => b.includes(one));

function breakBetween({ way, words, done, away }: SeriesInput, before: Seen, after: Seen): Break | undefined {
  const { visit } = after;
  const back = cameBack(way, before, after);
  const word = words.get(visit);
  if (word === "renewed") return { visit, kind: "said-renewed", back };
  const isOneMethod = sameList(before.method, after.method);
  // The same part read in another way is still no series.
  if (word === "same") return isOneMethod ? undefined : { visit, kind: "method", back };
  const between = (day: number): boolean => day >= before.day && day <= after.day;
  if (away.some(between)) return { visit, kind: "not-fitted", back };
  if (isMoreThanChance(back, before, after)) {
    const job = done.find((one) => between(one.day))?.job;
    return job === undefined ? { visit, kind: "unsaid", back } : { visit, kind: "job-done", back, job };
  }
  return isOneMethod ? undefined : { visit, kind: "method", back };
}

const edgeText = ({ edges }: Seen): string =>
  edges
    .map(({ limit, grade, at }) => `${limit} ${grade} ${at}`)
    .sort()
    .join();

function marksBetween({ words }: SeriesInput, before: Seen, after: Seen): readonly Mark[] {
  const { visit } = after;
  return [
    ...(sameList(before.gauges, after.gauges) ? [] : [{ visit, kind: "gauge" as const }]),
    ...(edgeText(before) === edgeText(after) ? [] : [{ visit, kind: "limit" as const }]),
    ...(words.get(visit) === "same" ? [{ visit, kind: "same" as const }] : []),
  ];
}

const inTime = (a: Seen, b: Seen): number =>
  a.day - b.day || (a.km ?? 0) - (b.km ?? 0) || (a.visit < b.visit ? -1 : a.visit > b.visit ? 1 : 0);

/** One part's readings as series: where they part and why, and when the newest series meets its limits. */
export function seriesOf(input: SeriesInput): Series {
  const ordered = [...input.seen].sort(inTime);
  const isDoubtful = ({ visit }: Seen): boolean => input.words.get(visit) === "doubtful";
  const runs: Seen[][] = [];
  const breaks: Break[] = [];
  const marks: Mark[] = [];
  let before: Seen | undefined;
  for (const seen of ordered) {
    if (isDoubtful(seen)) continue;
    const parted = before && breakBetween(input, before, seen);
    if (before) marks.push(...marksBetween(input, before, seen));
    if (parted) breaks.push(parted);
    const run = runs.at(-1);
    if (!run || parted) runs.push([seen]);
    else run.push(seen);
    before = seen;
  }
  const newest = runs.at(-1) ?? [];
  const last = newest.at(-1);
  const { told, within } = last ? edgesAround(last.edges, input.way, last.value) : { told: [] };
  return {
    way: input.way,
    runs,
    breaks,
    marks,
    doubtful: ordered.filter(isDoubtful),
    reaches: told.map((edge) => reachOf(newest, edge, input.way, input.wears)),
    ...(within ? { within } : {}),
  };
}
