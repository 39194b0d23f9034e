/** Whether one rule holds at one place and, when not known, what it waits for. Concludes nothing. */
import type { AssessInput } from "./contract.js";
import type { Engine } from "./engine.js";

export interface Explained {
  readonly is: "true" | "false" | "unknown";
  /** Reply keys (`keyText`) that would settle it; `!closer` after a key: measured again with more care. */
  readonly missing: readonly string[];
}

/** The state of a rule (or of a gate: true = tripped) at the place where it stands. Unknown rule or place throws. */
export function explain(engine: Engine, input: AssessInput, rule: string, place: string): Explained {
  throw new Error(`explain is being built: ${engine.sheets.length} ${input.at} ${rule} ${place}`);
}
