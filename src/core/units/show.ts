/** Numbers as shown: no more digits than the gauge or the person gave, no float noise. */

/** Decimals a display step can show: 0.01 → 2, 0.05 → 2, 0.5 → 1, 25 → 0. */
export function decimalsOf(step: number): number {
  throw new Error(`decimalsOf is being built: ${step}`);
}
/** A number with fixed decimals (rounded half away from zero in decimal), own decimal mark. */
export function show(value: number, decimals: number, decimalComma = false): string {
  throw new Error(`show is being built: ${value} ${decimals} ${decimalComma}`);
}
