/** Laws of merging and folding over thousands of random operations. A failing seed is in the failure's name. */
import { expect, test } from "vitest";
import { foldVisit, type Logged, merge, readJournal, writeJournal } from "../../src/core/record/index.js";
import { modelReplies } from "./record-model.js";
import { chanceFrom, type Phone, shuffled, World } from "./record-phones.js";
import { logText, stateText } from "./record-state-text.js";

/** Seed and operations; more by hand: LEADLAMP_SEEDS="17:5000 18:5000". */
const RUNS = (process.env["LEADLAMP_SEEDS"] ?? "20260203:2500 7:600")
  .split(" ")
  .map((run) => run.split(":").map(Number));
const CHECKED_EVERY = 500;

const standing = ({ state }: Phone): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries([...state.replies].map(([key, slot]) => [key, slot.standing.map(({ id }) => id).sort()]));

function expectOwnLaws(phone: Phone, chance: () => number, when: string): void {
  const log = [...phone.log.values()];
  const repeated = shuffled([...log, ...log.filter(() => chance() < 0.3)], chance);
  expect(stateText(foldVisit(repeated)), `[RC33] ${phone.writer} step by step and anew, ${when}`).toBe(
    stateText(phone.state),
  );
  expect(standing(phone), `[RC14] ${phone.writer} what stands, ${when}`).toEqual(modelReplies(log));
}

for (const [seed = 0, operations = 0] of RUNS) {
  test(`[RC32] three phones, ${operations} operations, seed ${seed}: one state for all`, { timeout: 300_000 }, () => {
    const chance = chanceFrom(seed);
    const world = new World(chance);
    for (let done = 1; done <= operations; done++) {
      world.step();
      if (done % CHECKED_EVERY === 0) for (const phone of world.phones) expectOwnLaws(phone, chance, `after ${done}`);
    }
    world.settle();
    const [first, ...others] = world.phones;
    if (!first) throw new Error("no phones");
    expectOwnLaws(first, chance, "at the end");
    for (const other of others) {
      expect(logText(other.log.values())).toBe(logText(first.log.values()));
      expect(stateText(other.state)).toBe(stateText(first.state));
    }
    const logs = world.phones.map(({ log }) => [...log.values()]);
    expectMergingLaws(logs, chance);
    // The run must have been worth it: every sort of thing happened, often.
    for (const what of ["replied", "settled", "undone", "redone", "undone at will", "erased", "forked", "exchanged"]) {
      expect(world.did[what], what).toBeGreaterThan(operations / 500);
    }
    expect(first.state.trouble.forks.length).toBeGreaterThan(operations / 500);
    expect([...first.state.replies.values()].some(({ differ }) => differ)).toBe(true);
  });
}

function expectMergingLaws(logs: readonly (readonly Logged[])[], chance: () => number): void {
  const [a = [], b = [], c = []] = logs;
  const text = (...parts: readonly (readonly Logged[])[]): string => writeJournal(merge(...parts).entries);
  const whole = text(a, b, c);
  expect(text(c, a, b), "[RC9] any order").toBe(whole);
  expect(text(merge(a, b).entries, c), "[RC9] any grouping").toBe(text(a, merge(b, c).entries));
  expect(text(a, a, b, c, b), "[RC9] any repeats").toBe(whole);
  const cut = Math.floor(chance() * a.length);
  expect(text(a.slice(cut), b, a.slice(0, cut), c), "[RC9] split anywhere").toBe(whole);
  const read = readJournal(whole);
  expect(read.ok && writeJournal(read.value), "[RC37] reading what was written").toBe(whole);
}
