/** Runs a question under every choice among replies that differ. Knows no rule. */
import { FIRST } from "./ledger.js";
import type { World } from "./world.js";

/** More choices than this are not gone through: the outcome is then not known. */
export const MOST_CHOICES = 64;

/** Which standing value counts, by node of the slot or fact. */
export type Choice = ReadonlyMap<number, number>;

export interface UnderChoice<T> {
  readonly choice: Choice;
  readonly value: T;
}
/** What a question gave; `tooMany`: nodes with differing replies, more than could be gone through. */
export interface Answered<T> {
  readonly answers: readonly UnderChoice<T>[];
  readonly tooMany: readonly number[];
  readonly reads: readonly number[];
}

const NONE: readonly number[] = [];

/** Asks once where replies agree, else once for every choice among those the question looks at. */
export function underEveryChoice<T>(world: World, ask: () => T): Answered<T> {
  world.met.clear();
  if (world.choice !== FIRST) world.choose(FIRST);
  const first = world.apart(ask);
  for (const p of first.problems) world.problems.push(p);
  if (!first.torn || world.met.size === 0)
    return { answers: [{ choice: FIRST, value: first.value }], tooMany: NONE, reads: first.reads };
  const reads = new Set(first.reads);
  for (;;) {
    const nodes = [...world.met.keys()].sort((a, b) => a - b);
    const count = nodes.reduce((n, id) => n * (world.met.get(id) ?? 1), 1);
    if (count > MOST_CHOICES) {
      world.choose(FIRST);
      return { answers: [], tooMany: nodes, reads: [...reads] };
    }
    const answers = choicesOf(nodes, world.met).map((choice): UnderChoice<T> => {
      world.choose(choice);
      const kept = world.apart(ask);
      for (const read of kept.reads) reads.add(read);
      return { choice, value: kept.value };
    });
    // a choice can lead to replies no other looked at: then all are gone through again with those
    if (world.met.size === nodes.length) {
      world.choose(FIRST);
      return { answers, tooMany: NONE, reads: [...reads] };
    }
  }
}

function choicesOf(nodes: readonly number[], sizes: ReadonlyMap<number, number>): readonly Choice[] {
  let choices: Map<number, number>[] = [new Map()];
  for (const node of nodes) {
    const size = sizes.get(node) ?? 1;
    choices = choices.flatMap((c) => Array.from({ length: size }, (_, i) => new Map(c).set(node, i)));
  }
  return choices;
}
