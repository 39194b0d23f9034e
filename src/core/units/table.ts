/** Units: UCUM code, accepted spellings, exact definition. Knows no reply and no screen. */
import type { Quantity } from "./quantities.js";

/** canonical = number × factor + offset. */
export interface Unit {
  /** UCUM code. */
  readonly code: string;
  readonly quantity: Quantity;
  /** How it is shown, e.g. °C. */
  readonly shown: string;
  readonly factor: number;
  readonly offset: number;
}

/** The unit a code or accepted spelling names (within a quantity, where spellings such as ′ differ). */
export function unitOf(text: string, within?: Quantity): Unit | undefined {
  throw new Error(`unitOf is being built: ${text} ${within ?? ""}`);
}

/** Units of a quantity, canonical first: what a keypad may offer. */
export function unitsOf(quantity: Quantity): readonly Unit[] {
  throw new Error(`unitsOf is being built: ${quantity}`);
}
