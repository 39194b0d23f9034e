/**
 * When the readings of one part meet an edge, from and to when honestly, and by when to look again. The lines are
 * core/trade's; here is chosen which of them is told. Refuses to find wear in what may be chance.
 */
import { type LeftAt, leastSquaresCrossing, lineWithin, medianLine } from "../trade/index.js";
import type { Along, Axis, Edge, NoOdometer, Reach, Seen, Way, Wears } from "./contract.js";
import { lookAgain } from "./look-again.js";

/** Rates are told per thousand kilometres: a workshop's way of speaking, no more. */
const PER_KM = 1000;
/** The Julian year, as astronomers and clocks count it: IAU style manual 1989, from memory. */
export const YEAR_DAYS = 365.25;
/**
 * Least squares counts from so many readings on. Own choice: of three, one degree of freedom is left, Student's 90 % point
 * is 6.3 against 2.9 of four, and the interval is hardly ever narrower than what the uncertainty of two readings allows.
 */
const FITTED_FROM = 4;
/**
 * Further ahead than so many times the stretch measured over is a guess, and said to be one. Own choice: at twice the
 * stretch a line through two readings is off by up to √13, three and a half times the uncertainty of one of them.
 */
const FAR = 2;

interface Left extends LeftAt {
  readonly day: number;
}

/** What is left of the way to the edge. */
const leftOf = (way: Way, edge: Edge, { value }: Seen): number => (way === "down" ? value - edge.at : edge.at - value);

/** Why the odometer can't be gone by; undefined where it can. */
function noOdometer(run: readonly Seen[]): NoOdometer | undefined {
  const km = run.flatMap((seen) => (seen.km === undefined ? [] : [seen.km]));
  if (km.length < run.length) return "missing";
  if (km.some((one, i) => one < (km[i - 1] ?? one))) return "back";
  return (km[0] ?? 0) < (km.at(-1) ?? 0) ? undefined : "still";
}

/** Towards the limit by more than both uncertainties: worn, and not just read otherwise. */
const isClear = (first: LeftAt, last: LeftAt): boolean => first.left - last.left > first.u + last.u;

/**
 * At the faster of the long and the short rate; a short one counts once it is more than chance. As plant inspection
 * codes do (API 570 7.1, as taught in public study guides; the code itself not opened).
 */
function atFasterRate(lefts: readonly Left[], first: Left, last: Left): number | undefined {
  const before = lefts.at(-2);
  const long = (first.left - last.left) / (last.when - first.when);
  const isShort = before !== undefined && before.when < last.when && isClear(before, last);
  const short = isShort ? (before.left - last.left) / (last.when - before.when) : 0;
  const rate = Math.max(long, short);
  return rate > 0 ? last.when + last.left / rate : undefined;
}

/** Of the honest ends the widest; no latest where one way of reckoning has none. */
function ends(lefts: readonly Left[], first: Left, last: Left, likely: number) {
  const fitted =
    lefts.length >= FITTED_FROM
      ? leastSquaresCrossing(
          lefts.map(({ when }) => when),
          lefts.map(({ left }) => left),
          0,
        )
      : undefined;
  const early = [lineWithin(first, last, "earliest"), atFasterRate(lefts, first, last), fitted?.from, likely];
  const late = [lineWithin(first, last, "latest"), ...(fitted ? [fitted.to] : []), likely];
  const isEnd = (at: number | undefined): at is number => at !== undefined;
  return {
    earliest: Math.max(last.when, Math.min(...early.filter(isEnd))),
    ...(late.every(isEnd) ? { latest: Math.max(last.when, ...late.filter(isEnd)) } : {}),
  };
}

/** Where no wear is told yet, it may still be at work within the uncertainty. */
function onlyEarliest(first: Left, last: Left): Along["days"] {
  const earliest = lineWithin(first, last, "earliest");
  return earliest === undefined ? {} : { earliest: Math.max(last.when, earliest) };
}

interface Line {
  readonly isWorn: boolean;
  readonly along: Along;
}

/** The line along one axis; undefined where all readings lie at one point of it. */
function lineAlong(axis: Axis, lefts: readonly Left[]): Line | undefined {
  const [first, last] = [lefts[0], lefts.at(-1)];
  if (!first || !last || last.when <= first.when) return undefined;
  const line = medianLine(
    lefts.map(({ when }) => when),
    lefts.map(({ left }) => left),
  );
  const rate = -(line?.slope ?? 0) * (axis === "use" ? PER_KM : YEAR_DAYS);
  const isWorn = line !== undefined && line.slope < 0 && isClear(first, last);
  const likely = isWorn ? Math.max(last.when, -line.intercept / line.slope) : undefined;
  const found: Along["days"] =
    likely === undefined ? onlyEarliest(first, last) : { likely, ...ends(lefts, first, last, likely) };
  const furthest = found.latest ?? likely;
  const days = inDays(axis, found, first, last);
  return {
    isWorn,
    along: {
      axis,
      rate,
      ...found,
      far: furthest !== undefined && furthest - last.when > FAR * (last.when - first.when),
      days,
      ...lookAgain(axis, last, found.earliest, days.earliest),
    },
  };
}

/** Kilometres as days at the pace of these visits; none where they lie on one day. */
function inDays(axis: Axis, found: Along["days"], first: Left, last: Left): Along["days"] {
  if (axis === "age") return found;
  const perKm = (last.day - first.day) / (last.when - first.when);
  if (perKm <= 0) return {};
  const day = (km: number): number => last.day + (km - last.when) * perKm;
  return {
    ...(found.earliest === undefined ? {} : { earliest: day(found.earliest) }),
    ...(found.likely === undefined ? {} : { likely: day(found.likely) }),
    ...(found.latest === undefined ? {} : { latest: day(found.latest) }),
  };
}

const soonest = ({ along: { days } }: Line): number => days.earliest ?? days.likely ?? Number.POSITIVE_INFINITY;

/** When the readings of one part, oldest first, meet this edge. */
export function reachOf(run: readonly Seen[], edge: Edge, way: Way, wears: Wears): Reach {
  const newest = run.at(-1);
  const left = newest ? leftOf(way, edge, newest) : Number.POSITIVE_INFINITY;
  const close = newest !== undefined && Math.abs(left) <= newest.uncertainty;
  if (left < 0) return { edge, is: "past", close };
  const cause = noOdometer(run);
  const wanted: readonly Axis[] = wears === "either" ? ["use", "age"] : [wears];
  const usable = wanted.filter((axis) => axis === "age" || cause === undefined);
  const axes: readonly Axis[] = usable.length > 0 ? usable : ["age"];
  const lines = axes.flatMap((axis) => {
    const line = lineAlong(
      axis,
      run.map((seen) => ({
        when: axis === "use" ? (seen.km ?? Number.NaN) : seen.day,
        left: leftOf(way, edge, seen),
        u: seen.uncertainty,
        day: seen.day,
      })),
    );
    return line === undefined ? [] : [line];
  });
  const [line, later] = lines.sort((a, b) => soonest(a) - soonest(b));
  const why = cause !== undefined && wears !== "age" && run.length > 1 ? { noOdometer: cause } : {};
  if (!line) return { edge, is: "alone", close, ...why };
  return {
    edge,
    is: line.isWorn ? "reaches" : "not-yet",
    close,
    along: line.along,
    ...(later?.isWorn ? { later: later.along } : {}),
    ...why,
  };
}
