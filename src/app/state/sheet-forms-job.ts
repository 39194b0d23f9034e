/**
 * What a job's form does: its parts in order, and which words of parts its change needs or leaves unused. Pure.
 */
import type { DraftItem } from "../../core/sheet/draft.js";
import type { Job, Sheet } from "../../core/sheet/run.js";
import { listAt, moved, namesAt, textAt, withAt } from "./sheet-forms.js";

export const SECOND_LOOKS = ["brakes", "steering", "wheels", "fuel"] as const;

/** How many parts a job names; each stands at its place in the list. */
export const partCount = (is: DraftItem): number => listAt(is, ["parts"]).length;

const withParts = (is: DraftItem, parts: readonly unknown[]): DraftItem =>
  withAt(is, ["parts"], parts.length === 0 ? undefined : parts);
export const withPart = (is: DraftItem, part: string): DraftItem => withParts(is, [...listAt(is, ["parts"]), { part }]);
export const withoutPart = (is: DraftItem, index: number): DraftItem =>
  withParts(is, listAt(is, ["parts"]).toSpliced(index, 1));
export const partMoved = (is: DraftItem, from: number, to: number): DraftItem =>
  withParts(is, moved(listAt(is, ["parts"]), from, to));

const namedBy = ({ parts = [], consumables = [] }: Pick<Job, "parts" | "consumables">): readonly string[] => [
  ...parts.flatMap(({ part, set }) => (set === undefined ? [part] : [part, set])),
  ...consumables,
];
const namedIn = (is: DraftItem): readonly string[] => [
  ...listAt(is, ["parts"]).flatMap((_, i) => ["part", "set"].map((key) => textAt(is, ["parts", i, key]))),
  ...namesAt(is, ["consumables"]),
];

/** Parts whose words nothing would show any more once a job that named them no longer does. */
export function partsLeft(sheet: Sheet, job: string, before: DraftItem, after: DraftItem): readonly string[] {
  const still = new Set([...sheet.jobs.flatMap((one) => (one.id === job ? [] : namedBy(one))), ...namedIn(after)]);
  return [...new Set(namedIn(before))].filter((part) => part !== "" && !still.has(part));
}

/** Minutes that do not rise from low to high. */
export function minutesAstray(is: DraftItem, path: readonly (string | number)[]): boolean {
  const minutes = listAt(is, path).map(Number);
  return minutes.some((one, i) => i > 0 && one < (minutes[i - 1] ?? 0));
}
