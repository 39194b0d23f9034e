/** An odometer figure in words. Knows no car. */
import { figureOf, type Odometer } from "../../core/record/index.js";
import { figure } from "../texts/round.js";

/** `61 240 km`. */
export function odometerText(odometer: Odometer): string {
  const value = figureOf(odometer);
  return `${value === undefined ? odometer.value : figure(value)} ${odometer.unit === "[mi_i]" ? "mi" : odometer.unit}`;
}
