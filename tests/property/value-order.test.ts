/**
 * Laws of the order of value, over the real sheets and the rules in them: nothing that can decide a danger waits for
 * what can only advise, what the time is not enough for is last and counted, nothing asked is lost.
 */
import fc from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { type Checklists, loadChecklists } from "../../src/build/load-checklists.js";
import {
  type Asked,
  assess,
  type Engine,
  prepare,
  type StateMarks,
  valueOrder,
  WALK_AWAY,
  type Worth,
  worthOf,
} from "../../src/core/assess/index.js";
import { engineIn, withBrought } from "../../src/core/sheet/run.js";
import { visit } from "../support/small-car.js";

let lists: Checklists;
let engine: Engine;
let worths: ReadonlyMap<string, Worth>;
let asked: readonly Asked[];
let marks: ReadonlyMap<string, StateMarks>;

beforeAll(async () => {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error("the sheets do not load");
  lists = result.value;
  const built = lists.sheets.map((one) => one.built);
  engine = prepare(lists.common, built);
  worths = worthOf(engine, lists.common, built);
  const { states } = withBrought(
    lists.common.common,
    built.map(({ sheet }) => sheet),
  );
  marks = new Map(states.map((state) => [state.id, { lifted: state.lifted, engine: engineIn(state) }]));
  asked = assess(engine, visit([], { who: "buyer", sheets: ids() })).asked;
}, 60_000);
const ids = (): readonly string[] => lists.sheets.map(({ built }) => built.sheet.id);

/** The same cases on every machine; a case that fails becomes a test of its own. */
const RUNS = { seed: 20261129, numRuns: 150 };

const gravest = (one: Asked): number =>
  Math.max(...[one.point, ...one.with].map((point) => worths.get(point)?.decides ?? 0));
const isAwaited = (one: Asked): boolean => [one.point, ...one.with].some((point) => worths.get(point)?.awaited === 1);
const seconds = fc.oneof(fc.constant(Number.POSITIVE_INFINITY), fc.integer({ min: 0, max: 4 * 3600 }));
/** Any part of what a buyer is asked, in walking order, as different cars and sheets leave it. */
const someAsked = fc.func(fc.boolean()).map((keep) => asked.filter((one) => keep(one.point, one.place)));

test("[VO1] a point is worth the worst grade a rule over it can give, also through a value worked out from it", () => {
  expect(worths.get("brk.pedal-hold")).toMatchObject({ decides: 4, alone: 4 });
  expect(worths.get("susp.past")).toMatchObject({ decides: 0, work: 0 });
  // Disc heat decides nothing by itself: a formula compares it.
  expect(worths.get("brk.temp")?.decides).toBeGreaterThanOrEqual(WALK_AWAY);
});

test("[VO1] what finds a fault that one brake circuit makes worse is worth that worse grade, not less", () => {
  for (const point of ["brk.pipe-fix", "brk.fluid-look", "brk.pipe-wall"])
    expect(worths.get(point), point).toMatchObject({ decides: 4 });
});

test("[HO44] what stops an engine or a car that nothing held back is known as that: oil, belt, temperature on the road", () => {
  for (const point of ["eng.oil-level", "eng.oil-look", "eng.belt-age", "road.rt-temp"])
    expect(worths.get(point)?.stops, point).toBe(true);
  expect(worths.get("susp.past")?.stops).toBeUndefined();
});

const FORTY = 40 * 60;
const isLifted = (state: string): boolean => lists.common.common.states.some((one) => one.id === state && one.lifted);
const marksOf = (state: string): StateMarks => marks.get(state) ?? {};
const ACT_SECONDS = { running: 240, driving: 480, hot: undefined, cold: undefined };
/** What a buyer has the time for, with these sheets open. */
function inForty(sheets: readonly string[]): readonly Asked[] {
  const all = assess(engine, visit([], { who: "buyer", sheets })).asked;
  const order = valueOrder(all, worths, FORTY, marksOf);
  return order.asked.slice(0, all.length - order.beyond);
}
const pointsOf = (some: readonly Asked[]): readonly string[] =>
  some.flatMap(({ point, with: along }) => [point, ...along]);

test("[VO1] who may drive it, the numbers and the papers have their time within forty minutes: the price waits for them", () => {
  const papers = [
    "buy.drive-ok",
    "buy.id-chassis",
    "buy.reg",
    "buy.seller-cold",
    "buy.id-plate",
    "buy.id-paper",
    "buy.owed",
  ];
  expect(pointsOf(inForty(ids()))).toEqual(expect.arrayContaining(papers));
  expect(worths.get("buy.corner")?.awaited).toBe(0);
  expect(worths.get("corr.jack")?.opens, "nobody is about to lift it").toEqual([]);
});

test("[VO5] forty minutes hold the start from cold and the road, and all their gates wait for, whichever sheets are open", () => {
  const opening = lists.sheets
    .map(({ built: { sheet } }) => sheet)
    .filter((one) => one["opens-for"]?.includes("viewing"));
  expect(opening.length).toBeGreaterThan(5);
  for (const sheets of [ids(), opening.map(({ id }) => id), [...opening.map(({ id }) => id), "road"]]) {
    const fits = inForty(sheets);
    expect(pointsOf(fits)).toEqual(expect.arrayContaining(["eng.start-rattle", "eng.smoke", "eng.knock"]));
    expect(pointsOf(fits)).toContain("susp.noise");
    expect(fits.filter(({ state }) => state === "w4-road").length).toBeGreaterThanOrEqual(15);
    const all = assess(engine, visit([], { who: "buyer", sheets })).asked.filter(({ state }) => !isLifted(state));
    const shut = all.filter((one) => isAwaited(one)).map(({ point, place }) => `${point} ${place}`);
    expect(fits.map(({ point, place }) => `${point} ${place}`)).toEqual(expect.arrayContaining(shut));
    // Nothing runs or is driven before: of all that moves or heats the car the start comes first.
    const moving = fits.filter(({ state }) => /^w(3-running|4-|5-)/.test(state));
    expect(moving[0]?.state).toBe("w3-running");
    expect(fits.findIndex(({ point }) => point === "buy.seller-cold")).toBeLessThan(fits.indexOf(moving[0] as Asked));
  }
});

test("[VO5] with twenty minutes there is no drive, and nothing that only a drive waits for takes time from the rest", () => {
  const order = valueOrder(asked, worths, 20 * 60, marksOf);
  const fits = order.asked.slice(0, asked.length - order.beyond);
  const states = new Set(fits.map(({ state }) => state));
  expect([states.has("w3-running"), states.has("p2-price"), states.has("w4-road")]).toEqual([true, true, false]);
  expect(pointsOf(fits)).not.toContain("buy.drive-ok");
});

test("[VO8] what is said to fit does fit: looking, going from place to place, each car state once", () => {
  const seconds = (some: readonly Asked[]): number =>
    [...new Set(some.map(({ state }) => state))].reduce((sum, state) => {
      const here = some.filter((one) => one.state === state);
      const places = new Set(here.map(({ place }) => place)).size;
      const looks = pointsOf(here).reduce((so, point) => so + (worths.get(point)?.look ?? 0), places * 15);
      const act = ACT_SECONDS[marksOf(state).engine ?? "cold"];
      return sum + (act === undefined ? 60 + looks : Math.max(act, looks));
    }, 0);
  fc.assert(
    fc.property(someAsked, fc.integer({ min: 0, max: 7200 }), (some, time) => {
      const order = valueOrder(some, worths, time, marksOf);
      expect(seconds(order.asked.slice(0, some.length - order.beyond))).toBeLessThanOrEqual(time);
    }),
    RUNS,
  );
  expect(seconds(inForty(ids()))).toBeGreaterThan(FORTY - 60);
});

test("[VO2] work counts with what must be apart for it, so a hub costs more than its own minutes", () => {
  const hub = lists.sheets.flatMap(({ built }) => built.sheet.jobs).find(({ id }) => id === "job.whl.bearing");
  expect(worths.get("whl.spin")?.work).toBeGreaterThan(hub?.minutes[1] ?? Number.POSITIVE_INFINITY);
});

test("[VO3] what can decide a danger is never asked after what can only advise, in one car state", () => {
  fc.assert(
    fc.property(someAsked, seconds, (some, time) => {
      const advised = new Set<string>();
      for (const one of valueOrder(some, worths, time).asked) {
        if (gravest(one) <= 1 && !isAwaited(one)) advised.add(one.state);
        else if (gravest(one) === 4) expect(advised.has(one.state), `${one.point} ${one.place}`).toBe(false);
      }
    }),
    RUNS,
  );
});

test("[VO4] nothing asked is lost and nothing is asked twice", () => {
  fc.assert(
    fc.property(someAsked, seconds, (some, time) => {
      expect(new Set(valueOrder(some, worths, time).asked)).toEqual(new Set(some));
      expect(valueOrder(some, worths, time).asked).toHaveLength(some.length);
    }),
    RUNS,
  );
});

test("[VO5][VO7] what the time is not enough for is last and counted, and in one car state nothing milder goes before it", () => {
  fc.assert(
    fc.property(someAsked, fc.integer({ min: 0, max: 7200 }), (some, time) => {
      const short = valueOrder(some, worths, time);
      const tail = short.asked.slice(some.length - short.beyond);
      for (const one of short.asked.slice(0, some.length - short.beyond))
        if (!isAwaited(one) && tail.some((left) => left.state === one.state && gravest(left) > gravest(one)))
          throw new Error(`${one.point} went before something graver`);
      expect(valueOrder(some, worths).beyond).toBe(0);
    }),
    RUNS,
  );
  expect(valueOrder(asked, worths, 0).beyond).toBe(asked.length);
  expect(valueOrder(asked, worths, 40 * 60).beyond).toBeGreaterThan(0);
});

test("[VO5] what needs a lift takes no time from what is looked at on the ground", () => {
  const onGround = asked.filter(({ state }) => !isLifted(state));
  expect(onGround.length).toBeLessThan(asked.length);
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 7200 }), (time) => {
      const fits = (some: readonly Asked[]) => {
        const order = valueOrder(some, worths, time, marksOf);
        return order.asked.slice(0, some.length - order.beyond).filter(({ state }) => !isLifted(state));
      };
      expect(fits(asked)).toEqual(fits(onGround));
    }),
    RUNS,
  );
});

test("[VO6] within one lap a place is visited once, and no car state more than twice: before and after the time", () => {
  fc.assert(
    fc.property(someAsked, seconds, (some, time) => {
      const order = valueOrder(some, worths, time);
      const cut = some.length - order.beyond;
      for (const part of [order.asked.slice(0, cut), order.asked.slice(cut)]) {
        const runs = part.filter((one, at) => at === 0 || part[at - 1]?.state !== one.state).map(({ state }) => state);
        expect(new Set(runs).size).toBe(runs.length);
        const stops = part
          .map((one) => `${one.state} ${one.place} ${isAwaited(one) || gravest(one) >= WALK_AWAY}`)
          .filter((stop, at, all) => at === 0 || all[at - 1] !== stop);
        expect(new Set(stops).size).toBe(stops.length);
      }
    }),
    RUNS,
  );
});
