// Laws of dates: small plans against every choice of starts, and what holds of any plan however large.
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type Activity,
  arrivesOn,
  criticalPath,
  type LiftBlock,
  type LocalTime,
  orderBy,
  type Schedule,
  type ScheduleInput,
  schedule,
} from "../../src/core/plan/index.js";

const SEED = 20250717;
const DAY = 1440;
const FIRST = Date.UTC(2026, 0, 5) / 86_400_000;
const date = (day: number): string => new Date((FIRST + day) * 86_400_000).toISOString().slice(0, 10);
const at = ({ date: on, minute }: LocalTime): number => (Date.parse(on) / 86_400_000 - FIRST) * DAY + minute;
const planOf = (input: ScheduleInput): Schedule => {
  const plan = schedule(input);
  if (!plan.ok) throw new Error("planned");
  return plan.value;
};

/** Tasks of a few units, each following only earlier ones; some have a lift, a tool, a day before which they may not. */
const taskRow = fc.record({
  units: fc.integer({ min: 1, max: 3 }),
  follows: fc.array(fc.nat(9), { maxLength: 2 }),
  people: fc.integer({ min: 1, max: 2 }),
  lift: fc.boolean(),
  tool: fc.boolean(),
  release: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.integer({ min: 1, max: 4 })),
  wall: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.integer({ min: 1, max: 3 })),
});
type TaskRow = typeof taskRow extends fc.Arbitrary<infer T> ? T : never;
const predsOf = (row: TaskRow, i: number): number[] => [...new Set(row.follows.filter((k) => k < i))];

const ALWAYS = { zone: "Etc/UTC", week: Array.from({ length: 7 }, () => [[0, DAY] as const]), closed: [] };
function smallInput(rows: readonly TaskRow[], block: readonly number[], lifts: number): ScheduleInput {
  const activities = rows.map((row, i): Activity => {
    const base = { id: `j${i}`, minutes: row.units * DAY, preds: predsOf(row, i).map((k) => `j${k}`) };
    const needs = { people: row.people, lift: row.lift, wall: row.wall * DAY, release: date(row.release) };
    return { ...base, ...needs, tool: row.tool ? "puller" : undefined };
  });
  const [open, job, close] = block.map((i) => `j${i}`);
  const blocks: LiftBlock[] =
    open === undefined || job === undefined || close === undefined
      ? []
      : [{ id: "out", open, jobs: [job], close, gate: "at-once" }];
  const calendar = { ...ALWAYS, people: 2, lifts };
  return { today: date(0), from: { date: date(0), minute: 0 }, calendar, activities, blocks };
}

/** The least finish over every choice of whole starts: slow, and written without anything it is held against. */
function leastFinish(rows: readonly TaskRow[], block: readonly number[], lifts: number): number {
  const [open = -1, job = -1, close = -1] = block;
  const preds = rows.map((row, i) => predsOf(row, i));
  if (open !== -1) {
    preds[job]?.push(open);
    preds[close]?.push(open, job);
  }
  const before = (i: number): Set<number> => new Set((preds[i] ?? []).flatMap((k) => [k, ...before(k)]));
  const members = new Set(block);
  const isInside = (i: number): boolean =>
    members.has(i) || ([...members].some((m) => before(i).has(m)) && [...members].some((m) => before(m).has(i)));
  for (const i of rows.keys()) if (open !== -1 && isInside(i) && i !== close) preds[close]?.push(i);
  // What a job inside needs a lift for comes before the opening, however many lifts there are.
  rows.forEach((row, i) => {
    if (row.lift && !isInside(i) && block.some((m) => before(m).has(i))) preds[open]?.push(i);
  });
  const starts: number[] = [];
  const ready = (i: number): number => (starts[i] ?? 0) + (rows[i]?.units ?? 0) + (rows[i]?.wall ?? 0);
  const fits = (): boolean => {
    for (let t = 0; t < 60; t += 1) {
      let [people, tool, lift] = [0, 0, 0];
      rows.forEach((row, i) => {
        const start = starts[i];
        if (start === undefined || start > t) return;
        if (t < start + row.units) {
          people += row.people;
          tool += row.tool ? 1 : 0;
        }
        if (row.lift && !isInside(i) && t < ready(i)) lift += 1;
      });
      const opened = starts[open];
      if (opened !== undefined && opened <= t && (starts[close] === undefined ? t === opened : t < ready(close)))
        lift += 1;
      if (people > 2 || tool > 1 || lift > lifts) return false;
    }
    return true;
  };
  const order = [...rows.keys()].sort((a, b) => before(a).size - before(b).size);
  const canEndBy = (finish: number, depth: number): boolean => {
    const i = order[depth];
    if (i === undefined) return true;
    const first = Math.max(rows[i]?.release ?? 0, ...(preds[i] ?? []).map(ready));
    for (let start = first; ; start += 1) {
      starts[i] = start;
      const isOver = ready(i) > finish;
      if (!isOver && fits() && canEndBy(finish, depth + 1)) return true;
      delete starts[i];
      if (isOver) return false;
    }
  };
  for (let finish = 0; ; finish += 1) {
    starts.length = 0;
    if (canEndBy(finish, 0)) return finish;
  }
}

test("[PD9] up to five jobs, with a lift block or without: the plan is as short as any choice of starts, and proven", () => {
  const small = fc.record({
    rows: fc.array(taskRow, { minLength: 3, maxLength: 5 }),
    block: fc.option(fc.constantFrom<readonly number[]>([0, 1, 2], [1, 2, 4], [0, 2, 3]), { nil: [] }),
    lifts: fc.constantFrom(1, 1, 2),
  });
  fc.assert(
    fc.property(small, ({ rows, block, lifts }) => {
      const used = block.every((i) => i < rows.length) ? block : [];
      const plan = planOf({ ...smallInput(rows, used, lifts), passes: 5 });
      expect(plan.problems).toEqual([]);
      expect([plan.finish && at(plan.finish) / DAY, plan.proven]).toEqual([leastFinish(rows, used, lifts), true]);
    }),
    { numRuns: 40, seed: SEED },
  );
});

/** A shop with lunch, weekends and a shut week, and work for it with parts, processes, a block and suppliers. */
const SHIFT: readonly (readonly [number, number])[] = [
  [480, 720],
  [780, 1020],
];
const SHUT = { from: date(14), to: date(18), why: "fair" };
const SUPPLIERS = [
  { id: "mill", week: [1, 2, 3, 4, 5], closed: [{ from: date(7), to: date(11) }], leadDays: 6, carriageDays: 1 },
  { id: "stores", week: [1, 3, 5], closed: [], leadDays: 1 },
];
const partRow = fc.record({
  job: fc.nat(30),
  how: fc.constantFrom("here", "told", "mill", "stores"),
  day: fc.integer({ min: 0, max: 20 }),
  confirmed: fc.boolean(),
});
const large = fc
  .record({
    rows: fc.array(taskRow, { minLength: 6, maxLength: 18 }),
    parts: fc.array(partRow, { maxLength: 4 }),
    gate: fc.constantFrom("parts-in-hand" as const, "just-in-time" as const, "at-once" as const),
    people: fc.constantFrom(1, 2),
    lifts: fc.constantFrom(1, 2),
    seed: fc.nat(1000),
  })
  .map(({ rows, parts, gate, people, lifts, seed }): ScheduleInput => {
    const { activities } = smallInput(rows, [], lifts);
    return {
      today: date(0),
      from: { date: date(1), minute: 540 },
      calendar: {
        zone: "Europe/Berlin",
        week: [SHIFT, SHIFT, SHIFT, SHIFT, SHIFT, [], []],
        closed: [SHUT],
        people,
        lifts,
      },
      activities: activities.map((one) => ({
        ...one,
        minutes: (one.minutes / DAY) * 150,
        people: Math.min(people, one.people ?? 1),
        wall: ((one.wall ?? 0) / DAY) * 700,
      })),
      blocks: [{ id: "out", open: "j0", jobs: ["j2", "j3"], close: "j5", gate }],
      parts: parts.map(({ job, how, day, confirmed }, i) => ({
        id: `p${i}`,
        job: `j${job % rows.length}`,
        inHand: how === "here",
        ...(how === "told" ? { comes: date(day), confirmed } : { supplier: how }),
      })),
      suppliers: SUPPLIERS,
      passes: 5,
      nodeCap: 500,
      seed,
    };
  });

test("[PD7] no plan takes more people, lifts or tools than there are, works while shut, or starts before its time", () => {
  fc.assert(
    fc.property(large, (input) => {
      const plan = planOf(input);
      const asked = new Map(input.activities.map((one) => [one.id, one]));
      const rows = plan.activities.map((row) => ({
        ...row,
        ...asked.get(row.id),
        from: at(row.start),
        to: at(row.end),
      }));
      for (const { date: day, minute } of rows.flatMap(({ start, end }) => [start, end])) {
        expect(SHIFT.some(([open, close]) => open <= minute && minute <= close)).toBe(true);
        expect(new Date(day).getUTCDay() % 6).not.toBe(0);
        expect(day < SHUT.from || day > SHUT.to).toBe(true);
      }
      for (const { from } of rows) {
        const now = rows.filter((other) => other.from <= from && from < other.to);
        expect(now.reduce((sum, { people = 1 }) => sum + people, 0)).toBeLessThanOrEqual(input.calendar.people);
        expect(now.filter(({ tool }) => tool !== undefined).length).toBeLessThanOrEqual(1);
        const lifts = plan.lifts.filter((use) => at(use.from) <= from && from < at(use.to));
        expect(lifts.length).toBeLessThanOrEqual(input.calendar.lifts);
      }
      const ready = new Map(plan.activities.map((row) => [row.id, at(row.ready)]));
      for (const { id, preds = [], release = "", start } of rows) {
        expect(start.date >= release).toBe(true);
        for (const pred of preds) expect(ready.get(pred)).toBeLessThanOrEqual(at(start));
        for (const { job, comes } of input.parts ?? [])
          if (job === id && comes !== undefined) expect(start.date >= comes).toBe(true);
      }
      if (plan.finish !== undefined && plan.bound !== undefined)
        expect(at(plan.finish)).toBeGreaterThanOrEqual(at(plan.bound));
      expect(plan.leftOut.length + plan.activities.length).toBe(input.activities.length);
    }),
    { numRuns: 20, seed: SEED },
  );
});

test("[PD8] the same input gives the same plan; the old order handed in never gives a later one", () => {
  fc.assert(
    fc.property(large, (input) => {
      const plan = planOf(input);
      expect(planOf(input)).toEqual(plan);
      const again = planOf({ ...input, before: plan.order, passes: 0, nodeCap: 0 });
      if (plan.finish !== undefined && again.finish !== undefined) expect(at(again.finish)).toBe(at(plan.finish));
    }),
    { numRuns: 8, seed: SEED },
  );
});

test("[PD12] a part that comes today never makes the car later; the most days gained stand first", () => {
  fc.assert(
    fc.property(large, (input) => {
      const { gained, finish } = planOf(input);
      if (finish === undefined) return;
      for (const one of gained)
        expect([one.days >= 0, one.minutes >= 0, at(one.finish) <= at(finish)]).toEqual([true, true, true]);
      expect([...gained].sort((a, b) => b.days - a.days)).toEqual(gained);
    }),
    { numRuns: 20, seed: SEED },
  );
});

test("[PD1] a longer job never makes the longest chain shorter; free float is never above total float, nor below nought", () => {
  fc.assert(
    fc.property(fc.array(taskRow, { minLength: 1, maxLength: 12 }), fc.nat(11), (rows, longer) => {
      const jobs = rows.map((row, i) => ({
        id: `j${i}`,
        duration: row.units,
        preds: predsOf(row, i).map((k) => `j${k}`),
      }));
      const path = criticalPath(jobs);
      const more = criticalPath(jobs.map((job, i) => (i === longer ? { ...job, duration: job.duration + 1 } : job)));
      if (!path.ok || !more.ok) throw new Error("planned");
      expect(more.value.finish - path.value.finish).toBeGreaterThanOrEqual(0);
      expect(more.value.finish - path.value.finish).toBeLessThanOrEqual(1);
      for (const { free, total } of path.value.rows) expect([free >= 0, free <= total]).toEqual([true, true]);
      expect(path.value.critical.length).toBeGreaterThan(0);
    }),
    { numRuns: 100, seed: SEED },
  );
});

test("[PD5] what is ordered on the last day comes in time, and a working day later does not", () => {
  const supplier = fc.record({
    id: fc.constant("mill"),
    week: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1 }),
    closed: fc.array(
      fc
        .record({ from: fc.nat(60), days: fc.nat(20) })
        .map(({ from, days }) => ({ from: date(from), to: date(from + days) })),
      { maxLength: 3 },
    ),
    leadDays: fc.nat(15),
    carriageDays: fc.nat(4),
  });
  fc.assert(
    fc.property(supplier, fc.nat(90), (mill, needed) => {
      const last = orderBy(mill, date(needed));
      if (!last.ok) throw new Error("a day");
      const day = Date.parse(last.value) / 86_400_000 - FIRST;
      const comes = (on: number): string => {
        const arrival = arrivesOn(mill, date(on));
        return arrival.ok ? arrival.value : "";
      };
      expect(comes(day) <= date(needed)).toBe(true);
      const isShut = (on: number): boolean =>
        mill.closed.some(({ from, to }) => from <= date(on) && date(on) <= to) ||
        !mill.week.includes(((new Date(date(on)).getUTCDay() + 6) % 7) + 1);
      let next = day + 1;
      while (isShut(next)) next += 1;
      expect(comes(next) > date(needed)).toBe(true);
      expect(isShut(day)).toBe(false);
    }),
    { numRuns: 100, seed: SEED },
  );
});

test("[PD11] every cause told ends just when the job it holds up starts; the chain ends at the first day or a day waited for", () => {
  const rows = fc.array(taskRow, { minLength: 5, maxLength: 9 });
  fc.assert(
    fc.property(rows, fc.constantFrom(1, 2), (some, lifts) => {
      const input = smallInput(some, [0, 2, 4], lifts);
      const { activities, holds, finish } = planOf({ ...input, passes: 5, nodeCap: 500 });
      const row = (id: string) => activities.find((one) => one.id === (id === "out" ? "j4" : id));
      const start = (id: string): number => at(row(id)?.start ?? { date: "", minute: 0 });
      for (const hold of holds) {
        if (hold.cause === "day") expect(date(start(hold.job) / DAY)).toBe(hold.date);
        if (hold.cause === "start") expect(start(hold.job)).toBe(0);
        if (!("by" in hold)) continue;
        const by = row(hold.by);
        const isWaited = hold.cause === "process" || hold.cause === "lift";
        expect(by && at(isWaited ? by.ready : by.end)).toBe(start(hold.job));
      }
      expect(["start", "day"]).toContain(holds.at(-1)?.cause);
      const last = row(holds[0]?.job ?? "");
      expect(last?.ready).toEqual(finish);
    }),
    { numRuns: 30, seed: SEED },
  );
});
