/** The demo's visit under way as a hand-over takes it: written through the real record, judged and planned by the real rules. */
import { createHash } from "node:crypto";
import * as shelf from "virtual:leadlamp/index";
import { DEMO_CAR, DEMO_PLAN, DEMO_THIRD } from "../../src/app/demo/names.js";
import { writeDemo } from "../../src/app/demo/open-demo.js";
import { STORIES } from "../../src/app/demo/scenario.js";
import { withExamples } from "../../src/app/state/example-house.js";
import type { HandoverGround } from "../../src/app/state/handover-ground.js";
import * as judging from "../../src/app/state/judging.js";
import { knowledgeOf, withPlaceNames } from "../../src/app/state/knowledge.js";
import { layWork, termsOf, workInput } from "../../src/app/state/plan-input.js";
import { currencyOf } from "../../src/app/state/plan-money.js";
import { paramOf } from "../../src/app/state/routes.js";
import { dayOf } from "../../src/app/state/today.js";
import { worthOf } from "../../src/core/assess/index.js";
import { complaintsOf, planWork, type WorkInput } from "../../src/core/plan/index.js";
import {
  type Entry,
  foldCar,
  foldHouse,
  foldPlan,
  foldVisit,
  isEntry,
  limitsOf,
  lookedOn,
  memoryWorld,
  openMemoryStore,
  placesOf,
} from "../../src/core/record/index.js";
import { type BuiltCommon, type BuiltSheet, buildPlaces } from "../../src/core/sheet/run.js";
import type { Audience } from "../../src/core/terms/index.js";

export const NOW = Date.parse("2026-11-20T10:00:00Z");
const hash = async (bytes: Uint8Array): Promise<string> => createHash("sha256").update(bytes).digest("hex");

/** Ready for any reader. */
export async function demoGround(): Promise<(reader: Audience) => HandoverGround> {
  let count = 0;
  const nonce = (): string => `nonce-${String(++count).padStart(8, "0")}`;
  const store = openMemoryStore(memoryWorld(), { nonce, hashOf: hash });
  const planner = async () => ({ plan: async (input: WorkInput) => planWork(input) });
  await writeDemo({ store, phone: { now: () => NOW, nonce, hash }, shelf, judging: async () => judging, planner });

  const entries = async (stream: string): Promise<readonly Entry[]> => {
    const read = await store.entries(stream);
    return read.ok ? read.value.filter(isEntry) : [];
  };
  const car = foldCar(await entries(DEMO_CAR));
  const all = await Promise.all(STORIES.map(async ({ stream }) => foldVisit(await entries(stream))));
  const visit = all.find(({ stream }) => stream === DEMO_THIRD);
  if (!visit) throw new Error("The demo has no visit under way");
  const earlier = all.filter((one) => one !== visit);
  const input = judging.toAssessInput(car, visit, earlier, limitsOf(car));
  if (!input.ok) throw new Error("The demo's visit under way was never opened");
  const common: BuiltCommon = await shelf.common.load();
  const sheets: readonly BuiltSheet[] = await Promise.all(shelf.sheets.map((one) => one.load()));
  const opened = sheets.filter(({ sheet }) => visit.sheets.some(({ id }) => id === sheet.id));
  const texts = await Promise.all(
    opened.map(async ({ sheet }) => shelf.sheets.find(({ id }) => id === sheet.id)?.texts["en"]?.()),
  );
  const words = await shelf.common.texts["en"]?.();
  if (!words || texts.some((one: unknown) => one === undefined)) throw new Error("The sheets have no English words");
  const engine = await judging.ready({ common, sheets: opened });
  const assessment = judging.withHand(judging.start(engine, input.value).assessment, visit);
  const worth = worthOf(engine, common, opened);
  const { tree } = buildPlaces(common.common.places, placesOf(car));
  const open = opened.flatMap(({ sheet }, at) => {
    const own = texts[at];
    return own ? [{ sheet, texts: own }] : [];
  });
  const known = judging.withOwnWords(withPlaceNames(knowledgeOf(common.common, words, open), car.placeNames), visit);
  const jobs = judging.order(assessment, opened, { at: lookedOn(visit), exposure: 0, around: tree.around });
  const said = foldPlan(await entries(DEMO_PLAN));
  const house = withExamples(foldHouse([]));
  const today = dayOf(NOW);
  const laid = layWork({ known, tree, jobs, orders: assessment.orders });
  const given = workInput(laid, known, said, house, today);
  return (reader) => ({
    telling: { known, who: reader, visit: paramOf(DEMO_THIRD), car: paramOf(DEMO_CAR), pictures: visit.pictures },
    for: reader,
    madeAt: "2026-11-20T11:00:00+01:00",
    today,
    engine: judging.ENGINE_VERSION,
    visit,
    earlier,
    heard: complaintsOf(
      { visit, answers: said.answers },
      earlier.map((one) => ({ visit: one, answers: new Map() })),
    ),
    car,
    tree,
    assessment,
    worth,
    due: laid.work.map(({ due }) => due),
    said,
    house,
    input: given,
    plan: planWork(given),
    currency: currencyOf(termsOf(house)),
    trends: [],
  });
}
