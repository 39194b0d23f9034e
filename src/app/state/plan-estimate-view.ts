/**
 * The estimate as its screen shows it: every line with what it rests on, sums, what is in none of them, prices to ask
 * again. Pure; every sum comes from core/plan.
 */
import type { Estimate, EstimateLine, EstimateTax, WorkInput, WorkPlan } from "../../core/plan/index.js";
import type { HouseState, PlanState } from "../../core/record/index.js";
import type { Problem } from "../../core/terms/index.js";
import type { Rounding } from "../../core/units/index.js";
import { plainDay } from "../texts/days.js";
import { rounded } from "../texts/index.js";
import { t } from "../texts/plan-estimate.js";
import type { Telling } from "./because.js";
import { type Currency, moneyText } from "./money-words.js";
import { last } from "./plan-input.js";
import { jobTitle, minutesText, partOf, partTitle, planName, planProblem } from "./plan-words.js";

/** What the view is made from. */
export interface Estimating {
  readonly telling: Telling;
  readonly said: PlanState;
  readonly input: WorkInput;
  readonly plan: WorkPlan | undefined;
  readonly suppliers?: ReadonlyMap<string, string>;
}

/** Whether an id of a plan names a part of a job. */
const isPartId = (id: string): boolean => id.includes("/");

/** One line; what it rests on is shown when it is pressed. */
export interface EstimateRow {
  readonly id: string;
  readonly title: string;
  readonly second?: string;
  readonly figure: string;
  readonly because: readonly string[];
}

export interface EstimateGroup {
  readonly id: string;
  readonly heading: string;
  readonly says?: string;
  readonly rows: readonly EstimateRow[];
}

const KINDS = [
  { kind: "job", heading: "estimate.jobs" },
  { kind: "access", heading: "estimate.openings", says: "estimate.openings.says" },
  { kind: "part", heading: "estimate.parts" },
  { kind: "carriage", heading: "estimate.carriage" },
  { kind: "deposit", heading: "estimate.deposits", says: "estimate.deposits.says" },
] as const;

/** Lines by what they are for; a group without a line is left out. */
export function estimateGroups(of: Estimating, currency: Currency): readonly EstimateGroup[] {
  const lines = of.plan?.estimate?.lines ?? [];
  return KINDS.flatMap(({ kind, heading, ...more }) => {
    const rows = lines.filter((line) => line.kind === kind).map((line) => rowOf(of, line, currency));
    const says = "says" in more ? { says: t(more.says) } : {};
    return rows.length === 0 ? [] : [{ id: kind, heading: t(heading), ...says, rows }];
  });
}

function rowOf({ telling, said, suppliers }: Estimating, line: EstimateLine, currency: Currency): EstimateRow {
  const write = (minor: number): string => moneyText(minor, currency);
  const { low, likely, high } = line.net;
  const range =
    low === high
      ? t("estimate.fixed", { likely: write(likely) })
      : t("estimate.range", { low: write(low), likely: write(likely), high: write(high) });
  const isPart = isPartId(line.id);
  return {
    id: `${line.kind} ${line.id}`,
    title: isPart ? partTitle(telling, said, line.id) : planName(telling, said, line.id),
    ...(isPart ? { second: jobTitle(telling, partOf(line.id).job) } : {}),
    figure: write(likely),
    because: [...restsOn(line, write, suppliers), range],
  };
}

type Params = Problem["params"];
const numberIn = (params: Params, name: string): number => Number(params[name] ?? 0);
const textIn = (params: Params, name: string): string => String(params[name] ?? "");
/** As usual: the same hours as on any car. */
const USUAL = "100, 100, 100";

/** What one line rests on, in words. */
function restsOn(
  { because: { code, params }, kind }: EstimateLine,
  write: (minor: number) => string,
  suppliers: ReadonlyMap<string, string> | undefined,
): readonly string[] {
  const three = (as: (figure: number) => string) => ({
    low: as(numberIn(params, "low")),
    likely: as(numberIn(params, "likely")),
    high: as(numberIn(params, "high")),
  });
  const supplier = textIn(params, "supplier");
  const source = [
    ...(supplier === "" ? [] : [t("estimate.why.supplier", { supplier: suppliers?.get(supplier) ?? supplier })]),
    ...(params["pricedOn"] === undefined
      ? []
      : [t("estimate.why.priced", { day: dayText(textIn(params, "pricedOn")) })]),
  ];
  const count = numberIn(params, "count");
  if (code === "parts.count-at-price") {
    const each = three(write);
    const isRange = each.low !== each.high;
    return [
      isRange ? t("estimate.why.part.range", { count, ...each }) : t("estimate.why.part", { count, ...each }),
      ...source,
    ];
  }
  if (code === "parts.carriage") return [t("estimate.why.carriage"), ...source];
  if (code === "parts.deposit-back")
    return [t("estimate.why.deposit", { count, deposit: write(numberIn(params, "deposit")) }), ...source];
  const minutes = three(minutesText);
  const charged = {
    time: minutes.low === minutes.high ? minutes.likely : t("estimate.why.time", minutes),
    rate: textIn(params, "rate"),
    hour: write(numberIn(params, "perHour")),
  };
  const factor = textIn(params, "factor");
  return [
    kind === "access" ? t("estimate.why.shared", charged) : t("estimate.why.own", charged),
    ...(factor === USUAL || factor === "" ? [] : [t("estimate.why.condition", { factor })]),
  ];
}

const dayText = (date: string): string => (Number.isNaN(Date.parse(date)) ? date : plainDay(date));

/** The sums, each with how it came about. Of what is likely and what is kept: P50 and P80, no other. */
export function sumRows(estimate: Estimate, currency: Currency): readonly EstimateRow[] {
  const write = (minor: number): string => moneyText(minor, currency);
  const row = (id: string, title: string, minor: number, because: readonly string[] = []): EstimateRow => ({
    id,
    title,
    figure: write(minor),
    because,
  });
  const { net, gross, tax, deposits, outlay } = estimate;
  return [
    row("net", t("estimate.net"), net.likely),
    ...tax.map((one) => row(`tax ${one.group}`, taxTitle(one), one.tax.likely, taxBecause(one, write))),
    row("gross", t("estimate.gross"), gross.likely, [t("estimate.why.likely")]),
    row("p50", t("estimate.p50"), gross.p50, [t("estimate.why.p50")]),
    row("p80", t("estimate.p80"), gross.p80, [t("estimate.why.p80")]),
    ...(deposits > 0 ? [row("outlay", t("estimate.outlay"), outlay.likely)] : []),
  ];
}

const PER_CENT = 100;
const taxTitle = ({ name, basisPoints }: EstimateTax): string =>
  t("estimate.tax", { name, percent: rounded(basisPoints / PER_CENT, 2) });

type Level = `estimate.level.${"line" | "group" | "invoice"}`;
const LEVELS: ReadonlyMap<string, Level> = new Map([
  ["tax.line", "estimate.level.line"],
  ["tax.group", "estimate.level.group"],
  ["tax.invoice", "estimate.level.invoice"],
]);
type Rounded = `estimate.rounding.${Rounding}`;
const ROUNDED: ReadonlyMap<string, Rounded> = new Map([
  ["half-up", "estimate.rounding.half-up"],
  ["half-even", "estimate.rounding.half-even"],
  ["down", "estimate.rounding.down"],
  ["up", "estimate.rounding.up"],
]);

function taxBecause(
  { net, because: { code, params } }: EstimateTax,
  write: (minor: number) => string,
): readonly string[] {
  const level = LEVELS.get(code);
  const rounding = ROUNDED.get(textIn(params, "rounding"));
  if (!level || !rounding) return [];
  const told = { net: write(net.likely), level: t(level), rounding: t(rounding), profile: textIn(params, "profile") };
  return [t("estimate.why.tax", told)];
}

/** Something no sum holds, and what it wants. */
export interface AsideLine {
  readonly id: string;
  /** The job that lacks it; absent for an opening. */
  readonly job?: string;
  readonly title: string;
  readonly wants: string;
}

/** The job an id of a job or of its part belongs to. */
function jobIn({ jobs }: WorkInput, id: string): { readonly job?: string } {
  const job = isPartId(id) ? partOf(id).job : id;
  return jobs.some((one) => one.id === job) ? { job } : {};
}

/** All that the sums lack: while there is one, they are too low. */
export function asideLines({ telling, said, input, plan }: Estimating): readonly AsideLine[] {
  if (!plan) return [];
  const chosen = new Set(plan.chosen);
  const unpriced = input.jobs
    .filter(({ id }) => chosen.has(id))
    .map(({ id, parts }) => ({ id, parts: parts.filter(({ price }) => price === undefined) }))
    .filter(({ parts }) => parts.length > 0);
  const untimed = new Set(input.jobs.filter(({ minutes }) => minutes === undefined).map(({ id }) => id));
  const wants = (id: string): string => (untimed.has(id) ? t("estimate.aside.minutes") : t("estimate.aside.faulty"));
  const faulty = [...new Set([...plan.setAside, ...(plan.estimate?.setAside ?? [])])];
  return [
    ...faulty.map((id) => ({ id, ...jobIn(input, id), title: planName(telling, said, id), wants: wants(id) })),
    ...unpriced.map(({ id, parts }) => {
      const names = parts.map((part) => partTitle(telling, said, `${id}/${part.id}`));
      const wanted = t("estimate.aside.price", { parts: names.join(", ") });
      return { id: `price ${id}`, job: id, title: jobTitle(telling, id), wants: wanted };
    }),
  ];
}

/** Prices that are old, of no day, or of a day to come. */
export function oldPrices({ telling, said, input, plan }: Estimating): readonly AsideLine[] {
  return (plan?.estimate?.remarks ?? []).map((remark) => {
    const id = textIn(remark.params, "id");
    return { id, ...jobIn(input, id), title: planName(telling, said, id), wants: ageText(telling, said, remark) };
  });
}

function ageText(telling: Telling, said: PlanState, remark: Problem): string {
  const found = dayText(textIn(remark.params, "found"));
  if (remark.code === "estimate.price-old")
    return t("estimate.old.days", { day: found, n: numberIn(remark.params, "days") });
  if (remark.code === "estimate.price-undated") return t("estimate.old.undated");
  if (remark.code === "estimate.price-date") return t("estimate.old.no-day");
  return remark.code === "estimate.price-ahead"
    ? t("estimate.old.ahead", { day: found })
    : planProblem(telling, said, remark);
}

/** Jobs nobody gave hours are told by name already; no need to say it twice. */
const TOLD_ELSEWHERE: ReadonlySet<string> = new Set(["access.no-minutes"]);
const OURS = /^(access|estimate|terms)\./;

/** What of the figures has to be put right, each with what to do. */
export function estimateProblems({ telling, said, plan }: Estimating): readonly string[] {
  const own = (plan?.problems ?? []).filter(({ code }) => OURS.test(code) && !TOLD_ELSEWHERE.has(code));
  return [...new Set(own.map((one) => planProblem(telling, said, one)))];
}

/** Names of the house's suppliers by id. */
export const supplierNames = (house: HouseState | undefined): ReadonlyMap<string, string> =>
  new Map(
    [...(house?.suppliers ?? [])].flatMap(([id, standing]) => {
      const name = last(standing)?.name;
      return name === undefined ? [] : [[id, name] as const];
    }),
  );
