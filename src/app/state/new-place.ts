/**
 * A place this car has beside the shared ones: what is asked for each kind, and the place made of it, with its twin on
 * the other side. Its id is made of chance and never shown, so none is ever used again. Pure.
 */
import type { BareCommon, PlaceDef, PlaceTree } from "../../core/sheet/run.js";
import type { PlaceEntry } from "./car-edits.js";

/** What a place of a kind lies at: a wheel, an axle with its side, a part of the floor, or a side of the car. */
type Where = "corner" | "axle" | "zone" | "side";

const AT: Readonly<Record<string, Where>> = {
  joint: "corner",
  pad: "corner",
  arm: "corner",
  pickup: "corner",
  corner: "axle",
  drain: "zone",
};
export const whereOf = (kind: string): Where => AT[kind] ?? "side";

/** What a joint or a tube does there: rules ask it by these relations. */
const DOES: Readonly<Record<string, readonly string[]>> = {
  joint: ["locates", "steers", "damps"],
  tube: ["vital", "main", "light"],
};

/** What may be said of a place of this kind, as far as the shared files tell such places apart. */
export const doesOf = (common: BareCommon, kind: string): readonly string[] =>
  (DOES[kind] ?? []).filter((name) => common.places.some((place) => place.relations?.[name] !== undefined));

/** Kinds a car may have more of; what the whole car, an axle or a side is stands. */
export const kindsToAdd = (common: BareCommon): readonly string[] => {
  const kinds = [...new Set(common.places.map(({ kind }) => kind))];
  const usual = ["joint", "tube", "drain"].filter((kind) => kinds.includes(kind));
  return [...usual, ...kinds.filter((kind) => !usual.includes(kind) && !["car", "axle", "side"].includes(kind))];
};

export interface NewPlace {
  readonly kind: string;
  readonly name: string;
  /** A corner, axle or part of the floor by its id; for a side `side-L`, `side-R` or `car` for the middle. */
  readonly at: string;
  /** Of a wheel at an axle: its side. */
  readonly side?: string;
  readonly does?: string;
  /** The tube on which its water lands. */
  readonly below?: string;
  /** Also on the other side. */
  readonly both: boolean;
}

/** The place on the other side of where a new one lies; undefined for what has no twin. */
export function otherSide(tree: PlaceTree, one: Pick<NewPlace, "kind" | "at" | "side">): string | undefined {
  if (whereOf(one.kind) === "axle") return one.side === undefined ? undefined : tree.related("opposite", one.side)[0];
  return tree.related("opposite", one.at)[0];
}

const short = (random: string): string =>
  random
    .replace(/[^A-Za-z0-9]/g, "")
    .slice(0, 8)
    .toLowerCase();

/** The entries that add it, named after where it lies: 'fifth link, front left'. */
export function newPlaces(
  tree: PlaceTree,
  nameOf: (place: string) => string,
  asked: NewPlace,
  random: () => string,
): readonly PlaceEntry[] {
  const other = otherSide(tree, asked);
  const id = `${asked.kind}-${short(random())}`;
  const twin = asked.both && other !== undefined ? `${asked.kind}-${short(random())}` : undefined;
  const one = placeOf(tree, asked, id, twin);
  const entries = [entryOf(one, asked, nameOf, asked.side ?? asked.at)];
  if (twin === undefined || other === undefined) return entries;
  const { below: _, ...plain } = asked;
  const below = asked.below === undefined ? undefined : tree.related("opposite", asked.below)[0];
  const mirrored: NewPlace =
    whereOf(asked.kind) === "axle" ? { ...plain, side: other } : { ...plain, at: other, ...(below ? { below } : {}) };
  const second = placeOf(tree, mirrored, twin, undefined);
  return [...entries, entryOf(second, mirrored, nameOf, other)];
}

function entryOf(def: PlaceDef, { name }: NewPlace, nameOf: (place: string) => string, at: string): PlaceEntry {
  return { place: def.id, change: { add: def }, name: at === "car" ? name : `${name}, ${nameOf(at)}` };
}

function placeOf(tree: PlaceTree, asked: NewPlace, id: string, twin: string | undefined): PlaceDef {
  const { kind, at, does, below } = asked;
  const where = whereOf(kind);
  const side = asked.side ?? tree.around(at, "side");
  const spot = tree.at(where === "side" && side !== undefined ? side : at);
  const liesIn = where === "side" || kind === "pickup" ? "car" : at;
  const relations: Record<string, string | string[]> = {
    ...(kind === "pickup" ? { corner: at } : {}),
    ...(side !== undefined && where !== "corner" ? { side } : {}),
    ...(does === undefined ? {} : { [does]: kind === "joint" ? [at] : id }),
    ...(below === undefined ? {} : { below }),
    ...(twin === undefined ? {} : { opposite: twin }),
  };
  return {
    id,
    kind,
    in: liesIn,
    ...(Object.keys(relations).length > 0 ? { relations } : {}),
    ...(spot ? { at: [spot[0], spot[1]] } : {}),
  };
}
