/**
 * A whole work list planned: what must be open, what the budget reaches, who carries what, in which order it is done,
 * what it comes to, when it is ready. Each stage is a pure function of the one before; what is faulty is named by it
 * and the rest goes on.
 */
import type { Problem } from "../../terms/index.js";
import {
  accessOf,
  bundlesOf,
  equalSplit,
  hours,
  marginal,
  opened,
  type ReachedJob,
  settleWays,
} from "../access/index.js";
import { type Doing, type DoingJob, doingOrder, hadTogether, orderTogether } from "../doing/index.js";
import { type Estimate, estimate } from "../estimate/index.js";
import type { Three } from "../terms.js";
import { chosenWithin } from "./choose-work.js";
import type { JobInPlan, WorkInput, WorkJob, WorkPlan } from "./contract.js";
import { isMandatory } from "./mandatory.js";
import { offersBeside } from "./offers.js";
import { datesOf } from "./when.js";

/**
 * Plans the whole list. `goOn` is asked now and then by the searches: false ends them with the best found, which is
 * then not called proven.
 */
export function planWork(input: WorkInput, goOn?: () => boolean): WorkPlan {
  const toDo = input.jobs.filter(({ isDone }) => !isDone);
  const access = accessOf(
    input.openings,
    toDo.map(({ id, minutes, access: states, ways }) => ({
      id,
      access: states,
      ...(minutes === undefined ? {} : { own: minutes }),
      ...(ways === undefined ? {} : { ways }),
    })),
  );
  const given = new Map(toDo.map((job) => [job.id, job]));
  const settled = settleWays(access.jobs);
  const wanted = settled.jobs.filter(({ id }) => {
    const job = given.get(id);
    return job !== undefined && !job.declined && (isMandatory(job) || job.wanted !== "out");
  });
  const choice = chosenWithin(input, wanted, given, goOn);
  const chosenIds = new Set(choice.result?.chosen ?? wanted.map(({ id }) => id));
  const chosen = wanted.filter(({ id }) => chosenIds.has(id));
  const costed = estimateOf(input, chosen, given);
  const doing = doingOrder(chosen.map(({ id, needs }) => ({ id, needs, ...wayOf(given.get(id)) })));
  const dates = datesOf(input, chosen, goOn);
  const shares = new Map(equalSplit(chosen).map(({ job, minutes }) => [job, minutes]));
  const untimed = input.jobs.filter(({ isDone, minutes }) => isDone && minutes === undefined).map(({ id }) => id);
  const sets = setsOf(toDo.filter(({ id }) => chosenIds.has(id)));
  return {
    jobs: settled.jobs.map((reached) => inPlan(reached, chosen, given.get(reached.id), shares)),
    chosen: chosen.map(({ id }) => id),
    ways: settled.chosen,
    bundles: bundlesOf(inDoingOrder(chosen, doing)),
    doing,
    minutes: hours(chosen),
    ...(choice.result === undefined ? {} : { choice: choice.result }),
    ...(choice.next === undefined ? {} : { nextStep: choice.next }),
    ...(costed.estimate === undefined ? {} : { estimate: costed.estimate }),
    ...(dates.schedule === undefined ? {} : { schedule: dates.schedule }),
    offers: offersBeside(input, settled.jobs, chosen),
    alone: sets.alone,
    spent: choice.spent,
    unpriced: unpricedOf(chosen, given),
    setAside: [...access.setAside.filter((id) => given.get(id)?.declined !== true), ...untimed],
    problems: [
      ...access.problems,
      ...choice.problems,
      ...doing.problems,
      ...sets.problems,
      ...costed.problems,
      ...dates.problems,
    ],
    remarks: [...(costed.estimate?.remarks ?? []), ...dates.remarks],
  };
}

/** Each job's share is worked out with all the chosen ones; what it adds, with the others. */
function inPlan(
  reached: ReachedJob,
  chosen: readonly ReachedJob[],
  given: WorkJob | undefined,
  shares: ReadonlyMap<string, Three>,
): JobInPlan {
  const others = chosen.filter(({ id }) => id !== reached.id);
  const { added, standAlone } = marginal(reached, others);
  const isChosen = others.length < chosen.length;
  const share = shares.get(reached.id);
  return {
    id: reached.id,
    isMandatory: given !== undefined && isMandatory(given),
    isChosen,
    added,
    standAlone,
    ...(share === undefined ? {} : { share }),
  };
}

/** What the doing order asks of a job. */
const wayOf = (job: WorkJob | undefined): Pick<DoingJob, "kind" | "follows" | "last" | "endsIn" | "contains"> =>
  job === undefined
    ? {}
    : { kind: job.kind, follows: job.follows, last: job.last, endsIn: job.endsIn, contains: job.contains };

function inDoingOrder(jobs: readonly ReachedJob[], { steps }: Doing): readonly ReachedJob[] {
  const at = new Map(steps.flatMap(({ job, standsFor }, i) => [job, ...standsFor].map((id) => [id, i] as const)));
  return [...jobs].sort((a, b) => (at.get(a.id) ?? 0) - (at.get(b.id) ?? 0));
}

/** Parts somebody wants ordered without the rest of their set: told with the reason given, or refused by name. */
function setsOf(jobs: readonly WorkJob[]): ReturnType<typeof orderTogether> {
  const sets = hadTogether(
    jobs.map(({ id, parts }) => ({ job: id, parts: parts.map(({ id: part, ...p }) => ({ part, ...p })) })),
  );
  const wanted = jobs.flatMap(({ id: job, parts }) =>
    parts.map(({ id: part, aloneBecause }) => ({ job, part, ...(aloneBecause === undefined ? {} : { aloneBecause }) })),
  );
  return orderTogether(sets, wanted);
}

/** The estimate of the chosen jobs, where the house has said its terms. */
function estimateOf(
  input: WorkInput,
  chosen: readonly ReachedJob[],
  given: ReadonlyMap<string, WorkJob>,
): { readonly estimate?: Estimate; readonly problems: readonly Problem[] } {
  if (!input.terms) return { problems: [] };
  const openings = new Map(input.openings.map((one) => [one.id, one]));
  const made = estimate({
    terms: input.terms,
    asOf: input.today,
    jobs: chosen.map(({ id, own }) => ({ id, own, ...rateOf(given.get(id)) })),
    opened: opened(chosen).flatMap(({ id }) => openings.get(id) ?? []),
    parts: chosen.flatMap(({ id }) =>
      (given.get(id)?.parts ?? []).flatMap((part) =>
        part.price === undefined ? [] : [{ ...part, id: `${id}/${part.id}`, price: part.price }],
      ),
    ),
    ...(input.condition === undefined ? {} : { condition: input.condition }),
  });
  return made.ok ? { estimate: made.value, problems: made.value.problems } : { problems: made.problems };
}

/** Parts the money cannot hold yet. */
const unpricedOf = (chosen: readonly ReachedJob[], given: ReadonlyMap<string, WorkJob>): readonly string[] =>
  chosen.flatMap(({ id }) =>
    (given.get(id)?.parts ?? []).flatMap(({ id: part, price }) => (price === undefined ? [`${id}/${part}`] : [])),
  );

const rateOf = (job: WorkJob | undefined): { readonly rate?: string } =>
  job?.rate === undefined ? {} : { rate: job.rate };
