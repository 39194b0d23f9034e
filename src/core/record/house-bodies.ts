/**
 * What a house says of its terms, for planning: rates and tax, days it works, its suppliers. Types and words only. Money
 * is whole minor units, days are calendar days without a zone of their own.
 */
import type { IsoDate } from "../terms/index.js";

type Replaces = { readonly replaces: readonly string[] };

export const ROUNDINGS = ["half-up", "half-even", "down", "up"] as const;
export const TAX_LEVELS = ["line", "group", "invoice"] as const;

/** A rate of pay for an hour's work. */
export interface LabourRate {
  readonly id: string;
  readonly name: string;
  /** Minor units, before tax. */
  readonly perHour: number;
}
export interface TaxGroup {
  readonly id: string;
  readonly name: string;
  /** Hundredths of a per cent. */
  readonly basisPoints: number;
}
/** How tax is worked out here. Two of `groups` are those of labour and of parts. */
export interface TaxProfile {
  /** Whose: a country, or a bookkeeper's name for it. */
  readonly label: string;
  readonly groups: readonly TaxGroup[];
  readonly labourGroup: string;
  readonly partsGroup: string;
  /** `half-up` is away from zero, so that a credit mirrors its invoice. */
  readonly rounding: (typeof ROUNDINGS)[number];
  readonly level: (typeof TAX_LEVELS)[number];
  /** Digits behind the point that tax is rounded to; the currency's own where nothing is said. */
  readonly digits?: number;
}
export interface HouseTerms {
  /** ISO 4217 letters. */
  readonly currency: string;
  /** Digits of the minor unit, where the currency's own are not known here. */
  readonly digits?: number;
  readonly labourRates: readonly LabourRate[];
  readonly tax: TaxProfile;
}

/** Days shut, both included. */
export interface ShutDays {
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly why?: string;
}
/** Minutes of the local day, from opening to closing. */
export type OpenSpan = readonly [open: number, close: number];
export interface HouseCalendar {
  /** IANA name. */
  readonly zone: string;
  /** Seven days from Monday, each with its spans in order. */
  readonly week: readonly (readonly OpenSpan[])[];
  readonly closed: readonly ShutDays[];
  readonly people: number;
  readonly lifts: number;
}
export interface Supplier {
  readonly id: string;
  readonly name: string;
  /** Days open: 1 Monday to 7 Sunday. */
  readonly week: readonly number[];
  readonly closed: readonly ShutDays[];
  /** Its working days from the day after ordering. */
  readonly leadDays?: number;
  readonly carriageDays?: number;
  /** Takes work in, rather than selling parts. */
  readonly outwork?: boolean;
}

/** Bodies of the kinds that tell a house's terms. Null takes back. */
export interface HouseTermsBodies {
  "house.terms": Replaces & { readonly terms: HouseTerms | null };
  "house.calendar": Replaces & { readonly calendar: HouseCalendar | null };
  "house.supplier": Replaces & { readonly id: string; readonly supplier: Supplier | null };
}
