// Planning beside the screen: the newest question only, a worker that broke is replaced.
import { expect, test } from "vitest";
import type { WorkInput, WorkPlan } from "../../core/plan/index.js";
import type { PlanRequest } from "./messages.js";
import { type PlanWorker, startPlanner } from "./planner.js";

const INPUT: WorkInput = { today: "2027-03-01", jobs: [], openings: [] };
// The answer is handed through unread.
const PLAN = { chosen: ["a"] } as unknown as WorkPlan;

function workers() {
  const made: (PlanWorker & { readonly asked: PlanRequest[]; ended: boolean })[] = [];
  const make = (): PlanWorker => {
    const worker = {
      asked: [] as PlanRequest[],
      ended: false,
      onmessage: null,
      onerror: null,
      postMessage: (request: PlanRequest) => void worker.asked.push(request),
      terminate: () => {
        worker.ended = true;
      },
    };
    made.push(worker);
    return worker;
  };
  return { made, make };
}

const answer = (worker: PlanWorker | undefined, data: object): void =>
  worker?.onmessage?.({ data } as MessageEvent<never>);

test("one worker answers one question after the other", async () => {
  const { made, make } = workers();
  const planner = startPlanner(make);
  for (const round of [1, 2]) {
    const plan = planner.plan(INPUT);
    answer(made[0], { id: round, plan: PLAN });
    expect(await plan).toBe(PLAN);
  }
  expect(made).toHaveLength(1);
});

test("a newer question ends the older one, whose answer is nothing", async () => {
  const { made, make } = workers();
  const planner = startPlanner(make);
  const older = planner.plan(INPUT);
  const newer = planner.plan(INPUT);
  expect([await older, made[0]?.ended, made.length]).toEqual([undefined, true, 2]);
  answer(made[1], { id: 2, plan: PLAN });
  expect(await newer).toBe(PLAN);
});

test("what broke is told, and the next question has a worker again", async () => {
  const { made, make } = workers();
  const planner = startPlanner(make);
  const first = planner.plan(INPUT);
  answer(made[0], { id: 1, broke: "RangeError" });
  await expect(first).rejects.toThrow("RangeError");
  const second = planner.plan(INPUT);
  made[0]?.onerror?.({ message: "gone" } as ErrorEvent);
  await expect(second).rejects.toThrow("gone");
  const third = planner.plan(INPUT);
  answer(made[1], { id: 3, plan: PLAN });
  expect(await third).toBe(PLAN);
});
