/**
 * Shares out a time among lists of which only beginnings can be taken: the beginnings that are worth most together.
 * Exact, on a grid of five seconds. Knows no car.
 */

/** All that is taken when a list is taken up to here: seconds and worth of the whole beginning. */
export interface Beginning {
  readonly seconds: number;
  readonly worth: number;
}
export interface List {
  /** One row longer each; seconds and worth never fall. */
  readonly beginnings: readonly Beginning[];
  /** So many rows of it are taken in any case. */
  readonly least: number;
}
export interface Shared {
  /** How many rows of each list. */
  readonly taken: readonly number[];
  readonly worth: number;
}

const STEP = 5;

/** Undefined where not even the least of every list fits. Of equal shares the longer beginning. */
export function shareTime(lists: readonly List[], seconds: number): Shared | undefined {
  const room = Math.max(0, Math.floor(seconds / STEP));
  /** The most that can be had for so many steps from the lists gone through; less than nothing: not to be had. */
  let most = new Float64Array(room + 1);
  const picks = lists.map(({ beginnings, least }) => {
    const next = least === 0 ? most.slice() : new Float64Array(room + 1).fill(Number.NEGATIVE_INFINITY);
    const picked = new Uint16Array(room + 1);
    for (let rows = Math.max(1, least); rows <= beginnings.length; rows++) {
      const { steps, worth } = stepsOf(beginnings, rows);
      if (steps > room) break;
      for (let at = steps; at <= room; at++) {
        const had = (most[at - steps] ?? 0) + worth;
        if (had < (next[at] ?? 0) || had === Number.NEGATIVE_INFINITY) continue;
        next[at] = had;
        picked[at] = rows;
      }
    }
    most = next;
    return picked;
  });
  const worth = most[room] ?? Number.NEGATIVE_INFINITY;
  if (worth < 0) return undefined;
  let left = room;
  const taken = picks.toReversed().map((picked, back) => {
    const rows = picked[left] ?? 0;
    if (rows > 0) left -= stepsOf(lists[lists.length - 1 - back]?.beginnings ?? [], rows).steps;
    return rows;
  });
  return { taken: taken.toReversed(), worth };
}

function stepsOf(beginnings: readonly Beginning[], rows: number): { readonly steps: number; readonly worth: number } {
  const { seconds, worth } = beginnings[rows - 1] ?? { seconds: 0, worth: 0 };
  return { steps: Math.ceil(seconds / STEP), worth };
}
