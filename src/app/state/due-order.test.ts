// [LA9] The way round the car is there until what is due is known, and changes over with a reply, never between two.
import { effect } from "@preact/signals";
import { expect, test } from "vitest";
import { bench, key, miniShelf, until, words } from "../../../tests/support/app-bench.js";
import { leftStanding } from "../../../tests/support/left-standing.js";
import type { VisitState } from "../../core/record/index.js";
import type { Judging } from "./desk.js";
import { dueIn } from "./due-earlier.js";
import { inDueOrder } from "./due-order.js";
import { reply } from "./reply-acts.js";

/** A later visit, walked while the earlier one is still being judged, for as long as the test wants. */
async function walked() {
  const on = bench();
  const { next } = await leftStanding(on);
  const desk = on.desk(next);
  desk.judge();
  const judged = await until(desk.assessment, (is) => is !== undefined);
  const known = desk.known.value;
  if (!judged || !known) throw new Error("judged");
  let release = (): void => undefined;
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  const needs = {
    journal: on.journal,
    store: on.store,
    shelf: miniShelf(),
    compiler: { compile: async () => Promise.reject(new Error("nothing here needs the parser")) },
    judging: async (): Promise<Judging> => {
      await held;
      return import("./judging.js");
    },
    remembered: on.remembered,
  };
  const state = (): VisitState => {
    const now = on.journal.keptVisit(next).value;
    if (now.is !== "open") throw new Error("open");
    return now.state;
  };
  return {
    walk: judged,
    say: (word: string) => reply(on.journal, next, key("hub.spin", "FL", "feel"), words(word)),
    order: () => inDueOrder(judged, state(), { laid: { known } }, needs),
    /** The places walked hanging, once they are as looked for. */
    placed: (is: readonly string[]) =>
      new Promise<void>((resolve) => {
        const stop = effect(() => {
          const now = inDueOrder(judged, state(), { laid: { known } }, needs);
          const places = now?.asked.flatMap(({ state: at, place }) => (at === "w7-hang" ? [place] : []));
          if (String(places) !== String(is)) return;
          resolve();
          queueMicrotask(() => stop());
        });
      }),
    known: () =>
      new Promise<void>((resolve) => {
        release();
        const stop = effect(() => {
          if (dueIn(needs, state()) === undefined) return;
          resolve();
          queueMicrotask(() => stop());
        });
      }),
  };
}

test("a visit in which nothing is said yet waits a moment for it, and no longer", async () => {
  const { order, placed, walk } = await walked();
  expect(order()).toBeUndefined();
  await placed(["FL", "FR"]);
  expect(order()).toBe(walk);
});

test("a visit gone on with is there at once, and takes the order as soon as it is known", async () => {
  const { order, say, known, placed, walk } = await walked();
  await say("smooth");
  expect(order()).toBe(walk);
  await known();
  await placed(["FR", "FL"]);
});

test("what was replied meanwhile holds the way as it is until the next reply", async () => {
  const { order, say, known, placed, walk } = await walked();
  await say("smooth");
  expect(order()).toBe(walk);
  await say("rough");
  expect(order()).toBe(walk);
  await known();
  expect(order()).toBe(walk);
  expect(order()).toBe(walk);
  await say("smooth");
  await placed(["FR", "FL"]);
});
