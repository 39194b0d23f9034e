/**
 * One visit of the demo, step by step, as the app itself writes a visit: opened with frozen sheets and limits, told,
 * closed with its real judgement. Knows no figure of the story.
 */
import {
  type Act,
  type Draft,
  draftClose,
  draftComplaint,
  draftFinding,
  draftMark,
  draftNote,
  draftPerson,
  draftPicture,
  draftRegrade,
  draftReply,
  draftSound,
  draftTold,
  draftVisit,
  type FrozenSheet,
  foldVisit,
  type KeptBytes,
  type VisitState,
} from "../../core/record/index.js";
import { DAY_MS } from "../../core/terms/index.js";
import { isoNow } from "../state/new-visit.js";
import type { MadePicture } from "./demo-picture.js";
import type { MadeSound } from "./demo-sound.js";
import { DEMO_CAR, PEOPLE } from "./names.js";
import type { Scribe } from "./scribe.js";
import type { DemoNoise, DemoScene, Step, Story, Told } from "./tell.js";

/** What all visits share: frozen bytes, drawn pictures, made sounds, and the one who judges. */
export interface Props {
  readonly sheets: readonly FrozenSheet[];
  readonly common: string;
  readonly limits: string;
  readonly blobs: readonly KeptBytes[];
  readonly pictures: ReadonlyMap<DemoScene, MadePicture>;
  readonly sounds: ReadonlyMap<DemoNoise, MadeSound>;
  readonly judge: (
    visit: VisitState,
    earlier: readonly VisitState[],
  ) => Promise<{ readonly blob: KeptBytes; readonly engine: string }>;
}

/** Longer than any visit of the demo takes to tell. */
const HOURS_MS = 3 * 3_600_000;

/** Writes a visit; `now` is the moment the demo is brought in. */
export async function writeVisit(
  scribe: Scribe,
  story: Story,
  props: Props,
  earlier: readonly VisitState[],
  now: number,
): Promise<void> {
  const { stream } = story;
  const wall = now - story.daysAgo * DAY_MS - HOURS_MS;
  scribe.at(wall);
  const opening = {
    car: DEMO_CAR,
    purpose: story.purpose,
    who: "technician" as const,
    on: isoNow(wall),
    odometer: story.odometer,
    sheets: props.sheets,
    common: props.common,
    limits: props.limits,
  };
  const { ines } = PEOPLE;
  scribe.say(
    ines.id,
    (act) => [draftVisit(act, stream, opening), ...draftPerson(act, foldVisit([]), ines, stream)],
    props.blobs,
  );
  const empty = scribe.visit(stream);
  for (const step of story.steps) {
    const person = PEOPLE[step.by ?? "ines"];
    const seen = "apart" in step ? empty : scribe.visit(stream);
    const asked = (act: Act): readonly Draft[] => draftPerson(act, scribe.visit(stream), person);
    if ("told" in step)
      scribe.sayEach(
        person.id,
        step.told.map((one) => replied(seen, one)),
      );
    else scribe.say(person.id, (act) => [...asked(act), ...draftsOf(act, seen, step, props)], blobsFor(step, props));
  }
  if (!story.closed) return;
  const { blob, engine } = await props.judge(scribe.visit(stream), earlier);
  scribe.say(ines.id, (act) => [draftClose(act, scribe.visit(stream), { assessment: blob.hash, engine })], [blob]);
}

const replied =
  (visit: VisitState, [point, place, state, field, value]: Told) =>
  (act: Act): Draft =>
    draftReply(act, visit, { point, place, state, field }, value);

function draftsOf(act: Act, visit: VisitState, step: Exclude<Step, { readonly told: unknown }>, props: Props) {
  if ("apart" in step) return step.apart.map((one) => replied(visit, one)(act));
  if ("complaint" in step) return [draftComplaint(act, visit, step.complaint)];
  if ("note" in step) return [draftNote(act, visit, step.note)];
  if ("regrade" in step) return [draftRegrade(act, visit, step.regrade)];
  if ("finding" in step) return [draftFinding(act, visit, step.finding, step.found)];
  if ("warned" in step) return step.warned.map((caution) => draftTold(act, visit, caution));
  if ("sound" in step) {
    const made = props.sounds.get(step.sound);
    return made ? [draftSound(act, visit, { ...made.body, ...step.pin })] : [];
  }
  const made = props.pictures.get(step.picture);
  if (!made) return [];
  const body = { ...made.body, ...step.pin, ...(step.name === undefined ? {} : { name: step.name }) };
  const drafted = draftPicture(act, visit, body);
  const marks = (step.marks ?? []).map((drawn, at) => draftMark(act, visit, body.blob, `m${at + 1}`, drawn));
  return [step.nonce === undefined ? drafted : { ...drafted, nonce: step.nonce }, ...marks];
}

function blobsFor(step: Step, { pictures, sounds }: Props): readonly KeptBytes[] {
  if ("sound" in step) return sounds.get(step.sound)?.blobs ?? [];
  return "picture" in step ? (pictures.get(step.picture)?.blobs ?? []) : [];
}
