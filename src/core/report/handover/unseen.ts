/**
 * What was not looked at, put together so that it can be read: what is of weight by name, the rest as counts of a sheet
 * and a reason. Every point stands in exactly one row. Knows no words.
 */
import { levelOf } from "../../terms/index.js";
import type { NotSeen } from "./input.js";

/** One point, not looked at for one reason, with every place and car state it waits at. */
export interface UnseenPoint {
  readonly one: NotSeen;
  readonly at: readonly NotSeen[];
}
/** What of one sheet was not looked at for one reason. */
export interface UnseenGroup {
  /** Empty where nobody knows which sheet asks for it. */
  readonly sheet: string;
  readonly one: NotSeen;
  readonly all: readonly NotSeen[];
  /** The worst any of them could have shown. */
  readonly worst: NotSeen["couldDecide"];
}
interface Unseen {
  readonly named: readonly UnseenPoint[];
  readonly rest: readonly UnseenGroup[];
}

const DANGEROUS = levelOf("dangerous");

/** What nobody has worked out counts as the worst. */
export const weightOf = ({ couldDecide }: Pick<NotSeen, "couldDecide">): number =>
  couldDecide === undefined ? DANGEROUS : couldDecide === "nothing" ? 0 : levelOf(couldDecide);

/** What nobody has worked out counts as that. */
export const couldShowDanger = (one: NotSeen): boolean => weightOf(one) >= DANGEROUS;

/**
 * Named by itself: what could have shown a danger, what a complaint, a finding or a check waits for, and what could stop
 * the engine being run or the car being driven.
 */
export const isOfWeight = (one: NotSeen): boolean => one.awaited === true || couldShowDanger(one);

const reasonOf = ({ is, nonAnswer, reason, words }: NotSeen): string =>
  JSON.stringify([is, nonAnswer ?? "", reason ?? "", words ?? ""]);

export function unseenOf(notSeen: readonly NotSeen[]): Unseen {
  const named = grouped(notSeen.filter(isOfWeight), (one) => [one.point, one.title, reasonOf(one)].join("\n"));
  const rest = grouped(
    notSeen.filter((one) => !isOfWeight(one)),
    (one) => [one.sheet ?? "", reasonOf(one)].join("\n"),
  );
  return {
    named: named.map(([one, ...others]) => ({ one, at: [one, ...others] })),
    rest: rest
      .map(([one, ...others]): UnseenGroup => {
        const all = [one, ...others];
        const worst = all.reduce((a, b) => (weightOf(b) > weightOf(a) ? b : a)).couldDecide;
        return { sheet: one.sheet ?? "", one, all, worst };
      })
      .toSorted((a, b) => weightOf({ couldDecide: b.worst }) - weightOf({ couldDecide: a.worst })),
  };
}

type Some = readonly [NotSeen, ...NotSeen[]];

function grouped(all: readonly NotSeen[], keyOf: (one: NotSeen) => string): readonly Some[] {
  const groups = new Map<string, [NotSeen, ...NotSeen[]]>();
  for (const one of all) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()];
}

/** How many of them there are at each kind of place, in the order they come; undefined: on the car as a whole. */
export function kindsOf(all: readonly NotSeen[]): readonly (readonly [kind: string | undefined, count: number])[] {
  const counts = new Map<string | undefined, number>();
  for (const { kind } of all) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts];
}
