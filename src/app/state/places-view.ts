/** The places of a car for the list: what it has, what it lacks, what was added, what its people call them. Pure. */
import { type CarState, placesOf, placesOnceAdded } from "../../core/record/index.js";
import {
  type BareCommon,
  type BareCommonTexts,
  buildPlaces,
  type PlaceChange,
  type PlaceDef,
  type PlaceTree,
} from "../../core/sheet/run.js";
import { kindOfPlace } from "../texts/kinds.js";
import type { PlaceEntry } from "./car-edits.js";
import { capital, plainWord } from "./knowledge.js";

export interface PlaceLine {
  readonly id: string;
  readonly name: string;
  /** The shared files' word, where this car has one of its own. */
  readonly was?: string;
  readonly kind: string;
  readonly def: PlaceDef;
  readonly gone: boolean;
  readonly added: boolean;
}

export interface PlacesOfCar {
  readonly tree: PlaceTree;
  readonly lines: readonly PlaceLine[];
}

/** 'Joints', 'Tubes': a kind as a heading. */
export const kindWords = (kind: string): string => kindOfPlace(kind) ?? capital(plainWord(kind));

/** Every place in walking order; what was taken away stays in the list, to be brought back. */
export function placesOfCar(car: CarState, common: BareCommon, words: BareCommonTexts): PlacesOfCar {
  const changes = placesOf(car);
  const { tree } = buildPlaces(common.places, changes);
  const added = changes.flatMap((change) => ("add" in change ? [change.add] : []));
  const once = placesOnceAdded(car);
  const own = new Set([...added, ...once].map(({ id }) => id));
  const gone = [...common.places, ...added, ...once].filter(({ id }) => !tree.has(id));
  const lines = [...tree.all, ...gone].map((def): PlaceLine => {
    const shared = words.places[def.id];
    const called = car.placeNames.get(def.id)?.at(-1)?.value;
    return {
      id: def.id,
      name: capital(called ?? shared ?? def.id),
      ...(called !== undefined && shared !== undefined ? { was: capital(shared) } : {}),
      kind: def.kind,
      def,
      gone: !tree.has(def.id),
      added: own.has(def.id),
    };
  });
  return { tree, lines };
}

/** The lines whose name, earlier name or kind holds every word that was typed. */
export function placesFound(lines: readonly PlaceLine[], typed: string): readonly PlaceLine[] {
  const wanted = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return lines.filter((line) => {
    const text = `${line.name} ${line.was ?? ""} ${kindWords(line.kind)}`.toLowerCase();
    return wanted.every((word) => text.includes(word));
  });
}

/** Lines under the heading of their kind, in the order kinds first come. */
export function byKind(
  lines: readonly PlaceLine[],
): readonly { readonly kind: string; readonly lines: readonly PlaceLine[] }[] {
  const groups = new Map<string, PlaceLine[]>();
  for (const line of lines) {
    if (line.kind === "car") continue;
    const group = groups.get(line.kind);
    if (group) group.push(line);
    else groups.set(line.kind, [line]);
  }
  return [...groups].map(([kind, own]) => ({ kind, lines: own }));
}

/** Taking a place away, or bringing it back as it was. Its id stays its own. */
export function takenOrBrought(line: PlaceLine): PlaceEntry {
  if (line.gone) return { place: line.id, change: line.added ? { add: line.def } : null };
  return { place: line.id, change: line.added ? null : { remove: line.id } };
}

/** What one car of a type knows of its places and another does not yet: changes, and names. */
export function copied(from: CarState, into: CarState): readonly PlaceEntry[] {
  const changes = placesOf(from).flatMap((change): readonly PlaceEntry[] => {
    const place = idOf(change);
    return into.places.has(place) ? [] : [{ place, change }];
  });
  const names = [...from.placeNames].flatMap(([place, standing]): readonly PlaceEntry[] => {
    const name = standing.at(-1)?.value;
    return into.placeNames.has(place) || name === undefined ? [] : [{ place, name }];
  });
  return [...changes, ...names];
}

const idOf = (change: PlaceChange): string => ("add" in change ? change.add.id : change.remove);
