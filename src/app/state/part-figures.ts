/** What is entered of a part, as text, and what is kept of it. Pure; nothing unread is kept. */
import type { PartFigures } from "../../core/record/index.js";
import { decimalComma } from "../texts/figures.js";
import { type Currency, typedMoney } from "./money-words.js";
import type { PlannedPart } from "./plan-part-view.js";

type Change = { readonly [Field in keyof PartFigures]?: PartFigures[Field] | undefined };

/** What was known with a change laid over it; what is undefined in the change is taken out. */
export function mendedFigures({ figures, work }: Pick<PlannedPart, "figures" | "work">, change: Change): PartFigures {
  const { count = figures?.count ?? work.count, ...rest } = change;
  const fields = Object.entries({ ...figures, ...rest }).filter(([, value]) => value !== undefined);
  // The same fields with the same types, less those that are undefined.
  return { ...(Object.fromEntries(fields) as Omit<PartFigures, "count">), count };
}

/** Minor units as a person would type them. */
export function moneyTyped(minor: number | undefined, { minorDigits }: Currency): string {
  if (minor === undefined) return "";
  const text = (minor / 10 ** minorDigits).toFixed(minorDigits);
  return decimalComma.value ? text.replace(".", ",") : text;
}

export interface FromForm {
  readonly supplier: string;
  readonly leadDays: string;
  readonly deposit: string;
  readonly carriage: string;
  readonly pricedOn: string;
}

export function fromForm({ figures }: Pick<PlannedPart, "figures">, currency: Currency | undefined): FromForm {
  return {
    supplier: figures?.supplier ?? "",
    leadDays: figures?.leadDays === undefined ? "" : String(figures.leadDays),
    deposit: currency ? moneyTyped(figures?.deposit, currency) : "",
    carriage: currency ? moneyTyped(figures?.carriage, currency) : "",
    pricedOn: figures?.pricedOn ?? "",
  };
}

const LONGEST_LEAD = 731;

/** A whole number of days; undefined for an empty box, null for what is none. */
export function typedCount(text: string, least: number, most = LONGEST_LEAD): number | undefined | null {
  const typed = text.trim();
  if (typed === "") return undefined;
  const found = /^\d{1,4}$/.test(typed) ? Number(typed) : null;
  return found !== null && found >= least && found <= most ? found : null;
}

export type OddField = "leadDays" | "deposit" | "carriage";

/** What can't be read in the form. */
export function oddIn(form: FromForm, currency: Currency | undefined): readonly OddField[] {
  const money = (["deposit", "carriage"] as const).filter(
    (field) => currency && form[field].trim() !== "" && typedMoney(form[field], currency.minorDigits) === undefined,
  );
  return [...(typedCount(form.leadDays, 0) === null ? (["leadDays"] as const) : []), ...money];
}

/** What is kept of a form without odd fields. Without a currency no money was asked for, and none is touched. */
export function changeOf(form: FromForm, currency: Currency | undefined): Change {
  const empty = (text: string): string | undefined => (text.trim() === "" ? undefined : text.trim());
  const money = (text: string): number | undefined =>
    currency && text.trim() !== "" ? typedMoney(text, currency.minorDigits) : undefined;
  return {
    supplier: empty(form.supplier),
    leadDays: typedCount(form.leadDays, 0) ?? undefined,
    pricedOn: empty(form.pricedOn),
    ...(currency ? { deposit: money(form.deposit), carriage: money(form.carriage) } : {}),
  };
}
