// [LA8] [LA9] In an open visit: what earlier ones ask to be looked at again, at which points, and its places first.
import { effect } from "@preact/signals";
import { expect, test } from "vitest";
import {
  type Bench,
  bench,
  benchVisit,
  commonFrozen,
  key,
  miniShelf,
  sheetFrozen,
  until,
  words,
} from "../../../tests/support/app-bench.js";
import { openVisit } from "./car-acts.js";
import { decide } from "./decision-acts.js";
import type { Desk } from "./desk.js";
import { dueIn } from "./due-earlier.js";
import { duePoints } from "./due-points.js";
import { dueSays } from "./looks-words.js";
import type { Opening } from "./new-visit.js";
import { reply } from "./reply-acts.js";
import { setWay } from "./set-way.js";

const AT = { job: "job.hub.renew", place: "FR" };

/** A rough hub front right, whose renewal was declined; and a later visit. */
async function declined(on: Bench, more: Partial<Pick<Opening, "purpose" | "who">> = {}) {
  const { car, visit } = await benchVisit(on);
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  const said = {
    word: "no",
    because: "Next year",
    who: "Mo",
    role: "owner",
    how: "in-person",
    on: "2026-11-25",
  } as const;
  await decide(on.journal, visit, [{ at: AT, said }]);
  const files = { common: commonFrozen, sheets: [sheetFrozen], limits: [] };
  const opening = { car, purpose: "workshop" as const, who: "technician" as const, on: "2026-12-30T10:00:00+01:00" };
  const next = await openVisit(on.journal, on.phone, { ...opening, ...more, ...files });
  if (next === undefined) throw new Error("the bench keeps what it is given");
  await on.journal.refresh();
  return { visit, next };
}
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
  return now ? { now, points: duePoints(now, looking) } : undefined;
}

test("a finding left standing is due at its point in the next visit, and answered there it stays listed as looked at", async () => {
  const on = bench();
  const { next } = await declined(on);
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
  const { visit } = await declined(on);
  expect(await due(on, on.desk(visit))).toBeUndefined();
  for (const more of [{ purpose: "viewing" }, { who: "buyer" }] as const) {
    const other = bench();
    const { next } = await declined(other, more);
    expect(await due(other, other.desk(next))).toBeUndefined();
  }
});

test("chosen so, the round of the visit takes its place first and leaves nothing out", async () => {
  const on = bench();
  const { next } = await declined(on);
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
