/**
 * The August case on the bench: a gear pair that must be had together, from stores that take ten working days and shut
 * all August, in a workshop open from Monday to Friday. Refuses to know Preact components.
 */
import type { Telling } from "../../src/app/state/because.js";
import { partSteps, planPart } from "../../src/app/state/plan-acts.js";
import type { PartsKnown } from "../../src/app/state/plan-part-view.js";
import { planWork, type WorkInput, type WorkPart, type WorkPlan } from "../../src/core/plan/index.js";
import { draftHouseSupplier, type PartFigures, type PartStepName } from "../../src/core/record/index.js";
import { bench, benchVisit, miniKnowledge, until } from "./app-bench.js";

export const GEARS = { job: "own.gears", place: "car" };
export const MAIN = { ...GEARS, part: "own.main" };
export const LAY = { ...GEARS, part: "own.lay" };
const JOB_ID = "own.gears@car";
const OPEN = [[8 * 60, 17 * 60]] as const;
export const AUGUST = { from: "2027-08-01", to: "2027-08-31" };
export const STORES = {
  id: "stores",
  name: "Gear stores",
  week: [1, 2, 3, 4, 5],
  closed: [AUGUST],
  leadDays: 10,
} as const;

export interface AugustDay extends PartsKnown {
  readonly plan: WorkPlan;
}

/** `on(today)` is the plan as the screens would have it that day. */
export async function august(main: PartFigures, lay: PartFigures) {
  const { journal, ...rest } = bench();
  const { visit } = await benchVisit({ journal, ...rest });
  await planPart(journal, visit, MAIN, main);
  await planPart(journal, visit, LAY, lay);
  await until(journal.house(), ({ is }) => is === "open");
  await journal.keep("an-entry", (act) => {
    const house = journal.keptHouse().peek();
    return { drafts: house.is === "open" ? [draftHouseSupplier(act, house.state, STORES.id, STORES)] : [] };
  });
  const order = (step: PartStepName, on: string): Promise<boolean> =>
    partSteps(journal, visit, [
      { ...MAIN, step, on },
      { ...LAY, step, on },
    ]);
  const known = { ...miniKnowledge(), ownJobs: new Map([[GEARS.job, { words: "Replace the gear pair", hours: "6" }]]) };
  const telling: Telling = { known, who: "technician", visit: "v", car: "c", pictures: [] };

  /** `orderedOn` as planning reads it off the steps. */
  const at = async (today: string, more: Partial<WorkInput> = {}, part: Partial<WorkPart> = {}): Promise<AugustDay> => {
    const plan = await until(journal.plan(visit), ({ is }) => is === "open");
    const house = await until(journal.house(), ({ is }) => is === "open");
    if (plan.is !== "open" || house.is !== "open") throw new Error("plan and house are there");
    const input: WorkInput = {
      today,
      begins: "2027-07-28",
      jobs: [
        {
          id: JOB_ID,
          key: { gate: 1, due: 1, rank: 12, grade: "major", left: null, position: 1, id: JOB_ID },
          grade: "major",
          minutes: [360, 360, 360],
          access: [],
          follows: [],
          parts: [
            { id: MAIN.part, ...main, ...part },
            { id: LAY.part, ...lay, ...part },
          ],
        },
      ],
      openings: [],
      calendar: {
        zone: "Europe/Rome",
        week: [OPEN, OPEN, OPEN, OPEN, OPEN, [], []],
        closed: [],
        people: 1,
        lifts: 1,
      },
      suppliers: [STORES],
      ...more,
    };
    return { telling, input, said: plan.state, house: house.state, plan: planWork(input) };
  };
  return { at, order, journal, visit };
}
