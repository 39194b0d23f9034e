/**
 * Points of a visit found by word, in all its sheets: by name, question, how to look, replies, place and car state. Pure; goes only
 * where the round can open.
 */
import { capital, type KnownPoint, placeName, stateName } from "./knowledge.js";
import { type Looking, repliedText } from "./round-view.js";
import { type PointAt, pointText } from "./standing.js";
import { stopsOf } from "./stops.js";

export interface FoundSpot {
  /** Where the round opens: a point asked together with another opens with that one. */
  readonly at: PointAt;
  readonly place: string;
  readonly state: string;
  /** What stands there. */
  readonly says?: string;
}
export interface FoundPoint {
  readonly point: string;
  readonly name: string;
  readonly sheet: string;
  readonly spots: readonly FoundSpot[];
}

const plain = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
const wordsOf = (typed: string): readonly string[] =>
  plain(typed)
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
/** Whether a word of the text begins with what was typed: 'bear' finds 'wheel bearing'. */
const begins = (text: string, word: string): boolean =>
  ` ${text.replace(/[^\p{L}\p{N}]+/gu, " ")}`.includes(` ${word}`);

interface Spot {
  readonly point: string;
  readonly at: PointAt;
}

/** Everything the round can open for this person: what is asked, and what waits for a reply that calls for it. */
function spotsOf(looking: Looking): readonly Spot[] {
  const { known, tree, who, visit } = looking;
  const stops = stopsOf(known, who, looking, visit.replies);
  const asked = stops.flatMap((stop) =>
    stop.asked.flatMap((one): readonly Spot[] => {
      const at = { state: one.state, place: one.place, point: one.point };
      return [one.point, ...one.with].map((point) => ({ point, at }));
    }),
  );
  const taken = new Set(asked.map(({ point, at }) => pointText({ ...at, point })));
  const waiting = [...known.points.values()].flatMap(({ point }) =>
    point["asked-when"] === undefined || !point.who.includes(who)
      ? []
      : point.states
          .filter((state) => who === "technician" || known.states.get(state)?.lifted !== true)
          .flatMap((state) => tree.ofKind(point.place).map((place) => ({ state, place, point: point.id })))
          .filter((at) => !taken.has(pointText(at)))
          .map((at): Spot => ({ point: point.id, at })),
  );
  return [...asked, ...waiting];
}

function textOf({ text }: KnownPoint, sheet: string): string {
  const words = Object.values(text.words ?? {}).flatMap((one) =>
    typeof one === "string" ? [one] : [one.technician, one.owner],
  );
  const asks = Object.values(text.ask).filter((ask) => ask !== undefined);
  return plain(
    [text.name, text.how ?? "", text.trap ?? "", ...asks, ...Object.values(text.fields ?? {}), ...words, sheet].join(
      " ",
    ),
  );
}

/** Points in which every typed word begins a word of the point, its place or its car state; names first. */
export function findPoints(looking: Looking, typed: string): readonly FoundPoint[] {
  const wanted = wordsOf(typed);
  if (wanted.length === 0) return [];
  const { known } = looking;
  const byPoint = new Map<string, Spot[]>();
  for (const spot of spotsOf(looking)) {
    const row = byPoint.get(spot.point);
    if (row) row.push(spot);
    else byPoint.set(spot.point, [spot]);
  }
  const ranked = [...byPoint].flatMap(([id, spots]) => {
    const point = known.points.get(id);
    if (!point) return [];
    const sheet = known.sheets.find((one) => one.sheet.id === point.sheet)?.texts.title ?? point.sheet;
    const text = textOf(point, sheet);
    const left = wanted.filter((word) => !begins(text, word));
    const found = spots.flatMap(({ at }): readonly FoundSpot[] => {
      const [place, state] = [placeName(known, at.place), stateName(known, at.state)];
      if (!left.every((word) => begins(plain(`${place} ${state}`), word))) return [];
      const says = repliedText(looking, { ...at, point: id });
      return [{ at, place: capital(place), state, ...(says === undefined ? {} : { says }) }];
    });
    if (found.length === 0) return [];
    const name = plain(point.text.name);
    const rank = wanted.filter((word) => begins(name, word)).length;
    return [{ rank, point: { point: id, name: point.text.name, sheet, spots: found } }];
  });
  return ranked.sort((a, b) => b.rank - a.rank).map(({ point }) => point);
}
