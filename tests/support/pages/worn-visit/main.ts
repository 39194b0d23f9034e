/**
 * Run inside the app's own page: opens a visit of the demo's car in the record and says many replies of it in one go,
 * and a budget in its plan. By the record's own drafts and store, as entries from another tab.
 */
import {
  type Draft,
  draftBudget,
  draftPlanBegun,
  draftReply,
  draftVisit,
  foldPlan,
  foldVisit,
  planStream,
  type Store,
  type VisitState,
} from "../../../../src/core/record/index.js";
import { makeAct, openStore } from "../../../../src/device/store/index.js";
import type { SaidOfWorn } from "../../sixty-jobs.js";

export interface WornVisit {
  /** Name of the app's database. */
  readonly store: string;
  /** A visit that was opened with the sheets wanted. */
  readonly like: string;
  readonly visit: string;
  readonly replies: readonly SaidOfWorn[];
  /** Minor units, with tax. */
  readonly budget: number;
}

declare global {
  var leadlampWear: (asked: WornVisit) => Promise<number>;
}

async function folded(store: Store, stream: string): Promise<VisitState> {
  const read = await store.entries(stream);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return foldVisit(read.value);
}

async function keep(store: Store, drafts: readonly Draft[]): Promise<void> {
  const kept = await store.append(drafts, []);
  if (!kept.ok) throw new Error(JSON.stringify(kept.problems));
}

globalThis.leadlampWear = async ({ store: name, like, visit, replies, budget }) => {
  const store = openStore(name);
  const opened = (await folded(store, like)).opened?.value;
  if (!opened) throw new Error(`${like} is not there`);
  const act = makeAct("tester", { wall: Date.now(), count: 0 });
  await keep(store, [draftVisit(act, visit, opened)]);
  const said = await folded(store, visit);
  const plan = { ...foldPlan([]), stream: planStream(visit) };
  await keep(store, [
    ...replies.map(({ key, value }) => draftReply(act, said, key, value)),
    ...draftPlanBegun(act, plan, visit),
    draftBudget(act, plan, { minor: budget, gross: true }),
  ]);
  store.close();
  return replies.length;
};
