/** Whether one rule holds at one place and, when not known, what it waits for. Concludes nothing. */
import type { AssessInput } from "./contract.js";
import type { Engine } from "./engine.js";
import { conditionOf, runOf } from "./passes.js";
import { type Judged, start, worldOf } from "./session.js";

export interface Explained {
  readonly is: "true" | "false" | "unknown";
  /** Reply keys (`keyText`) that would settle it; `!closer` after a key: measured again with more care. */
  readonly missing: readonly string[];
}

/**
 * The state of a rule (or of a gate: true = tripped by its conditions) at the place where it stands. A rule that does
 * not apply there is unknown with nothing missing. Throws for a rule or place that is not there.
 */
export function explain(engine: Engine, input: AssessInput, rule: string, place: string): Explained {
  return explainIn(start(engine, input), rule, place);
}

/** The same, asked of a visit that is already judged. */
export function explainIn(session: Judged, rule: string, place: string): Explained {
  const { kept } = session;
  const world = worldOf(session);
  const trips = kept.site.gates.filter((n) => n.gate.id === rule && n.which === "trips");
  if (kept.site.model.gates.some((g) => g.id === rule)) {
    const runs = trips.map((n) => conditionOf(world, n));
    const missing = [...new Set(runs.flatMap((r) => [...r.missing]))];
    if (runs.some((r) => r.is === "true")) return { is: "true", missing: [] };
    return runs.every((r) => r.is === "false") ? { is: "false", missing: [] } : { is: "unknown", missing };
  }
  const node = kept.site.rules.find((n) => n.rule.rule.id === rule && n.place === place);
  if (node === undefined) throw new Error(`no open rule ${rule} at ${place}`);
  const run = runOf(world, node);
  if (run.is === "none") return { is: "unknown", missing: [] };
  return { is: run.is, missing: run.is === "unknown" ? [...run.missing] : [] };
}
