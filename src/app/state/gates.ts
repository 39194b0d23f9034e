/** Which gate stands before a car state, and the notes that let it be passed unproven. Pure; puts nothing into words. */
import type { Assessment, GateState } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";

/** A note that stands on a gate: the step it guards was done unproven, with the reason. */
export const unprovenNote = (notes: VisitState["notes"], gate: string): string | undefined =>
  notes.find(({ value }) => value.point === gate)?.value.text;

/**
 * The gate that stands before a car state: tripped, or not cleared and not noted as unproven. The worse one first.
 * Points of the gate's own set may always be answered, also in the state it guards.
 */
export function gateBefore(
  assessment: Pick<Assessment, "gates">,
  notes: VisitState["notes"],
  state: string,
  point: string,
): GateState | undefined {
  const guarding = assessment.gates.filter(
    (gate) => gate.guards === state && !gate.first.some((one) => one.point === point),
  );
  return (
    guarding.find((gate) => gate.state === "tripped") ??
    guarding.find((gate) => gate.state === "not cleared" && unprovenNote(notes, gate.gate) === undefined)
  );
}
