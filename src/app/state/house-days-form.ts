/** A house's days and its suppliers while they are typed, and what they become once nothing is wanting. Pure. */
import type { HouseCalendar, Supplier } from "../../core/record/index.js";
import { type ShutRow, shutOf, spansOf, spansText, wholeOf } from "./house-figures.js";

export interface DaysForm {
  readonly zone: string;
  /** Seven texts from Monday. */
  readonly week: readonly string[];
  readonly shut: readonly ShutRow[];
  readonly people: string;
  readonly lifts: string;
}
const EMPTY_WEEK = Array.from({ length: 7 }, () => "");

export const daysForm = (days: HouseCalendar | undefined, zone: string): DaysForm =>
  days
    ? {
        zone: days.zone,
        week: days.week.map(spansText),
        shut: days.closed,
        people: String(days.people),
        lifts: String(days.lifts),
      }
    : { zone, week: EMPTY_WEEK, shut: [], people: "", lifts: "" };

/** The calendar a form holds; undefined while one of its boxes can't be read. */
export function daysFrom({ zone, week, shut, people, lifts }: DaysForm): HouseCalendar | undefined {
  const spans = week.flatMap((text) => {
    const one = spansOf(text);
    return one ? [one] : [];
  });
  const [closed, workers, posts] = [shutOf(shut), wholeOf(people), wholeOf(lifts)];
  if (spans.length < week.length || !closed || !workers || posts === undefined || zone.trim() === "") return undefined;
  if (spans.every((day) => day.length === 0)) return undefined;
  return { zone: zone.trim(), week: spans, closed, people: workers, lifts: posts };
}

export interface SupplierForm {
  readonly name: string;
  readonly week: readonly number[];
  readonly lead: string;
  readonly carriage: string;
  readonly outwork: boolean;
  readonly shut: readonly ShutRow[];
}
/** Monday to Friday, until somebody says otherwise. */
const USUAL_WEEK = [1, 2, 3, 4, 5];

export const supplierForm = (one: Supplier | undefined): SupplierForm => ({
  name: one?.name ?? "",
  week: one?.week ?? USUAL_WEEK,
  lead: one?.leadDays === undefined ? "" : String(one.leadDays),
  carriage: one?.carriageDays === undefined ? "" : String(one.carriageDays),
  outwork: one?.outwork ?? false,
  shut: one?.closed ?? [],
});

/** The supplier a form holds, without its id. An empty lead is not known, and is not nought. */
export function supplierFrom(form: SupplierForm): Omit<Supplier, "id"> | undefined {
  const [lead, carriage, closed] = [wholeOf(form.lead), wholeOf(form.carriage), shutOf(form.shut)];
  const isRead = (text: string, value: number | undefined): boolean => text.trim() === "" || value !== undefined;
  if (form.name.trim() === "" || form.week.length === 0 || !closed) return undefined;
  if (!isRead(form.lead, lead) || !isRead(form.carriage, carriage)) return undefined;
  return {
    name: form.name.trim(),
    week: [...form.week].sort((a, b) => a - b),
    closed,
    outwork: form.outwork,
    ...(lead === undefined ? {} : { leadDays: lead }),
    ...(carriage === undefined ? {} : { carriageDays: carriage }),
  };
}
