/** One line per stream for the list of cars and visits. Refuses to judge. */
import type { Audience } from "../terms/index.js";
import type { Bodies, CarState, FactValue, FoldedState, Logged, Odometer, Stamp, VisitState } from "./contract.js";
import { fetchedFold } from "./fetched-fold.js";
import { foldCar } from "./fold-car.js";
import { foldVisit } from "./fold-visit.js";
import { isDemo, isStub, streamKind } from "./identity.js";
import { lookedOn } from "./looked.js";
import { differ } from "./same-value.js";
import { compareStamps, FIRST_STAMP } from "./time.js";

interface SummaryOfAny {
  readonly stream: string;
  readonly demo: boolean;
  readonly entries: number;
  readonly last: Stamp;
  /** Forks, unknown entries or gaps to be shown. */
  readonly trouble: boolean;
}
export interface CarSummary extends SummaryOfAny {
  readonly of: "car";
  /** Several when people differ. */
  readonly names: readonly string[];
  readonly facts: Readonly<Record<string, FactValue>>;
  readonly sameCars: readonly string[];
  readonly sameOccasions: readonly (readonly string[])[];
}
export interface VisitSummary extends SummaryOfAny {
  readonly of: "visit";
  readonly car: string;
  readonly on: string;
  readonly purpose: Bodies["visit.opened"]["purpose"];
  readonly who: Audience;
  readonly odometer?: Odometer;
  readonly closed: boolean;
  /** Keys with a standing reply, and how many of them differ. */
  readonly replies: number;
  readonly differ: number;
  readonly pictures: number;
}
/** `unopened`: nothing opened it yet, or its opening was undone. `erased`: nothing but stubs is left. */
export interface OtherSummary extends SummaryOfAny {
  readonly of: "house" | "plan" | "unopened" | "erased";
}
export type Summary = CarSummary | VisitSummary | OtherSummary;

/** Sums up one stream from all its entries. What folds a house or a plan is fetched when there is one. */
export async function summarise(stream: string, entries: readonly Logged[]): Promise<Summary> {
  const any = { stream, demo: isDemo(stream), entries: entries.length, last: latest(entries) };
  const isErased = entries.length > 0 && entries.every((one) => isStub(one) || one.kind === "erase");
  if (isErased) return { ...any, of: "erased", trouble: false };
  const kind = streamKind(stream);
  if (kind === "car") return { ...any, ...carLine(foldCar(entries)) };
  if (kind === "visit") return { ...any, ...visitLine(foldVisit(entries)) };
  const foldLater = await fetchedFold();
  return { ...any, of: kind, trouble: isTroubled(foldLater(stream, entries)) };
}

function carLine(car: CarState): Omit<CarSummary, keyof SummaryOfAny> & { readonly trouble: boolean } {
  const facts: Record<string, FactValue> = {};
  for (const [name, standing] of car.facts) {
    const [only] = standing;
    if (only && !differ(standing)) facts[name] = only.value;
  }
  return {
    of: "car",
    names: [...new Set(car.names.map(({ value }) => value))],
    facts,
    sameCars: car.sameCars.map(({ value }) => value),
    sameOccasions: car.sameOccasions.map(({ value }) => value),
    trouble: isTroubled(car),
  };
}

type VisitLine = Omit<VisitSummary, keyof SummaryOfAny> & { readonly trouble: boolean };

function visitLine(visit: VisitState): VisitLine | { readonly of: "unopened"; readonly trouble: boolean } {
  const trouble = isTroubled(visit);
  if (!visit.opened) return { of: "unopened", trouble };
  const { car, purpose, who } = visit.opened.value;
  const odometer = visit.odometer.at(-1)?.value;
  const slots = [...visit.replies.values()];
  return {
    of: "visit",
    car,
    on: lookedOn(visit),
    purpose,
    who,
    ...(odometer ? { odometer } : {}),
    closed: visit.closed !== undefined,
    replies: slots.length,
    differ: slots.filter((slot) => slot.differ).length,
    pictures: visit.pictures.length,
    trouble,
  };
}

function isTroubled({ trouble }: FoldedState): boolean {
  return trouble.forks.length > 0 || trouble.unknown.length > 0 || trouble.gaps.length > 0;
}

function latest(entries: readonly Logged[]): Stamp {
  let last = FIRST_STAMP;
  for (const { at } of entries) if (compareStamps(at, last) > 0) last = at;
  return last;
}
