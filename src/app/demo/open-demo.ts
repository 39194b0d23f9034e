/** Brings the demo in through the real record when it is not there yet, and goes to its open visit. */
import { effect } from "@preact/signals";
import {
  draftCar,
  draftComplaint,
  draftFact,
  draftLimit,
  draftNote,
  draftPerson,
  draftPicture,
  draftReply,
  draftVisit,
  foldVisit,
  type KeptBytes,
  limitsOf,
} from "../../core/record/index.js";
import type { App } from "../state/app.js";
import { deskOf } from "../state/desks.js";
import { FROZEN_TYPE, type FrozenFile, frozenBytes } from "../state/frozen.js";
import { isoNow } from "../state/new-visit.js";
import { paramOf, to } from "../state/routes.js";
import { commonFile, listedFile } from "../state/shelf.js";
import { close } from "../state/visit-acts.js";
import { rememberPoint } from "../state/where-one-was.js";
import { demoPicture } from "./demo-picture.js";
import {
  CAR_NAME,
  COMPLAINT,
  DEMO_CAR,
  DEMO_FIRST,
  DEMO_PICTURE,
  DEMO_SECOND,
  DEMO_SHEETS,
  FACTS,
  FIRST_ODOMETER,
  FIRST_VISIT,
  INES,
  JORIN,
  LEFT_AT,
  LIFTED,
  MAKERS_FIGURES,
  NOTE,
  SECOND_ODOMETER,
  SECOND_OPINION,
  SECOND_VISIT,
  type Told,
  UNPROVEN,
} from "./scenario.js";
import { type Scribe, scribeOn } from "./scribe.js";

const DAY_MS = 86_400_000;
/** The first visit lies this far back, the second began yesterday. */
const FIRST_DAYS_AGO = 372;
const SECOND_DAYS_AGO = 1;

async function blobOf(app: App, file: FrozenFile): Promise<KeptBytes> {
  const bytes = frozenBytes(file);
  return { hash: await app.phone.hash(bytes), type: FROZEN_TYPE, bytes };
}

async function openOne(
  app: App,
  scribe: Scribe,
  visit: {
    readonly stream: string;
    readonly wall: number;
    readonly purpose: "workshop" | "season";
    readonly odometer: { value: string; unit: string };
  },
): Promise<void> {
  const sheets = await Promise.all(
    app.shelf.sheets
      .filter(({ id }) => DEMO_SHEETS.includes(id))
      .map(async (listed) => ({ listed, blob: await blobOf(app, await listedFile(listed)) })),
  );
  const common = await blobOf(app, await commonFile(app.shelf));
  const kept = limitsOf(scribe.car(DEMO_CAR));
  const limits = await blobOf(app, { format: "leadlamp-frozen-limits/1", limits: kept });
  scribe.at(visit.wall);
  const opening = {
    car: DEMO_CAR,
    purpose: visit.purpose,
    who: "technician" as const,
    on: isoNow(visit.wall),
    odometer: visit.odometer,
    sheets: sheets.map(({ listed, blob }) => ({
      id: listed.id,
      edition: listed.edition,
      label: listed.label,
      blob: blob.hash,
    })),
    common: common.hash,
    limits: limits.hash,
  };
  await scribe.write(
    INES.id,
    (act) => [draftVisit(act, visit.stream, opening), ...draftPerson(act, foldVisit([]), INES, visit.stream)],
    [common, limits, ...sheets.map(({ blob }) => blob)],
  );
}

async function tell(scribe: Scribe, stream: string, replies: readonly Told[]): Promise<void> {
  for (const [point, place, state, field, value] of replies) {
    await scribe.write(INES.id, (act) => [
      draftReply(act, scribe.visit(stream), { point, place, state, field }, value),
    ]);
  }
}

async function writeCar(app: App, scribe: Scribe): Promise<void> {
  scribe.at(app.phone.now() - (FIRST_DAYS_AGO + 1) * DAY_MS);
  await scribe.write(INES.id, (act) => [draftCar(act, DEMO_CAR, CAR_NAME)]);
  await scribe.write(INES.id, (act) =>
    Object.entries(FACTS).map(([fact, value]) => draftFact(act, scribe.car(DEMO_CAR), fact, value)),
  );
  await scribe.write(INES.id, (act) => MAKERS_FIGURES.map((figure) => draftLimit(act, scribe.car(DEMO_CAR), figure)));
}

async function writeSecond(app: App, scribe: Scribe): Promise<void> {
  const before = (): ReturnType<Scribe["visit"]> => scribe.visit(DEMO_SECOND);
  await openOne(app, scribe, {
    stream: DEMO_SECOND,
    wall: app.phone.now() - SECOND_DAYS_AGO * DAY_MS,
    purpose: "workshop",
    odometer: SECOND_ODOMETER,
  });
  await scribe.write(INES.id, (act) => [draftComplaint(act, before(), COMPLAINT)]);
  for (const passed of [UNPROVEN, LIFTED]) {
    await scribe.write(INES.id, (act) => [draftNote(act, before(), { point: passed.gate, text: passed.why })]);
  }
  const empty = before();
  await tell(scribe, DEMO_SECOND, SECOND_VISIT);
  await scribe.write(INES.id, (act) => [draftNote(act, before(), NOTE)]);
  // Jorin's phone had not seen Ines's reply: drafted from the visit as it stood before.
  const [point, place, state, field, value] = SECOND_OPINION;
  await scribe.write(JORIN.id, (act) => [
    ...draftPerson(act, before(), JORIN),
    draftReply(act, empty, { point, place, state, field }, value),
  ]);
  const made = await demoPicture(app.pictures);
  if (made?.kind !== "picture") return;
  const { picture, thumb } = made;
  const body = {
    blob: picture.hash,
    thumb: thumb.hash,
    type: picture.type,
    width: picture.width,
    height: picture.height,
    point: NOTE.point,
    place: NOTE.place,
    state: NOTE.state,
  };
  const blobs = [picture, thumb].map(({ hash, type, bytes }) => ({ hash, type, bytes }));
  await scribe.write(INES.id, (act) => [{ ...draftPicture(act, before(), body), nonce: DEMO_PICTURE }], blobs);
}

/** Writes the whole demo; on a refusal nothing of it stays. */
async function write(app: App): Promise<void> {
  const scribe = scribeOn(app.store, app.phone.nonce);
  try {
    await writeCar(app, scribe);
    await openOne(app, scribe, {
      stream: DEMO_FIRST,
      wall: app.phone.now() - FIRST_DAYS_AGO * DAY_MS,
      purpose: "season",
      odometer: FIRST_ODOMETER,
    });
    await tell(scribe, DEMO_FIRST, FIRST_VISIT);
    await writeSecond(app, scribe);
  } catch (error) {
    await app.store.removeStreams([DEMO_CAR, DEMO_FIRST, DEMO_SECOND]);
    throw error;
  }
}

/** Closes the first visit with its real judgement, as the app does it. */
async function closeFirst(app: App): Promise<void> {
  const desk = deskOf(app, DEMO_FIRST);
  const assessment = await new Promise<unknown>((resolve) => {
    effect(() => {
      if (desk.assessment.value) resolve(desk.assessment.value);
    });
  });
  await close(app.journal, DEMO_FIRST, assessment, desk.engineVersion(), app.phone.hash);
}

export async function openDemo(app: App): Promise<void> {
  const summaries = await app.store.summaries();
  const there = summaries.ok && summaries.value.some((one) => one.stream === DEMO_CAR);
  if (!there) {
    await write(app);
    await app.journal.refresh();
    await closeFirst(app);
    await app.store.keepSetting(...rememberPoint(app.remembered, DEMO_SECOND, LEFT_AT));
  }
  await app.journal.refresh();
  app.router.swap(to("car", { car: paramOf(DEMO_CAR) }));
}
