/** The visit, the car, complaints, pictures and the plan of the car, as a hand-over takes them; who is a person. Pure. */
import { figureOf, foldPictures, isEntry, lookedOn, pictureKey, type VisitState } from "../../core/record/index.js";
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
import { seasonOf } from "./season.js";

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

function personIn(body: unknown): { readonly id: string; readonly name: string } | undefined {
  const person: unknown = typeof body === "object" && body !== null && "person" in body ? body.person : undefined;
  if (typeof person !== "object" || person === null || !("id" in person) || !("name" in person)) return undefined;
  const { id, name } = person;
  return typeof id === "string" && typeof name === "string" ? { id, name } : undefined;
}

/** Every name a body gives somebody, in whatever part of it. */
function namesIn(body: unknown): readonly string[] {
  if (typeof body !== "object" || body === null) return [];
  return Object.entries(body).flatMap(([key, inner]) =>
    key === "who" && typeof inner === "string" ? [inner] : namesIn(inner),
  );
}

/**
 * Names of everybody else, each that was ever given: whose car it is, who was told, who said yes. A name that was
 * mended since may still stand in free words. Of who looked none is taken for somebody else's.
 */
export function personalOf(ground: HandoverGround): readonly string[] {
  const { visit, car, said, earlier } = ground;
  const looked = new Set([...ground.visit.replies.values()].flatMap(({ standing }) => standing.map((one) => one.by)));
  const given = [visit, car, said, ...earlier].flatMap(({ ledger }) =>
    [...ledger.log.values()].filter(isEntry).flatMap(({ kind, body, stream }) => {
      const person = kind === "person" ? personIn(body) : undefined;
      if (person) return [{ name: person.name, isLooker: looked.has(person.id) }];
      // On a plan only: elsewhere the word tells what somebody is, not who.
      return stream === said.stream ? namesIn(body).map((name) => ({ name, isLooker: false })) : [];
    }),
  );
  const own = new Set([...lookers(ground), ...given.filter(({ isLooker }) => isLooker).map(({ name }) => name)]);
  return [...new Set(given.map(({ name }) => name.trim()))].filter((name) => name !== "" && !own.has(name));
}

function isAtRest({ replies }: VisitState): boolean {
  const season = seasonOf(replies);
  return season === "put-away" || season === "monthly-look";
}

export function visitTold(ground: HandoverGround): VisitTold {
  const { visit, said, today } = ground;
  // The day it comes in for its work, as somebody said; nothing is made up where nobody did.
  const begins = last(said.begins);
  const odometer = last(visit.odometer);
  const opened = visit.opened?.value;
  return {
    id: visit.stream,
    at: lookedOn(visit),
    ...(opened ? { purpose: opened.purpose } : {}),
    ...(opened?.purpose === "season" && isAtRest(visit) ? { laidUp: true } : {}),
    who: opened?.who ?? "technician",
    lookers: lookers(ground),
    ...(odometer ? { odometer: { value: figureOf(odometer) ?? odometer.value, unit: odometer.unit } } : {}),
    closed: visit.closed !== undefined,
    ...(begins !== undefined && begins > today ? { next: begins } : {}),
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
