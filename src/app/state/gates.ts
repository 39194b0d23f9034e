/** Which gate stands before a car state, and the notes that let it be passed unproven. Pure; puts nothing into words. */
import type { Assessment, GateState } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";
import type { CarState } from "../../core/sheet/run.js";

/** The newest note that stands on a gate: the step it guards was done unproven, with the reason. */
export const unprovenNote = (notes: VisitState["notes"], gate: string): string | undefined =>
  notes.findLast(({ value }) => value.point === gate)?.value.text;

/** The act a gate guards when it stands before every state in which the car is off the ground. */
const LIFTING = "lift";

/** Whether a gate guards this car state: by its name, or because the car is lifted for it. */
export const guards = (gate: { readonly guards: string }, state: Pick<CarState, "id" | "lifted">): boolean =>
  gate.guards === state.id || (gate.guards === LIFTING && state.lifted);

/**
 * Whether a noted reason lets one pass. Never while a gate is tripped, but for lifting: there the gate says where
 * not to lift, and another sound place is lifted at.
 */
export const mayBePassed = (gate: Pick<GateState, "state" | "guards">): boolean =>
  gate.state === "not cleared" || (gate.state === "tripped" && gate.guards === LIFTING);

/**
 * The gate that stands before a car state: tripped, or not cleared, and not noted as passed unproven. The worse one
 * first. Points of the gate's own set may always be answered, also in the state it guards: `point` names one; without
 * it nothing is let through, as for entering several replies in one step.
 */
export function gateBefore(
  assessment: Pick<Assessment, "gates">,
  notes: VisitState["notes"],
  state: Pick<CarState, "id" | "lifted">,
  point?: string,
): GateState | undefined {
  const standing = assessment.gates.filter(
    (gate) =>
      gate.state !== "cleared" &&
      guards(gate, state) &&
      !gate.first.some((one) => one.point === point) &&
      !(mayBePassed(gate) && unprovenNote(notes, gate.gate) !== undefined),
  );
  return standing.find((gate) => gate.state === "tripped") ?? standing[0];
}

/** Acts that belong to no car state: hands on what is hot, sparks in fuel vapour. */
const AT_HAND: readonly string[] = ["touch", "spark"];

/** Tripped gates over acts of the hand: they shut no point, so what they warn of stands over every one. */
export const atHand = ({ gates }: Pick<Assessment, "gates">): readonly GateState[] =>
  gates.filter((gate) => gate.state === "tripped" && AT_HAND.includes(gate.guards));

/**
 * Whether several replies may be entered in one step at a car state: they stand for what was looked at, and behind a
 * shut gate nothing was.
 */
export const mayEnterSeveral = (
  assessment: Pick<Assessment, "gates">,
  visit: Pick<VisitState, "notes" | "closed">,
  state: Pick<CarState, "id" | "lifted">,
): boolean => visit.closed === undefined && gateBefore(assessment, visit.notes, state) === undefined;
