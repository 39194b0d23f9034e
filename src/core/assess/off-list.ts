/**
 * Findings off the list: what a person saw that no point asks for. Laid beside what the rules found, in a finished
 * assessment. Changes nothing the rules said.
 */

import { DO_NOT_DRIVE, levelOf, offListId } from "../terms/index.js";
import type { Assessment, CautionDue, Fault, Finding, GateState, OffList } from "./contract.js";
import { CONSEQUENCE, compareFaults, LIKELIHOOD } from "./faults.js";
import { compareCautions, drivingCauses } from "./gates.js";

/** The assessment with these beside it. Findings, faults and points of the rules stay as they are. */
export function addOffList(assessment: Assessment, seen: readonly OffList[]): Assessment {
  if (seen.length === 0) return assessment;
  const findings = seen.map(findingOf);
  const faults = [...grouped(seen).values()].map(faultOf);
  const gates = assessment.gates.map((gate) => (gate.drives ? shut(gate, faults, findings) : gate));
  return {
    ...assessment,
    findings: [...assessment.findings, ...findings].sort((a, b) => levelOf(b.grade) - levelOf(a.grade)),
    faults: [...assessment.faults, ...faults].sort(compareFaults),
    gates,
    cautions: cautionsWith(assessment, gates, findings),
  };
}

/** By name and place: mendings that differ about the place are two. */
function grouped(seen: readonly OffList[]): ReadonlyMap<string, readonly [OffList, ...OffList[]]> {
  const groups = new Map<string, [OffList, ...OffList[]]>();
  for (const one of seen) {
    const at = `${one.name}@${one.place}`;
    const group = groups.get(at);
    if (group) group.push(one);
    else groups.set(at, [one]);
  }
  return groups;
}

const cautionsOf = (one: OffList): readonly string[] =>
  one.mustStand || one.grade === "dangerous" ? [DO_NOT_DRIVE] : [];

function findingOf(one: OffList): Finding {
  const { place, grade, words, reason, by, at, id } = one;
  return {
    rule: offListId(one.name),
    fault: offListId(one.name),
    place,
    grade,
    sure: "certain",
    provisional: false,
    close: false,
    atLeast: false,
    differ: [],
    because: [{ kind: "own-words", words, reason, by, at, id }],
    jobs: one.hasJob ? [offListId(one.name)] : [],
    cautions: cautionsOf(one),
    opens: [],
  };
}

function faultOf(group: readonly [OffList, ...OffList[]]): Fault {
  const worst = group.reduce((bad, one) => (levelOf(one.grade) > levelOf(bad.grade) ? one : bad));
  const id = offListId(worst.name);
  return {
    fault: id,
    place: worst.place,
    grade: worst.grade,
    sure: "certain",
    close: false,
    provisional: false,
    rules: [id],
    jobs: group.some((one) => one.hasJob) ? [id] : [],
    cautions: [...new Set(group.flatMap(cautionsOf))],
    consequence: CONSEQUENCE[worst.grade],
    likelihood: LIKELIHOOD,
    mustStand: group.some((one) => one.mustStand),
    position: Number.MAX_SAFE_INTEGER,
    settle: [],
  };
}

function shut(gate: GateState, faults: readonly Fault[], findings: readonly Finding[]): GateState {
  const causes = drivingCauses(faults, findings);
  if (causes.length === 0) return gate;
  const first = gate.state === "tripped" ? gate.first : [];
  return { ...gate, state: "tripped", trippedBy: [...gate.trippedBy, ...causes], first, missingSheets: [] };
}

/** What was due before, what these findings say, and what the gates they shut tell. */
function cautionsWith(
  before: Assessment,
  gates: readonly GateState[],
  findings: readonly Finding[],
): readonly CautionDue[] {
  const due = new Map(before.cautions.map((one) => [one.caution, one]));
  const add = (caution: string, signal: CautionDue["signal"], because: string, places: readonly string[]): void => {
    const row = due.get(caution) ?? { caution, signal, places: [], because: [] };
    due.set(caution, {
      ...row,
      places: [...new Set([...row.places, ...places])],
      because: [...new Set([...row.because, because])],
    });
  };
  for (const one of findings) for (const caution of one.cautions) add(caution, "danger", one.rule, [one.place]);
  const places = findings.filter((one) => one.cautions.length > 0).map((one) => one.place);
  for (const [index, gate] of gates.entries()) {
    if (gate === before.gates[index]) continue;
    for (const [at, caution] of gate.cautions.entries()) add(caution, gate.signals[at] ?? "danger", gate.gate, places);
  }
  return [...due.values()].sort(compareCautions);
}
