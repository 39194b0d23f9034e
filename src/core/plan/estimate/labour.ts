/**
 * Minutes and money of the work: low, likely, high; as likely over as under; kept four times of five. Money is worked
 * out exactly and rounded once; the lines are shares of it that add up. Knows no part and no tax.
 */
import type { Why } from "../../assess/contract.js";
import type { Three } from "../terms.js";
import { type Amounts, type Column, perColumn } from "./amounts.js";
import { added, allot, type Ratio, ratio, wholeOf } from "./exact.js";
import type { LabourRate } from "./house-terms.js";
import {
  dividedBy,
  figuresOf,
  type Spread,
  type SpreadFigures,
  type SpreadRule,
  spreadOf,
  timesShared,
  together,
} from "./spread.js";

/** A job's own work, or getting to what several jobs share. */
export interface Work {
  readonly id: string;
  readonly kind: "job" | "access";
  readonly minutes: Three;
  readonly rate: LabourRate;
}

/** How the work varies. */
export interface Condition {
  readonly rule: SpreadRule;
  /** Per cent of the usual hours that a car in this state takes, all of them alike: `[100, 120, 180]`. */
  readonly factor: Three;
}

export interface LabourLine {
  readonly id: string;
  readonly kind: "job" | "access" | "allowance";
  readonly minutes: Amounts;
  readonly net: Amounts;
  readonly because: Why;
}

export interface Labour {
  readonly minutes: Amounts;
  readonly net: Amounts;
  readonly lines: readonly LabourLine[];
  /** Of the minutes, unrounded. */
  readonly figures: SpreadFigures;
}

const AN_HOUR = 60n;
const PER_CENT = 100n;
/** The line that carries what four times of five asks above the middle. */
export const ALLOWANCE = "allowance";

/** Labour of all work. The allowance between P50 and P80 is a line of its own: it belongs to no single job. */
export function labourOf(given: readonly Work[], condition: Condition): Labour {
  // equal remainders go by name, not by place: which line carries the last coin must not hang on the order given
  const works = [...given].sort(byName);
  const minutes = sumsOf(works, condition, () => 1n, 1n);
  const net = sumsOf(works, condition, ({ rate }) => BigInt(rate.perHour), AN_HOUR);
  const { rule, factor } = condition;
  const over = (amounts: Amounts) => perColumn((column) => (column === "p80" ? amounts.p80 - amounts.p50 : 0));
  const allowance: LabourLine = {
    id: ALLOWANCE,
    kind: "allowance",
    minutes: over(minutes.totals),
    net: over(net.totals),
    because: {
      code: "labour.allowance",
      params: { rule, mean: minutes.figures.mean, sd: minutes.figures.sd, factor: factor.join(", ") },
    },
  };
  const lines = works.map((work, i): LabourLine => {
    const line = (shares: ShareOf) => perColumn((column) => shares(column)[i] ?? 0);
    return {
      id: work.id,
      kind: work.kind,
      minutes: line(minutes.shares),
      net: line(net.shares),
      because: {
        code: work.kind === "job" ? "labour.own" : "labour.shared-once",
        params: {
          low: work.minutes[0],
          likely: work.minutes[1],
          high: work.minutes[2],
          factor: factor.join(", "),
          rate: work.rate.name,
          perHour: work.rate.perHour,
        },
      },
    };
  });
  return {
    minutes: minutes.totals,
    net: net.totals,
    lines: given.length === 0 ? [] : [...given.flatMap((work) => lines[works.indexOf(work)] ?? []), allowance],
    figures: minutes.figures,
  };
}

const nameOf = ({ kind, id }: Work): string => `${kind} ${id}`;
const byName = (a: Work, b: Work): number => (nameOf(a) < nameOf(b) ? -1 : nameOf(a) > nameOf(b) ? 1 : 0);

type ShareOf = (column: Column) => readonly number[];

/** Totals of one unit (minutes, or money) and the shares of every work in them. */
function sumsOf(
  works: readonly Work[],
  { rule, factor }: Condition,
  weight: (work: Work) => bigint,
  per: bigint,
): { readonly totals: Amounts; readonly shares: ShareOf; readonly figures: SpreadFigures } {
  const shared = dividedBy(spreadOf(factor, rule), PER_CENT);
  const inUnit = (spread: Spread) => dividedBy(timesShared(spread, shared), per);
  const spreads = works.map((work) => spreadOf(work.minutes, rule, weight(work)));
  const figures = figuresOf(inUnit(together(spreads)));
  const point = (at: 0 | 1 | 2) =>
    works.map((work) => ratio(weight(work) * BigInt(work.minutes[at]) * BigInt(factor[at]), per * PER_CENT));
  const middle = spreads.map((spread) => inUnit(spread).mean);
  const exact: Readonly<Record<Column, readonly Ratio[]>> = {
    low: point(0),
    likely: point(1),
    p50: middle,
    p80: middle,
    high: point(2),
  };
  const whole = (column: Column) => wholeOf(added(exact[column]));
  const [p50, high] = [whole("p50"), whole("high")];
  // the root has a rounding of its own: it may not push the figure past its neighbours
  const p80 = Math.min(high, Math.max(p50, Math.round(figures.p80)));
  const totals: Amounts = { low: whole("low"), likely: whole("likely"), p50, p80, high };
  const shares = perShare((column) => allot(column === "p80" ? p50 : totals[column], exact[column]));
  return { totals, shares, figures };
}

/** Each column's shares worked out once. */
function perShare(of: (column: Column) => readonly number[]): ShareOf {
  const known = new Map<Column, readonly number[]>();
  return (column) => {
    const shares = known.get(column) ?? of(column);
    known.set(column, shares);
    return shares;
  };
}
