/**
 * What there is room for in a time: first the acts a visit is made for, each with all its gates wait for, then what is
 * worth most in the rest. A car state costs its setting up once, so it is weighed as a whole. Puts nothing in order.
 */
import type { EngineIn } from "../sheet/run.js";
import { type List, shareTime } from "./share-time.js";
import { byGravity, type Row } from "./value-row.js";

/** Seconds, estimated by ourselves: going to another place, opening or closing what a car state wants, a start from cold, a drive. */
export const WAY = { place: 15, state: 60, start: 240, drive: 480 };

/** What a car must have been through first: driven only once started, hot only once driven. */
const AFTER: ReadonlyMap<EngineIn | undefined, EngineIn> = new Map([
  ["driving", "running"],
  ["hot", "driving"],
]);
/** What takes its time whatever is looked at in it: seen and heard while it goes on, a look takes none of its own. */
export const ACTS: ReadonlyMap<EngineIn | undefined, number> = new Map([
  ["running", WAY.start],
  ["driving", WAY.drive],
]);

/** Minutes that what a rule found costs besides its job, or where no job is written for it: estimated by ourselves. */
const HOUR = 60;

/** The rows the time is enough for. */
export function roomFor(rows: readonly Row[], seconds: number): ReadonlySet<Row> {
  if (seconds === Number.POSITIVE_INFINITY) return new Set(rows);
  const worths = worthsOf(rows);
  const ground = rows.filter(({ lifted }) => lifted === 0);
  const first = bestOf(ground, worths, seconds);
  // A seller's drive has no lift: what needs one takes no time from the ground.
  const after = bestOf(
    rows.filter(({ lifted }) => lifted === 1),
    worths,
    seconds - first.seconds,
  );
  return new Set([...first.rows, ...after.rows]);
}

interface Choice {
  readonly rows: readonly Row[];
  readonly seconds: number;
  readonly worth: number;
}

/** What is lost with a point nobody looked at; the same look at a second place finds less that is new, at a third still less. */
function worthsOf(rows: readonly Row[]): ReadonlyMap<Row, number> {
  const times = new Map<string, number>();
  return new Map(
    rows
      .toSorted((a, b) => a.lifted - b.lifted)
      .map((row) => {
        const { point } = row.one;
        const time = (times.get(point) ?? 0) + 1;
        times.set(point, time);
        return [row, (1 + row.worth.decides * (HOUR + row.worth.work)) / time] as const;
      }),
  );
}

/** As many acts as there is room for; of equally many those with which most comes together. */
function bestOf(rows: readonly Row[], worths: ReadonlyMap<Row, number>, seconds: number): Choice {
  const there = new Map(rows.map(({ one, engine }) => [one.state, engine]));
  const guarded = new Set(rows.flatMap(({ worth }) => worth.opens));
  const acts = [...there].flatMap(([state, engine]) => (guarded.has(state) || ACTS.has(engine) ? [state] : []));
  const states = byState(rows.toSorted(byGravity));
  const sets = subsets(acts).toSorted((a, b) => b.size - a.size);
  let best: Choice = { rows: [], seconds: 0, worth: 0 };
  let size = 0;
  for (const set of sets) {
    if (set.size < size) break;
    const choice = choose(states, { acts, set, there }, worths, seconds);
    if (choice === undefined || choice.worth <= best.worth) continue;
    best = choice;
    size = set.size;
  }
  return best;
}

function byState(rows: readonly Row[]): ReadonlyMap<string, readonly Row[]> {
  const states = new Map<string, Row[]>();
  for (const row of rows) {
    const known = states.get(row.one.state);
    if (known) known.push(row);
    else states.set(row.one.state, [row]);
  }
  return states;
}

const subsets = (all: readonly string[]): readonly ReadonlySet<string>[] =>
  all.reduce<readonly ReadonlySet<string>[]>(
    (sets, one) => sets.concat(sets.map((set) => new Set([...set, one]))),
    [new Set()],
  );

interface Acts {
  readonly acts: readonly string[];
  readonly set: ReadonlySet<string>;
  /** The car states there are, with what the engine does in each. */
  readonly there: ReadonlyMap<string, EngineIn | undefined>;
}

/** The most there is room for when exactly these acts are done; undefined where they are too much, or cannot be alone. */
function choose(
  states: ReadonlyMap<string, readonly Row[]>,
  { acts, set, there }: Acts,
  worths: ReadonlyMap<Row, number>,
  seconds: number,
): Choice | undefined {
  const isOpen = (state: string): boolean => {
    const after = AFTER.get(there.get(state));
    const before = after === undefined ? [] : [...there].filter(([, engine]) => engine === after);
    if (before.length > 0 && !before.some(([one]) => set.has(one))) return false;
    return set.has(state) || !acts.includes(state);
  };
  if ([...set].some((act) => !isOpen(act))) return undefined;
  const asked = new Set<string>();
  const isTicket = ({ one, worth }: Row): boolean => {
    const spot = `${one.point} ${one.place}`;
    // Answered once it is answered, in whichever car state.
    if (asked.has(spot) || !worth.opens.some((act) => set.has(act))) return false;
    asked.add(spot);
    return true;
  };
  const lists: { readonly rows: readonly Row[]; readonly list: List }[] = [];
  for (const [state, rows] of [...states].toSorted(([, a], [, b]) => (a[0]?.state ?? 0) - (b[0]?.state ?? 0))) {
    const tickets = rows.filter(isTicket);
    if (!isOpen(state) && tickets.length > 0) return undefined;
    if (!isOpen(state)) continue;
    const held = new Set(tickets);
    const inTurn = [...tickets, ...rows.filter((row) => !held.has(row))];
    const least = Math.max(tickets.length, Number(set.has(state)));
    lists.push({ rows: inTurn, list: { beginnings: beginningsOf(ACTS.get(there.get(state)), inTurn, worths), least } });
  }
  const shared = shareTime(
    lists.map(({ list }) => list),
    seconds,
  );
  if (shared === undefined) return undefined;
  return {
    rows: lists.flatMap(({ rows }, at) => rows.slice(0, shared.taken[at] ?? 0)),
    seconds: lists.reduce((sum, { list }, at) => sum + (list.beginnings[(shared.taken[at] ?? 0) - 1]?.seconds ?? 0), 0),
    worth: shared.worth,
  };
}

/** Seconds and worth of the first row, of the first two, and so on; `act`: seconds it takes at least. */
function beginningsOf(
  act: number | undefined,
  rows: readonly Row[],
  worths: ReadonlyMap<Row, number>,
): List["beginnings"] {
  const been = new Set<number>();
  let [looked, worth] = [0, 0];
  return rows.map((row) => {
    looked += row.worth.look + (been.has(row.place) ? 0 : WAY.place);
    worth += worths.get(row) ?? 0;
    been.add(row.place);
    return { seconds: act === undefined ? WAY.state + looked : Math.max(act, looked), worth };
  });
}
