/** Proves that back closes the topmost sheet and that closing by hand leaves the history as it was. */
import { expect, test } from "vitest";
import { arrived, type BackStack, hasLeft, holdBack, whenStill } from "./sheet-back.js";

interface Entry {
  readonly address: string;
  readonly state: unknown;
}
interface Stack extends BackStack {
  readonly entries: Entry[];
  go(address: string, state: unknown): void;
  /** No step back arrives any more. */
  lose(): void;
  /** The time of a step back, by its number, is over. */
  tooLate(step: number): void;
  /** Runs what was put off by a task. */
  task(): void;
  /** Steps back that are under way arrive, each from where it finds the person. */
  arrive(): void;
  /** The phone's back key, and all that follows from it. */
  backKey(): void;
}
/** A history whose steps back arrive when they are let. */
function stack(state: unknown): Stack {
  const entries: Entry[] = [{ address: "#/round", state }];
  const here = (): string => entries.at(-1)?.address ?? "";
  let tasks: (() => void)[] = [];
  let steps = 0;
  const lates: (() => void)[] = [];
  const made: Stack = {
    entries,
    get state() {
      return entries.at(-1)?.state;
    },
    here,
    pushState: (next) => void entries.push({ address: here(), state: next }),
    replaceState: (next) => void entries.splice(-1, 1, { address: here(), state: next }),
    back: () => {
      steps += 1;
    },
    soon: (act) => void tasks.push(act),
    late: (act) => void lates.push(act),
    lose: () => {
      steps = 0;
      lates.at(-1)?.();
    },
    tooLate: (step) => lates[step]?.(),
    go: (address, next) => void entries.push({ address, state: next }),
    task: () => {
      const due = tasks;
      tasks = [];
      for (const act of due) act();
    },
    arrive: () => {
      for (; steps > 0; steps -= 1) {
        entries.pop();
        arrived(made);
      }
    },
    backKey: () => {
      made.back();
      made.arrive();
    },
  };
  return made;
}
/** Until nothing is put off and nothing under way. */
function settle(history: Stack): void {
  history.task();
  history.arrive();
}
const BASE = { address: "#/round", state: null };

test("an open sheet holds one entry at the same address, with what was there before", () => {
  const history = stack({ from: "#/" });
  holdBack(history);
  expect(history.entries.length).toBe(2);
  expect(history.here()).toBe("#/round");
  expect(history.state).toMatchObject({ from: "#/" });
});

test("closing by hand takes the entry away again", () => {
  const history = stack(null);
  holdBack(history).release();
  settle(history);
  expect(history.entries).toEqual([BASE]);
});

test("closing because a link inside led on takes nothing of the new screen away, and back passes the closed entry", () => {
  const history = stack(null);
  const sheet = holdBack(history);
  history.go("#/new-visit", { from: "#/round" });
  sheet.release();
  settle(history);
  expect(history.here()).toBe("#/new-visit");
  history.backKey();
  expect(history.entries).toEqual([BASE]);
});

test("a screen put in place of the one below keeps its entry, without the mark of the sheet", () => {
  const history = stack({ from: "#/" });
  const sheet = holdBack(history);
  history.entries.splice(-1, 1, { address: "#/point", state: history.state });
  sheet.release();
  settle(history);
  expect(history.entries.at(-1)).toEqual({ address: "#/point", state: { from: "#/" } });
  expect(history.entries.length).toBe(2);
});

test("back closes the topmost of two sheets only", () => {
  const history = stack(null);
  const lower = holdBack(history);
  const upper = holdBack(history);
  history.backKey();
  expect(hasLeft(history.state, upper.id)).toBe(true);
  expect(hasLeft(history.state, lower.id)).toBe(false);
  expect(history.entries.length).toBe(2);
  history.backKey();
  expect(hasLeft(history.state, lower.id)).toBe(true);
});

test("a sheet opened as another closes takes over its entry and stays; back closes it", () => {
  const history = stack(null);
  const first = holdBack(history);
  first.release();
  const next = holdBack(history);
  settle(history);
  expect(history.entries.length).toBe(2);
  expect(hasLeft(history.state, next.id)).toBe(false);
  history.backKey();
  expect(hasLeft(history.state, next.id)).toBe(true);
  expect(history.entries).toEqual([BASE]);
});

test("a sheet opened while the step back of another is under way gets its entry when that has arrived, and stays", () => {
  const history = stack(null);
  holdBack(history).release();
  history.task();
  const next = holdBack(history);
  expect(hasLeft(history.state, next.id)).toBe(false);
  history.arrive();
  expect(history.entries.length).toBe(2);
  expect(hasLeft(history.state, next.id)).toBe(false);
  history.backKey();
  expect(hasLeft(history.state, next.id)).toBe(true);
  expect(history.entries).toEqual([BASE]);
});

test("closed again before its entry came, it leaves none", () => {
  const history = stack(null);
  holdBack(history).release();
  history.task();
  holdBack(history).release();
  settle(history);
  expect(history.entries).toEqual([BASE]);
});

test("two sheets that close together leave together, and a third opened meanwhile stays", () => {
  const history = stack(null);
  const [lower, upper] = [holdBack(history), holdBack(history)];
  upper.release();
  lower.release();
  history.task();
  const third = holdBack(history);
  history.arrive();
  expect(hasLeft(history.state, third.id)).toBe(false);
  expect(history.entries.map(({ address }) => address)).toEqual(["#/round", "#/round"]);
  third.release();
  settle(history);
  expect(history.entries).toEqual([BASE]);
});

test("closed, and on by a link at once: the new screen stays, and back goes past the closed entry", () => {
  const history = stack(null);
  holdBack(history).release();
  history.go("#/new-visit", { from: "#/round" });
  settle(history);
  expect(history.here()).toBe("#/new-visit");
  const over = holdBack(history);
  expect(history.entries.map(({ address }) => address)).toEqual(["#/round", "#/round", "#/new-visit", "#/new-visit"]);
  over.release();
  settle(history);
  history.backKey();
  expect(history.entries).toEqual([BASE]);
});

test("a screen gone to as a sheet closes comes once its entry has been left, and is not taken back with it", () => {
  for (const whenAsked of ["due", "under way"]) {
    const history = stack(null);
    holdBack(history).release();
    if (whenAsked === "under way") history.task();
    whenStill(() => history.go("#/point", { from: "#/round" }));
    settle(history);
    expect(history.entries).toEqual([BASE, { address: "#/point", state: { from: "#/round" } }]);
  }
});

test("with no sheet closing, and where the entry was taken over, a screen is gone to at once or a task later", () => {
  const history = stack(null);
  whenStill(() => history.go("#/point", null));
  expect(history.here()).toBe("#/point");
  holdBack(history).release();
  whenStill(() => history.go("#/visit", null));
  holdBack(history);
  expect(history.here()).toBe("#/point");
  history.task();
  expect(history.here()).toBe("#/visit");
});

test("a step back the browser lost holds nothing up for good", () => {
  const history = stack(null);
  holdBack(history).release();
  history.task();
  whenStill(() => history.go("#/point", null));
  history.lose();
  expect(history.here()).toBe("#/point");
});

test("closed by hand, the next back key leaves the screen", () => {
  const history = stack(null);
  history.go("#/point", { from: "#/round" });
  holdBack(history).release();
  settle(history);
  history.backKey();
  expect(history.entries).toEqual([BASE]);
});

test("an entry that another screen was put into is not taken over by a sheet of that screen", () => {
  const history = stack({ from: "#/" });
  const sheet = holdBack(history);
  history.entries.splice(-1, 1, { address: "#/point", state: history.state });
  sheet.release();
  holdBack(history).release();
  settle(history);
  expect(history.here()).toBe("#/point");
  expect(history.entries.length).toBe(2);
});

test("the time of a step back that arrived ends no later one: what is opened during that keeps its entry", () => {
  const history = stack(null);
  holdBack(history).release();
  settle(history);
  holdBack(history).release();
  history.task();
  history.tooLate(0);
  const next = holdBack(history);
  history.arrive();
  expect(hasLeft(history.state, next.id)).toBe(false);
  expect(history.entries.length).toBe(2);
});
