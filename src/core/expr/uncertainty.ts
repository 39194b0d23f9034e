/** Carries the uncertainty of readings through a formula. Knows no gauge: the scope says each reading's u. */
import type { Evaluate, Measured, Outcome } from "./scope.js";
import type { Scope } from "./scope.js";

/**
 * The value of a formula with its standard uncertainty, every reading's u carried through it:
 * u² = Σ ((f(x+u) − f(x−u)) / 2)², readings taken as independent (JCGM 100:2008, 5.1.3 note 2; from memory).
 */
export function withUncertainty(formula: Evaluate): (scope: Scope, here: string) => Outcome<Measured> {
  throw new Error(`withUncertainty is being built: ${formula.length}`);
}
