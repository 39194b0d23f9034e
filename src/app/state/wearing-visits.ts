/**
 * A car's visits judged one after the other, each by what it froze, for comparing their readings. What was worked out
 * stays until a visit or the car changes. Knows no screen and compares nothing.
 */
import type { Assessment, Fault } from "../../core/assess/contract.js";
import type { Grounded } from "../../core/assess/index.js";
import type { PointAt } from "../../core/plan/index.js";
import type { CarState, Store, VisitState } from "../../core/record/index.js";
import { lookedOn, placesOf } from "../../core/record/index.js";
import { buildPlaces, type Limit, type PlaceTree } from "../../core/sheet/run.js";
import type { App } from "./app.js";
import { type Knowledge, knowledgeOf, withPlaceNames } from "./knowledge.js";
import { commonTextsOf, type FrozenSet, listedFile, plannedSet, readFrozenSet, textsOf } from "./shelf.js";

/** One visit's readings, each with what was typed for it. */
export interface WornVisit {
  readonly stream: string;
  /** As ISO text. */
  readonly at: string;
  readonly odometer?: { readonly value: number; readonly unit: string };
  readonly grounds: readonly Grounded[];
  /** `point@place` of what was found not fitted. */
  readonly notFitted: ReadonlySet<string>;
  readonly found: readonly WornFault[];
}
/** A finding as its visit judged it, with the points it goes by. */
export interface WornFault {
  readonly fault: Fault;
  readonly points: readonly PointAt[];
}
/** All of it, told in the words of the newest visit. */
export interface WornCar {
  readonly visits: readonly WornVisit[];
  readonly known: Knowledge;
  readonly tree: PlaceTree;
  /** By visit: what its own sheets say. */
  readonly knownAt: ReadonlyMap<string, Knowledge>;
  /** By limit: what brings a value towards it. */
  readonly wears: ReadonlyMap<string, NonNullable<Limit["wears"]>>;
}

/** A visit that is not compared: `unread` by the storage, its sheets `missing` or of a newer version, `unjudged` by them. */
export interface LeftVisit {
  readonly stream: string;
  /** As ISO text; absent where not even that could be read. */
  readonly at?: string;
  readonly why: "unread" | "missing" | "unjudged";
}
export interface WornVisits {
  /** Absent while there is no visit that can be read. */
  readonly worn?: WornCar;
  readonly left: readonly LeftVisit[];
}

type Needs = Pick<App, "shelf" | "compiler" | "judging"> & { readonly store: Pick<Store, "blob"> };

/** A visit is judged anew when it or the car has changed: states are never altered. */
const judged = new WeakMap<VisitState, { readonly car: CarState; readonly worn: Promise<WornVisit | undefined> }>();

const frozenOf = async (store: Needs["store"], visit: VisitState): Promise<FrozenSet | undefined> => {
  if (!visit.frozen || visit.sheets.length === 0) return undefined;
  const set = await readFrozenSet(store, { ...visit.frozen, sheets: visit.sheets.map(({ blob }) => blob) });
  return set.ok ? set.value : undefined;
};

const notFittedIn = (visit: VisitState): ReadonlySet<string> =>
  new Set(
    [...visit.replies.values()].flatMap(({ key, standing }) =>
      standing.some(({ value }) => value.type === "non-answer" && value.nonAnswer === "not-fitted")
        ? [`${key.point}@${key.place}`]
        : [],
    ),
  );

/** Replies that decided it, and those its values were worked out from. */
function foundIn({ faults, findings }: Pick<Assessment, "faults" | "findings">): readonly WornFault[] {
  return faults.map((fault) => {
    const own = findings.filter((one) => one.fault === fault.fault && one.place === fault.place);
    const keys = own.flatMap(({ because }) =>
      because.flatMap((step) =>
        step.kind === "reply" ? (step.supports ? [] : [step.key]) : step.kind === "derived" ? step.from : [],
      ),
    );
    const points = new Map(keys.map(({ point, place }) => [`${point}@${place}`, { point, place }]));
    return { fault, points: [...points.values()] };
  });
}

async function judge(
  { shelf, compiler, judging, store }: Needs,
  car: CarState,
  visit: VisitState,
): Promise<WornVisit | undefined> {
  const set = await frozenOf(store, visit);
  if (!set) return undefined;
  const [core, planned] = await Promise.all([judging(), plannedSet(shelf, compiler, set)]);
  // What earlier visits say changes no reading.
  const input = core.toAssessInput(car, visit, [], set.limits.limits);
  if (!planned.ok || !input.ok) return undefined;
  const session = core.start(await core.ready(planned.value), input.value);
  const { at, odometer } = input.value;
  return {
    stream: visit.stream,
    at,
    ...(odometer ? { odometer } : {}),
    grounds: core.groundsOf(session),
    notFitted: notFittedIn(visit),
    found: foundIn(core.withHand(session.assessment, visit)),
  };
}

function worn(needs: Needs, car: CarState, visit: VisitState): Promise<WornVisit | undefined> {
  const there = judged.get(visit);
  if (there?.car === car) return there.worn;
  const made = judge(needs, car, visit);
  judged.set(visit, { car, worn: made });
  return made;
}

/** A visit opened before sheets said what wears is told by the sheet as it is now. */
async function wearsIn({ shelf }: Needs, set: FrozenSet): Promise<WornCar["wears"]> {
  const limits = await Promise.all(
    set.sheets.map(async ({ sheet }) => {
      if (sheet.limits.some(({ wears }) => wears !== undefined)) return sheet.limits;
      const listed = shelf.sheets.find(({ id }) => id === sheet.id);
      return listed ? (await listedFile(listed)).sheet.limits : [];
    }),
  );
  return new Map(limits.flat().flatMap(({ id, wears }) => (wears === undefined ? [] : [[id, wears] as const])));
}

function knownIn({ common, sheets }: FrozenSet): Knowledge {
  const open = sheets.map((file) => ({ sheet: file.sheet, texts: textsOf(file) }));
  return knowledgeOf(common.common, commonTextsOf(common), open);
}

/** Judges the car's visits, oldest first; undefined while it has none that can be read. */
export const wornCar = async (
  needs: Needs,
  car: CarState,
  visits: readonly VisitState[],
): Promise<WornCar | undefined> => (await wornVisits(needs, car, visits)).worn;

/** The same with every visit that could not be compared, and why; told by the newest that can be read. */
export async function wornVisits(needs: Needs, car: CarState, visits: readonly VisitState[]): Promise<WornVisits> {
  const inTime = [...visits].sort((a, b) => (lookedOn(a) < lookedOn(b) ? -1 : 1));
  const left: LeftVisit[] = [];
  const found: WornVisit[] = [];
  const knownBy = new Map<string, Knowledge>();
  const knownAt = new Map<string, Knowledge>();
  let set: FrozenSet | undefined;
  for (const visit of inTime) {
    const frozen = await frozenOf(needs.store, visit);
    const one = frozen && (await worn(needs, car, visit));
    if (one) {
      found.push(one);
      // Most visits of a car open the same sheets: their words are gathered once.
      const key = JSON.stringify([visit.frozen, visit.sheets.map(({ blob }) => blob)]);
      const known = knownBy.get(key) ?? withPlaceNames(knownIn(frozen), car.placeNames);
      knownBy.set(key, known);
      knownAt.set(visit.stream, (await needs.judging()).withOwnWords(known, visit));
    } else left.push({ stream: visit.stream, at: lookedOn(visit), why: frozen ? "unjudged" : "missing" });
    set = one ? frozen : set;
  }
  if (!set) return { left };
  const known = withPlaceNames(knownIn(set), car.placeNames);
  const told = {
    visits: found,
    known,
    knownAt,
    tree: buildPlaces(known.common.places, placesOf(car)).tree,
    wears: await wearsIn(needs, set),
  };
  return { worn: told, left };
}
