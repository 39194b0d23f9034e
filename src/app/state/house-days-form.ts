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

/** The first thing a calendar's form still wants, from above; undefined where nothing does. */
export function daysWant({ zone, week, shut, people, lifts }: DaysForm) {
  const spans = week.map(spansOf);
  if (spans.some((day) => day === undefined)) return "times";
  if (spans.every((day) => day?.length === 0)) return "open-day";
  if (!wholeOf(people)) return "people";
  if (wholeOf(lifts) === undefined) return "lifts";
  if (zone.trim() === "") return "zone";
  return shutOf(shut) ? undefined : "shut";
}

/** The calendar a form holds; undefined while one of its boxes can't be read. */
export function daysFrom(form: DaysForm): HouseCalendar | undefined {
  const { zone, week, shut, people, lifts } = form;
  const [closed, workers, posts] = [shutOf(shut), wholeOf(people), wholeOf(lifts)];
  if (daysWant(form) || !closed || !workers || posts === undefined) return undefined;
  const spans = week.map((text) => spansOf(text) ?? []);
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

/** The first thing a supplier's form still wants, from above; undefined where nothing does. */
export function supplierWants({ name, lead, carriage, week, shut }: SupplierForm) {
  const isUnread = (text: string): boolean => text.trim() !== "" && wholeOf(text) === undefined;
  if (name.trim() === "") return "name";
  if (isUnread(lead)) return "lead";
  if (isUnread(carriage)) return "carriage";
  if (week.length === 0) return "open-day";
  return shutOf(shut) ? undefined : "shut";
}

/** The supplier a form holds, without its id. An empty lead is not known, and is not nought. */
export function supplierFrom(form: SupplierForm): Omit<Supplier, "id"> | undefined {
  const [lead, carriage, closed] = [wholeOf(form.lead), wholeOf(form.carriage), shutOf(form.shut)];
  if (supplierWants(form) || !closed) return undefined;
  return {
    name: form.name.trim(),
    week: [...form.week].sort((a, b) => a - b),
    closed,
    outwork: form.outwork,
    ...(lead === undefined ? {} : { leadDays: lead }),
    ...(carriage === undefined ? {} : { carriageDays: carriage }),
  };
}
