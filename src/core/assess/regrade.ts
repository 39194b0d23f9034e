/** Grades given by hand: up freely, down only with a reason. Works on a finished assessment. */

import { type Grade, levelOf, type Problem, problem } from "../terms/index.js";
import type { Assessment, CautionDue, Fault, GateState, Regrade, TripCause } from "./contract.js";
import { compareCautions } from "./gates.js";

/**
 * The assessment with grades set by hand. A lowering without a reason and a grade on a fault that is not found are
 * left out and told in `problems`. Two that differ both stand: the worse rules. Gates follow the new grades.
 */
export function applyRegrades(assessment: Assessment, regrades: readonly Regrade[]): Assessment {
  const problems: Problem[] = [];
  const at = (r: { readonly fault: string; readonly place: string }) => `${r.fault}@${r.place}`;
  const faultsAt = new Set(assessment.faults.map(at));
  for (const r of regrades)
    if (!faultsAt.has(at(r)))
      problems.push(problem("assess.regrade-no-fault", {}, { fault: r.fault, place: r.place, id: r.id }));
  const faults = assessment.faults.map((fault) =>
    regraded(
      fault,
      regrades.filter((r) => at(r) === at(fault)),
      problems,
    ),
  );
  const isSame = faults.every((f, i) => f === assessment.faults[i]);
  if (isSame)
    return problems.length === 0 ? assessment : { ...assessment, problems: [...assessment.problems, ...problems] };
  const sorted = [...faults].sort((a, b) => levelOf(b.grade) - levelOf(a.grade));
  const calmed = new Set(
    faults
      .filter((f) => f.byHand !== undefined && f.byHand.was === "dangerous" && f.grade !== "dangerous")
      .flatMap((f) => f.rules),
  );
  const gates = assessment.gates.map((gate) => (gate.drives ? driving(gate, faults, calmed) : gate));
  return {
    ...assessment,
    faults: sorted,
    gates,
    cautions: cautionsAfter(assessment.cautions, gates),
    problems: [...assessment.problems, ...problems],
  };
}

/** Cautions of rules stay; those of gates follow the gates. */
function cautionsAfter(before: readonly CautionDue[], gates: readonly GateState[]): readonly CautionDue[] {
  const ids = new Set(gates.map((g) => g.gate));
  const due = new Map<string, CautionDue>();
  for (const c of before) {
    const because = c.because.filter((b) => !ids.has(b));
    if (because.length > 0) due.set(c.caution, { ...c, because });
  }
  for (const gate of gates.filter((g) => g.state === "tripped"))
    gate.cautions.forEach((caution, i) => {
      const row = due.get(caution) ?? { caution, signal: gate.signals[i] ?? "danger", places: [], because: [] };
      due.set(caution, { ...row, because: [...row.because, gate.gate] });
    });
  return [...due.values()].sort(compareCautions);
}

function regraded(fault: Fault, regrades: readonly Regrade[], problems: Problem[]): Fault {
  const standing = regrades.filter((r) => {
    const isLower = levelOf(r.grade) < levelOf(fault.grade);
    if (!isLower || r.reason.trim() !== "") return true;
    problems.push(
      problem("assess.regrade-no-reason", {}, { fault: fault.fault, place: fault.place, grade: r.grade, id: r.id }),
    );
    return false;
  });
  const worst = standing.reduce<Regrade | undefined>(
    (w, r) => (w === undefined || levelOf(r.grade) > levelOf(w.grade) ? r : w),
    undefined,
  );
  if (worst === undefined || worst.grade === fault.grade) return fault;
  const was: Grade = fault.grade;
  return { ...fault, grade: worst.grade, byHand: { was, reason: worst.reason, id: worst.id } };
}

/** A fault lowered by hand no longer shuts the road, nor do the rules that found it; its cautions are still told. */
function driving(gate: GateState, faults: readonly Fault[], calmed: ReadonlySet<string>): GateState {
  const kept = gate.trippedBy.filter((c) => c.kind === "condition" || (c.kind === "caution" && !calmed.has(c.rule)));
  const dangerous = faults
    .filter((f) => f.grade === "dangerous")
    .map((f): TripCause => ({ kind: "dangerous", fault: f.fault, place: f.place }));
  const trippedBy = [...kept, ...dangerous];
  return { ...gate, trippedBy, state: trippedBy.length > 0 ? "tripped" : gate.otherwise };
}
