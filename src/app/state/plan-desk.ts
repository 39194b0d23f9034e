/**
 * The plan of one visit laid out to work on: what was said of it, what planning is given, the newest plan. Planning
 * runs beside the screen; the last plan stays on it until the next one is there. Knows no screen.
 */
import { computed, effect, type ReadonlySignal, signal } from "@preact/signals";
import type { JobDue } from "../../core/assess/contract.js";
import type { Planner, WorkInput, WorkPlan } from "../../core/plan/index.js";
import type { HouseState, PlanState } from "../../core/record/index.js";
import { type Problem, problem } from "../../core/terms/index.js";
import type { App } from "./app.js";
import { deskOf } from "./desks.js";
import { withExamples } from "./example-house.js";
import type { Opened } from "./journal.js";
import { layWork, workInput } from "./plan-input.js";
import { dayOf } from "./today.js";

export interface PlanDesk {
  /** With what is not kept laid over it. */
  readonly said: ReadonlySignal<Opened<PlanState>>;
  readonly house: ReadonlySignal<HouseState | undefined>;
  readonly input: ReadonlySignal<WorkInput | undefined>;
  /** The work list with what its jobs bring along, in urgency order. */
  readonly due: ReadonlySignal<readonly JobDue[]>;
  readonly plan: ReadonlySignal<WorkPlan | undefined>;
  /** A newer plan is being worked out. */
  readonly isPlanning: ReadonlySignal<boolean>;
  readonly trouble: ReadonlySignal<Problem | undefined>;
}

const laidOut = new WeakMap<App, Map<string, PlanDesk>>();

/** The plan of a visit: the same one at every call. */
export function planDeskOf(app: App, visit: string): PlanDesk {
  const own = laidOut.get(app) ?? new Map<string, PlanDesk>();
  laidOut.set(app, own);
  const there = own.get(visit);
  if (there) return there;
  const made = layOutPlan(app, visit);
  own.set(visit, made);
  return made;
}

function layOutPlan(app: App, visit: string): PlanDesk {
  const desk = deskOf(app, visit);
  const said = app.journal.plan(visit);
  const openHouse = app.journal.house();
  const house = computed(() => {
    const now = openHouse.value;
    if (now.is !== "open") return undefined;
    const plan = said.value;
    return plan.is === "open" && plan.state.demo ? withExamples(now.state) : now.state;
  });
  const plan = signal<WorkPlan | undefined>(undefined);
  const isPlanning = signal(false);
  const broke = signal<Problem | undefined>(undefined);

  const laid = computed(() => {
    const [known, tree, judged] = [desk.known.value, desk.tree.value, desk.assessment.value];
    if (!known || !tree || !judged) return undefined;
    return layWork({ known, tree, jobs: desk.jobs.value, orders: judged.orders });
  });
  const due = computed(() => (laid.value?.work ?? []).map((one) => one.due));
  const input = computed(() => {
    const [work, known, now] = [laid.value, desk.known.value, said.value];
    if (!work || !known || now.is !== "open" || openHouse.value.is === "opening") return undefined;
    return workInput(work, known, now.state, house.value, dayOf(app.phone.now()));
  });
  /** Only a change of what planning is given asks for another plan. */
  const asked = computed(() => (input.value ? JSON.stringify(input.value) : undefined));
  let planner: Promise<Planner> | undefined;

  async function work(text: string): Promise<void> {
    isPlanning.value = true;
    try {
      planner ??= app.planner();
      const made = await (await planner).plan(JSON.parse(text) as WorkInput);
      if (made === undefined || asked.peek() !== text) return;
      plan.value = made;
      broke.value = undefined;
    } catch (error) {
      // Fetching it may succeed the next time.
      planner = undefined;
      broke.value = problem("app.mistake", {}, { says: String(error) });
    }
    if (asked.peek() === text) isPlanning.value = false;
  }
  effect(() => {
    const text = asked.value;
    if (text !== undefined) void work(text);
  });

  const trouble = computed(() => {
    const now = said.value;
    return now.is === "trouble" ? now.problem : broke.value;
  });
  return { said, house, input, due, plan, isPlanning, trouble };
}
