/**
 * Spells during which the car cannot be moved: which jobs lie inside, what must come before the opening. Overlapping
 * blocks are one. Knows no times.
 */
import { type Problem, problem } from "../../terms/index.js";
import type { Gate, LiftBlock } from "./contract.js";
import { type Follows, followedBy, followersOf } from "./follow.js";

export interface Spell {
  readonly id: string;
  readonly open: string;
  readonly close: string;
  /** With its opening and closing. */
  readonly members: ReadonlySet<string>;
  readonly gate: Gate;
}

export interface Spells<A extends Follows> {
  readonly spells: readonly Spell[];
  /** The same activities, with what the blocks make them follow. */
  readonly activities: readonly A[];
  readonly problems: readonly Problem[];
}

/** The strictest of gates first: of blocks that are one, the strictest holds. */
const STRICT: readonly Gate[] = ["parts-in-hand", "just-in-time", "at-once"];

/**
 * Puts blocks over activities: opening → jobs → putting back; whatever must come between two of a block belongs to it;
 * whatever a job needs that needs a lift itself comes before the opening, or the two would wait for each other.
 */
export function spellsOf<A extends Follows & { readonly lift?: boolean | undefined }>(
  blocks: readonly LiftBlock[],
  activities: readonly A[],
): Spells<A> {
  const known = new Set(activities.map(({ id }) => id));
  const problems: Problem[] = [];
  const good = blocks.filter(({ id, open, jobs, close }) => {
    const unknown = [open, ...jobs, close].filter((job) => !known.has(job));
    problems.push(...unknown.map((named) => problem("schedule.block-unknown", {}, { block: id, named })));
    return known.has(open) && known.has(close);
  });
  const spells = merged(good.map((block) => spellOf(block, known)));
  let all: readonly A[] = good.reduce((list, block) => withEdges(list, spellOf(block, known)), activities);
  all = spells.reduce((list, spell) => withEdges(list, spell), all);
  const whole = merged(spells.map((spell) => withBetween(spell, all)));
  all = whole.reduce((list, spell) => withEdges(list, spell), all);
  for (const { open, members } of whole) all = liftsFirst(all, open, members, whole);
  return { spells: whole, activities: all, problems };
}

const spellOf = ({ id, open, jobs, close, gate = "parts-in-hand" }: LiftBlock, known: ReadonlySet<string>): Spell => ({
  id,
  open,
  close,
  members: new Set([open, ...jobs.filter((job) => known.has(job)), close]),
  gate,
});

/** Blocks that share a job are one: the largest gives its name, opening and closing. */
function merged(spells: readonly Spell[]): readonly Spell[] {
  const out: Spell[] = [];
  for (const spell of [...spells].sort((a, b) => b.members.size - a.members.size)) {
    let one = spell;
    for (let i = out.length - 1; i >= 0; i -= 1) {
      const other = out[i] as Spell;
      if (![...one.members].some((id) => other.members.has(id))) continue;
      const gate = STRICT.find((each) => each === one.gate || each === other.gate) ?? other.gate;
      one = { ...other, members: new Set([...other.members, ...one.members]), gate };
      out.splice(i, 1);
    }
    out.push(one);
  }
  return out;
}

function withBetween(spell: Spell, activities: readonly Follows[]): Spell {
  const before = followedBy(activities, spell.members);
  const after = followersOf(activities, spell.members);
  return { ...spell, members: new Set([...spell.members, ...[...before].filter((id) => after.has(id))]) };
}

function withEdges<A extends Follows>(activities: readonly A[], { open, close, members }: Spell): readonly A[] {
  return activities.map((activity) => {
    if (!members.has(activity.id) || activity.id === open) return activity;
    if (activity.id !== close) return following(activity, [open]);
    return following(
      activity,
      [...members].filter((id) => id !== close),
    );
  });
}

function liftsFirst<A extends Follows & { readonly lift?: boolean | undefined }>(
  activities: readonly A[],
  open: string,
  members: ReadonlySet<string>,
  spells: readonly Spell[],
): readonly A[] {
  const takesLift = (id: string, lift: boolean | undefined): boolean =>
    lift === true || spells.some((spell) => spell.members.has(id));
  const needed = followedBy(activities, members);
  const before = activities.filter(({ id, lift }) => needed.has(id) && !members.has(id) && takesLift(id, lift));
  return activities.map((activity) =>
    activity.id === open
      ? following(
          activity,
          before.map(({ id }) => id),
        )
      : activity,
  );
}

const following = <A extends Follows>(activity: A, more: readonly string[]): A => ({
  ...activity,
  preds: [...new Set([...activity.preds, ...more])],
});
