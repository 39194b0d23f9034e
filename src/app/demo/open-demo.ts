/** Brings the demo in through the real record when it is not there yet, and goes to its car. */
import type { Assessment } from "../../core/assess/contract.js";
import {
  type CarState,
  draftCar,
  draftFact,
  draftLimit,
  draftNote,
  draftPerson,
  draftPlace,
  draftPlaceName,
  type KeptBytes,
  limitsOf,
  lookedOn,
  placesOf,
  type VisitState,
} from "../../core/record/index.js";
import { buildPlaces } from "../../core/sheet/run.js";
import { DAY_MS } from "../../core/terms/index.js";
import type { App } from "../state/app.js";
import { FROZEN_TYPE, type FrozenFile, frozenBytes } from "../state/frozen.js";
import { paramOf, to } from "../state/routes.js";
import { commonFile, complaintsOf, listedFile } from "../state/shelf.js";
import { rememberPoint } from "../state/where-one-was.js";
import { CAR_NOTE, FACTS, MAKERS_FIGURES, OWN_PLACES, PLACE_NAMES } from "./car.js";
import { demoPicture, type MadePicture } from "./demo-picture.js";
import { demoSound } from "./demo-sound.js";
import { CAR_NAME, DEMO_CAR, DEMO_THIRD, PEOPLE } from "./names.js";
import { DEMO_SHEETS, STORIES } from "./scenario.js";
import { type Scribe, scribeOn } from "./scribe.js";
import type { DemoNoise, DemoScene } from "./tell.js";
import { LEFT_AT } from "./third.js";
import type { WorkDue } from "./write-plan.js";
import { type Props, writeVisit } from "./write-visit.js";

/** What writing the demo needs of the app. */
export type DemoNeeds = Pick<App, "store" | "phone" | "shelf" | "judging" | "planner">;

/** What bringing it in and going to its car needs. */
export type OpenNeeds = DemoNeeds &
  Pick<App, "remembered"> & {
    readonly journal: Pick<App["journal"], "refresh">;
    readonly router: Pick<App["router"], "fromHere">;
  };

const SCENES: readonly DemoScene[] = ["grease", "seep", "tube", "boot", "carpet", "label"];
const NOISES: readonly DemoNoise[] = ["quiet", "first-grumble", "grumble"];

function writeCar(scribe: Scribe, wall: number): CarState {
  const { id } = PEOPLE.ines;
  const car = (): CarState => scribe.car(DEMO_CAR);
  scribe.at(wall);
  scribe.say(id, (act) => [draftCar(act, DEMO_CAR, CAR_NAME)]);
  scribe.say(id, (act) => draftPerson(act, car(), PEOPLE.ines));
  scribe.say(id, (act) => Object.entries(FACTS).map(([fact, value]) => draftFact(act, car(), fact, value)));
  scribe.say(id, (act) => MAKERS_FIGURES.map((figure) => draftLimit(act, car(), figure)));
  scribe.say(id, (act) => OWN_PLACES.map((add) => draftPlace(act, car(), add.id, { add })));
  scribe.say(id, (act) => Object.entries(PLACE_NAMES).map(([place, name]) => draftPlaceName(act, car(), place, name)));
  scribe.say(id, (act) => [draftNote(act, car(), { text: CAR_NOTE })]);
  return car();
}

/** What is shared, and what the work due after a visit is. */
interface Gathered extends Props {
  readonly due: (visit: VisitState, earlier: readonly VisitState[]) => WorkDue;
}

/** Fetches, freezes, draws and reckons all that the visits share, side by side. */
async function gather({ phone, shelf, judging }: DemoNeeds, car: CarState): Promise<Gathered> {
  const blobOf = async (file: FrozenFile): Promise<KeptBytes> => {
    const bytes = frozenBytes(file);
    return { hash: await phone.hash(bytes), type: FROZEN_TYPE, bytes };
  };
  const wanted = shelf.sheets.filter(({ id }) => DEMO_SHEETS.includes(id));
  const limits = limitsOf(car);
  const [frozen, common, limitsBlob, core, built, builtCommon, complaints, pictures, sounds] = await Promise.all([
    Promise.all(
      wanted.map(listedFile).map(async (read) => {
        const file = await read;
        return { file, blob: await blobOf(file) };
      }),
    ),
    commonFile(shelf).then(blobOf),
    blobOf({ format: "leadlamp-frozen-limits/1", limits }),
    judging(),
    Promise.all(wanted.map((listed) => listed.load())),
    shelf.common.load(),
    complaintsOf(shelf),
    Promise.all(SCENES.map(async (scene) => [scene, await demoPicture(scene, phone.hash)] as const)),
    Promise.all(NOISES.map(async (noise) => [noise, await demoSound(noise, phone.hash)] as const)),
  ]);
  const engine = await core.ready({ common: builtCommon, sheets: built }, complaints);
  const tree = buildPlaces(builtCommon.common.places, placesOf(car)).tree;
  const jobsById = new Map(built.flatMap(({ sheet }) => sheet.jobs.map((job) => [job.id, { job }] as const)));
  const judged = (visit: VisitState, earlier: readonly VisitState[]): Assessment => {
    const input = core.toAssessInput(car, visit, earlier, limits);
    if (!input.ok) throw new Error("A visit of the demo was never opened");
    return core.withHand(core.start(engine, input.value).assessment, visit);
  };
  return {
    sheets: frozen.map(({ file: { sheet, edition }, blob }) => ({
      id: sheet.id,
      edition,
      label: sheet.label,
      blob: blob.hash,
    })),
    common: common.hash,
    limits: limitsBlob.hash,
    blobs: [common, limitsBlob, ...frozen.map(({ blob }) => blob)],
    pictures: new Map(pictures.filter((one): one is readonly [DemoScene, MadePicture] => one[1] !== undefined)),
    sounds: new Map(sounds),
    async judge(visit, earlier) {
      const bytes = new TextEncoder().encode(JSON.stringify(judged(visit, earlier)));
      return {
        blob: { hash: await phone.hash(bytes), type: FROZEN_TYPE, bytes },
        engine: core.ENGINE_VERSION,
      };
    },
    due: (visit, earlier) => {
      const assessment = judged(visit, earlier);
      return {
        known: { jobs: jobsById, common: builtCommon.common },
        tree,
        jobs: core.order(assessment, built, { at: lookedOn(visit), exposure: 0, around: tree.around }),
        orders: assessment.orders,
        ownJobs: core.ownJobsOf(visit),
      };
    },
  };
}

/** Writes the whole demo, in one transaction: on a refusal nothing of it stays. */
export async function writeDemo(needs: DemoNeeds): Promise<void> {
  const now = needs.phone.now();
  const plans = import("./write-plan.js");
  const scribe = await scribeOn(needs.store, needs.phone.nonce);
  const oldest = Math.max(...STORIES.map(({ daysAgo }) => daysAgo));
  const props = await gather(needs, writeCar(scribe, now - (oldest + 1) * DAY_MS));
  const earlier: VisitState[] = [];
  for (const story of STORIES) {
    await writeVisit(scribe, story, props, earlier, now);
    earlier.push(scribe.visit(story.stream));
  }
  const due = props.due(scribe.visit(DEMO_THIRD), earlier.slice(0, -1));
  const { writeHandBack, writePlan } = await plans;
  writeHandBack(scribe, now);
  await writePlan(scribe, due, await needs.planner(), now);
  await scribe.keep();
}

export async function openDemo(app: OpenNeeds): Promise<void> {
  const hence = app.router.fromHere();
  const summaries = await app.store.summaries();
  const there = summaries.ok && summaries.value.some((one) => one.stream === DEMO_CAR);
  if (!there) {
    await writeDemo(app);
    await app.store.keepSetting(...rememberPoint(app.remembered, DEMO_THIRD, LEFT_AT));
  }
  await app.journal.refresh();
  hence.swap(to("car", { car: paramOf(DEMO_CAR) }));
}
