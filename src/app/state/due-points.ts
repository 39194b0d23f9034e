/**
 * What is due again in one visit, as the visits before it ask, and at which of its points. What the visit answers itself
 * takes nothing off the list. Pure; says nothing in words.
 */
import type { Asked } from "../../core/assess/contract.js";
import { type DueAgain, dueAgain, type KmOn, type LookWanted, type PointAt } from "../../core/plan/index.js";
import type { Audience } from "../../core/terms/index.js";
import { barePoint } from "./complaint-lines.js";
import { type Knowledge, requiredFields } from "./knowledge.js";
import { isRealAnswer, type LooksNow, type LooksOf, looksNow } from "./looks-ground.js";
import type { Looking } from "./round-view.js";
import { ALL_FIELDS, standingAt } from "./standing.js";
import { isAskedHere, isDone } from "./stops.js";

/** What could not be read of the visits before: what it asks for is not known. */
export interface Unread {
  /** `all`: not even which there are. */
  readonly visits: number | "all";
  /** Work lists of visits that could be read. */
  readonly plans: number;
}

export interface DueLooks {
  readonly looks: LooksNow;
  readonly due: readonly DueAgain[];
  /** By point and place. */
  readonly at: ReadonlyMap<string, DueAgain>;
  readonly unread: Unread;
}

/** Nobody could tell whether anything is due: never the same as nothing. */
export interface DueUnknown {
  readonly looks?: never;
  readonly unread: Unread;
}

/** A point of this visit at which something is due, with those asked in the same entry. */
export interface DuePoint {
  readonly at: Asked;
  readonly due: DueAgain;
  /** Really answered, or not fitted. */
  readonly done: boolean;
  /** It was said why it can't be looked at. It stays open. */
  readonly unable: boolean;
}

type Here = Pick<Looking, "known" | "who" | "asked" | "visit">;

const keyOf = ({ point, place }: PointAt): string => `${barePoint(point)}@${place}`;

const entryOf = ({ point, place, with: along = [] }: PointAt & Partial<Pick<Asked, "with">>): readonly PointAt[] =>
  [point, ...along].map((one) => ({ point: one, place }));

/** Due by the day, and by what the odometer shows on it. `of` holds the visits before, and nothing of this one. */
export function dueLooks(of: LooksOf, read?: KmOn, plansUnread = 0): DueLooks {
  const looks = looksNow(of, read ? { read } : {});
  const due = dueAgain(looks);
  // The nearest comes first, and names the point.
  const at = new Map(due.toReversed().flatMap((one) => one.look.points.map((point) => [keyOf(point), one] as const)));
  return { looks, due, at, unread: { visits: looks.left, plans: plansUnread } };
}

/** What is due at a point, or at one that is asked in its entry. */
export const dueAt = (
  { at }: Pick<DueLooks, "at">,
  asked: PointAt & Partial<Pick<Asked, "with">>,
): DueAgain | undefined => {
  const named = entryOf(asked).find((one) => at.has(keyOf(one)));
  return named && at.get(keyOf(named));
};

/** As a later visit is asked (LA7): a non-answer is no look, unless there is nothing to look at. */
function isLooked(known: Here["known"], replies: Here["visit"]["replies"], id: string, at: Asked): boolean {
  const point = known.points.get(id)?.point;
  if (!point) return false;
  const stands = (field: string): boolean =>
    standingAt(replies, { ...at, point: id }, field).some(({ value }) => isRealAnswer(value));
  const required = requiredFields(point);
  return stands(ALL_FIELDS) || (required.length > 0 ? required.every(stands) : Object.keys(point.fields).some(stands));
}

/** The one that counts where a point is asked in several car states: looked at, else still to be tried. */
const rankOf = ({ done, unable }: DuePoint): number => (done ? 2 : unable ? 0 : 1);

/** The points this person is asked at which something is due, in the order they are asked; each once, in whichever car state. */
export function duePoints(now: DueLooks, { known, who, asked, visit: { replies } }: Here): readonly DuePoint[] {
  const points = new Map<string, DuePoint>();
  for (const at of asked) {
    const due = isAskedHere(known, who, at) ? dueAt(now, at) : undefined;
    if (!due) continue;
    const named = entryOf(at).filter((one) => now.at.has(keyOf(one)));
    const done = named.every(({ point }) => isLooked(known, replies, point, at));
    const one = { at, due, done, unable: !done && isDone(known, replies, at) };
    const there = points.get(keyOf(at));
    if (!there || rankOf(one) > rankOf(there)) points.set(keyOf(at), one);
  }
  return [...points.values()];
}

/** What is due of which not every point is asked here, with the points that are not; a look without points is none of this visit's. */
export function dueBeyond({ due }: Pick<DueLooks, "due">, { known, who, asked }: Here): readonly LookWanted[] {
  const here = new Set(asked.flatMap((at) => (isAskedHere(known, who, at) ? entryOf(at).map(keyOf) : [])));
  return due.flatMap(({ look }) => {
    const points = look.points.filter((one) => !here.has(keyOf(one)));
    return points.length > 0 || look.points.length === 0 ? [{ ...look, points }] : [];
  });
}

/** Whether a sheet asks it of somebody; at home the car is never off the ground. */
function isAskedOf({ points, states }: Pick<Knowledge, "points" | "states">, who: Audience, id: string): boolean {
  const point = points.get(id)?.point;
  if (!point?.who.includes(who)) return false;
  return who !== "owner" || point.states.some((state) => states.get(state)?.lifted !== true);
}

/** What is due by what a visit that is about to begin can do about it. */
interface DueAhead {
  /** Some of its points are asked by the chosen sheets, of this reader. */
  readonly here: readonly DueAgain[];
  /** This reader may look at it, and no chosen sheet asks it. */
  readonly unasked: readonly DueAgain[];
  /** Nobody asks this reader. */
  readonly workshop: readonly DueAgain[];
}

export function dueAhead(
  { looks, due }: DueLooks,
  who: Audience,
  sheets: readonly { readonly id: string }[],
): DueAhead {
  const chosen = new Set(sheets.map(({ id }) => id));
  const isOf = ({ look }: DueAgain): keyof DueAhead => {
    const known = looks.about.get(look.id)?.known;
    const own = look.points.filter(({ point }) => known && isAskedOf(known, who, point));
    if (own.some(({ point }) => chosen.has(known?.points.get(point)?.sheet ?? ""))) return "here";
    return look.points.length > 0 && own.length === 0 ? "workshop" : "unasked";
  };
  const of = (which: keyof DueAhead): readonly DueAgain[] => due.filter((one) => isOf(one) === which);
  return { here: of("here"), unasked: of("unasked"), workshop: of("workshop") };
}
