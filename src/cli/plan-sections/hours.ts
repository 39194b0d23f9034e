/** Hours that vary: sums of low, likely and high along a path or over a day's jobs, and how surely a day is kept. */
import { figuresOf, type SpreadRule, spreadOf, together } from "../../core/plan/index.js";
import { normal } from "../../core/trade/index.js";
import { caseOf, eachOf, firstOf, type Section, tidy } from "./section.js";
import { type At, asFields, fields, figure, list, named, one, optional } from "./shape.js";

type Points = readonly [number, number, number];
const DECIMALS = 6;
const points = one("low, likely and high, with at most 6 decimals", (value): Points | undefined => {
  const all: readonly unknown[] = Array.isArray(value) ? value : [];
  const [low, likely, high] = all.map((entry) => (typeof entry === "number" ? entry : Number.NaN));
  if (all.length !== 3 || low === undefined || likely === undefined || high === undefined) return undefined;
  const isSound = 0 <= low && low <= likely && likely <= high && high < 1e6;
  return isSound && [low, likely, high].every((it) => Number(it.toFixed(DECIMALS)) === it)
    ? [low, likely, high]
    : undefined;
});

/** Sums in the unit given: worked out in whole parts of it. */
function sumOf(all: readonly Points[], rule: SpreadRule = "pert") {
  const per = 10 ** DECIMALS;
  const spreads = all.map(([low, likely, high]) =>
    spreadOf([Math.round(low * per), Math.round(likely * per), Math.round(high * per)], rule),
  );
  const { mean, variance, sd, p80 } = figuresOf(together(spreads));
  return { mean: mean / per, variance: variance / per ** 2, sd: sd / per, p80: p80 / per };
}

/** Some cases say their deadline in words only. */
function deadlineIn(src: unknown): number | undefined {
  const found = typeof src === "string" ? /P\(x\s*(?:<=|≤)\s*(\d+(?:\.\d+)?)\)/.exec(src)?.[1] : undefined;
  return found === undefined ? undefined : Number(found);
}

/** `AEHIJ` or `A-E-H`: activities by one letter, or with something between. */
const stepsOf = (path: string, known: ReadonlyMap<string, Points>): readonly string[] =>
  known.has(path) || /[^\p{L}\p{N}]/u.test(path) ? path.split(/[^\p{L}\p{N}]+/u) : [...path];

const pertCase = caseOf(
  fields({
    acts: named(points),
    path: optional(one("the activities of the path", (value) => (typeof value === "string" ? value : undefined))),
    deadline: optional(figure),
  }),
  ({ acts, path, deadline }, at, raw) => {
    const known = new Map(acts);
    const steps = path === undefined ? [...known.keys()] : stepsOf(path, known);
    const along = steps.flatMap((id) => {
      const act = known.get(id);
      if (act === undefined) unknown(id, [...known.keys()], at);
      return act === undefined ? [] : [act];
    });
    if (along.length < steps.length) return undefined;
    const { mean, variance, sd, p80 } = sumOf(along);
    const by = deadline ?? deadlineIn(raw["src"]);
    const z = by === undefined || sd === 0 ? undefined : (by - mean) / sd;
    return {
      acts: raw["acts"],
      path: path ?? steps.join("-"),
      mean: tidy(mean),
      var: tidy(variance),
      sd: tidy(sd),
      ...(by === undefined ? {} : { deadline: by }),
      ...(z === undefined ? {} : { z: tidy(z), p_normal: tidy(normal(z)), p: tidy(normal(z)) }),
      p80_normal: tidy(p80),
    };
  },
);

function unknown(id: string, expected: readonly string[], at: At): void {
  at.problems.push({
    code: "plan-file.expected",
    where: { path: `${at.path}.path` },
    params: { found: `“${id}”`, expected },
  });
}
const isPert = (value: unknown): boolean => asFields(asFields(value)?.["acts"]) !== undefined;

export const pert: Section = {
  name: "pert",
  isSection: (value) => Array.isArray(value) && isPert(value[0]),
  answer: (value, at) => eachOf(value, at, pertCase),
  isCase: isPert,
  answerCase: pertCase,
};

/** The normal distribution's 95 % point. */
const Z95 = 1.644854;
const STRIPS = 20_000;

/** The value kept four times of five by the beta distribution that low, likely and high imply: summed up strip by strip. */
function betaP80([low, likely, high]: Points): number {
  if (low === high) return low;
  const range = high - low;
  const [a, b] = [(4 * (likely - low)) / range, (4 * (high - likely)) / range];
  const at = (i: number): number => (i + 0.5) / STRIPS;
  const heights = Array.from({ length: STRIPS }, (_, i) => at(i) ** a * (1 - at(i)) ** b);
  const wanted = 0.8 * heights.reduce((sum, height) => sum + height, 0);
  let [sum, i] = [0, 0];
  while (i < STRIPS && sum + (heights[i] ?? 0) < wanted) sum += heights[i++] ?? 0;
  return low + (range * (i + (wanted - sum) / (heights[i] ?? 1))) / STRIPS;
}

const labour = caseOf(fields({ jobs: list(points, 1) }), ({ jobs }) => {
  const each = jobs.map((job) => ({ job, ...sumOf([job]) }));
  const [all, beta] = [sumOf(jobs), sumOf(jobs, "beta")];
  const greatest = each.reduce((most, it) => (it.mean > most.mean ? it : most));
  return {
    jobs,
    means: each.map(({ mean }) => tidy(mean)),
    vars: each.map(({ variance }) => tidy(variance)),
    mean: tidy(all.mean),
    var: tidy(all.variance),
    sd: tidy(all.sd),
    p80_normal: tidy(all.p80),
    beta_var: tidy(beta.variance),
    p80_normal_betavar: tidy(beta.p80),
    normal_p95: tidy(all.mean + Z95 * all.sd),
    // the greatest job on its own, where no other evens it out
    single: { job: greatest.job, p80_normal: tidy(greatest.p80), beta_exact_p80: tidy(betaP80(greatest.job)) },
  };
});

export const labourSum: Section = {
  name: "labour_sum",
  isSection: (value) => Array.isArray(firstOf(value, "jobs")),
  answer: labour,
};
