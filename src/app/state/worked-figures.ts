/** How a worked-out figure is written: as many digits as it is good for, its ±U and its unit. Knows no formula. */
import { show } from "../../core/units/index.js";
import { decimalComma } from "../texts/figures.js";
import { unitShown } from "../texts/units.js";

/** Figures of a number nothing is known about but itself. */
const FIGURES = 4;
const MOST_DECIMALS = 6;

/** Decimals that show so many figures of a number. */
const decimalsFor = (value: number, figures: number): number =>
  value === 0 ? 0 : Math.min(MOST_DECIMALS, Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(value)))));

/** No line ends between a figure and its unit. */
const withUnit = (figure: string, unit: string): string => `${figure}\u00a0${unitShown(unit)}`.trimEnd();

/** A number to four figures, without trailing zeros, and its unit (UCUM). */
export function figureText(value: number, unit: string): string {
  const short = String(Number(value.toFixed(decimalsFor(value, FIGURES))));
  const decimals = short.split(".")[1]?.length ?? 0;
  return withUnit(show(value, decimals, decimalComma.value), unit);
}

/** Value and ±U to the digits U is good for (two figures of it); without a U as `figureText`. */
export function valueText(value: number, uncertainty: number, unit: string): string {
  if (!(uncertainty > 0)) return figureText(value, unit);
  const decimals = decimalsFor(uncertainty, 2);
  const [shown, around] = [value, uncertainty].map((one) => show(one, decimals, decimalComma.value));
  return withUnit(`${shown} ± ${around}`, unit);
}
