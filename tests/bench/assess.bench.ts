/**
 * How long assessing takes beside three-valued closures written by hand, and beside json-rules-engine, for the same
 * rules and replies. All three must say the same.
 */
import { deepStrictEqual } from "node:assert/strict";
import { assess, reassess, start } from "../../src/core/assess/index.js";
import { byHand, loadEngine, loadVisit, tapped } from "./assess-load.js";
import { peerEngine } from "./assess-peer.js";
import { type Bench, type BenchRow, interleaved, interleavedAwaited } from "./row.js";

const GOAL = "full assess of 2,000 replies ≤ 5 × hand-written three-valued closures";

const PEER_GOAL = "full assess ≥ 50 × faster than json-rules-engine on the same rules";

/** What a contender says fires, in one order. */
const sorted = (fired: readonly string[]): readonly string[] => [...fired].sort();

/** Both contenders as they run in a visit that has been open for a while; the engine's first calls are timed by nobody. */
function warm(...works: readonly (() => unknown)[]): void {
  for (const work of works) {
    const until = performance.now() + 500;
    while (performance.now() < until) work();
  }
}

export const bench: Bench = async () => {
  const engine = loadEngine();
  const peer = peerEngine();
  const rows: BenchRow[] = [];
  for (const [what, share] of [
    ["every reply given", 1],
    ["half of the replies given", 0.5],
  ] as const) {
    const input = loadVisit(share);
    const ours = sorted(assess(engine, input).findings.map(({ rule, place }) => `${rule}@${place}`));
    deepStrictEqual(sorted(byHand(input).fired), ours, "closures by hand say something else");
    deepStrictEqual(sorted(await peer(input)), ours, "json-rules-engine says something else");
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
    rows.push({
      what: `The same beside json-rules-engine, ${what}, ${ours.length} rules fire in both`,
      unit: "ms",
      figures: await interleavedAwaited({
        leadlamp: () => assess(engine, input),
        "json-rules-engine": () => peer(input),
      }),
      goal: PEER_GOAL,
      note: "json-rules-engine only says what fires: no third value, no because",
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
