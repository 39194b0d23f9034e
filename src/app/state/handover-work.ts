/** Jobs, parts, money, what is loose and days to think of, as a hand-over takes them. Pure; every sum is core/plan's. */
import type { JobDue } from "../../core/assess/contract.js";
import {
  type Amounts,
  type Estimate,
  type EstimateLine,
  estimate,
  partStands,
  progressOf,
} from "../../core/plan/index.js";
import type {
  DateTold,
  FirstUntold,
  JobTold,
  LooseTold,
  MoneyTold,
  OpeningTold,
  PartTold,
} from "../../core/report/index.js";
import type { Three } from "../../core/terms/index.js";
import { readFirst } from "./first-estimate.js";
import { decisionOn, rechecksTold } from "./handover-after.js";
import { whereOf } from "./handover-faults.js";
import type { HandoverGround } from "./handover-ground.js";
import { jobSays } from "./job-words.js";
import { standsWords } from "./part-way.js";
import { last } from "./plan-input.js";
import { jobTitle, openingTitle, partTitle } from "./plan-words.js";
import { whyText } from "./work-view.js";

const threeOf = ({ low, likely, high }: Amounts): Three => [low, likely, high];
const TEN_THOUSAND = 10_000;

/** A line with the tax of its rate. */
function withTax({ tax }: Estimate, { net, taxGroup }: EstimateLine): Three {
  const points = tax.find(({ group }) => group === taxGroup)?.basisPoints ?? 0;
  const [low, likely, high] = threeOf(net).map((one) => one + Math.round((one * points) / TEN_THOUSAND));
  return [low ?? 0, likely ?? 0, high ?? 0];
}

const plus = (sum: Three, [low, likely, high]: Three): Three => [sum[0] + low, sum[1] + likely, sum[2] + high];

type Planned = Pick<HandoverGround, "plan" | "input">;

/** What a job comes to with tax, of its own work and parts; undefined where it is in no sum. */
export function costOf({ plan }: Planned, id: string): Three | undefined {
  const of = plan?.estimate;
  if (!of) return undefined;
  const isOut = of.setAside.includes(id) || plan.setAside.includes(id);
  const own = of.lines.filter(
    (line) => line.kind !== "deposit" && line.kind !== "access" && (line.id === id || line.id.startsWith(`${id}/`)),
  );
  if (isOut || own.length === 0) return undefined;
  return own.map((line) => withTax(of, line)).reduce<Three>(plus, [0, 0, 0]);
}

/** What it does not pass four times in five, drawn by itself: lines of a whole estimate share one spread. */
function mostOf({ plan, input }: Planned, id: string): number | undefined {
  const line = plan?.estimate?.lines.find((one) => one.kind === "job" && one.id === id);
  const job = input.jobs.find((one) => one.id === id);
  if (!line?.minutes || !job || !input.terms) return undefined;
  const made = estimate({
    terms: input.terms,
    asOf: input.today,
    jobs: [{ id, own: threeOf(line.minutes), ...(job.rate === undefined ? {} : { rate: job.rate }) }],
    opened: [],
    parts: job.parts.flatMap((part) =>
      part.price === undefined ? [] : [{ ...part, id: `${id}/${part.id}`, price: part.price }],
    ),
  });
  return made.ok && made.value.setAside.length === 0 ? made.value.gross.p80 : undefined;
}

/** What is opened, each once, with the jobs that name it. */
function openingsTold({ plan, input, telling }: HandoverGround): readonly OpeningTold[] {
  const of = plan?.estimate;
  if (!of) return [];
  const chosen = new Set(plan.chosen);
  return of.lines
    .filter(({ kind }) => kind === "access")
    .map((line) => ({
      id: line.id,
      title: openingTitle(telling, line.id),
      ...(line.minutes === undefined ? {} : { minutes: threeOf(line.minutes) }),
      cost: withTax(of, line),
      jobs: input.jobs.filter(({ id, access }) => chosen.has(id) && access.includes(line.id)).map(({ id }) => id),
    }));
}

/** The first estimate ever given, or why it stands beside nothing. */
export function firstUntold({ said, currency }: HandoverGround): FirstUntold | undefined {
  const [given] = said.estimates;
  if (!given) return undefined;
  const { on } = given.value;
  const first = readFirst(given.value.estimate);
  if (!first) return { on, why: "newer" };
  if (!currency) return { on, why: "no-rates" };
  return first.currency === currency.currency ? undefined : { on, why: "currency" };
}

/** A job as it was told first: its lines as they were kept, without tax. */
function firstOf({ said, currency }: HandoverGround, id: string): JobTold["first"] {
  const [given] = said.estimates;
  const first = readFirst(given?.value.estimate);
  if (!given || !first || first.currency !== currency?.currency || !Array.isArray(first.lines)) return undefined;
  const own = first.lines.filter(
    (line) => line.kind !== "deposit" && line.kind !== "access" && (line.id === id || line.id.startsWith(`${id}/`)),
  );
  if (own.length === 0) return undefined;
  return { on: given.value.on, cost: own.map(({ net }) => threeOf(net)).reduce<Three>(plus, [0, 0, 0]), isNet: true };
}

function partsTold(ground: HandoverGround, id: string): readonly PartTold[] {
  const { input, said, telling } = ground;
  const job = input.jobs.find((one) => one.id === id);
  return (job?.parts ?? []).map((part): PartTold => {
    const key = `${id}/${part.id}`;
    const steps = said.partSteps.get(key) ?? [];
    return {
      title: partTitle(telling, said, key),
      count: part.count,
      ...(part.price === undefined ? {} : { price: part.price }),
      ...(part.set === undefined ? {} : { set: partTitle(telling, said, `${id}/${part.set}`) }),
      ...(part.leadDays === undefined ? {} : { leadDays: part.leadDays }),
      ...(steps.length === 0 ? {} : { stands: standsWords(partStands(steps, input.today)?.part) }),
    };
  });
}

function jobTold(ground: HandoverGround, due: JobDue): JobTold {
  const { telling, input, plan, said } = ground;
  const id = `${due.job}@${due.place}`;
  const given = input.jobs.find((one) => one.id === id);
  const { name, does } = jobSays(telling.known, due.job, telling.who);
  const cost = costOf(ground, id);
  const [most, first] = [mostOf(ground, id), firstOf(ground, id)];
  const decision = decisionOn(ground, id);
  const done = said.jobSteps.get(id)?.findLast(({ value }) => value.step === "done")?.value.on;
  return {
    id,
    title: name,
    where: whereOf(ground, due.place),
    does,
    grade: due.grade,
    byWhen: due.byWhen,
    key: due.key,
    faults: due.faults,
    ...(plan && given && !given.isDone ? { chosen: plan.chosen.includes(id) } : {}),
    ...(given?.minutes === undefined ? {} : { minutes: given.minutes }),
    ...(cost === undefined ? {} : { cost }),
    ...(cost === undefined || most === undefined || most < cost[1] ? {} : { most }),
    ...(first ? { first } : {}),
    parts: partsTold(ground, id),
    why: due.why.map(whyText),
    ...(decision ? { decision } : {}),
    ...(given?.isDone && done !== undefined ? { doneOn: done } : {}),
  };
}

export const jobsTold = (ground: HandoverGround): readonly JobTold[] => ground.due.map((due) => jobTold(ground, due));

/** Undefined until the house has said its rates: no sum is made up. */
export function moneyTold(ground: HandoverGround): MoneyTold | undefined {
  const { plan, currency, input, said } = ground;
  if (!currency) return undefined;
  const [given] = said.estimates;
  const first = readFirst(given?.value.estimate);
  const gross = plan?.estimate?.gross;
  return {
    currency: currency.currency,
    minorDigits: currency.minorDigits,
    ...(gross ? { total: threeOf(gross), most: gross.p80, openings: openingsTold(ground) } : {}),
    ...(input.budget === undefined ? {} : { budget: input.budget }),
    ...(plan ? { spent: plan.spent } : {}),
    missing: plan ? plan.setAside.length + plan.unpriced.length + (plan.estimate?.setAside.length ?? 0) : 0,
    ...(first && given && first.currency === currency.currency
      ? { first: { on: given.value.on, total: threeOf(first.gross) } }
      : {}),
  };
}

/** Undefined where what was told of the work cannot be worked out: then nobody knows what is loose. */
export function looseTold(ground: HandoverGround): readonly LooseTold[] | undefined {
  const progress = progressOf(ground.said, ground.today);
  if (!progress.ok) return undefined;
  return progress.value.loose.map(({ what, words, place = "car", on }) => {
    const where = whereOf(ground, place);
    return { words: words.join(" / "), ...(where === "" ? {} : { where }), is: what, on };
  });
}

/** Parts promised, jobs that wait for a day, what is due after some way. */
export function datesTold(ground: HandoverGround): readonly DateTold[] {
  const { said, today, telling } = ground;
  const progress = progressOf(said, today);
  // What is due after some way does not go by it.
  if (!progress.ok) return rechecksTold(ground);
  const parts = progress.value.parts.flatMap((one): readonly DateTold[] => {
    if (one.stands !== "promised" || one.promised === undefined) return [];
    const id = `${one.job}@${one.place}`;
    const words = `${partTitle(telling, said, `${id}/${one.part}`)} (${jobTitle(telling, id)})`;
    return [{ id: `part ${id}/${one.part}`, is: "part", words, on: one.promised }];
  });
  const jobs = progress.value.waiting.flatMap(({ job, place, next }): readonly DateTold[] => {
    if (next === undefined) return [];
    const id = `${job}@${place}`;
    const words = last(said.jobSteps.get(id))?.words ?? "";
    return [
      { id: `job ${id}`, is: "other", words: [jobTitle(telling, id), words].filter(Boolean).join(": "), on: next },
    ];
  });
  return [...parts, ...jobs, ...rechecksTold(ground)];
}
