/**
 * The pictures of a visit by place, those not sorted yet apart, and where one may be said to belong: places one was at
 * last first, every place and every point asked, found by word. Pure.
 */
import { compareStamps, type IdText, type Stamp, type VisitState } from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { capital, type Knowledge, placeName, pointName, stateName } from "./knowledge.js";
import { isUnsorted, type PictureSpot } from "./picture-spot.js";
import type { PointAt } from "./standing.js";

export interface PictureOfList {
  readonly id: IdText;
  readonly thumb?: string;
}
export interface PictureGroup {
  readonly place: string;
  readonly name: string;
  readonly pictures: readonly PictureOfList[];
}
export interface PicturesView {
  readonly count: number;
  readonly unsorted: readonly PictureOfList[];
  /** In walking order. */
  readonly groups: readonly PictureGroup[];
}

const listed = ({ id, value }: VisitState["pictures"][number]): PictureOfList => ({
  id,
  ...(value.thumb ? { thumb: value.thumb } : {}),
});

export function picturesView(known: Knowledge, tree: PlaceTree, pictures: VisitState["pictures"]): PicturesView {
  const groups = new Map<string, PictureOfList[]>();
  for (const picture of pictures) {
    if (isUnsorted(picture.value)) continue;
    const place = picture.value.place ?? "car";
    const group = groups.get(place);
    if (group) group.push(listed(picture));
    else groups.set(place, [listed(picture)]);
  }
  return {
    count: pictures.length,
    unsorted: pictures.filter(({ value }) => isUnsorted(value)).map(listed),
    groups: [...groups]
      .sort(([a], [b]) => tree.order(a) - tree.order(b))
      .map(([place, own]) => ({ place, name: capital(placeName(known, place)), pictures: own })),
  };
}

/** Those pinned to a finding itself. */
export const picturesOfFinding = (
  pictures: VisitState["pictures"],
  fault: string,
  place: string,
): readonly PictureOfList[] =>
  pictures.filter(({ value }) => value.fault === fault && value.place === place).map(listed);

/** How many lie unsorted. */
export const unsortedCount = (pictures: VisitState["pictures"]): number =>
  pictures.filter(({ value }) => isUnsorted(value)).length;

/** When it was taken: of a picture sorted later, the time of the first entry in its line. */
export function takenAt(visit: VisitState, id: IdText): Stamp | undefined {
  const entry = visit.ledger.log.get(id);
  if (!entry || !("body" in entry)) return entry?.at;
  const { body } = entry;
  const before = typeof body === "object" && body !== null && "replaces" in body ? body.replaces : [];
  const [first] = Array.isArray(before) ? before : [];
  // Ids in `replaces` are texts: the entry's shape was checked when it was folded.
  return (typeof first === "string" && first !== id ? takenAt(visit, first) : undefined) ?? entry.at;
}

/** A place, or a point at a place, that a picture may be said to show. */
export interface WhereLine {
  readonly id: string;
  readonly title: string;
  readonly second?: string;
  readonly spot: PictureSpot;
}

const placeLine = (known: Knowledge, place: string): WhereLine => ({
  id: place,
  title: capital(placeName(known, place)),
  spot: { place },
});

function pointLine(known: Knowledge, { point, place, state }: PointAt): WhereLine {
  return {
    id: `${state} ${place} ${point}`,
    title: capital(pointName(known, point)),
    second: `${capital(placeName(known, place))}, ${stateName(known, state)}`,
    spot: { point, place, state },
  };
}

/** Places something was entered at, the latest first. */
export function recentPlaces(visit: Pick<VisitState, "replies" | "notes" | "pictures">): readonly string[] {
  const last = new Map<string, Stamp>();
  const seen = (place: string | undefined, at: Stamp): void => {
    const before = place === undefined ? undefined : last.get(place);
    if (place !== undefined && (!before || compareStamps(at, before) > 0)) last.set(place, at);
  };
  for (const { key, standing } of visit.replies.values()) for (const { at } of standing) seen(key.place, at);
  for (const { value, at } of [...visit.notes, ...visit.pictures]) seen(value.place, at);
  return [...last].sort(([, a], [, b]) => compareStamps(b, a)).map(([place]) => place);
}

/** Of the places one was at, so many are offered at the head. */
const RECENT = 6;

export interface WhereView {
  readonly recent: readonly WhereLine[];
  /** Without a word every place; with one, the places and points it finds. */
  readonly lines: readonly WhereLine[];
}

/** Every word typed must stand somewhere in the line. */
export function whereView(
  known: Knowledge,
  tree: PlaceTree,
  visit: Pick<VisitState, "replies" | "notes" | "pictures">,
  asked: readonly PointAt[],
  typed: string,
): WhereView {
  const places = tree.all.map(({ id }) => placeLine(known, id));
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) {
    const recent = recentPlaces(visit).filter((place) => tree.has(place));
    return { recent: recent.slice(0, RECENT).map((place) => placeLine(known, place)), lines: places };
  }
  const all = [...places, ...asked.map((at) => pointLine(known, at))];
  const seen = new Set<string>();
  const found = all.filter((line) => {
    const text = `${line.title} ${line.second ?? ""}`.toLowerCase();
    if (seen.has(line.id) || !words.every((word) => text.includes(word))) return false;
    return seen.add(line.id);
  });
  return { recent: [], lines: found };
}
