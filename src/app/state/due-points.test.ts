// [LA8] [LA9] In an open visit: what earlier ones ask to be looked at again, at which points, and its places first.
import { effect } from "@preact/signals";
import { expect, test } from "vitest";
import { type Bench, bench, key, miniShelf, until, words } from "../../../tests/support/app-bench.js";
import { DECLINED, leftStanding } from "../../../tests/support/left-standing.js";
import type { Desk } from "./desk.js";
import { dueIn } from "./due-earlier.js";
import { dueAhead, dueBeyond, duePoints } from "./due-points.js";
import { beyondText, dueSays, unreadTexts } from "./looks-words.js";
import { jobStep } from "./plan-acts.js";
import { reply } from "./reply-acts.js";
import { setWay } from "./set-way.js";
import { odometer } from "./visit-acts.js";

const needs = ({ journal, store }: Bench) => ({
  journal,
  store,
  shelf: miniShelf(),
  compiler: { compile: async () => Promise.reject(new Error("nothing here needs the parser")) },
  judging: () => import("./judging.js"),
});

/** Both as soon as they are known. */
async function due(on: Bench, desk: Desk) {
  desk.judge();
  const judged = await until(desk.assessment, (is) => is !== undefined);
  const [visit, known] = [desk.visit.value, desk.known.value];
  if (!judged || visit.is !== "open" || !known) throw new Error("judged");
  const now = await new Promise<ReturnType<typeof dueIn>>((resolve) => {
    const stop = effect(() => {
      const is = dueIn(needs(on), visit.state);
      if (is === undefined) return;
      resolve(is);
      queueMicrotask(() => stop());
    });
  });
  const looking = {
    known,
    who: visit.state.opened?.value.who ?? "technician",
    asked: judged.asked,
    visit: visit.state,
  };
  return now?.looks ? { now, points: duePoints(now, looking), beyond: dueBeyond(now, looking) } : undefined;
}

const spin = key("hub.spin", "FR", "feel");
const unseen = (nonAnswer: "not-reached" | "not-fitted") => ({ type: "non-answer", nonAnswer }) as const;
/** Replied in a visit and kept. */
async function said(on: Bench, desk: Desk, value: Parameters<typeof reply>[3]): Promise<void> {
  const before = desk.visit.value;
  await reply(on.journal, desk.stream, spin, value);
  await until(desk.visit, (is) => is !== before && is.is === "open" && is.state.replies.size > 0);
}

test("a finding left standing is due at its point in the next visit, and answered there it stays listed as looked at", async () => {
  const on = bench();
  const { next } = await leftStanding(on);
  const desk = on.desk(next);
  const first = await due(on, desk);
  expect(first?.points).toMatchObject([{ at: { point: "hub.spin", place: "FR" }, done: false }]);
  const [point] = first?.points ?? [];
  if (!first || !point) throw new Error("it is due");
  expect(point.due.look).toMatchObject({ is: "finding", of: "hub.race" });
  // Before it is looked at today nothing is told of what was found there.
  expect(dueSays(first.now.looks, point.due, "technician")).toBe(
    "Nothing says when. Something was left standing 25 Nov 2026",
  );
  await reply(on.journal, next, key("hub.spin", "FR", "feel"), words("smooth"));
  await until(desk.visit, (is) => is.is === "open" && is.state.replies.size > 0);
  expect((await due(on, desk))?.points).toMatchObject([{ at: { point: "hub.spin", place: "FR" }, done: true }]);
});

test("nothing is due in the first visit, at a viewing, or for a buyer", async () => {
  const on = bench();
  const { visit } = await leftStanding(on);
  expect(await due(on, on.desk(visit))).toBeUndefined();
  for (const more of [{ purpose: "viewing" }, { who: "buyer" }] as const) {
    const other = bench();
    const { next } = await leftStanding(other, more);
    expect(await due(other, other.desk(next))).toBeUndefined();
  }
});

test("chosen so, the round of the visit takes its place first and leaves nothing out", async () => {
  const on = bench();
  const { next } = await leftStanding(on);
  const desk = on.desk(next);
  desk.judge();
  const walk = await until(desk.assessment, (is) => is !== undefined);
  setWay(on.remembered, next, { order: "due", quiet: false });
  const hung = (is: typeof walk) => is?.asked.flatMap(({ state, place }) => (state === "w7-hang" ? [place] : []));
  expect(hung(walk)).toEqual(["FL", "FR"]);
  const first = await until(desk.assessment, (is) => hung(is)?.[0] === "FR");
  expect(hung(first)).toEqual(["FR", "FL"]);
  expect(new Set(first?.asked)).toEqual(new Set(walk?.asked));
});

test("that it can't be got at is no look: the point stays open, with words of its own; not fitted is a look", async () => {
  const on = bench();
  const { next } = await leftStanding(on);
  const desk = on.desk(next);
  await said(on, desk, unseen("not-reached"));
  expect((await due(on, desk))?.points).toMatchObject([{ done: false, unable: true }]);
  await said(on, desk, unseen("not-fitted"));
  expect((await due(on, desk))?.points).toMatchObject([{ done: true, unable: false }]);
  await said(on, desk, unseen("not-reached"));
  await said(on, desk, words("smooth"));
  expect((await due(on, desk))?.points).toMatchObject([{ done: true, unable: false }]);
});

test("what is due and not asked here is told, by its points, or by its name where it has none", async () => {
  const on = bench();
  const { next } = await leftStanding(on, { who: "owner" });
  const first = await due(on, on.desk(next));
  // The car stays on its wheels at home.
  expect(first?.points).toEqual([]);
  expect(first?.beyond).toMatchObject([{ is: "finding", points: [{ point: "hub.spin", place: "FR" }] }]);
  if (!first) throw new Error("it is due");
  expect(beyondText(first.now.looks, first.beyond, "owner")).toBe(
    "Due again, and this round does not ask it: Front right, Spin",
  );
  expect(beyondText(first.now.looks, [], "owner")).toBe("");

  const other = bench();
  const made = await leftStanding(other);
  await jobStep(other.journal, made.visit, { ...DECLINED, step: "done", on: "2026-11-25" });
  await odometer(other.journal, made.visit, { value: "61000", unit: "km" });
  await odometer(other.journal, made.next, { value: "63000", unit: "km" });
  const desk = other.desk(made.next);
  await until(desk.visit, (is) => is.is === "open" && is.state.odometer.length > 0);
  const worked = await due(other, desk);
  // The float is asked once the hub does not turn smoothly; the nuts are checked where the car was handed back.
  expect(worked?.beyond.map(({ is, points }) => [is, points.map(({ point }) => point)])).toEqual([
    ["recheck", []],
    ["job", ["hub.float"]],
  ]);
  if (!worked) throw new Error("it is due");
  const told = (rest: typeof worked.beyond) => beyondText(worked.now.looks, rest, "technician");
  expect(told(worked.beyond)).toBe("Due again, and this round does not ask it: Wheel nuts, Front right, and 1 more");
  expect(told(worked.beyond.slice(1))).toBe("Due again, and this round does not ask it: Front right, Float");
  await said(other, desk, words("tight"));
  await until(desk.assessment, (is) => is?.asked.some(({ point }) => point === "hub.float") === true);
  expect((await due(other, desk))?.beyond.map(({ is }) => is)).toEqual(["recheck"]);
});

test("before a visit begins, what its reader is not asked is the workshop's, whichever sheets are chosen", async () => {
  const on = bench();
  const { next } = await leftStanding(on);
  const first = await due(on, on.desk(next));
  if (!first) throw new Error("it is due");
  const sorted = (who: "technician" | "owner", sheets: readonly string[]) => {
    const { here, unasked, workshop } = dueAhead(
      first.now,
      who,
      sheets.map((id) => ({ id })),
    );
    return [here.length, unasked.length, workshop.length];
  };
  expect(sorted("technician", ["hub"])).toEqual([1, 0, 0]);
  expect(sorted("technician", [])).toEqual([0, 1, 0]);
  expect(sorted("owner", ["hub"])).toEqual([0, 0, 1]);
});

test("what could not be read is told: how many visits, or that nothing is known, and work lists by themselves", () => {
  expect(unreadTexts({ visits: 0, plans: 0 })).toEqual([]);
  expect(unreadTexts({ visits: 2, plans: 1 })).toEqual([
    "2 visits of this car could not be read: what they ask to look at again is not here.",
    "1 work list of earlier visits could not be read: checks after that work may be missing here.",
  ]);
  expect(unreadTexts({ visits: "all", plans: 0 })).toEqual([
    "Earlier visits of this car could not be read: whether anything is due again is not known.",
  ]);
});
