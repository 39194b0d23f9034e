/** Jobs, parts, money, what is loose and days to think of, as a hand-over takes them. Pure; every sum is core/plan's. */
import type { JobDue } from "../../core/assess/contract.js";
import { type Amounts, type Estimate, type EstimateLine, partStands, progressOf } from "../../core/plan/index.js";
import type { DateTold, JobTold, LooseTold, MoneyTold, PartTold } from "../../core/report/index.js";
import type { Three } from "../../core/terms/index.js";
import { readFirst } from "./first-estimate.js";
import { decisionOn, rechecksTold } from "./handover-after.js";
import { whereOf } from "./handover-faults.js";
import type { HandoverGround } from "./handover-ground.js";
import { jobSays } from "./job-words.js";
import { standsWords } from "./part-way.js";
import { last } from "./plan-input.js";
import { jobTitle, partTitle } from "./plan-words.js";
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
const parted = ([low, likely, high]: Three, by: number): Three => [
  Math.round(low / by),
  Math.round(likely / by),
  Math.round(high / by),
];

/** What a job comes to with tax, its share of what is opened for several included; undefined where it is in no sum. */
export function costOf({ plan, input }: Pick<HandoverGround, "plan" | "input">, id: string): Three | undefined {
  const estimate = plan?.estimate;
  if (!estimate) return undefined;
  const isOut = estimate.setAside.includes(id) || plan.setAside.includes(id);
  const own = estimate.lines.filter(
    (line) => line.kind !== "deposit" && line.kind !== "access" && (line.id === id || line.id.startsWith(`${id}/`)),
  );
  if (isOut || own.length === 0) return undefined;
  const chosen = new Set(plan.chosen);
  const shared = estimate.lines
    .filter(({ kind }) => kind === "access")
    .flatMap((line) => {
      const users = input.jobs.filter((job) => chosen.has(job.id) && job.access.includes(line.id));
      return users.some((job) => job.id === id) ? [parted(withTax(estimate, line), users.length)] : [];
    });
  return [...own.map((line) => withTax(estimate, line)), ...shared].reduce<Three>(plus, [0, 0, 0]);
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
    parts: partsTold(ground, id),
    why: due.why.map(whyText),
    ...(decision ? { decision } : {}),
    ...(given?.isDone && done !== undefined ? { doneOn: done } : {}),
  };
}

export const jobsTold = (ground: HandoverGround): readonly JobTold[] => ground.due.map((due) => jobTold(ground, due));

/** Undefined until the house has said its rates: no sum is made up. */
export function moneyTold({ plan, currency, input, said }: HandoverGround): MoneyTold | undefined {
  if (!currency) return undefined;
  const [given] = said.estimates;
  const first = readFirst(given?.value.estimate);
  const estimate = plan?.estimate;
  return {
    currency: currency.currency,
    minorDigits: currency.minorDigits,
    ...(estimate ? { total: threeOf(estimate.gross) } : {}),
    ...(input.budget === undefined ? {} : { budget: input.budget }),
    ...(plan ? { spent: plan.spent } : {}),
    missing: plan ? plan.setAside.length + plan.unpriced.length + (estimate?.setAside.length ?? 0) : 0,
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
