/** Odometer figures as typed: digits with blanks, points or commas between thousands. Knows no car. */
import type { Odometer } from "../../core/record/contract.js";
import { figure } from "../texts/index.js";

/** The number an odometer text stands for; undefined when it is no plain figure. */
export function figureOf({ value }: Pick<Odometer, "value">): number | undefined {
  const digits = value.replace(/[\s.,'\u202f\u00a0]/g, "");
  return /^\d{1,7}$/.test(digits) ? Number(digits) : undefined;
}

/** `61 240 km`. */
export function odometerText(odometer: Odometer): string {
  const value = figureOf(odometer);
  return `${value === undefined ? odometer.value : figure(value)} ${odometer.unit === "[mi_i]" ? "mi" : odometer.unit}`;
}
