/** How long assessing takes beside three-valued closures written by hand for the same rules and replies. */
import { assess, reassess, start } from "../../src/core/assess/index.js";
import { byHand, loadEngine, loadVisit, tapped } from "./assess-load.js";
import { type Bench, type BenchRow, interleaved } from "./row.js";

const GOAL = "full assess of 2,000 replies ≤ 5 × hand-written three-valued closures";

/** Both contenders as they run in a visit that has been open for a while; the engine's first calls are timed by nobody. */
function warm(...works: readonly (() => unknown)[]): void {
  for (const work of works) {
    const until = performance.now() + 500;
    while (performance.now() < until) work();
  }
}

export const bench: Bench = async () => {
  const engine = loadEngine();
  const rows: BenchRow[] = [];
  for (const [what, share] of [
    ["every reply given", 1],
    ["half of the replies given", 0.5],
  ] as const) {
    const input = loadVisit(share);
    warm(
      () => assess(engine, input),
      () => byHand(input),
    );
    rows.push({
      what: `Full assess, ${input.replies.length} replies, 2,500 rules at their places, ${what}`,
      unit: "ms",
      figures: interleaved({ leadlamp: () => assess(engine, input), "closures by hand": () => byHand(input) }),
      goal: GOAL,
      note: "ours also gives grades with their because, faults, gates, cautions, points and coverage",
    });
  }
  const begun = loadVisit();
  let session = start(engine, begun);
  let n = 0;
  const taps = Array.from({ length: 64 }, (_, i) => tapped(begun, i));
  const next = () => {
    n += 1;
    return taps[n % taps.length] ?? begun;
  };
  rows.push({
    what: "One reply changed among 2,000",
    unit: "ms",
    figures: interleaved({
      "leadlamp, carried on": () => {
        session = reassess(session, next());
        return session;
      },
      "leadlamp, from nothing": () => assess(engine, next()),
      "closures by hand, from nothing": () => byHand(next()),
    }),
  });
  return rows;
};
