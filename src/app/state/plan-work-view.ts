/**
 * The work list with its plan as the screen shows it: lines with hours and cost, how far the money reaches, what is
 * opened together, what would pay while it is apart. Pure; every sum comes from core/plan.
 */
import type { JobDue } from "../../core/assess/contract.js";
import type { Bundle, BundleJob, Estimate, JobInPlan, Three, Why, WorkInput, WorkPlan } from "../../core/plan/index.js";
import type { PlanState } from "../../core/record/index.js";
import type { RangeInput } from "../../core/report/index.js";
import { t } from "../texts/plan-work.js";
import type { Telling } from "./because.js";
import { type Currency, moneyText, roundMoneyText } from "./money-words.js";
import { idParts, jobTitle, minutesText, openingTitle, planName, spanText } from "./plan-words.js";
import { to } from "./routes.js";
import { type JobLine, workLines } from "./work-view.js";

/** One job's line in the plan. */
export interface PlanLine extends JobLine {
  readonly cost?: string;
  /** What it adds to the rest, where that is not simply its own time. */
  readonly apart?: string;
}

export interface PlannedList {
  /** What the money reaches, or everything there is no budget for. */
  readonly lit: readonly PlanLine[];
  readonly shade: readonly PlanLine[];
  /** The owner said no: on the list, and in no sum. */
  readonly declined: readonly PlanLine[];
  readonly done: readonly PlanLine[];
}

/** The list in urgency order, parted where the plan leaves jobs for later. */
export function plannedList(
  telling: Telling,
  jobs: readonly JobDue[],
  plan: WorkPlan | undefined,
  currency: Currency | undefined,
  input: Pick<WorkInput, "jobs">,
): PlannedList {
  const given = new Map(input.jobs.map((job) => [job.id, job]));
  const lines = workLines(telling, jobs).map((line) => planLine(line, plan, currency, given.get(line.id)?.minutes));
  const chosen = plan && new Set(plan.chosen);
  const isDone = ({ id }: JobLine): boolean => given.get(id)?.isDone === true;
  const isLeft = ({ id }: JobLine): boolean => chosen !== undefined && !chosen.has(id) && !plan?.setAside.includes(id);
  const isDeclined = ({ id }: JobLine): boolean => given.get(id)?.declined === true;
  const toDo = lines.filter((line) => !isDone(line) && !isDeclined(line));
  return {
    lit: toDo.filter((line) => !isLeft(line)),
    shade: toDo.filter(isLeft),
    declined: lines.filter((line) => !isDone(line) && isDeclined(line)),
    done: lines.filter(isDone),
  };
}

/** Minutes said by hand stand over the sheet's. */
function planLine(
  line: JobLine,
  plan: WorkPlan | undefined,
  currency: Currency | undefined,
  minutes: Three | undefined,
): PlanLine {
  const cost = plan?.estimate && currency ? costOf(plan.estimate, line.id) : undefined;
  const apart = apartOf(plan?.jobs.find(({ id }) => id === line.id));
  return {
    ...line,
    ...(minutes === undefined ? {} : { hours: spanText(minutes) }),
    ...(cost === undefined || !currency ? {} : { cost: roundMoneyText(cost, currency) }),
    ...(apart === undefined ? {} : { apart }),
  };
}

/** Likely labour and parts of one job, without what it shares and without tax; undefined where it is in no sum. */
function costOf({ lines }: Estimate, id: string): number | undefined {
  const own = lines.filter((line) => line.kind !== "deposit" && (line.id === id || line.id.startsWith(`${id}/`)));
  return own.length === 0 ? undefined : own.reduce((sum, { net }) => sum + net.likely, 0);
}

function apartOf(job: JobInPlan | undefined): string | undefined {
  if (!job || job.added[1] === job.standAlone[1]) return undefined;
  return t("plan.added", { added: minutesText(job.added[1]), alone: minutesText(job.standAlone[1]) });
}

/** Why each job stands where it does in the order of doing, in words, by job. */
export function doingReasons(
  telling: Telling,
  parts: Pick<PlanState, "parts">,
  plan: WorkPlan | undefined,
): ReadonlyMap<string, string> {
  const name = (value: unknown): string => planName(telling, parts, String(value));
  const told = ({ code, params }: Why): string => {
    if (code === "doing.last") return t("plan.doing.last");
    if (code === "doing.after") return t("plan.doing.after", { first: name(params["first"]) });
    return t("plan.doing.once", { jobs: Number(params["jobs"]) });
  };
  // What is done together because the same is open stands in one bracket: that needs no words.
  const said = (why: readonly Why[]): string =>
    why
      .filter(({ code }) => code !== "doing.with")
      .map(told)
      .join(". ");
  return new Map((plan?.doing.steps ?? []).map(({ job, why }) => [job, said(why)]));
}

/** A bundle or a job in it, ready to be drawn. */
export type DrawnPart =
  | { readonly kind: "job"; readonly line: PlanLine }
  | {
      readonly kind: "bundle";
      readonly id: string;
      readonly title: string;
      readonly aside: string;
      readonly shared: string;
      readonly parts: readonly DrawnPart[];
    };

/** What is opened together, in the order it is done. */
export function drawnBundles(
  telling: Telling,
  parts: readonly (Bundle | BundleJob)[],
  lines: ReadonlyMap<string, PlanLine>,
): readonly DrawnPart[] {
  return parts.flatMap((part): readonly DrawnPart[] => {
    if (part.kind === "job") {
      const line = lines.get(part.job);
      return line ? [{ kind: "job", line }] : [];
    }
    const shared = part.states.reduce((sum, { minutes }) => sum + minutes[1], 0);
    return [
      {
        kind: "bundle",
        id: part.states.map(({ state }) => state).join(" "),
        title: part.states.map(({ state }) => openingTitle(telling, state)).join(", "),
        aside: spanText(part.minutes),
        shared: t("plan.shared", { minutes: minutesText(shared) }),
        parts: drawnBundles(telling, part.parts, lines),
      },
    ];
  });
}

/** How many things no sum of money holds: jobs without hours, parts without a price, what the estimate set aside. */
const missingIn = ({ setAside, unpriced, estimate }: WorkPlan): number =>
  setAside.length + unpriced.length + (estimate?.setAside.length ?? 0);

/** The ruler of money with tax, with what is said about it. */
export interface MoneyRange {
  readonly range: RangeInput;
  readonly label: string;
  readonly verdict: { readonly title: string; readonly says?: string };
}

/** What all that is planned comes to; undefined until the house has said its rates. */
export function moneyRange(
  plan: WorkPlan | undefined,
  budget: number | undefined,
  currency: Currency | undefined,
): MoneyRange | undefined {
  if (!plan?.estimate || !currency) return undefined;
  const { gross } = plan.estimate;
  const write = (minor: number): string => roundMoneyText(minor, currency);
  const at = (minor: number) => ({ at: minor / 10 ** currency.minorDigits, text: write(minor) });
  const missing = missingIn(plan);
  const says = [
    ...(budget !== undefined && gross.high > budget
      ? [t("plan.range.over", { over: write(gross.high - budget) })]
      : []),
    ...(missing > 0 ? [t("plan.range.too-low", { n: missing })] : []),
  ].join(" ");
  const [likely, low, high] = [write(gross.likely), write(gross.low), write(gross.high)];
  return {
    range: {
      low: at(gross.low),
      likely: at(gross.likely),
      high: at(gross.high),
      p80: { ...at(gross.p80), text: `${t("plan.p80")} ${write(gross.p80)}` },
      ...(budget === undefined ? {} : { budget: { ...at(budget), text: `${t("plan.budget")} ${write(budget)}` } }),
    },
    label:
      budget === undefined
        ? t("plan.range.label", { likely, low, high })
        : t("plan.range.label.budget", { likely, low, high, budget: write(budget) }),
    verdict: { title: t("plan.range.title", { p80: write(gross.p80) }), ...(says === "" ? {} : { says }) },
  };
}

/** Where the light ends, in words. */
export interface Reach {
  readonly words: string;
  readonly aside?: string;
  readonly over?: true;
  readonly says?: string;
}

/** By how much what is done and what can't wait exceed the budget together; 0 where they don't. */
export const overBudget = ({ choice, spent }: WorkPlan, budget: number): number =>
  (choice?.overBy ?? 0) + Math.max(0, spent - budget);

/** How far the budget reaches; undefined without one. Nothing is called left over while something is in no sum. */
export function reachOf(
  plan: WorkPlan | undefined,
  budget: number | undefined,
  currency: Currency | undefined,
): Reach | undefined {
  const choice = plan?.choice;
  if (!choice || budget === undefined || !currency) return undefined;
  const words = t("plan.reach", { budget: moneyText(budget, currency) });
  const says = choice.proven ? {} : { says: t("plan.reach.best") };
  const over = overBudget(plan, budget);
  if (over > 0)
    return {
      words,
      aside: t("plan.reach.over", { over: moneyText(over, currency) }),
      over: true,
      says: t("plan.reach.over.says"),
    };
  const left = budget - plan.spent - (plan.estimate?.gross.likely ?? choice.cost);
  return left >= 0 && missingIn(plan) === 0
    ? { words, aside: t("plan.reach.left", { left: moneyText(left, currency) }), ...says }
    : { words, ...says };
}

/** A job left for later that would pay while it is apart. */
export interface OfferLine {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly href: string;
}

export function offerLines(telling: Telling, plan: WorkPlan | undefined, currency: Currency | undefined) {
  return (plan?.offers ?? [])
    .filter(({ suggest }) => suggest)
    .map(({ job, minutesSaved, moneySaved, moneyThrownAway }): OfferLine => {
      const minutes = minutesText(minutesSaved);
      const saves =
        moneySaved === undefined || !currency
          ? t("plan.offer.saves-time", { minutes })
          : t("plan.offer.saves", { minutes, money: moneyText(moneySaved, currency) });
      const against =
        moneyThrownAway === undefined || moneyThrownAway === 0 || !currency
          ? ""
          : `, ${t("plan.offer.against", { money: moneyText(moneyThrownAway, currency) })}`;
      const { what, place } = idParts(job);
      const href = to("job", { visit: telling.visit, job: what, place });
      return { id: job, title: jobTitle(telling, job), says: `${saves}${against}.`, href };
    });
}
