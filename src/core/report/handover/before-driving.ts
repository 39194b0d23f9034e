/**
 * What a finding means for driving, in the order of weight: told to an owner in front of its because, so that no wording
 * of a sheet sounds milder than the grade. Knows no words.
 */
import type { CautionTold, FaultTold } from "./input.js";
import type { BeforeDriving, NumberedJob } from "./model.js";
import { isSettled, sameFault } from "./standing.js";

/** Undefined: settled, or nothing about it speaks against driving until it is mended. */
export function beforeDriving(
  of: FaultTold,
  work: readonly NumberedJob[],
  cautions: readonly CautionTold[],
): BeforeDriving | undefined {
  if (isSettled(of)) return undefined;
  const forbidden = cautions.filter(({ faults }) => faults.some((one) => sameFault(one, of)));
  const due = work.filter(({ doneOn }) => doneOn === undefined).map(({ byWhen }) => byWhen.class);
  const isStill = of.grade === "dangerous" || of.mustStand || due.includes(0);
  if (isStill || forbidden.some(({ forbids }) => forbids === "driving")) return "do-not-drive";
  if (due.includes(1)) return "next-drive";
  if (forbidden.some(({ forbids }) => forbids === "beyond-workshop")) return "workshop-only";
  return of.grade === "major" ? "normal-use" : undefined;
}
