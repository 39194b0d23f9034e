/**
 * Three phones plan one visit with bad clocks, undo, erasing and copies, and pass their logs around in bits: one plan for
 * all, step by step as anew, and the same progress. Everything comes from one seed.
 */
import { expect, test } from "vitest";
import { progressOf } from "../../src/core/plan/index.js";
import {
  type Act,
  type Draft,
  draftBudget,
  draftErase,
  draftIntake,
  draftJobStep,
  draftLeftLoose,
  draftMinutes,
  draftPart,
  draftPartStep,
  draftPlanBegun,
  draftUndo,
  foldPlan,
  foldStep,
  isEntry,
  type Logged,
  merge,
  PART_STEPS,
  type PlanState,
  readJournal,
  writeJournal,
} from "../../src/core/record/index.js";
import { PLAN_BODIES } from "../store/sample-plan.js";
import { chanceFrom, shuffled } from "./record-phones.js";
import { stateText } from "./record-state-text.js";

const SEED = 20_261_129;
const STEPS = 450;
const DAY = 86_400_000;
const PLAN = "plan:v";

interface Phone {
  readonly writer: string;
  readonly clock: number;
  plan: PlanState;
}

class Desk {
  readonly phones: readonly Phone[] = [-DAY, 0, 900 * DAY].map((clock, n) => ({
    writer: `w${n}`,
    clock,
    plan: { ...foldPlan([]), stream: PLAN },
  }));
  #made = 0;

  constructor(readonly chance: () => number) {}

  step(): void {
    const phone = this.#pick(this.phones);
    const roll = this.chance();
    const ids = [...phone.plan.ledger.log].filter(([, one]) => isEntry(one)).map(([id]) => id);
    if (roll < 0.25)
      this.take(phone, shuffled([...this.#pick(this.phones).plan.ledger.log.values()], this.chance).slice(0, 12));
    else if (roll < 0.35 && ids.length > 0) this.#write(phone, (act, plan) => draftUndo(act, plan, [this.#pick(ids)]));
    else if (roll < 0.4 && ids.length > 0) this.#write(phone, (act, plan) => draftErase(act, plan, [this.#pick(ids)]));
    else this.#write(phone, (act, plan) => [...draftPlanBegun(act, plan, "visit:v"), this.#said(act, plan)]);
  }

  settle(): void {
    for (const _round of [1, 2])
      for (const from of this.phones) for (const to of this.phones) this.take(to, [...from.plan.ledger.log.values()]);
  }

  take(phone: Phone, entries: readonly Logged[]): void {
    phone.plan = foldStep(phone.plan, entries);
  }

  #write(phone: Phone, make: (act: Act, plan: PlanState) => readonly Draft[]): void {
    this.#made += 1;
    const nonce = (): string => `n${(this.#made++).toString(36)}`;
    const at = { wall: 1_770_000_000_000 + this.#made * 1000 + phone.clock, count: 0 };
    for (const draft of make({ id: nonce(), by: phone.writer, at, nonce }, phone.plan)) {
      const last = phone.plan.ledger.writers.get(`${PLAN}/${phone.writer}`)?.last ?? 0;
      this.take(phone, [{ ...draft, writer: phone.writer, seq: last + 1 }]);
    }
  }

  #said(act: Act, plan: PlanState): Draft {
    const at = { job: this.#pick(["bearing", "brake"]), place: this.#pick(["FL", "FR"]) };
    const part = { ...at, part: "set" };
    const on = `2026-03-0${1 + Math.floor(this.chance() * 9)}`;
    const { replaces: _replaces, ...left } = PLAN_BODIES["left-loose"];
    return this.#pick([
      () => draftBudget(act, plan, this.chance() < 0.2 ? null : { minor: Math.floor(this.chance() * 9), gross: true }),
      () => draftMinutes(act, plan, { ...at, minutes: [1, 2, 3 + Math.floor(this.chance() * 9)] }),
      () => draftPart(act, plan, part, this.chance() < 0.2 ? null : { count: 1 + Math.floor(this.chance() * 4) }),
      () => {
        const step = this.#pick(PART_STEPS);
        const checks = { right: this.chance() < 0.7, count: true, condition: true };
        return draftPartStep(act, plan, { ...part, step, on, ...(step === "checked" ? { checks } : {}) });
      },
      () => draftJobStep(act, plan, { ...at, step: "waiting", on, next: "2026-04-01" }),
      () => draftLeftLoose(act, plan, { ...left, loose: this.#pick(["l1", "l2"]), words: on }),
      () => draftIntake(act, plan, "keys", this.chance() < 0.2 ? null : on),
    ])();
  }

  #pick<T>(list: readonly T[]): T {
    const one = list[Math.floor(this.chance() * list.length)];
    if (one === undefined) throw new Error("nothing to pick from");
    return one;
  }
}

test(`[RC9] [RC32] [RC33] [RC54] three phones plan one visit, ${STEPS} steps, seed ${SEED}: one plan and one progress`, () => {
  const chance = chanceFrom(SEED);
  const desk = new Desk(chance);
  for (let done = 1; done <= STEPS; done++) {
    desk.step();
    if (done % 100 > 0) continue;
    for (const { plan } of desk.phones)
      expect(stateText({ ...foldPlan(shuffled([...plan.ledger.log.values()], chance)), stream: PLAN })).toBe(
        stateText({ ...plan, stream: PLAN }),
      );
  }
  const logs = desk.phones.map(({ plan }) => [...plan.ledger.log.values()]);
  desk.settle();
  const [first, ...others] = desk.phones.map(({ plan }) => plan);
  if (!first) throw new Error("no phones");
  const progress = progressOf(first, "2026-03-15");
  for (const other of others) {
    expect(stateText(other)).toBe(stateText(first));
    expect(progressOf(other, "2026-03-15")).toEqual(progress);
  }
  const text = writeJournal(merge(...logs).entries);
  expect(writeJournal(merge(...shuffled(logs, chance)).entries)).toBe(text);
  const read = readJournal(text);
  expect(read.ok && stateText(foldPlan(read.value))).toBe(stateText(first));
  // The run must have been worth it.
  const kinds = new Set([...first.ledger.log.values()].filter(isEntry).map(({ kind }) => kind));
  expect(kinds).toContain("erase");
  expect(kinds).toContain("undo");
  expect([first.partSteps.size, first.jobSteps.size, first.loose.size]).toEqual([4, 4, 2]);
  expect(first.trouble.unknown).toEqual([]);
});
