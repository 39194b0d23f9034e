/** What there is room for, held against every choice of points that the rules allow, in small viewings made up here. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { EngineIn } from "../sheet/run.js";
import { ACTS, roomFor, WAY } from "./value-room.js";
import { byGravity, type Row, rowsOf } from "./value-row.js";
import type { Worth } from "./worth.js";

const STATES = ["w1-cold", "w3-lids", "run-up", "drive", "hot", "p2-price"] as const;
const GUARDED = ["run-up", "drive", "p2-price"] as const;
const ENGINES: Readonly<Record<string, EngineIn>> = { "run-up": "running", drive: "driving", hot: "hot" };
const marksOf = (state: string) => ({ engine: ENGINES[state] });

const point = fc.record({
  state: fc.integer({ min: 0, max: STATES.length - 1 }),
  place: fc.constantFrom("car", "FL"),
  opens: fc.oneof({ weight: 3, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: fc.subarray([...GUARDED]) }),
  decides: fc.integer({ min: 0, max: 4 }),
  alone: fc.constant(0),
  work: fc.constantFrom(0, 50, 193, 480),
  look: fc.constantFrom(20, 35, 60),
});

const viewing = fc.array(point, { minLength: 1, maxLength: 9 }).map((points): readonly Row[] => {
  const inTurn = points.toSorted((a, b) => a.state - b.state).map((one, i) => ({ ...one, id: `s.p${i}` }));
  const asked = inTurn.map(({ id, place, state }) => ({
    point: id,
    place,
    state: STATES[state] ?? "",
    fields: [],
    with: [],
    safetyCritical: false,
    openedBy: [],
  }));
  const worths = new Map<string, Worth>(
    inTurn.map(({ id, opens, decides, alone, work, look }) => [
      id,
      { opens, awaited: Math.min(1, opens.length), decides, alone, work, look },
    ]),
  );
  return rowsOf(asked, worths, marksOf);
});

const stateOf = ({ one }: Row): string => one.state;
const worthOfRow = ({ worth }: Row): number => 1 + worth.decides * (60 + worth.work);

function secondsFor(taken: readonly Row[]): number {
  return [...new Set(taken.map(stateOf))]
    .map((state) => {
      const here = taken.filter((row) => stateOf(row) === state);
      const looks = here.reduce((sum, { worth }) => sum + worth.look, 0);
      const ways = new Set(here.map(({ place }) => place)).size * WAY.place;
      const act = ACTS.get(ENGINES[state]);
      return act === undefined ? WAY.state + looks + ways : Math.max(act, looks + ways);
    })
    .reduce((sum, one) => sum + one, 0);
}

/** The acts of a choice, or undefined where the rules do not allow it. */
function actsOf(all: readonly Row[], taken: readonly Row[]): ReadonlySet<string> | undefined {
  const there = new Set(all.map(stateOf));
  const done = new Set(taken.map(stateOf));
  const guarded = new Set(all.flatMap(({ worth }) => worth.opens));
  const acts = new Set([...done].filter((state) => ACTS.has(ENGINES[state]) || guarded.has(state)));
  const isOwed = ({ worth }: Row): boolean => worth.opens.some((act) => acts.has(act));
  if (all.some((row) => isOwed(row) && !taken.includes(row))) return undefined;
  if (acts.has("drive") && there.has("run-up") && !acts.has("run-up")) return undefined;
  if (done.has("hot") && there.has("drive") && !acts.has("drive")) return undefined;
  const isMilderFirst = taken.some(
    (row) =>
      !isOwed(row) &&
      all.some((left) => stateOf(left) === stateOf(row) && !taken.includes(left) && byGravity(left, row) < 0),
  );
  return isMilderFirst ? undefined : acts;
}

test("[VO5][VO7] as many acts as there is room for, and then the most worth: as trying every choice finds it", () => {
  fc.assert(
    fc.property(viewing, fc.integer({ min: 0, max: 260 }), (rows, steps) => {
      const seconds = steps * 5;
      let [acts, worth] = [0, 0];
      for (let choice = 0; choice < 2 ** rows.length; choice++) {
        const taken = rows.filter((_, i) => (choice >> i) % 2 === 1);
        const done = actsOf(rows, taken);
        if (done === undefined || secondsFor(taken) > seconds) continue;
        const sum = taken.reduce((so, row) => so + worthOfRow(row), 0);
        if (done.size > acts || (done.size === acts && sum > worth)) [acts, worth] = [done.size, sum];
      }
      const found = [...roomFor(rows, seconds)];
      expect(secondsFor(found)).toBeLessThanOrEqual(seconds);
      expect([actsOf(rows, found)?.size, found.reduce((sum, row) => sum + worthOfRow(row), 0)]).toEqual([acts, worth]);
    }),
    { seed: 20261130, numRuns: 300 },
  );
});

test("[VO8] what is felt on the road takes no time of its own before the drive is over", () => {
  const road = (points: number): readonly Row[] => {
    const ids = Array.from({ length: points }, (_, i) => `s.p${i}`);
    const asked = ids.map((id) => ({
      point: id,
      place: "car",
      state: "drive",
      fields: [],
      with: [],
      safetyCritical: false,
      openedBy: [],
    }));
    const worth: Worth = { opens: [], awaited: 0, decides: 2, alone: 2, work: 60, look: 20 };
    return rowsOf(asked, new Map(ids.map((id) => [id, worth])), marksOf);
  };
  const inDrive = (WAY.drive - WAY.place) / 20;
  expect(roomFor(road(30), WAY.drive).size).toBe(Math.floor(inDrive));
  expect(roomFor(road(30), WAY.drive - 5).size).toBe(0);
  expect(roomFor(road(1), WAY.drive).size).toBe(1);
  expect(roomFor(road(1), -60).size, "the time is over").toBe(0);
});
