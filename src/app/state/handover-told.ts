/** The visit, the car, complaints, pictures and the plan of the car, as a hand-over takes them; who is a person. Pure. */
import { figureOf, foldPictures, lookedOn, pictureKey } from "../../core/record/index.js";
import {
  type CarTold,
  type FaultRef,
  marksDrawing,
  type PictureTold,
  type PlanTold,
  type VisitTold,
} from "../../core/report/index.js";
import { levelOf } from "../../core/terms/index.js";
import { carTitle } from "./car-view.js";
import { factLines } from "./facts-view.js";
import type { HandoverGround } from "./handover-ground.js";
import { capital, placeName, pointName } from "./knowledge.js";
import { marksSentence, marksView } from "./marks-view.js";
import { last } from "./plan-input.js";

/** Names by person, from every stream at hand. */
function namesOf({ visit, car, said }: HandoverGround): ReadonlyMap<string, string> {
  const all = [...car.people, ...said.people, ...visit.people];
  return new Map(
    all.flatMap(([id, standing]) => (standing.length > 0 ? [[id, standing.at(-1)?.value.name ?? ""]] : [])),
  );
}

/** Who replied, by name, in the order they began. */
function lookers(ground: HandoverGround): readonly string[] {
  const names = namesOf(ground);
  const by = [...ground.visit.replies.values()].flatMap(({ standing }) => standing.map((one) => one.by));
  return [...new Set(by)].flatMap((id) => names.get(id) || []);
}

/** Names of everybody else: whose car it is, who was told, who said yes. */
export function personalOf(ground: HandoverGround): readonly string[] {
  const looked = new Set(lookers(ground));
  return [...new Set(namesOf(ground).values())].filter((name) => name !== "" && !looked.has(name));
}

export function visitTold(ground: HandoverGround): VisitTold {
  const { visit } = ground;
  const odometer = last(visit.odometer);
  const opened = visit.opened?.value;
  return {
    id: visit.stream,
    at: lookedOn(visit),
    ...(opened ? { purpose: opened.purpose } : {}),
    who: opened?.who ?? "technician",
    lookers: lookers(ground),
    ...(odometer ? { odometer: { value: figureOf(odometer) ?? odometer.value, unit: odometer.unit } } : {}),
    closed: visit.closed !== undefined,
  };
}

/** A fact nobody said is left out: unknown is no value. */
export function carTold({ car, telling: { known } }: HandoverGround): CarTold {
  const facts = factLines(car, known.common, known.words).flatMap(({ name, value, options, unit }) => {
    if (value === "") return [];
    const words = options.find((one) => one.value === value)?.words ?? value;
    return [{ name, value: unit === undefined ? words : `${words} ${unit}` }];
  });
  return { name: carTitle(car), facts };
}

/** The finding a picture belongs to: the one it is pinned to, else the worst that rests on the point it shows. */
function faultOf({ assessment }: HandoverGround, value: HandoverGround["visit"]["pictures"][number]["value"]) {
  const { fault, point, place } = value;
  if (fault !== undefined) return { fault, place: place ?? "car" };
  if (point === undefined) return undefined;
  const resting = assessment.findings.filter((one) =>
    one.because.some(
      (because) => because.kind === "reply" && because.key.point === point && because.key.place === place,
    ),
  );
  const [worst] = [...resting].sort((a, b) => levelOf(b.grade) - levelOf(a.grade));
  return worst?.fault ? ({ fault: worst.fault, place: worst.place } satisfies FaultRef) : undefined;
}

/** What a picture shows, in words. */
const isFileName = (name: string): boolean => /^\S+\.[a-z0-9]{3,4}$/i.test(name);

function captionOf(
  { telling: { known } }: HandoverGround,
  { name, point, place }: Record<"name" | "point" | "place", string | undefined>,
) {
  const at = point === undefined ? undefined : pointName(known, point);
  // What an album calls its files says nothing of what is seen.
  const shows = name !== undefined && at !== undefined && isFileName(name) ? at : (name ?? at);
  const where = place === undefined || place === "car" ? undefined : placeName(known, place);
  return capital([shows, where].filter((one) => one !== undefined).join(", "));
}

const isReadable = ({ value }: HandoverGround["visit"]["pictures"][number]): boolean =>
  value.unreadable !== true && value.width > 0 && value.height > 0;

export function picturesTold(ground: HandoverGround): readonly PictureTold[] {
  const drawn = foldPictures(ground.visit.ledger.log.values()).marks;
  return ground.visit.pictures.filter(isReadable).map(({ value }) => {
    const fault = faultOf(ground, value);
    const { blob, width, height, name, point, place } = value;
    const marks = marksView(drawn.get(pictureKey(blob)) ?? [], value);
    const caption = captionOf(ground, { name, point, place });
    return {
      hash: blob,
      caption: marks.lines.length === 0 ? caption : `${caption}. ${marksSentence(marks)}`,
      width,
      height,
      ...(place === undefined ? {} : { place }),
      ...(fault ? { fault } : {}),
      ...(marks.drawn.length === 0 ? {} : { marks: marksDrawing({ width, height }, marks.drawn) }),
    };
  });
}

/** Pictures kept as they came: no file holds them, because what the camera wrote into them is still in them. */
export const picturesLeftOut = (ground: HandoverGround): readonly string[] =>
  ground.visit.pictures
    .filter((one) => !isReadable(one))
    .map(({ value: { name, point, place } }) => captionOf(ground, { name, point, place }));

/** From below, nose left; a place is inked once anything at it was answered. */
export function planTold({ assessment, tree }: HandoverGround): PlanTold {
  const looked = new Map<string, boolean>();
  for (const { place, is } of assessment.points) {
    if (is === "not-fitted") continue;
    looked.set(place, looked.get(place) === true || (is !== "not-looked-at" && is !== "cannot-get-at"));
  }
  const found = new Set(assessment.faults.map(({ place }) => place));
  for (const place of found) looked.set(place, true);
  return {
    kind: "chassis",
    side: "left",
    places: [...looked].map(([id, isDone]) => {
      // A place the plan does not know by its lines is drawn only where something was found.
      const at = found.has(id) ? tree.at(id) : undefined;
      return { id, look: isDone ? "done" : "not-looked", ...(at ? { at } : {}) };
    }),
  };
}
