/**
 * What the parts come to: low, likely, high as plain sums (no cancelling claimed), carriage and deposits apart, and
 * which prices are old. Knows no shop and no tax.
 */
import type { Why } from "../../assess/contract.js";
import { type Problem, problem } from "../../terms/index.js";
import type { IsoDate, Three } from "../terms.js";
import { type Amounts, perColumn } from "./amounts.js";
import {
  checkedThree,
  daysBetween,
  figureProblems,
  isDay,
  type MaybeThree,
  MOST_MONEY,
  MOST_PIECES,
  onlyOnce,
} from "./checks.js";

/** A part to be bought, all money in minor units without tax. */
export interface PartLine {
  readonly id: string;
  readonly count: number;
  /** Each: low, likely, high. */
  readonly price?: MaybeThree;
  /** Each: paid with the part, given back when the old one returns. */
  readonly deposit?: number;
  /** For the whole line. */
  readonly carriage?: MaybeThree | number;
  readonly supplier?: string;
  /** When the price was asked for. */
  readonly pricedOn?: IsoDate;
}

export interface PartSum {
  readonly id: string;
  readonly kind: "part" | "carriage" | "deposit";
  readonly net: Amounts;
  readonly because: Why;
}

export interface Parts {
  readonly lines: readonly PartSum[];
  readonly setAside: readonly string[];
  readonly problems: readonly Problem[];
  /** Told and changing no sum: old, undated. */
  readonly remarks: readonly Problem[];
}

/** Sums of every sound line; a faulty one is set aside whole and told. */
export function partsOf(given: readonly PartLine[], asOf: IsoDate, staleAfterDays: number): Parts {
  const { rows, problems } = onlyOnce(given, "parts");
  const read = rows.map(({ row, path }) => ({ row, path, ...partSums(row, path) }));
  const sound = read.filter((one) => one.problems.length === 0);
  return {
    lines: sound.flatMap((one) => one.lines),
    setAside: read.filter((one) => one.problems.length > 0).map(({ row }) => row.id),
    problems: [...problems, ...read.flatMap((one) => one.problems)],
    remarks: sound.flatMap(({ row, path }) => ageRemark(row, `${path}.pricedOn`, asOf, staleAfterDays)),
  };
}

function partSums(row: PartLine, path: string): { lines: readonly PartSum[]; problems: readonly Problem[] } {
  const owner = (what: string) => ({ id: row.id, what, path: `${path}.${what}` });
  const price = checkedThree(row.price, MOST_MONEY, owner("price"));
  const carried = typeof row.carriage === "number" ? [row.carriage, row.carriage, row.carriage] : row.carriage;
  const carriage = carried === undefined ? undefined : checkedThree(carried, MOST_MONEY, owner("carriage"));
  const { count, deposit } = row;
  const problems = [
    ...figureProblems(count, MOST_PIECES, owner("count")),
    ...(count === 0 ? [problem("estimate.no-pieces", { path: `${path}.count` }, { id: row.id })] : []),
    ...(deposit === undefined ? [] : figureProblems(deposit, MOST_MONEY, owner("deposit"))),
    ...("problems" in price ? price.problems : []),
    ...(carriage !== undefined && "problems" in carriage ? carriage.problems : []),
  ];
  if (problems.length > 0 || !("three" in price)) return { lines: [], problems };
  const { three } = price;
  const each = { count, low: three[0], likely: three[1], high: three[2] };
  const source = row.supplier === undefined ? {} : { supplier: row.supplier };
  const dated = row.pricedOn === undefined ? {} : { pricedOn: row.pricedOn };
  const line = (kind: PartSum["kind"], of: Three, code: string, params: Why["params"]): PartSum => ({
    id: row.id,
    kind,
    net: spanned(of),
    because: { code, params },
  });
  const sum: Three = [count * three[0], count * three[1], count * three[2]];
  const carry = carriage !== undefined && "three" in carriage ? carriage.three : undefined;
  const back = count * (deposit ?? 0);
  return {
    problems,
    lines: [
      line("part", sum, "parts.count-at-price", { ...each, ...source, ...dated }),
      ...(carry === undefined
        ? []
        : [line("carriage", carry, "parts.carriage", { low: carry[0], likely: carry[1], high: carry[2], ...source })]),
      ...(deposit === undefined
        ? []
        : [line("deposit", [back, back, back], "parts.deposit-back", { count, deposit, ...source })]),
    ],
  };
}

/** A range in five columns. Beside a labour figure that is kept four times of five stands the dearest price. */
const spanned = ([low, likely, high]: Three): Amounts =>
  perColumn((column) => (column === "low" ? low : column === "likely" || column === "p50" ? likely : high));

function ageRemark(row: PartLine, path: string, asOf: IsoDate, most: number): readonly Problem[] {
  const told = (code: string, params: Problem["params"] = {}) => [problem(code, { path }, { id: row.id, ...params })];
  if (row.pricedOn === undefined) return told("estimate.price-undated");
  if (!isDay(row.pricedOn)) return told("estimate.price-date", { found: row.pricedOn });
  const days = daysBetween(row.pricedOn, asOf);
  if (days < 0) return told("estimate.price-ahead", { found: row.pricedOn, asOf });
  return days > most ? told("estimate.price-old", { found: row.pricedOn, days, most }) : [];
}
