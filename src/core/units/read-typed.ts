/** Understands what a person types for a reading, or says why not. Never guesses between two meanings. */
import type { Result } from "../terms/index.js";
import type { Quantity } from "./quantities.js";

export interface ReadOptions {
  readonly quantity: Quantity;
  /** Unit when none is typed: UCUM code or accepted spelling. */
  readonly unit: string;
  /** The person's own decimal mark is the comma: "1,234" is then plain. */
  readonly decimalComma?: boolean;
}

export interface Reading {
  /** The number as typed with the decimal mark made a point: "0.220", "-5", "1 1/2". Goes into the record. */
  readonly text: string;
  /** UCUM code typed or assumed. */
  readonly unit: string;
  /** In `unit`. */
  readonly value: number;
  /** In the canonical unit of the quantity. */
  readonly canonical: number;
  /** Digits typed after the decimal mark; null for a fraction. */
  readonly decimals: number | null;
}

/**
 * Reads a typed reading: decimals with point or comma, fractions, mixed numbers, a sign, a unit.
 * Codes: units.empty, units.too-long, units.not-a-number, units.two-numbers, units.ambiguous-comma,
 * units.zero-below, units.unknown-unit, units.other-quantity, units.fraction-needs-unit, units.not-finite.
 */
export function readTyped(typed: string, options: ReadOptions): Result<Reading> {
  throw new Error(`readTyped is being built: ${typed} ${options.unit}`);
}
