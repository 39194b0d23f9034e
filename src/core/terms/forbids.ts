/**
 * The shared files' two cautions over driving at all, and that the milder gives way to the harder. The one place where
 * their ids stand: whoever shuts a gate, warns before a no or tells a hand-over asks here.
 */

/** How far a caution keeps the car off the road: not driven at all, or no farther than to a workshop. */
export type Forbids = "driving" | "beyond-workshop";

/** The caution that forbids driving at all. */
export const DO_NOT_DRIVE = "cau.dont-drive";

const FORBIDS: ReadonlyMap<string, Forbids> = new Map<string, Forbids>([
  [DO_NOT_DRIVE, "driving"],
  ["cau.to-workshop", "beyond-workshop"],
]);

/** Undefined for every other caution. */
export const forbidsOf = (caution: string): Forbids | undefined => FORBIDS.get(caution);

interface Due {
  readonly caution: string;
}

export const isForbidden = (due: readonly Due[]): boolean =>
  due.some(({ caution }) => forbidsOf(caution) === "driving");

/** The cautions told in place of `cautions`, none twice, given all that stand over the car. */
export function standFor(due: readonly Due[], cautions: readonly string[]): readonly string[] {
  const isHard = isForbidden(due);
  return [...new Set(cautions.map((one) => (isHard && forbidsOf(one) === "beyond-workshop" ? DO_NOT_DRIVE : one)))];
}

/** Those of all that stand that are told: without the one a harder leaves no room for. */
export function toTell<One extends Due>(due: readonly One[]): readonly One[] {
  const isHard = isForbidden(due);
  return due.filter(({ caution }) => !(isHard && forbidsOf(caution) === "beyond-workshop"));
}
