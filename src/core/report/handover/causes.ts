/**
 * Which findings a gate or a caution hangs on, and whether on them alone. One place for app and terminal: what hangs on
 * findings alone opens when they are put right, and opening wrongly could hurt somebody. Knows no words.
 */
import type { Assessment, CautionDue, Finding, GateState, Opened, TripCause } from "../../assess/contract.js";
import type { FaultRef } from "./input.js";

export interface Causes {
  readonly faults: readonly FaultRef[];
  /** Nothing but these findings is behind it: no condition of its own, no rule that left no finding. */
  readonly onlyThose: boolean;
}

type Judged = Pick<Assessment, "findings" | "gates">;

const NOTHING_ELSE: Causes = { faults: [], onlyThose: true };
const SOMETHING_ELSE: Causes = { faults: [], onlyThose: false };

/** Several behind one thing: it hangs on findings alone where each of them does. */
function together(all: readonly Causes[]): Causes {
  const faults = new Map(all.flatMap((one) => one.faults).map((one) => [`${one.fault}@${one.place}`, one]));
  return { faults: [...faults.values()], onlyThose: faults.size > 0 && all.every(({ onlyThose }) => onlyThose) };
}

/** The findings a rule left; a rule that left none, or left something else than a finding, is something else. */
function behindRule(findings: readonly Finding[]): Causes {
  if (findings.length === 0) return SOMETHING_ELSE;
  return findings
    .map(({ fault, place }) => (fault === null ? SOMETHING_ELSE : { faults: [{ fault, place }], onlyThose: true }))
    .reduce((a, b) => ({ faults: [...a.faults, ...b.faults], onlyThose: a.onlyThose && b.onlyThose }), NOTHING_ELSE);
}

function behindTrip(cause: TripCause, { findings }: Judged): Causes {
  switch (cause.kind) {
    case "condition":
      return SOMETHING_ELSE;
    case "dangerous":
      return { faults: [{ fault: cause.fault, place: cause.place }], onlyThose: true };
    case "caution":
      return behindRule(findings.filter(({ rule, place }) => rule === cause.rule && place === cause.place));
  }
}

/** What trips a gate. One that is not tripped hangs on nothing. */
export const causesOfGate = ({ trippedBy }: Pick<GateState, "trippedBy">, judged: Judged): Causes =>
  together(trippedBy.map((cause) => behindTrip(cause, judged)));

/** What a caution comes from: rules by the findings they left, tripped gates by what trips them. */
export function causesOfCaution({ caution, because }: Pick<CautionDue, "caution" | "because">, judged: Judged): Causes {
  const { findings, gates } = judged;
  return together(
    because.map((id) => {
      const gate = gates.find((one) => one.gate === id);
      if (gate !== undefined) return causesOfGate(gate, judged);
      return behindRule(findings.filter((one) => one.rule === id && one.cautions.includes(caution)));
    }),
  );
}

/** Whether a complaint, a finding or a check that is not cleared waits for a point at a place. */
export function awaitedIn({
  asked,
  gates,
}: Pick<Assessment, "asked" | "gates">): (of: Pick<Opened, "point" | "place">) => boolean {
  const spotOf = ({ point, place }: Pick<Opened, "point" | "place">): string => `${point}@${place}`;
  const waited = new Set(gates.flatMap(({ state, first }) => (state === "cleared" ? [] : first.map(spotOf))));
  for (const one of asked) if (one.openedBy.length > 0) waited.add(spotOf(one));
  return (of) => waited.has(spotOf(of));
}
