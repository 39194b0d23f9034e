/** Holds one limit of a sheet against its row of facts. Knows no sheet and runs no test. */
import type { Limit } from "../../src/core/sheet/run.js";
import { GRADES } from "../../src/core/terms/index.js";
import type { LimitFact, Sense } from "./limit-fact.js";

const SENSES: Readonly<Record<Limit["direction"], Sense>> = {
  over: ">",
  "at-or-over": "≥",
  under: "<",
  "at-or-under": "≤",
};
/** Two figures are one when they differ by less than this share. */
const SAME = 1e-9;

/** What the limit says otherwise than its facts, in words; empty when nothing. */
export function differences(limit: Limit, fact: LimitFact): readonly string[] {
  const told: string[] = [];
  // The notes say per cent where the sheets reckon with shares.
  const share = fact.unit === "%" && limit.unit === "1";
  if (!share && limit.unit !== fact.unit) told.push(`unit ${limit.unit}, not ${fact.unit}`);
  if (SENSES[limit.direction] !== fact.sense) told.push(`${limit.direction}, not ${fact.sense}`);
  if (limit.basis !== fact.rests.basis) told.push(`basis ${limit.basis}, not ${fact.rests.basis}`);
  if (!limit.source.toLowerCase().includes(fact.rests.named.toLowerCase()))
    told.push(`its source does not name ${fact.rests.named}`);
  const edges = fact.ours?.edges ?? fact.edges;
  for (const [i, grade] of GRADES.entries()) {
    const wanted = edges[i] ?? null;
    const edge = wanted !== null && share ? wanted / 100 : wanted;
    const found = limit.bands[grade] ?? null;
    const same =
      edge === null || found === null
        ? edge === found
        : Math.abs(edge - found) <= SAME * Math.max(Math.abs(edge), Math.abs(found));
    if (!same) told.push(`${grade} ${found ?? "none"}, not ${edge ?? "none"}`);
  }
  return told;
}
