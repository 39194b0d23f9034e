/**
 * Whether a copy holds what it says it is. A file of one car or visit that holds more, or less, was put together by
 * somebody else. The journal counts, not the claim.
 */
import { type Problem, problem } from "../../terms/index.js";
import type { Logged } from "../contract.js";
import { HOUSE, isStub, planStream, streamKind } from "../identity.js";
import { MANIFEST } from "./layout.js";
import type { CopyCounts, CopyManifest } from "./manifest.js";

const ofKind = (streams: Iterable<string>, kind: string): readonly string[] =>
  [...streams].filter((stream) => streamKind(stream) === kind);

/** How much of the record a log holds. */
export function countsOf(log: readonly Logged[]): CopyCounts {
  const streams = new Set(log.map(({ stream }) => stream));
  const of = (kind: string): number => ofKind(streams, kind).length;
  return { cars: of("car"), visits: of("visit"), entries: log.length, stubs: log.filter(isStub).length };
}

/** Nothing of the house, of a second car, or of a plan whose visit is not there. */
function isOfOneCar(log: readonly Logged[]): boolean {
  const streams = new Set(log.map(({ stream }) => stream));
  const plans = new Set(ofKind(streams, "visit").map(planStream));
  return (
    !streams.has(HOUSE) &&
    ofKind(streams, "car").length <= 1 &&
    ofKind(streams, "plan").every((plan) => plans.has(plan))
  );
}

/**
 * Why a copy is not what it says; undefined where it is. A copy of everything may hold ever so little: one of a phone
 * with a single visit is no more than that visit. Codes: files.miscounted {name}, files.claims {holds}.
 */
export function claimFault(
  { holds, counts }: Pick<CopyManifest, "holds" | "counts">,
  log: readonly Logged[],
): Problem | undefined {
  const found = countsOf(log);
  const wrong = (["cars", "visits", "entries", "stubs"] as const).find((one) => counts[one] !== found[one]);
  if (wrong !== undefined)
    return problem("files.miscounted", { file: MANIFEST, path: `manifest.counts.${wrong}` }, { name: wrong });
  const isSo =
    holds === "visit"
      ? found.visits === 1 && isOfOneCar(log)
      : holds === "car"
        ? found.cars === 1 && isOfOneCar(log)
        : true;
  return isSo ? undefined : problem("files.claims", { file: MANIFEST, path: "manifest.holds" }, { holds });
}
