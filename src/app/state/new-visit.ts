/** From the form of a new visit to what opening needs. Pure. */
import { type CarState, limitsOf } from "../../core/record/index.js";
import type { Audience, Purpose } from "../../core/terms/index.js";
import type { Opening } from "./car-acts.js";
import type { FrozenCommonFile, FrozenSheetFile } from "./frozen.js";
import type { SheetAtHand } from "./sheets-at-hand.js";

export type { Opening };

/** Who usually looks on such an occasion; chosen beforehand, and free to be changed. */
export const USUALLY: Readonly<Record<Purpose, Audience>> = {
  workshop: "technician",
  viewing: "buyer",
  season: "owner",
};

type Offered = Pick<SheetAtHand, "id" | "opensFor">;

/** Which sheets lead to a known complaint: those that own a point it puts first. */
export const sheetsOfPoints = (points: readonly string[]): readonly string[] => [
  ...new Set(points.flatMap((point) => point.split(".").slice(0, 1))),
];

/** Of a car at rest only what belongs to its rest: the sheet of the seasons, and the nose its first start waits for. */
const AT_REST = ["rest", "fuel"];

/**
 * The sheets a visit opens with: those for its purpose, those the complaint leads to, and what the person chose on or
 * off by hand, which goes before both. A car put away or woken is not looked through as one in use.
 */
export const chosenSheets = <T extends Offered>(
  sheets: readonly T[],
  { purpose, byHand, led, season = "in-use" }: Pick<VisitForm, "purpose" | "byHand" | "led" | "season">,
): readonly T[] => {
  const all = purpose !== "season" || season === "in-use";
  return sheets.filter(
    ({ id, opensFor }) =>
      byHand[id] ?? (led.includes(id) || !opensFor || (opensFor.includes(purpose) && (all || AT_REST.includes(id)))),
  );
};

export interface VisitForm {
  readonly purpose: Purpose;
  readonly who: Audience;
  readonly odometer: string;
  /** UCUM: km or [mi_i]. */
  readonly odometerUnit: string;
  readonly complaint: string;
  /** The known complaint the words sound like. */
  readonly known?: string | undefined;
  /** Sheets the known complaint leads to. */
  readonly led: readonly string[];
  /** Sheets the person chose on or off. */
  readonly byHand: Readonly<Record<string, boolean>>;
  /** Of a seasonal check: which it is. */
  readonly season?: string | undefined;
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
