/** Access: minutes of jobs done together, what one adds to others, who carries the shared minutes, what pays meanwhile. */
import {
  type Access,
  type AccessState,
  accessOf,
  exactShares,
  hours,
  marginal,
  opportunity,
  type ReachedJob,
  type Three,
} from "../../core/plan/index.js";
import { caseOf, eachOf, firstOf, has, listHas, type Section, tellAll, tidy, underName } from "./section.js";
import { type At, fields, figure, inside, list, name, one, optional, whole } from "./shape.js";

/** Whole minutes, one figure or low, likely, high. */
export const minutes = one("whole minutes, one figure or low, likely and high", (value): Three | undefined => {
  const all: readonly unknown[] = Array.isArray(value) ? value : [value, value, value];
  const [low, likely, high] = all.map((entry) => (typeof entry === "number" ? entry : Number.NaN));
  const isOrdered = all.length === 3 && low !== undefined && likely !== undefined && high !== undefined;
  if (!isOrdered || !all.every(Number.isSafeInteger) || low < 0 || low > likely || likely > high) return undefined;
  return [low, likely, high];
});
/** One figure where low, likely and high are the same. */
const plain = (three: Three): number | Three => (three[0] === three[2] ? three[1] : three);

const stateFields = fields({
  id: name,
  parents: optional(list(name), []),
  setup: optional(minutes),
  setUp: optional(minutes),
  putback: optional(minutes),
  putBack: optional(minutes),
});
/** A state with its minutes under either spelling; both must be there. */
export const accessState = {
  read: (value: unknown, at: At): { readonly value: AccessState } | undefined => {
    const read = stateFields.read(value, at)?.value;
    if (read === undefined) return undefined;
    const [setUp, putBack] = [read.setup ?? read.setUp, read.putback ?? read.putBack];
    if (setUp === undefined) minutes.read(undefined, inside(at, "setup"));
    if (putBack === undefined) minutes.read(undefined, inside(at, "putback"));
    if (setUp === undefined || putBack === undefined) return undefined;
    return { value: { id: read.id, parents: read.parents, setUp, putBack } };
  },
};

const garage = fields({
  states: list(accessState),
  jobs: list(fields({ id: name, own: minutes, access: optional(list(name), []) })),
});
/** Jobs of the list by name; an unknown one is told. */
function jobsNamed(access: Access, names: readonly string[], at: At): readonly ReachedJob[] | undefined {
  const found = names.flatMap((id, i) => {
    const job = access.jobs.find((it) => it.id === id);
    if (job !== undefined) return [job];
    const params = { found: `“${id}”`, expected: access.jobs.map((it) => it.id) };
    at.problems.push({ code: "plan-file.expected", where: { path: inside(at, i).path }, params });
    return [];
  });
  return found.length === names.length ? found : undefined;
}

/** Up to so many jobs every set of them is looked at. */
const MOST_JOBS = 10;
/** How often company makes a job dearer: each job beside every set of others, with one more and without. */
function violations(jobs: readonly ReachedJob[]): number {
  const sets = Array.from({ length: 2 ** jobs.length }, (_, bits) => jobs.filter((_, i) => (bits >> i) & 1));
  return sets.reduce((count, small) => {
    const others = jobs.filter((job) => !small.includes(job));
    const dearer = others.flatMap((more) =>
      others.filter((job) => job !== more && added(job, [...small, more]) > added(job, small)),
    );
    return count + dearer.length;
  }, 0);
}
const added = (job: ReachedJob, given: readonly ReachedJob[]): number => marginal(job, given).added[1];

const accessWork = caseOf(garage, ({ states, jobs }, at, raw) => {
  const access = accessOf(states, jobs);
  tellAll(access.problems, at);
  const total = caseOf(fields({ jobs: list(name) }), (asked, where) => {
    const named = jobsNamed(access, asked.jobs, inside(where, "jobs"));
    return named && { jobs: asked.jobs, minutes: plain(hours(named)) };
  });
  const beside = caseOf(fields({ job: name, given: optional(list(name), []) }), (asked, where) => {
    const [job] = jobsNamed(access, [asked.job], inside(where, "job")) ?? [];
    const given = jobsNamed(access, asked.given, inside(where, "given"));
    if (job === undefined || given === undefined) return undefined;
    const { added: more, standAlone, ratio } = marginal(job, given);
    return {
      job: job.id,
      given: asked.given,
      marginal: plain(more),
      standAlone: plain(standAlone),
      ratio: tidy(ratio),
    };
  });
  return {
    states: raw["states"],
    jobs: raw["jobs"],
    ...(raw["total"] === undefined ? {} : { total: eachOf(raw["total"], inside(at, "total"), total) }),
    ...(raw["marginal"] === undefined ? {} : { marginal: eachOf(raw["marginal"], inside(at, "marginal"), beside) }),
    ...(access.jobs.length > MOST_JOBS ? {} : { diminishingMarginalsViolations: violations(access.jobs) }),
  };
});

export const accessSection: Section = {
  name: "access",
  isSection: (value) =>
    has(value, "states", "jobs") && (has(value, "total") || has(value, "marginal") || listHas(value["jobs"], "own")),
  answer: accessWork,
};

/** Nested costs: each job needs all that the one before it does, and some more. */
const nested = caseOf(fields({ nestedCosts: list(whole, 1) }), ({ nestedCosts }, at, raw) => {
  if (nestedCosts.some((cost, i) => cost < (nestedCosts[i - 1] ?? 0))) {
    const params = { found: nestedCosts.join(", "), expected: "costs of which none is below the one before it" };
    at.problems.push({ code: "plan-file.expected", where: { path: `${at.path}.nestedCosts` }, params });
    return undefined;
  }
  const { jobs } = accessOf(
    nestedCosts.map((cost, i): AccessState => {
      const step = cost - (nestedCosts[i - 1] ?? 0);
      return { id: `${i}`, parents: i === 0 ? [] : [`${i - 1}`], setUp: [step, step, step], putBack: [0, 0, 0] };
    }),
    nestedCosts.map((_, i) => ({ id: `${i}`, own: [0, 0, 0], access: [`${i}`] })),
  );
  const times = (by: number) =>
    exactShares(jobs, 1).map(({ over, under }) => tidy((Number(over) * by) / Number(under)));
  const key = raw["expectedSharesTimes6"] === undefined ? "expectedShares" : "expectedSharesTimes6";
  return { nestedCosts, [key]: times(key === "expectedShares" ? 1 : 6), recomputed: times(1) };
});

export const sharedSplit: Section = {
  name: "shared_split",
  isSection: (value) => listHas(value, "nestedCosts"),
  answer: (value, at) => eachOf(value, at, nested),
  isCase: (given) => has(given, "nestedCosts"),
  answerCase: nested,
};

const WHOLE_LIFE = 100;
const offered = caseOf(
  fields({
    job: name,
    standAloneMin: whole,
    marginalMin: whole,
    ratePerHourMinor: whole,
    partPriceMinor: whole,
    remainingLife: figure,
  }),
  (given, at) => {
    const { job, standAloneMin: alone, marginalMin: more } = given;
    const marginalOf = {
      added: [more, more, more] as const,
      standAlone: [alone, alone, alone] as const,
      ratio: alone === 0 ? 1 : more / alone,
      opens: [],
    };
    const got = opportunity({
      job,
      marginal: marginalOf,
      rate: given.ratePerHourMinor,
      partPrice: given.partPriceMinor,
      lifeLeft: tidy(given.remainingLife * WHOLE_LIFE),
    });
    if (!got.ok) {
      tellAll(got.problems, at);
      return undefined;
    }
    const { moneySaved, moneyThrownAway, suggest, why } = got.value;
    return { ...given, savingMinor: moneySaved ?? null, lossMinor: moneyThrownAway ?? null, suggest, why };
  },
);
const isOffer = (value: unknown): boolean => has(value, "standAloneMin", "marginalMin");

export const opportunities: Section = {
  name: "opportunity",
  isSection: (value) => isOffer(firstOf(value, "cases")),
  answer: underName("cases", offered),
  isCase: isOffer,
  answerCase: offered,
};
