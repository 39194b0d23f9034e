/** The points asked of one person, in walking order. Judges no answer. */
import type { Audience } from "../terms/index.js";
import type { Asked, Opened } from "./contract.js";
import type { Answer } from "./looked.js";
import { type PointInfo, plainId } from "./model.js";
import type { Spot } from "./nodes.js";
import type { Site } from "./site.js";

export interface AskedList {
  readonly list: readonly Asked[];
  /** Whether a spot is asked, by its index; also those asked together with another. */
  readonly spots: readonly (boolean | undefined)[];
}

/** A step of the walk as it stands without anything opened; the same for every look at this car. */
interface Step {
  readonly spot: Spot;
  readonly asked: Asked;
  /** The spot in whose entry this one is answered. */
  readonly host: Spot | undefined;
}
const steps = new WeakMap<Site, readonly Step[]>();

/** For this person, shown or opened or answered already; by car state, place, safety-critical first. */
export function askedIn(
  site: Site,
  who: Audience,
  answers: readonly Answer[],
  opened: readonly Opened[],
  isShown: (spot: Spot) => boolean,
): AskedList {
  const openedBy = spotsOpened(site, opened);
  const spots = new Array<boolean | undefined>(site.spots.length).fill(undefined);
  for (const spot of site.walk) {
    if (!spot.point.point.who.includes(who)) continue;
    const isWanted = !standsBack(site, spot.point) && (openedBy.has(spot) || isShown(spot));
    if (isWanted || answers[spot.index] !== "none") spots[spot.index] = true;
  }
  const list: Asked[] = [];
  const guests = new Map<Spot, string[]>();
  const all = stepsOf(site);
  for (const { spot, host } of all) {
    if (host === undefined || spots[spot.index] !== true || spots[host.index] !== true) continue;
    const row = guests.get(host) ?? [];
    if (!row.includes(spot.point.id)) row.push(spot.point.id);
    guests.set(host, row);
  }
  for (const { spot, asked, host } of all) {
    if (spots[spot.index] !== true) continue;
    if (host !== undefined && spots[host.index] === true) continue;
    const by = openedBy.get(spot);
    const along = guests.get(spot);
    if (by === undefined && along === undefined) list.push(asked);
    else list.push({ ...asked, openedBy: by ?? asked.openedBy, with: along ?? asked.with });
  }
  return { list, spots };
}

/** A stand-in is not asked while the fuller point it stands in for can be. */
export function standsBack({ model }: Site, { point }: PointInfo): boolean {
  const fuller = point["instead-of"];
  return fuller !== undefined && model.pointById.has(plainId(fuller));
}

function spotsOpened(site: Site, opened: readonly Opened[]): ReadonlyMap<Spot, string[]> {
  const out = new Map<Spot, string[]>();
  for (const { point, place, because } of opened) {
    const info = site.model.pointById.get(plainId(point));
    const spot = info && site.spotsOf(info).get(place);
    if (spot === undefined) continue;
    const row = out.get(spot);
    if (row === undefined) out.set(spot, [because]);
    else if (!row.includes(because)) row.push(because);
  }
  return out;
}

function stepsOf(site: Site): readonly Step[] {
  const before = steps.get(site);
  if (before !== undefined) return before;
  const made = site.walk.flatMap((spot) =>
    spot.point.states.map((state) => ({ spot, state, step: stepOf(site, spot, state) })),
  );
  const rank = (state: string) => site.model.stateOrder.get(state) ?? site.model.stateOrder.size;
  made.sort(
    (a, b) =>
      rank(a.state) - rank(b.state) ||
      site.tree.order(a.spot.place) - site.tree.order(b.spot.place) ||
      Number(b.spot.point.safetyCritical) - Number(a.spot.point.safetyCritical) ||
      a.spot.point.order - b.spot.point.order,
  );
  const sorted = made.map((m) => m.step);
  steps.set(site, sorted);
  return sorted;
}

function stepOf(site: Site, spot: Spot, state: string): Step {
  const { point, place } = spot;
  const named = point.point["same-entry"];
  const other = named === undefined ? undefined : site.model.pointById.get(plainId(named));
  return {
    spot,
    host: other && site.spotsOf(other).get(place),
    asked: {
      point: point.id,
      place,
      state,
      fields: point.fields.map((f) => f.name),
      with: [],
      safetyCritical: point.safetyCritical,
      openedBy: [],
    },
  };
}
