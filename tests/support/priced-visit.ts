/**
 * A judged visit on the bench with one rough bearing due, its plan and the house's terms, ready to be planned and told.
 * Refuses to know Preact components.
 */
import type { Telling } from "../../src/app/state/because.js";
import { type Estimating, supplierNames } from "../../src/app/state/plan-estimate-view.js";
import { layWork, workInput } from "../../src/app/state/plan-input.js";
import { reply } from "../../src/app/state/reply-acts.js";
import { type HouseTerms, planWork } from "../../src/core/plan/index.js";
import { draftHouseTerms } from "../../src/core/record/index.js";
import { bench, benchVisit, key, until, words } from "./app-bench.js";

/** 60 an hour, a fifth of tax on everything: a minute of work is one, and a fifth more with tax. */
export const TERMS: HouseTerms = {
  currency: "EUR",
  labourRates: [{ id: "bench", name: "Bench work", perHour: 6000 }],
  tax: {
    label: "Bookkeeper",
    groups: [{ id: "full", name: "Full rate", basisPoints: 2000 }],
    labourGroup: "full",
    partsGroup: "full",
    rounding: "half-up",
    level: "invoice",
  },
};
export const EUROS = { currency: "EUR", minorDigits: 2 };
export const TODAY = "2026-11-27";
export const JOB = { job: "job.hub.renew", place: "FR" };
export const BEARING = { ...JOB, part: "bearing" };

/** `now` reads the record anew at every call. */
export async function pricedVisit() {
  const on = bench();
  const { visit } = await benchVisit(on);
  const desk = on.desk(visit);
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  const [known, tree, judged] = [
    await until(desk.known, (one) => one !== undefined),
    await until(desk.tree, (one) => one !== undefined),
    await until(desk.assessment, (one) => (one?.faults.length ?? 0) > 0),
  ];
  await until(on.journal.house(), ({ is }) => is === "open");
  if (!known || !tree || !judged) throw new Error("the bench is laid out");
  const telling: Telling = { known, who: "technician", visit: "v", car: "c", pictures: [] };

  const sayTerms = (terms: HouseTerms = TERMS): Promise<boolean> =>
    on.journal.keep("an-entry", (act) => {
      const house = on.journal.keptHouse().peek();
      return { drafts: house.is === "open" ? [draftHouseTerms(act, house.state, terms)] : [] };
    });

  const now = async (): Promise<Estimating & { readonly plan: NonNullable<Estimating["plan"]> }> => {
    const plan = await until(on.journal.plan(visit), ({ is }) => is === "open");
    const house = await until(on.journal.house(), ({ is }) => is === "open");
    if (plan.is !== "open" || house.is !== "open") throw new Error("plan and house are there before anything is said");
    const due = { known, tree, jobs: desk.jobs.value, orders: judged.orders };
    const input = workInput(layWork(due), known, plan.state, house.state, TODAY);
    return { telling, said: plan.state, input, plan: planWork(input), suppliers: supplierNames(house.state) };
  };
  return { on, visit, desk, known, tree, sayTerms, now };
}
