/**
 * The estimate of a piece of work: labour, shared access once, parts, carriage, deposits, tax, and from to. What is
 * faulty is set aside by name and the rest still worked out. Knows no fault, no order of work and no clock.
 */
import type { Why } from "../../assess/contract.js";
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import type { IsoDate, Three } from "../terms.js";
import { type Amounts, addAmounts, COLUMNS, perColumn } from "./amounts.js";
import { checkedThree, figureProblems, isDay, type MaybeThree } from "./checks.js";
import { type CheckedTerms, checkedTerms, type HouseTerms } from "./house-terms.js";
import { type Labour, labourOf } from "./labour.js";
import { type PartLine, type PartSum, partsOf } from "./parts.js";
import { SPREAD_RULES, type SpreadRule } from "./spread.js";
import { taxOn } from "./tax.js";
import { type WorkGiven, worksOf } from "./works.js";

export interface EstimateInput extends WorkGiven {
  readonly terms: HouseTerms;
  /** The day the estimate is made. */
  readonly asOf: IsoDate;
  readonly parts: readonly PartLine[];
  /** Per cent of the usual hours this car asks for, all jobs alike: low, likely, high. */
  readonly condition?: MaybeThree;
  /** `pert` where nothing is said. */
  readonly spread?: SpreadRule;
  /** From how many days on a price is told to be old. */
  readonly staleAfterDays?: number;
}

/** One line with what it rests on. */
export interface EstimateLine {
  readonly id: string;
  readonly kind: "job" | "access" | "allowance" | "part" | "carriage" | "deposit";
  /** Rate of tax; none for a deposit. */
  readonly taxGroup?: string;
  readonly minutes?: Amounts;
  readonly net: Amounts;
  readonly because: Why;
}

/** Tax of one rate, column by column. */
export interface EstimateTax {
  readonly group: string;
  readonly name: string;
  readonly basisPoints: number;
  readonly net: Amounts;
  readonly tax: Amounts;
  readonly because: Why;
}

/** Money in minor units, labour in minutes. */
export interface Estimate {
  readonly asOf: IsoDate;
  readonly currency: string;
  readonly minorDigits: number;
  readonly lines: readonly EstimateLine[];
  readonly labour: Pick<Labour, "minutes" | "net" | "figures">;
  readonly parts: Amounts;
  readonly carriage: Amounts;
  /** Paid with the parts and given back when the old ones return; in neither `net` nor `gross`. */
  readonly deposits: number;
  readonly tax: readonly EstimateTax[];
  readonly net: Amounts;
  readonly gross: Amounts;
  /** What is laid out until the old parts are back: `gross` and the deposits. */
  readonly outlay: Amounts;
  /** Jobs, states and parts that no sum here holds. While there is one, every total is too low. */
  readonly setAside: readonly string[];
  readonly problems: readonly Problem[];
  /** Told and changing no sum: prices that are old or have no date. */
  readonly remarks: readonly Problem[];
}

/** As usual: the same hours as on any car. */
const USUAL: Three = [100, 100, 100];
/** A car that takes twenty times the usual hours is another piece of work. */
const MOST_PER_CENT = 2000;
/** Common practice, no source: a supplier's price is asked for again after a month. */
const STALE_AFTER_DAYS = 30;
/** Far beyond any car, and far within what whole numbers hold exactly, tax and all. */
const MOST_TOTAL = 1e14;

/** The estimate; or, where nothing can be worked out at all (terms, day, condition), why. */
export function estimate(input: EstimateInput): Result<Estimate> {
  const terms = checkedTerms(input.terms);
  const condition = checkedThree(input.condition ?? USUAL, MOST_PER_CENT, {
    id: "condition",
    what: "per cent of the usual hours",
    path: "condition",
  });
  const stale = input.staleAfterDays ?? STALE_AFTER_DAYS;
  const rule = input.spread ?? "pert";
  const problems = [
    ...(terms.ok ? [] : terms.problems),
    ...("problems" in condition ? condition.problems : []),
    ...(isDay(input.asOf) ? [] : [problem("estimate.day", { path: "asOf" }, { found: input.asOf })]),
    ...(SPREAD_RULES.includes(rule)
      ? []
      : [problem("estimate.spread", { path: "spread" }, { found: rule, expected: SPREAD_RULES })]),
    ...figureProblems(stale, MOST_PER_CENT, { id: "prices", what: "days", path: "staleAfterDays" }),
  ];
  if (!terms.ok || "problems" in condition || problems.length > 0) return fail(...problems);
  const works = worksOf(input, terms.value);
  const parts = partsOf(input.parts, input.asOf, stale);
  const labour = labourOf(works.works, { rule, factor: condition.three });
  const { labourGroup, partsGroup } = terms.value.tax;
  const lines: readonly EstimateLine[] = [
    ...labour.lines.map((line) => ({ ...line, taxGroup: labourGroup })),
    ...parts.lines.map((line) => (line.kind === "deposit" ? line : { ...line, taxGroup: partsGroup })),
  ];
  const most = lines.reduce((sum, { net }) => sum + net.high, 0);
  if (most > MOST_TOTAL) return fail(problem("estimate.beyond", { path: "" }, { found: most, most: MOST_TOTAL }));
  return ok({
    asOf: input.asOf,
    currency: terms.value.currency,
    minorDigits: terms.value.minorDigits,
    lines,
    labour: { minutes: labour.minutes, net: labour.net, figures: labour.figures },
    ...sumsOf(lines, parts.lines, terms.value),
    setAside: [...works.setAside, ...parts.setAside],
    problems: [...works.problems, ...parts.problems],
    remarks: parts.remarks,
  });
}

function sumsOf(lines: readonly EstimateLine[], parts: readonly PartSum[], terms: CheckedTerms) {
  const kind = (of: PartSum["kind"]) => addAmounts(parts.filter((line) => line.kind === of).map(({ net }) => net));
  const deposits = kind("deposit").likely;
  const charged = lines.filter(({ kind: of }) => of !== "deposit");
  const net = addAmounts(charged.map((line) => line.net));
  const tax = taxed(charged, terms);
  const gross = addAmounts([net, ...tax.map((group) => group.tax)]);
  return {
    parts: kind("part"),
    carriage: kind("carriage"),
    deposits,
    tax,
    net,
    gross,
    outlay: perColumn((column) => gross[column] + deposits),
  };
}

/** Tax of every column worked out as if that column were the invoice. */
function taxed(lines: readonly EstimateLine[], { tax, minorDigits }: CheckedTerms): readonly EstimateTax[] {
  const columns = new Map(
    COLUMNS.map((column) => {
      const nets = lines.map(({ taxGroup, net }) => ({ group: taxGroup ?? tax.partsGroup, net: net[column] }));
      return [column, taxOn(nets, tax, minorDigits)] as const;
    }),
  );
  const used = new Set(lines.map(({ taxGroup }) => taxGroup));
  return tax.groups
    .filter(({ id }) => used.has(id))
    .map(({ id, name, basisPoints }) => {
      const of = (figure: "net" | "tax") =>
        perColumn((column) => columns.get(column)?.find(({ group }) => group === id)?.[figure] ?? 0);
      const because: Why = {
        code: `tax.${tax.level}`,
        params: { basisPoints, rounding: tax.rounding, digits: tax.digits ?? minorDigits, profile: tax.label },
      };
      return { group: id, name, basisPoints, net: of("net"), tax: of("tax"), because };
    });
}
