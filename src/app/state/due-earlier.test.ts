// [LA8] Nothing due is one thing, not known another: what could not be read is told, and taken in once it can be.
import { effect } from "@preact/signals";
import { expect, test } from "vitest";
import { type Bench, bench, miniShelf, until } from "../../../tests/support/app-bench.js";
import { leftStanding } from "../../../tests/support/left-standing.js";
import { planStream, type Store } from "../../core/record/index.js";
import { fail, problem } from "../../core/terms/index.js";
import { dueIn } from "./due-earlier.js";
import { openJournal } from "./journal.js";

/** A rough hub whose renewal was declined, a later visit, and the app begun anew on it with a store that can fail. */
async function begunAnew(broken: { summaries?: boolean; streams: readonly string[]; rejects?: boolean }, on: Bench) {
  const { car, visit, next } = await leftStanding(on);
  const lost = () => {
    if (broken.rejects) throw new Error("ended");
    return fail(problem("record.store-lost"));
  };
  const isBroken = (stream: string): boolean =>
    broken.streams.some((one) => stream === (one === "plan" ? planStream(visit) : one === "visit" ? visit : car));
  const store: Store = {
    ...on.store,
    summaries: async () => (broken.summaries ? lost() : on.store.summaries()),
    entries: async (stream) => (isBroken(stream) ? lost() : on.store.entries(stream)),
  };
  const journal = openJournal(
    store,
    on.phone,
    () => ({ id: "p1", name: "Ines" }),
    () => undefined,
  );
  if (!broken.summaries) await journal.refresh();
  const state = await until(journal.keptVisit(next), ({ is }) => is === "open");
  if (state.is !== "open") throw new Error("open");
  const needs = {
    journal,
    store,
    shelf: miniShelf(),
    compiler: { compile: async () => Promise.reject(new Error("nothing here needs the parser")) },
    judging: () => import("./judging.js"),
  };
  return { journal, needs, visit, next, state: state.state };
}

type Due = ReturnType<typeof dueIn>;
const known = (needs: Parameters<typeof dueIn>[0], visit: Parameters<typeof dueIn>[1], is: (due: Due) => boolean) =>
  new Promise<Due>((resolve) => {
    const stop = effect(() => {
      const due = dueIn(needs, visit);
      if (due === undefined || !is(due)) return;
      resolve(due);
      queueMicrotask(() => stop());
    });
  });
const any = () => true;
const whole = (due: Due) => due?.looks !== undefined && due.unread.visits === 0 && due.unread.plans === 0;

test("without the list of visits it is not known, and known once the list is read", async () => {
  const broken = { summaries: true, streams: [] };
  const { journal, needs, state } = await begunAnew(broken, bench());
  expect(await known(needs, state, any)).toEqual({ unread: { visits: "all", plans: 0 } });
  broken.summaries = false;
  await journal.refresh();
  expect(await known(needs, state, whole)).toMatchObject({ due: [{ look: { is: "finding" } }] });
});

test("visits nobody can read are counted, and what they ask is due once they are read", async () => {
  const broken = { streams: ["visit"] };
  const { journal, needs, state } = await begunAnew(broken, bench());
  expect(await known(needs, state, any)).toEqual({ unread: { visits: 1, plans: 0 } });
  broken.streams = [];
  await journal.reread();
  expect(await known(needs, state, whole)).toMatchObject({ due: [{ look: { is: "finding" } }] });
});

test("where nothing can be judged, or the car not be read, it is not known", async () => {
  const { needs, state } = await begunAnew({ streams: [] }, bench());
  const without = { ...needs, judging: () => Promise.reject(new Error("not fetched")) };
  expect(await known(without, state, any)).toEqual({ unread: { visits: "all", plans: 0 } });
  const other = await begunAnew({ streams: ["car"] }, bench());
  expect(await known(other.needs, other.state, any)).toEqual({ unread: { visits: "all", plans: 0 } });
});

test("a work list nobody can read is counted, also where reading breaks off, and taken in once it is read", async () => {
  for (const rejects of [false, true]) {
    const broken = { streams: ["plan"], rejects };
    const { journal, needs, state, visit } = await begunAnew(broken, bench());
    // Undecided as far as anybody knows: the finding stands in the work list and is not due.
    expect(await known(needs, state, any)).toMatchObject({ due: [], unread: { visits: 0, plans: 1 } });
    expect(journal.keptPlan(visit).value.is).toBe("trouble");
    broken.streams = [];
    await journal.reread();
    expect(await known(needs, state, whole)).toMatchObject({ due: [{ look: { is: "finding" } }] });
  }
});

test("where nobody looked before, nothing is due, and that is known", async () => {
  const { journal, needs, visit } = await begunAnew({ streams: [] }, bench());
  const first = await until(journal.keptVisit(visit), ({ is }) => is === "open");
  if (first.is !== "open") throw new Error("open");
  expect(await known(needs, first.state, any)).toBeNull();
});
