/**
 * Plans in a worker, so that no screen waits for it. A newer question ends an older one at once: a search has no ear
 * while it runs, so its worker is thrown away. Refuses to plan anything itself.
 */
import type { Planner, WorkPlan } from "../../core/plan/index.js";
import type { PlanAnswer, PlanRequest } from "./messages.js";

/** What the planner needs of a worker; a test hands in its own. */
export interface PlanWorker {
  postMessage(message: PlanRequest): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<PlanAnswer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

interface Asked {
  readonly id: number;
  readonly done: (plan: WorkPlan | undefined) => void;
  readonly failed: (error: unknown) => void;
}

/** Starts the planner; `makeWorker` is called when something is asked and no worker stands idle. */
export function startPlanner(makeWorker: () => PlanWorker): Planner {
  let worker: PlanWorker | undefined;
  let asked: Asked | undefined;
  let lastId = 0;

  const end = (): void => {
    worker?.terminate();
    worker = undefined;
  };
  const settle = (then: (one: Asked) => void): void => {
    const one = asked;
    asked = undefined;
    if (one) then(one);
  };

  return {
    plan: (input) =>
      new Promise((done, failed) => {
        if (asked) {
          end();
          settle((one) => one.done(undefined));
        }
        const id = ++lastId;
        asked = { id, done, failed };
        worker ??= makeWorker();
        worker.onerror = (event) => {
          end();
          settle((one) => one.failed(new Error(event.message)));
        };
        worker.onmessage = ({ data }) => {
          if (data.id !== asked?.id) return;
          settle((one) => ("plan" in data ? one.done(data.plan) : one.failed(new Error(data.broke))));
        };
        worker.postMessage({ id, input });
      }),
  };
}
