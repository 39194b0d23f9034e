/** Rates and tax of a house while they are typed, and what they become once nothing is wanting. Pure. */
import { type HouseTerms, ROUNDINGS, TAX_LEVELS } from "../../core/record/index.js";
import { isCurrencyCode, minorDigitsOf } from "../../core/units/index.js";
import { scaled, unscaled, wholeOf } from "./house-figures.js";

/** A named figure in a row: an hourly rate, or a rate of tax. */
export interface FigureRow {
  readonly id: string;
  readonly name: string;
  readonly figure: string;
}
export interface TermsForm {
  readonly currency: string;
  /** Asked for where the currency's own are not known. */
  readonly digits: string;
  readonly rates: readonly FigureRow[];
  readonly label: string;
  readonly groups: readonly FigureRow[];
  readonly labourGroup: string;
  readonly partsGroup: string;
  readonly rounding: HouseTerms["tax"]["rounding"];
  readonly level: HouseTerms["tax"]["level"];
}

const PERCENT_DIGITS = 2;
const MOST_DIGITS = 4;

/** Digits of the currency: its own, or as typed. */
export function digitsOf({ currency, digits }: Pick<TermsForm, "currency" | "digits">): number | undefined {
  const known = isCurrencyCode(currency) ? minorDigitsOf(currency) : undefined;
  const typed = wholeOf(digits);
  return known ?? (typed !== undefined && typed <= MOST_DIGITS ? typed : undefined);
}

export function termsForm(terms: HouseTerms | undefined): TermsForm {
  if (!terms) {
    const usual = { rounding: ROUNDINGS[0], level: TAX_LEVELS[1], label: "" };
    const [rates, groups] = [[{ id: "r1", name: "", figure: "" }], [{ id: "t1", name: "", figure: "" }]];
    return { currency: "", digits: "", rates, groups, labourGroup: "t1", partsGroup: "t1", ...usual };
  }
  const { currency, labourRates, tax } = terms;
  const digits = terms.digits === undefined ? "" : String(terms.digits);
  const places = digitsOf({ currency, digits }) ?? 0;
  return {
    currency,
    digits,
    rates: labourRates.map(({ id, name, perHour }) => ({ id, name, figure: unscaled(perHour, places) })),
    label: tax.label,
    groups: tax.groups.map(({ id, name, basisPoints }) => ({
      id,
      name,
      figure: unscaled(basisPoints, PERCENT_DIGITS),
    })),
    labourGroup: tax.labourGroup,
    partsGroup: tax.partsGroup,
    rounding: tax.rounding,
    level: tax.level,
  };
}

const isWhole = ({ name, figure }: FigureRow, digits: number): boolean =>
  name.trim() !== "" && scaled(figure, digits) !== undefined;

/** The first thing a form of terms still wants, from above; undefined where nothing does. */
export function termsWant(form: TermsForm) {
  const digits = digitsOf(form);
  if (!isCurrencyCode(form.currency)) return "currency";
  if (digits === undefined) return "digits";
  if (form.rates.length === 0 || !form.rates.every((row) => isWhole(row, digits))) return "rates";
  return form.groups.length > 0 && form.groups.every((row) => isWhole(row, PERCENT_DIGITS)) ? undefined : "tax";
}

/** The terms a form holds; undefined while a name or a figure is wanting. What was kept and is not asked stays. */
export function termsFrom(form: TermsForm, before: HouseTerms | undefined): HouseTerms | undefined {
  const digits = digitsOf(form);
  if (termsWant(form) || digits === undefined) return undefined;
  const labourRates = form.rates.flatMap(({ id, name, figure }) => {
    const perHour = scaled(figure, digits);
    return name.trim() === "" || perHour === undefined ? [] : [{ id, name: name.trim(), perHour }];
  });
  const groups = form.groups.flatMap(({ id, name, figure }) => {
    const basisPoints = scaled(figure, PERCENT_DIGITS);
    return name.trim() === "" || basisPoints === undefined ? [] : [{ id, name: name.trim(), basisPoints }];
  });
  const { label, labourGroup, partsGroup, rounding, level } = form;
  if (![labourGroup, partsGroup].every((use) => groups.some(({ id }) => id === use))) return undefined;
  const finer = before?.tax.digits;
  return {
    currency: form.currency,
    ...(minorDigitsOf(form.currency) === undefined ? { digits } : {}),
    labourRates,
    tax: {
      label: label.trim(),
      groups,
      labourGroup,
      partsGroup,
      rounding,
      level,
      ...(finer === undefined ? {} : { digits: finer }),
    },
  };
}

/** The next free id of a row. */
export function freeId(prefix: string, rows: readonly { readonly id: string }[]): string {
  let n = rows.length + 1;
  while (rows.some(({ id }) => id === `${prefix}${n}`)) n += 1;
  return `${prefix}${n}`;
}

/** Other rates of tax; labour or parts that lose theirs take the first. */
export function withGroups(form: TermsForm, groups: readonly FigureRow[]): TermsForm {
  const first = groups[0]?.id ?? "";
  const still = (use: string): string => (groups.some(({ id }) => id === use) ? use : first);
  return { ...form, groups, labourGroup: still(form.labourGroup), partsGroup: still(form.partsGroup) };
}
