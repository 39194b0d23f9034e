// Papers of a plan: what was decided, answered, signed and sent can be deleted for good, and nothing of it is found afterwards.
import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { act, bytesOf, emptyVisit, fresh, pictureDraft } from "../../../tests/store/sample.js";
import { FOUR } from "../../../tests/store/sample-decisions.js";
import { type Filled, filledPhone, good } from "../../../tests/support/copies.js";
import {
  type Bodies,
  type Draft,
  draftAddition,
  draftAnswer,
  draftComplaint,
  draftDecision,
  draftLeftLoose,
  draftNote,
  draftOwnerAnswer,
  draftPlan,
  draftPlanBegun,
  draftProgressSent,
  draftRechecked,
  draftRelease,
  draftSecondLook,
  draftSigned,
  draftUndo,
  eraseAndLook,
  foldPlan,
  foldVisit,
  type PlanState,
  planStream,
  type Store,
} from "../../core/record/index.js";
import { openStore } from "../../device/store/index.js";
import { papersOfVisit } from "./plan-papers.js";

const AT = { job: "whl.bearing", place: "FR" } as const;
const ON = "2026-03-03";
/** Stands in every paper, and in nothing else. */
const NAME = "Zwetschgenmus";

/** Everything a browser keeps under this name: keys, bodies, bytes, settings, indexes. */
async function everythingKept(name: string): Promise<string> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const asked = indexedDB.open(name);
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
  const all = (from: IDBObjectStore | IDBIndex, what: "getAll" | "getAllKeys"): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const asked = from[what]();
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
  const bytesAsText = (_: string, value: unknown): unknown =>
    value instanceof ArrayBuffer ? new TextDecoder("latin1").decode(value) : value;
  const found: string[] = [];
  for (const one of database.objectStoreNames) {
    const store = database.transaction(one).objectStore(one);
    const sources = [store, ...[...store.indexNames].map((index) => store.index(index))];
    for (const source of sources)
      for (const what of ["getAll", "getAllKeys"] as const)
        found.push(JSON.stringify(await all(source, what), bytesAsText));
  }
  database.close();
  return found.join("\n");
}

const planOf = async (store: Store, visit: string): Promise<PlanState> => ({
  ...foldPlan(good(await store.entries(planStream(visit)))),
  stream: planStream(visit),
});
const visitOf = async (store: Store, visit: string) => foldVisit(good(await store.entries(visit)));

/** A visit whose papers of every kind name somebody: written over, taken back and standing. */
async function withPapers(store: Store): Promise<Filled> {
  const phone = await filledPhone(1, store);
  const { visit } = phone;
  const say = async (make: (plan: PlanState) => Draft | readonly Draft[]): Promise<void> => {
    good(await store.append([make(await planOf(store, visit))].flat()));
  };
  const shot = await bytesOf(`a licence of ${NAME}`);
  good(await store.append([pictureDraft(visit, shot.hash)], [shot]));
  good(await store.append([draftComplaint(act(), emptyVisit(visit), { text: `${NAME} hears a hum` })]));
  good(await store.append([draftNote(act(), emptyVisit(visit), { text: `call ${NAME}` })]));
  await say((plan) => draftPlanBegun(act(), plan, visit));
  const answer = { word: "not-heard", findings: [], words: `${NAME} drove with us`, who: NAME, on: ON } as const;
  await say((plan) => draftAnswer(act(), plan, `${visit}/w1/1/n1`, answer));
  await say((plan) => draftAnswer(act(), plan, `${visit}/w1/1/n1`, { ...answer, words: "Nobody did" }));
  await say((plan) => draftDecision(act(), plan, AT, { ...FOUR["yes-now"], who: NAME }));
  await say((plan) => draftDecision(act(), plan, AT, { ...FOUR["tell-me-more"], who: NAME, what: `asks ${NAME}` }));
  const [asked] = (await planOf(store, visit)).decisions.get("whl.bearing@FR") ?? [];
  const question = asked?.id ?? "";
  await say((plan) => draftOwnerAnswer(act(), plan, { question, answer: { words: `told ${NAME}`, on: ON } }));
  await say((plan) => draftSigned(act(), plan, { decisions: [question], who: NAME, on: ON }));
  await say((plan) => draftProgressSent(act(), plan, { text: `Dear ${NAME}`, who: NAME, how: "post", on: ON }));
  await say((plan) => draftSecondLook(act(), plan, { ...AT, who: NAME, on: ON, words: "locked", same: false }));
  await say((plan) => draftRechecked(act(), plan, { recheck: "nuts", who: NAME, on: ON, words: "held" }));
  await say((plan) => draftRelease(act(), plan, { who: NAME, on: ON, how: "driven", told: [] }));
  const addition: Omit<Bodies["estimate.addition"], "replaces"> = {
    addition: "a1",
    words: "hub",
    minutes: [1, 2, 3],
    price: [1, 2, 3],
    reason: "worn",
    agreed: { who: NAME, how: "by phone", on: ON },
  };
  await say((plan) => draftAddition(act(), plan, addition));
  await say((plan) => draftPlan(act(), plan, "plan.intake", { item: "keys", says: `with ${NAME}`, replaces: [] }));
  await say((plan) =>
    draftUndo(
      act(),
      plan,
      [...plan.intake.values()].flat().map(({ id }) => id),
    ),
  );
  await say((plan) => draftLeftLoose(act(), plan, { loose: "l1", what: "loose", words: "hub nut", on: ON }));
  return phone;
}

test("FL11 papers of the plan are offered, and once deleted none of their words is in any store, index or byte", async () => {
  const name = fresh("papers-");
  const store = openStore(name, { patience: 60_000 });
  const { visit } = await withPapers(store);
  good(await store.summaries());
  const papers = papersOfVisit(await visitOf(store, visit), await planOf(store, visit));
  expect(papers.map(({ is }) => is).sort()).toEqual([
    "addition",
    "answer",
    "complaint",
    "decision",
    "intake",
    "note",
    "owner-answer",
    "picture",
    "picture",
    "recheck",
    "release",
    "second-look",
    "sent",
    "signature",
  ]);
  expect(papers.filter(({ hidden }) => hidden).map(({ is }) => is)).toEqual(["intake"]);
  expect(papers.find(({ is }) => is === "decision")).toMatchObject({
    words: `${NAME}, 2 Mar 2026, a question, asks ${NAME}`,
    ids: [expect.anything(), expect.anything()],
  });
  expect(await everythingKept(name)).toContain(NAME);

  const erased = good(await eraseAndLook(store, act(), { ids: papers.flatMap(({ ids }) => ids) }));
  expect([erased.bodiesLeft, erased.blobsLeft]).toEqual([0, 0]);
  good(await store.summaries());
  expect(await everythingKept(name)).not.toContain(NAME);
  // What tells of the work stays: something loose is not lost sight of, and nothing is left to delete.
  const left = await planOf(store, visit);
  expect([left.loose.size, left.decisions.size, left.signed.length, left.release.length]).toEqual([1, 0, 0, 0]);
  expect(papersOfVisit(await visitOf(store, visit), left)).toEqual([]);
  store.close();
});

test("FL11 what a newer version wrote into a plan can be chosen, by what it is", async () => {
  const { store, visit } = await filledPhone(0);
  const later = { ...draftPlan(act(), await planOf(store, visit), "plan.use", { use: "hard", replaces: [] }), v: 9 };
  good(await store.append([{ ...later, kind: "plan.said-later" }]));
  const papers = papersOfVisit(await visitOf(store, visit), await planOf(store, visit));
  expect(papers.map(({ is, ids }) => [is, ids.length])).toEqual([["unread", 1]]);
});
