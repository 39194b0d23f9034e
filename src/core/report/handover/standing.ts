/**
 * What of a judged visit still stands when it is handed over: findings that were not put right and checked, gates and
 * cautions that hang on others. Anything not known stands. Knows no words and no order.
 */
import { toTell } from "../../terms/index.js";
import type { CautionTold, DoneTold, FaultRef, FaultTold, GateTold, HandoverInput } from "./input.js";

const keyOf = ({ fault, place }: FaultRef): string => `${fault}@${place}`;

/** Whether two name the same finding. */
export const sameFault = (a: FaultRef, b: FaultRef): boolean => a.fault === b.fault && a.place === b.place;

/** Done, and somebody looked or measured again and found it right. Done alone settles nothing. */
export const isSettled = ({ mended }: Pick<FaultTold, "mended">): boolean => mended?.checked === true;

export interface Standing {
  readonly faults: readonly FaultTold[];
  /** Whether something that hangs on these findings still stands: with none named it does. */
  readonly hangs: (on: readonly FaultRef[]) => boolean;
}

export function standingOf(faults: readonly FaultTold[]): Standing {
  const settled = new Set(faults.filter(isSettled).map(keyOf));
  return {
    faults: faults.filter((one) => !isSettled(one)),
    hangs: (on) => on.length === 0 || on.some((one) => !settled.has(keyOf(one))),
  };
}

/** A tripped gate opens to what it would be otherwise only where every finding that trips it is settled. */
export function gateState(gate: GateTold, { hangs }: Standing): GateTold["state"] {
  if (gate.state !== "tripped" || !gate.onlyThose || hangs(gate.faults)) return gate.state;
  return gate.otherwise;
}

/** Cautions not all of whose findings are settled; of those over driving the hardest that still stands. */
export const standingCautions = (cautions: readonly CautionTold[], { hangs }: Standing): readonly CautionTold[] =>
  toTell(cautions.filter(({ faults }) => hangs(faults)));

/** Not answered, in need of something first, or answered by findings that are no longer there. */
export const openComplaints = ({
  complaints,
  faults,
}: Pick<HandoverInput, "complaints" | "faults">): HandoverInput["complaints"] =>
  complaints.filter(
    ({ answer }) =>
      answer === undefined ||
      answer.is === "needs" ||
      answer.is === "not-read" ||
      // Found in words only rests on no finding that could be gone.
      (answer.is === "found" &&
        answer.faults.length > 0 &&
        !answer.faults.some((one) => faults.some((of) => sameFault(one, of)))),
  );

/** How many points nobody answered, or answered in a way that cannot count. */
export const unseenCount = ({ notSeen, sheets }: Pick<HandoverInput, "notSeen" | "sheets">): number =>
  notSeen.length + sheets.reduce((sum, { notChecked }) => sum + notChecked, 0);

/** Work that asks for somebody else's look, or for a look at all, and has had none. */
export const isUnlooked = ({ look, unseen }: DoneTold): boolean =>
  (look.needed && look.is === "none") || unseen.length > 0;
