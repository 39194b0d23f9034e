/**
 * What is asked in order of value against the clock: what can make one walk away first, in danger or in papers, and
 * within that place by place; what the time is not enough for comes last. Changes the order only: everything asked stays asked.
 */
import type { Asked } from "./contract.js";
import { WALK_AWAY, type Worth } from "./worth.js";

/** Seconds, estimated by ourselves: going to another place, opening or closing what a car state wants, a drive. */
export const WAY = { place: 15, state: 60, drive: 600 };
/** The car state in which the car is driven (AS38 names it too). */
export const ROAD = "w4-road";

export interface ValueOrder {
  readonly asked: readonly Asked[];
  /** How many of them, at the end, the time is not enough for. */
  readonly beyond: number;
  /** Those a gate waits for or that can decide a major or dangerous fault, the worthiest first. */
  readonly gravest: readonly Asked[];
}

interface Row {
  readonly one: Asked;
  readonly worth: Worth;
  /** Walking position of its car state and of its place in it. */
  readonly state: number;
  readonly place: number;
  readonly lap: number;
  /** 1 where the car must be off the ground: at a viewing there is seldom a lift. */
  readonly lifted: number;
}

const NOTHING: Worth = { awaited: 0, decides: 0, alone: 0, work: 0, look: 0 };

/** A point with those answered in its entry: as grave as the gravest, as long as all together. */
function worthAt({ point, with: along }: Asked, worths: ReadonlyMap<string, Worth>): Worth {
  return [point, ...along]
    .map((id) => worths.get(id) ?? NOTHING)
    .reduce((sum, one) => ({
      awaited: Math.max(sum.awaited, one.awaited),
      decides: Math.max(sum.decides, one.decides),
      alone: Math.max(sum.alone, one.alone),
      work: Math.max(sum.work, one.work),
      look: sum.look + one.look,
    }));
}

const lapOf = ({ awaited, decides }: Worth): number => (awaited > 0 || decides >= WALK_AWAY ? 0 : 1);

/** What can be looked at on the ground before what needs a lift, whatever it decides. */
const byChance = (a: Row, b: Row): number => a.lifted - b.lifted || byWorth(a, b);

/** What a gate waits for, the graver, what says so alone, then more work found for each second of looking. */
const byWorth = (a: Row, b: Row): number =>
  b.worth.awaited - a.worth.awaited ||
  b.worth.decides - a.worth.decides ||
  b.worth.alone - a.worth.alone ||
  b.worth.work * a.worth.look - a.worth.work * b.worth.look;

/**
 * `asked` comes in walking order. Without `seconds` there is no clock and everything fits. How long one has looked
 * already changes nothing: the order must not shift under the hand.
 */
export function valueOrder(
  asked: readonly Asked[],
  worths: ReadonlyMap<string, Worth>,
  seconds = Number.POSITIVE_INFINITY,
  isLifted: (state: string) => boolean = () => false,
): ValueOrder {
  const states = new Map<string, number>();
  const places = new Map<string, number>();
  const rank = (ranks: Map<string, number>, id: string): number => {
    const known = ranks.get(id) ?? ranks.size;
    ranks.set(id, known);
    return known;
  };
  const rows = asked.map((one): Row => {
    const worth = worthAt(one, worths);
    const place = rank(places, `${one.state} ${one.place}`);
    return {
      one,
      worth,
      state: rank(states, one.state),
      place,
      lap: lapOf(worth),
      lifted: Number(isLifted(one.state)),
    };
  });
  const fitting = whatFits(rows, seconds);
  const late = (row: Row): number => (fitting.has(row) ? 0 : 1);
  const ordered = rows.toSorted(
    (a, b) => late(a) - late(b) || a.state - b.state || a.lap - b.lap || a.place - b.place || byWorth(a, b),
  );
  return {
    asked: ordered.map(({ one }) => one),
    beyond: rows.length - fitting.size,
    gravest: rows
      .filter(({ lap }) => lap === 0)
      .toSorted(byChance)
      .map(({ one }) => one),
  };
}

/**
 * What there is time for, taken by worth, on the ground first. Once something has no room, nothing milder of its car state is taken any more:
 * a small thing that would just fit never goes before a grave one that does not.
 */
function whatFits(rows: readonly Row[], seconds: number): ReadonlySet<Row> {
  const taken = new Set<Row>();
  const been = new Set<string>();
  const full = new Map<string, number>();
  let spent = 0;
  for (const row of rows.toSorted(byChance)) {
    const { state, place } = row.one;
    const way =
      (been.has(state) ? 0 : state === ROAD ? WAY.drive : WAY.state) + (been.has(`${state} ${place}`) ? 0 : WAY.place);
    const fits = spent + way + row.worth.look <= seconds && row.worth.decides >= (full.get(state) ?? 0);
    if (!fits) {
      full.set(state, Math.max(full.get(state) ?? 0, row.worth.decides));
      continue;
    }
    spent += way + row.worth.look;
    been.add(state).add(`${state} ${place}`);
    taken.add(row);
  }
  return taken;
}
