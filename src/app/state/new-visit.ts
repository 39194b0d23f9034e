/** From the form of a new visit to what opening needs. Pure. */
import { type CarState, limitsOf } from "../../core/record/index.js";
import type { Audience } from "../../core/terms/index.js";
import type { Opening } from "./car-acts.js";
import type { FrozenCommonFile, FrozenSheetFile } from "./frozen.js";

export type { Opening };

export const PURPOSES = ["workshop", "viewing", "season"] as const;

/** Who usually looks on such an occasion; chosen beforehand, and free to be changed. */
export const USUALLY: Readonly<Record<(typeof PURPOSES)[number], Audience>> = {
  workshop: "technician",
  viewing: "buyer",
  season: "owner",
};

/** Sheets for what lies on the bench or came in a parcel: chosen when there is such a thing, never by themselves. */
export const ON_THE_BENCH: readonly string[] = ["head", "recv", "trans"];

export interface VisitForm {
  readonly purpose: (typeof PURPOSES)[number];
  readonly who: Audience;
  readonly odometer: string;
  /** UCUM: km or [mi_i]. */
  readonly odometerUnit: string;
  readonly complaint: string;
  /** The known complaint the words sound like. */
  readonly known?: string | undefined;
  /** Sheets not to open. */
  readonly left: readonly string[];
}

/** A moment as ISO 8601 with the offset of where the phone is. `offsetMin` is minutes east of UTC. */
export function isoNow(wall: number, offsetMin = -new Date(wall).getTimezoneOffset()): string {
  const local = new Date(wall + offsetMin * 60_000).toISOString().slice(0, 19);
  const sign = offsetMin < 0 ? "-" : "+";
  const two = (value: number): string => String(value).padStart(2, "0");
  const off = Math.abs(offsetMin);
  return `${local}${sign}${two(Math.floor(off / 60))}:${two(off % 60)}`;
}

export function openingFrom(
  form: VisitForm,
  car: CarState,
  common: FrozenCommonFile,
  sheets: readonly FrozenSheetFile[],
  on: string,
): Opening {
  const text = form.complaint.trim();
  return {
    car: car.stream,
    purpose: form.purpose,
    who: form.who,
    on,
    ...(form.odometer.trim() === "" ? {} : { odometer: { value: form.odometer.trim(), unit: form.odometerUnit } }),
    ...(text === "" ? {} : { complaint: { text, ...(form.known === undefined ? {} : { complaint: form.known }) } }),
    common,
    sheets,
    limits: limitsOf(car),
  };
}
