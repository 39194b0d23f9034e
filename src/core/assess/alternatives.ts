/** Several replies that stand in one slot, as the alternatives they are. Chooses none. */
import type { Standing } from "./understand.js";

/**
 * Equal values are one. A non-answer in one car state gives way to an answer in another: there it could be looked
 * at. Sorted, so that the order replies arrive in changes nothing.
 */
export function alternatives(row: readonly Standing[]): readonly Standing[] {
  const answered = row.some((s) => s.nonAnswer === undefined);
  const answeredStates = new Set(row.filter((s) => s.nonAnswer === undefined).map((s) => s.key.state));
  const kept = row.filter((s) => s.nonAnswer === undefined || !answered || answeredStates.has(s.key.state));
  const sorted = [...kept].sort((a, b) => compareText(a.key.state, b.key.state) || compareText(a.id, b.id));
  const seen = new Set<string>();
  return sorted.filter((s) => {
    const text = JSON.stringify(s.value);
    if (seen.has(text)) return false;
    seen.add(text);
    return true;
  });
}
const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
