/** A point as one with little time weighs it: what it can decide, where it stands, how two of them compare. Chooses nothing. */
import type { EngineIn } from "../sheet/run.js";
import type { Asked } from "./contract.js";
import { WALK_AWAY, type Worth } from "./worth.js";

export interface Row {
  readonly one: Asked;
  readonly worth: Worth;
  /** Walking position of its car state and of its place in it. */
  readonly state: number;
  readonly place: number;
  /** 0: a gate waits for it, or it can decide a major or dangerous fault. */
  readonly lap: number;
  /** 1 where the car must be off the ground: at a viewing there is seldom a lift. */
  readonly lifted: number;
  /** What the engine does meanwhile. */
  readonly engine: EngineIn | undefined;
}

/** What of a car state counts for the time it takes. */
export interface StateMarks {
  readonly lifted?: boolean;
  readonly engine?: EngineIn | undefined;
}

const NOTHING: Worth = { opens: [], awaited: 0, decides: 0, alone: 0, work: 0, look: 0 };

/** What is asked, weighed; `asked` comes in walking order. */
export function rowsOf(
  asked: readonly Asked[],
  worths: ReadonlyMap<string, Worth>,
  marksOf: (state: string) => StateMarks,
): readonly Row[] {
  const states = new Map<string, number>();
  const places = new Map<string, number>();
  const rank = (ranks: Map<string, number>, id: string): number => {
    const known = ranks.get(id) ?? ranks.size;
    ranks.set(id, known);
    return known;
  };
  return asked.map((one): Row => {
    const worth = worthAt(one, worths);
    const { lifted = false, engine } = marksOf(one.state);
    return {
      one,
      worth,
      state: rank(states, one.state),
      place: rank(places, `${one.state} ${one.place}`),
      lap: worth.awaited > 0 || worth.decides >= WALK_AWAY ? 0 : 1,
      lifted: Number(lifted),
      engine,
    };
  });
}

/** A point with those answered in its entry: as grave as the gravest, as long as all together. */
function worthAt({ point, with: along }: Asked, worths: ReadonlyMap<string, Worth>): Worth {
  const own = worths.get(point) ?? NOTHING;
  if (along.length === 0) return own;
  return along
    .map((id) => worths.get(id) ?? NOTHING)
    .reduce(
      (sum, one) => ({
        opens: sum.opens.concat(one.opens),
        awaited: Math.max(sum.awaited, one.awaited),
        decides: Math.max(sum.decides, one.decides),
        alone: Math.max(sum.alone, one.alone),
        work: Math.max(sum.work, one.work),
        look: sum.look + one.look,
      }),
      own,
    );
}

/** The graver first, then what says so alone, then more work found for each second of looking. */
export const byGravity = (a: Row, b: Row): number =>
  b.worth.decides - a.worth.decides ||
  b.worth.alone - a.worth.alone ||
  b.worth.work * a.worth.look - a.worth.work * b.worth.look;

/** What a gate waits for before all else. */
export const byWorth = (a: Row, b: Row): number => b.worth.awaited - a.worth.awaited || byGravity(a, b);

/** What can be looked at on the ground before what needs a lift, whatever it decides. */
export const byChance = (a: Row, b: Row): number => a.lifted - b.lifted || byWorth(a, b);
