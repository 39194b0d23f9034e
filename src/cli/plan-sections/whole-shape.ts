/** A whole work list as JSON writes it, leniently; what is faulty is told with its path. Works nothing out. */
import type { HouseTerms, LabourRate, OpenSpan, ShutDays, TaxProfile, WorkPart } from "../../core/plan/index.js";
import { accessState, minutes } from "./access.js";
import {
  type At,
  asFields,
  fields,
  inside,
  list,
  name,
  one,
  optional,
  type Shape,
  text,
  whole,
  word,
  yesNo,
} from "./shape.js";
import { FINDING } from "./urgency.js";

const names: Shape<readonly string[]> = optional(list(name), []);
export const fault = fields({ ...FINDING, jobs: names });

/** Minor units, one figure or low, likely, high: as minutes are written. */
const price = minutes;
const part = fields({
  id: name,
  count: optional(whole, 1),
  price: optional(price),
  deposit: optional(whole),
  carriage: optional(whole),
  supplier: optional(name),
  leadDays: optional(whole),
  pricedOn: optional(text),
  set: optional(name),
  counterpart: optional(text),
  aloneBecause: optional(text),
  orderedOn: optional(text),
  promised: optional(text),
  inHand: optional(yesNo),
});

/** A part without what nobody said of it. */
const workPart: Shape<WorkPart> = {
  read: (value, at) => {
    const read = part.read(value, at)?.value;
    if (read === undefined) return undefined;
    const { deposit, carriage, supplier, leadDays, pricedOn, ...rest } = read;
    return {
      value: {
        ...rest,
        ...(deposit === undefined ? {} : { deposit }),
        ...(carriage === undefined ? {} : { carriage }),
        ...(supplier === undefined ? {} : { supplier }),
        ...(leadDays === undefined ? {} : { leadDays }),
        ...(pricedOn === undefined ? {} : { pricedOn }),
      },
    };
  },
};
const parts: Shape<readonly WorkPart[]> = optional(list(workPart), []);

export const job = fields({
  id: name,
  own: optional(minutes),
  minutes: optional(minutes),
  access: names,
  ways: optional(list(list(name))),
  follows: names,
  kind: optional(name),
  last: optional(yesNo),
  endsIn: optional(list(name)),
  parts,
  wanted: optional(word("in", "out")),
  rate: optional(name),
  people: optional(whole),
  standing: optional(whole),
  isDone: optional(yesNo),
  declined: optional(yesNo),
});

const openingMore = fields({ onLift: optional(yesNo), isImmovable: optional(yesNo) });
export const opening = {
  read: (value: unknown, at: At) => {
    const [state, more] = [accessState.read(value, at), openingMore.read(value, at)];
    return state === undefined || more === undefined ? undefined : { value: { ...state.value, ...more.value } };
  },
};

const HOUR = 60;
const minuteOfDay = one("a minute of the day, or a time as 08:30", (value) => {
  const [, h, m] = typeof value === "string" ? (/^(\d{1,2}):(\d{2})$/.exec(value) ?? []) : [];
  const minute = h === undefined ? value : Number(h) * HOUR + Number(m);
  return typeof minute === "number" && Number.isSafeInteger(minute) && minute >= 0 ? minute : undefined;
});
const span: Shape<OpenSpan> = {
  read: (value, at) => {
    const [open, close] = list(minuteOfDay, 2).read(value, at)?.value ?? [];
    return open === undefined || close === undefined ? undefined : { value: [open, close] };
  },
};
/** Days shut: `[from, to]`, or with a reason. */
const shut: Shape<ShutDays> = {
  read: (value, at) => {
    const pair = Array.isArray(value) ? { from: value[0] as unknown, to: value[1] as unknown } : value;
    const read = fields({ from: text, to: text, why: optional(text) }).read(pair, at)?.value;
    if (read === undefined) return undefined;
    const { from, to, why } = read;
    return { value: { from, to, ...(why === undefined ? {} : { why }) } };
  },
};
const shutDays: Shape<readonly ShutDays[]> = optional(list(shut), []);
export const calendar = fields({
  today: optional(text),
  begins: optional(text),
  zone: optional(text, "Etc/UTC"),
  week: list(list(span)),
  closed: shutDays,
});
export const supplier = fields({
  id: name,
  week: optional(list(whole), [1, 2, 3, 4, 5]),
  closed: shutDays,
  leadDays: optional(whole),
  carriageDays: optional(whole),
  outwork: optional(yesNo),
});
/** How many: a number, or a list of them. */
export const howMany = one("how many, or a list of them", (value) => {
  const many: unknown = Array.isArray(value) ? value.length : value;
  return Number.isSafeInteger(many) && Number(many) >= 0 ? Number(many) : undefined;
});

const group = fields({ id: name, name: optional(text), basisPoints: whole });
const rounding = optional(word("half-up", "half-even", "down", "up"), "half-up" as const);
const level = optional(word("line", "group", "invoice"), "invoice" as const);
/** Basis points alone, or with how they are rounded, or rates of their own for labour and parts. */
const tax: Shape<TaxProfile> = {
  read: (value, at) => {
    const given = asFields(value);
    if (given?.["groups"] === undefined) {
      const flat = fields({ label: optional(text, "as given"), basisPoints: whole, rounding, level });
      const read = flat.read(given ?? { basisPoints: value }, at)?.value;
      if (read === undefined) return undefined;
      const { basisPoints, ...rest } = read;
      const groups = [{ id: "tax", name: "tax", basisPoints }];
      return { value: { ...rest, groups, labourGroup: "tax", partsGroup: "tax" } };
    }
    const full = fields({
      label: optional(text, "as given"),
      groups: list(group, 1),
      labourGroup: name,
      partsGroup: name,
      rounding,
      level,
    });
    const read = full.read(value, at)?.value;
    return read && { value: { ...read, groups: read.groups.map((of) => ({ ...of, name: of.name ?? of.id })) } };
  },
};

const labourRate = fields({ id: name, name: optional(text), perHour: whole });
const rateFields = fields({
  currency: text,
  digits: optional(whole),
  perHour: optional(whole),
  labourRates: optional(list(labourRate, 1)),
  tax,
});
/** What the house charges: one rate an hour, or several by name; the first is charged where a job names none. */
export const rates: Shape<HouseTerms> = {
  read: (value, at) => {
    const read = rateFields.read(value, at)?.value;
    if (read === undefined) return undefined;
    const { currency, digits, perHour, labourRates } = read;
    if (perHour === undefined && labourRates === undefined) {
      whole.read(undefined, inside(at, "perHour"));
      return undefined;
    }
    const hourly: readonly LabourRate[] =
      labourRates?.map((of) => ({ ...of, name: of.name ?? of.id })) ??
      (perHour === undefined ? [] : [{ id: "labour", name: "labour", perHour }]);
    return {
      value: { currency, labourRates: hourly, tax: read.tax, ...(digits === undefined ? {} : { digits }) },
    };
  },
};
