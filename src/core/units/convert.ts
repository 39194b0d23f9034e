/** Conversion between units of one quantity. Throws on a unit that is not in the table: check with unitOf first. */

/** A number of unit `from` in unit `to`, free of float noise (15 digits). Same quantity, else it throws. */
export function convert(value: number, from: string, to: string): number {
  throw new Error(`convert is being built: ${value} ${from} ${to}`);
}
/** A number in `unit` in the canonical unit of its quantity. */
export function toCanonical(value: number, unit: string): number {
  throw new Error(`toCanonical is being built: ${value} ${unit}`);
}
/** A canonical number in `unit`. */
export function fromCanonical(value: number, unit: string): number {
  throw new Error(`fromCanonical is being built: ${value} ${unit}`);
}
/** A step, error or uncertainty in `unit` in canonical size: factor only, no offset. */
export function toCanonicalStep(value: number, unit: string): number {
  throw new Error(`toCanonicalStep is being built: ${value} ${unit}`);
}
