/** How fast a wall goes, how long it lasts, and when to look again: half the life, and no later than the cap. */
import { caseOf, eachOf, has, reckoned, remarks, type Section, tidy } from "./section.js";
import { type At, asFields, fields, figure, inside, notNegative, optional, positive } from "./shape.js";

/** The functions count walls in mm up to 200. Rates hold in any unit, so that larger figures are brought down to that. */
const MOST = 200;
const unitFor = (...walls: readonly number[]): number => (Math.max(...walls) > MOST ? 1000 : 1);

function rateOf(from: number, to: number, years: number, at: At): number | undefined {
  const unit = unitFor(from, to);
  const rate = reckoned("loss_per_year", [from / unit, to / unit, years], at);
  return rate === undefined ? undefined : rate * unit;
}
function lifeOf(now: number, need: number, rate: number, at: At): number | undefined {
  const unit = unitFor(now, need);
  return reckoned("remaining_life", [now / unit, need / unit, rate / unit], at);
}
/** Without a cap half the life stands. */
const NO_CAP = 1e6;
const lookIn = (life: number, cap: number | undefined, at: At) => reckoned("next_look", [life, cap ?? NO_CAP], at);

const rate = caseOf(fields({ from: positive, to: positive, years: positive }), ({ from, to, years }, at) => {
  const worked = rateOf(from, to, years, at);
  return worked === undefined ? undefined : { from, to, years, rate: tidy(worked) };
});

const life = caseOf(fields({ t: positive, need: positive, rate: positive }), (given, at) => {
  const years = lifeOf(given.t, given.need, given.rate, at);
  return years === undefined ? undefined : { ...given, years: tidy(years) };
});

const interval = caseOf(fields({ life: notNegative, cap: optional(positive) }), (given, at) => {
  const years = lookIn(given.life, given.cap, at);
  return years === undefined
    ? undefined
    : { life: given.life, ...(given.cap === undefined ? {} : { cap: given.cap }), years: tidy(years) };
});

const controlling = caseOf(
  fields({
    initial: positive,
    previous: positive,
    actual: optional(positive),
    actualLong: optional(positive),
    actualShort: optional(positive),
    yearsLong: positive,
    yearsShort: positive,
    need: optional(positive),
    cap: optional(figure),
  }),
  (given, at) => {
    const { initial, previous, actual, yearsLong, yearsShort, need, cap } = given;
    const [lastLong, lastShort] = [given.actualLong ?? actual, given.actualShort ?? actual];
    if (lastLong === undefined || lastShort === undefined) {
      const params = { found: "", expected: "the wall now, or actualLong and actualShort" };
      at.problems.push({ code: "plan-file.missing", where: { path: `${at.path}.actual` }, params });
      return undefined;
    }
    const long = rateOf(initial, lastLong, yearsLong, at);
    const short = rateOf(previous, lastShort, yearsShort, at);
    if (long === undefined || short === undefined) return undefined;
    const governing = reckoned("governing_rate", [long, short], at) ?? Math.max(long, short);
    const left = need === undefined ? undefined : lifeOf(lastShort, need, governing, at);
    const look = left === undefined ? undefined : lookIn(left, cap, at);
    return {
      ...Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)),
      long: tidy(long),
      short: tidy(short),
      governs: short > long ? "short" : "long",
      ...(left === undefined ? {} : { life: tidy(left) }),
      ...(look === undefined ? {} : { interval: tidy(look) }),
    };
  },
);

const KINDS = { rate, life, interval, controlling };
const isRate = (value: unknown) => has(value, "from", "to", "years");
const isLife = (value: unknown) => has(value, "t", "need", "rate");
const isInterval = (value: unknown) => has(value, "life", "cap");
const isControlling = (value: unknown) => has(value, "initial", "previous");

export const halfLife: Section = {
  name: "half_life",
  isSection: (value) => Object.keys(KINDS).some((key) => Array.isArray(asFields(value)?.[key])),
  answer: (value, at) => {
    const given = asFields(value) ?? {};
    const rows = Object.entries(KINDS).filter(([key]) => given[key] !== undefined);
    return {
      ...remarks(given),
      ...Object.fromEntries(rows.map(([key, work]) => [key, eachOf(given[key], inside(at, key), work)])),
    };
  },
  isCase: (value) => [isRate, isLife, isInterval, isControlling].some((is) => is(value)),
  answerCase: (value, at) => {
    const work = isControlling(value) ? controlling : isLife(value) ? life : isRate(value) ? rate : interval;
    return work(value, at);
  },
};
