/** What a workshop charges by: currency, rates, tax. Checked once, before any sum. Knows no job and no country's law. */
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import { isCurrencyCode, minorDigitsOf, ROUNDINGS, type Rounding } from "../../units/index.js";
import { figureProblems, MOST_MONEY, onlyOnce } from "./checks.js";

/** An hour's labour. */
export interface LabourRate {
  readonly id: string;
  readonly name: string;
  /** Minor units an hour, without tax. */
  readonly perHour: number;
}

/** A rate of tax. */
export interface TaxGroup {
  readonly id: string;
  readonly name: string;
  /** Hundredths of a per cent: 19 % is 1900. */
  readonly basisPoints: number;
}

/** Where the tax is rounded: on every line, on the sum of every rate, or once on the whole. */
export const TAX_LEVELS = ["line", "group", "invoice"] as const;
export type TaxLevel = (typeof TAX_LEVELS)[number];

/** How a country, or the house's bookkeeper, has tax worked out. Nothing here is known of itself: the house says it. */
export interface TaxProfile {
  /** Whose: a country, or a bookkeeper's name for it. */
  readonly label: string;
  readonly groups: readonly TaxGroup[];
  readonly labourGroup: string;
  readonly partsGroup: string;
  readonly rounding: Rounding;
  readonly level: TaxLevel;
  /** Digits behind the point that tax is rounded to at that level; the currency's where nothing is said. */
  readonly digits?: number;
}

export interface HouseTerms {
  /** ISO 4217. */
  readonly currency: string;
  /** Digits behind the point, where the currency is none of the common ones. */
  readonly digits?: number;
  /** The first is charged where a job names none. */
  readonly labourRates: readonly LabourRate[];
  readonly tax: TaxProfile;
}

/** Terms that sums may rest on. */
export interface CheckedTerms {
  readonly currency: string;
  readonly minorDigits: number;
  readonly rates: ReadonlyMap<string, LabourRate>;
  readonly firstRate: LabourRate;
  readonly tax: TaxProfile;
}

/** No rate of tax is more than a thousand per cent; no currency has more than four digits behind the point. */
const MOST_BASIS_POINTS = 100_000;
const MOST_DIGITS = 4;
/** Finer than this below the smallest coin no rule asks for. */
const FINER = 2;
/** The dearest hour, in minor units. */
const MOST_AN_HOUR = MOST_MONEY / 1000;

/** Terms whose every figure is sound, or all that is wrong with them. */
export function checkedTerms(terms: HouseTerms): Result<CheckedTerms> {
  const digits = currencyDigits(terms);
  const rates = onlyOnce(terms.labourRates, "labourRates");
  const [firstRate] = terms.labourRates;
  const problems = [
    ...(typeof digits === "number" ? taxProblems(terms.tax, digits) : [digits]),
    ...rates.problems,
    ...rates.rows.flatMap(({ row, path }) =>
      figureProblems(row.perHour, MOST_AN_HOUR, { id: row.name, what: "rate an hour", path: `${path}.perHour` }),
    ),
  ];
  if (firstRate === undefined || typeof digits !== "number")
    return fail(...problems, ...(firstRate === undefined ? [problem("terms.no-rate", { path: "labourRates" })] : []));
  if (problems.length > 0) return fail(...problems);
  return ok({
    currency: terms.currency,
    minorDigits: digits,
    rates: new Map(rates.rows.map(({ row }) => [row.id, row])),
    firstRate,
    tax: terms.tax,
  });
}

function currencyDigits({ currency, digits: given }: HouseTerms): number | Problem {
  if (!isCurrencyCode(currency)) return problem("terms.currency", { path: "currency" }, { found: currency });
  const known = minorDigitsOf(currency);
  if (known === undefined && given === undefined)
    return problem("terms.minor-digits-missing", { path: "digits" }, { currency });
  const digits = known ?? given ?? 0;
  if (!isDigits(digits, MOST_DIGITS) || (given !== undefined && given !== digits))
    return problem("terms.minor-digits", { path: "digits" }, { currency, found: `${given}`, digits });
  return digits;
}

function taxProblems(tax: TaxProfile, minorDigits: number): readonly Problem[] {
  const groups = onlyOnce(tax.groups, "tax.groups");
  const known = tax.groups.map(({ id }) => id);
  const unknown = (["labourGroup", "partsGroup"] as const).filter((use) => !known.includes(tax[use]));
  const word = (name: "rounding" | "level", words: readonly string[]) =>
    words.includes(tax[name])
      ? []
      : [problem(`terms.${name}`, { path: `tax.${name}` }, { found: tax[name], expected: words })];
  return [
    ...groups.problems,
    ...groups.rows.flatMap(({ row, path }) =>
      figureProblems(row.basisPoints, MOST_BASIS_POINTS, {
        id: row.name,
        what: "rate of tax in hundredths of a per cent",
        path: `${path}.basisPoints`,
      }),
    ),
    ...unknown.map((use) => problem("terms.tax-group", { path: `tax.${use}` }, { found: tax[use], expected: known })),
    ...word("rounding", ROUNDINGS),
    ...word("level", TAX_LEVELS),
    ...(tax.digits === undefined || isDigits(tax.digits, minorDigits + FINER)
      ? []
      : [problem("terms.digits", { path: "tax.digits" }, { found: tax.digits, most: minorDigits + FINER })]),
  ];
}

const isDigits = (digits: number, most: number): boolean => Number.isInteger(digits) && digits >= 0 && digits <= most;
