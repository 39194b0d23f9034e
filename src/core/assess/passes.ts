/** The three passes: discards, replies to findings, findings to effects. No pass reads its own output. */
import { forget } from "./changes.js";
import { underEveryChoice } from "./choices.js";
import { type ConditionRun, runCondition } from "./gates.js";
import type { AskedNode, GateNode, RuleNode } from "./nodes.js";
import { type Run, runRule } from "./run-rule.js";
import { isFound, type World } from "./world.js";

/** Faults the second pass concluded, by id: their places. */
export type Founds = ReadonlyMap<string, readonly string[]>;

/**
 * Runs every rule, gate condition and `asked-when` that has no record yet. Discards are asked for by the readings
 * they concern; rules of the first pass run here only to be listed. `before`: what was found last time.
 */
export function runPasses(world: World, before: Founds | undefined): Founds {
  const { site, records } = world;
  for (const node of site.rules)
    if (node.rule.pass < 3 && records[node.id] === undefined) records[node.id] = runRule(world, node);
  const founds = foundIn(world);
  if (before !== undefined) forget(changedFounds(world, before, founds), records, world.rawRecords);
  world.founds = founds;
  for (const node of site.rules)
    if (node.rule.pass === 3 && records[node.id] === undefined) records[node.id] = runRule(world, node);
  for (const node of site.gates) records[node.id] ??= runCondition(world, node);
  for (const node of site.asked) records[node.id] ??= runAsked(world, node);
  return founds;
}

function foundIn(world: World): Founds {
  const founds = new Map<string, string[]>();
  for (const node of world.site.rules) {
    const { fault } = node.rule.rule;
    if (node.rule.pass !== 2 || fault === undefined) continue;
    for (const { grade, place } of runOf(world, node).drafts) {
      if (grade === null) continue;
      const row = founds.get(fault);
      if (row === undefined) founds.set(fault, [place]);
      else if (!row.includes(place)) row.push(place);
    }
  }
  return founds;
}

function changedFounds(world: World, before: Founds, after: Founds): ReadonlySet<number> {
  const changed = new Set<number>();
  for (const node of world.site.nodes)
    if (
      node.kind === "found" &&
      isFound(world.site, before, node.name, node.place) !== isFound(world.site, after, node.name, node.place)
    )
      changed.add(node.id);
  return changed;
}

/** Whether a hidden point is to be asked: true under any choice. */
function runAsked(world: World, node: AskedNode) {
  const when = node.spot.point.askedWhen;
  const asked = underEveryChoice(world, () => when !== undefined && when(world, node.spot.place) === true);
  return { value: asked.answers.some((a) => a.value), reads: [...new Set(asked.reads)], problems: [] };
}

/** What a rule said; every rule has run by the time this is asked. */
export function runOf(world: World, node: RuleNode): Run {
  const kept = world.records[node.id];
  if (kept === undefined) throw new Error(`rule ${node.rule.rule.id} has not run`);
  // records of rule nodes are only ever written by runRule
  return kept.value as Run;
}

/** What a gate condition said. */
export function conditionOf(world: World, node: GateNode): ConditionRun {
  const kept = world.records[node.id];
  if (kept === undefined) throw new Error(`gate ${node.gate.id} has not run`);
  // records of gate nodes are only ever written by runCondition
  return kept.value as ConditionRun;
}
