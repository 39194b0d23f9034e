/** Numbers as shown: no more digits than the gauge or the person gave, no binary noise. Knows no language. */

/** Finest display step that is told apart; no gauge in the trade shows more. */
const MOST_DECIMALS = 6;
/** A step may be shown this much off (0.0254 as 0.025), so that a converted step needs no row of digits. */
const STEP_SLACK = 0.1;

/** Decimals that show a display step: 0.01 → 2, 0.05 → 2, 0.5 → 1, 25 → 0; 0 where there is no step. */
export function decimalsOf(step: number): number {
  if (!(step > 0) || !Number.isFinite(step)) return 0;
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals++) {
    if (Math.abs(rounded(step, decimals) - step) <= step * STEP_SLACK) return decimals;
  }
  return MOST_DECIMALS;
}

/** Rounded half away from zero on the decimal digits as written: 1.005 to two decimals is 1.01. */
export function rounded(value: number, decimals: number): number {
  const [digits = "", exponent = "0"] = Math.abs(value).toExponential().split("e");
  const whole = Math.round(Number(`${digits}e${Number(exponent) + decimals}`));
  const back = Number(`${whole}e${-decimals}`);
  return value < 0 && back !== 0 ? -back : back;
}

/** A number with fixed decimals and the person's decimal mark; "–" for one that is not finite. Never "-0". */
export function show(value: number, decimals: number, decimalComma = false): string {
  if (!Number.isFinite(value)) return "–";
  const text = rounded(value, decimals).toFixed(decimals).replace("-", "−");
  return decimalComma ? text.replace(".", ",") : text;
}

/** A kept text (`Reading.text`) with the person's marks: decimals stay as typed. */
export function showTyped(text: string, decimalComma = false): string {
  const signed = text.replace("-", "−");
  return decimalComma ? signed.replace(".", ",") : signed;
}
