/** What is claimed of a car as lines, in the order it was written down, and as a hand-over takes it. Pure. */
import type { Claim, ClaimSeen, PlanState } from "../../core/record/index.js";
import type { ClaimTold } from "../../core/report/index.js";

export interface ClaimLine {
  readonly id: string;
  readonly claim: Claim;
  /** Undefined: not asked for yet, or two people say different things. */
  readonly seen?: ClaimSeen | undefined;
  readonly differ: boolean;
}

export function claimLines({ claims, claimsSeen }: Pick<PlanState, "claims" | "claimsSeen">): readonly ClaimLine[] {
  const lines = [...claims].flatMap(([id, said]) => {
    const last = said.at(-1);
    if (last === undefined) return [];
    const seen = claimsSeen.get(id) ?? [];
    const differ = new Set(seen.map(({ value }) => value.word)).size > 1;
    const first = said.reduce((wall, { at }) => Math.min(wall, at.wall), Number.POSITIVE_INFINITY);
    return [{ id, claim: last.value, ...(differ ? {} : { seen: seen.at(-1)?.value }), differ, first }];
  });
  return lines.sort((a, b) => a.first - b.first).map(({ first: _, ...line }) => line);
}

export const claimsTold = (plan: Pick<PlanState, "claims" | "claimsSeen">): readonly ClaimTold[] =>
  claimLines(plan).map(({ id, claim: { text, from }, seen }) => ({
    id,
    words: text,
    from,
    ...(seen === undefined ? {} : { seen: { word: seen.word, words: seen.words } }),
  }));
