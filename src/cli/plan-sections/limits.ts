/** Readings beside a limit, several readings of one part, and what chance alone does to their range. */
import { aggregate, COVERAGE, singleU, spanOf, standingOf } from "../../core/assess/index.js";
import { normal } from "../../core/trade/index.js";
import { caseOf, eachOf, firstOf, has, reckoned, remarks, type Section, tidy } from "./section.js";
import {
  type At,
  asFields,
  type Fields,
  fields,
  figure,
  inside,
  list,
  named,
  notNegative,
  one,
  optional,
  positive,
  word,
} from "./shape.js";

const VERDICTS = {
  clear: "clear of limit",
  inside: "clear of limit",
  "too close": "too close: measure again",
  past: "past limit",
} as const;

const guarded = caseOf(
  fields({
    y: figure,
    resolution: notNegative,
    mpe: notNegative,
    lower: optional(figure, null),
    upper: optional(figure, null),
  }),
  ({ y, resolution, mpe, lower, upper }, at) => {
    const u = singleU({ resolution, error: mpe, setUp: 0 });
    if (lower === null && upper === null) return noLimit(at);
    const sides = [
      ...(lower === null ? [] : [{ edge: lower, direction: "under", side: "at-least" } as const]),
      ...(upper === null ? [] : [{ edge: upper, direction: "over", side: "at-most" } as const]),
    ];
    const standings = sides.map(({ edge, direction }) => standingOf(spanOf(y, u, { major: edge }, direction)));
    const standing = (["past", "too close"] as const).find((one) => standings.includes(one)) ?? "clear";
    // a gauge that shows every step and has no error leaves nothing to chance
    const outside = sides.map(({ edge, side }) =>
      u === 0
        ? Number(standings.includes("past"))
        : 1 - (reckoned("chance_of_conforming", [y, edge, side, u], at) ?? 0) / 100,
    );
    const conforms = Math.max(0, 1 - outside.reduce((sum, one) => sum + one, 0));
    return {
      y,
      resolution,
      mpe,
      lower,
      upper,
      u: tidy(u),
      U: tidy(COVERAGE * u),
      verdict: VERDICTS[standing],
      p_conform: tidy(conforms),
    };
  },
);

function noLimit(at: At): undefined {
  at.problems.push({ code: "plan-file.no-limit", where: { path: at.path }, params: {} });
  return undefined;
}

const chance = caseOf(
  fields({ upper: optional(figure), lower: optional(figure), y: figure, u: positive }),
  ({ upper, lower, y, u }, at) => {
    const edge = upper ?? lower;
    if (edge === undefined) return noLimit(at);
    const per100 = reckoned("chance_of_conforming", [y, edge, upper === undefined ? "at-least" : "at-most", u], at);
    return per100 === undefined
      ? undefined
      : { ...(upper === undefined ? { lower: edge } : { upper: edge }), y, u, p: tidy(per100 / 100) };
  },
);

/** Where a reading whose uncertainty grows with it is past a most with this confidence: T = limit ÷ (1 − z u). */
const threshold = caseOf(
  fields({ limit: figure, relU: positive, confidence: positive }),
  ({ limit, relU, confidence }, at) => {
    const share = 1 - quantile(confidence) * relU;
    if (confidence < 1 && share > 0) return { limit, relU, confidence, threshold: tidy(limit / share) };
    at.problems.push({ code: "plan-file.no-threshold", where: { path: at.path }, params: {} });
    return undefined;
  },
);

/** The point under which this share of the normal distribution lies, by halving. */
function quantile(share: number): number {
  let [low, high] = [-9, 9];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (normal(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const extra = (value: unknown, at: At) => (has(value, "relU") ? threshold(value, at) : chance(value, at));

export const guard: Section = {
  name: "guard",
  isSection: (value) => isGuarded(firstOf(value, "cases")),
  answer: (value, at) => {
    const given = asFields(value) ?? {};
    return {
      ...remarks(given),
      cases: eachOf(given["cases"], inside(at, "cases"), guarded),
      ...(given["extra"] === undefined ? {} : { extra: eachOf(given["extra"], inside(at, "extra"), extra) }),
    };
  },
  isCase: (given) => isGuarded(given) || has(given, "relU", "confidence") || has(given, "y", "u"),
  answerCase: (value, at) => (isGuarded(value) ? guarded(value, at) : extra(value, at)),
};
const isGuarded = (value: unknown): boolean => has(value, "y", "mpe") || has(value, "y", "resolution");

const RULES = ["min", "max", "mean", "median", "range", "minOfMeans"] as const;
const readings = list(figure, 1);
const HOW = { min: "min", max: "max", mean: "mean", median: "median", range: "spread" } as const;
const madeOne = (values: readonly number[], how: (typeof HOW)[keyof typeof HOW]): number =>
  aggregate({ values, resolution: 0, error: 0, setUp: 0 }, how)?.value ?? Number.NaN;

const together = caseOf(fields({ rule: word(...RULES) }), ({ rule }, at, raw) => {
  const input = raw["in"];
  const where = inside(at, "in");
  if (rule === "minOfMeans") {
    const parts = named(readings).read(input, where);
    const means = parts?.value.map(([, values]) => madeOne(values, "mean"));
    return means && { rule, in: input, out: tidy(Math.min(...means)) };
  }
  const values = readings.read(input, where);
  return values && { rule, in: input, out: tidy(madeOne(values.value, HOW[rule])) };
});

/** Mean range of n readings that only chance sets apart, in their standard deviations: ∫ 1 − Φⁿ − (1 − Φ)ⁿ. */
function meanRange(n: number): number {
  const [far, strips] = [8, 4000];
  const width = (2 * far) / strips;
  let sum = 0;
  for (let i = 0; i < strips; i += 1) {
    const under = normal(-far + (i + 0.5) * width);
    sum += (1 - under ** n - (1 - under) ** n) * width;
  }
  return sum;
}
const isCount = (n: string, at: At): boolean => count.read(n, inside(at, n)) !== undefined;
const count = one("a whole number of readings from 2 to 1000", (n) =>
  Number.isInteger(Number(n)) && Number(n) >= 2 && Number(n) <= 1000 ? Number(n) : undefined,
);
const COUNTS = ["2", "3", "4", "5", "8", "12"];

export const several: Section = {
  name: "aggregate",
  isSection: (value) => has(value, "noiseRange") || has(firstOf(value, "cases"), "rule", "in"),
  answer: (value, at) => {
    const given = asFields(value) ?? {};
    const asked: Fields | undefined = asFields(given["noiseRange"]);
    const counts =
      asked === undefined ? COUNTS : Object.keys(asked).filter((n) => isCount(n, inside(at, "noiseRange")));
    return {
      ...remarks(given),
      ...(given["cases"] === undefined ? {} : { cases: eachOf(given["cases"], inside(at, "cases"), together) }),
      noiseRange: Object.fromEntries(counts.map((n) => [n, tidy(meanRange(Number(n)))])),
    };
  },
  isCase: (given) => has(given, "rule", "in"),
  answerCase: together,
};
