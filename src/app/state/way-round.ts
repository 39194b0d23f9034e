/** The stops of a visit as one walks round the car, whatever order they are looked at in. Pure. */
import { rankStates } from "../../core/sheet/run.js";
import type { Looking } from "./round-view.js";
import type { Stop } from "./stops.js";

/** Each place of a car state once and in walking order, in whatever order the points are asked. */
export function wayRound({ known, tree }: Pick<Looking, "known" | "tree">, stops: readonly Stop[]): readonly Stop[] {
  const byPlace = new Map<string, Stop>();
  for (const stop of stops) {
    const key = `${stop.state} ${stop.place}`;
    const there = byPlace.get(key);
    const asked = [...(there?.asked ?? []), ...stop.asked];
    byPlace.set(key, { ...stop, asked, done: (there?.done ?? 0) + stop.done });
  }
  const ranks = rankStates(known.common.states);
  const rank = (state: string): number => ranks.get(state) ?? ranks.size;
  return [...byPlace.values()].sort(
    (a, b) => rank(a.state) - rank(b.state) || tree.order(a.place) - tree.order(b.place),
  );
}
