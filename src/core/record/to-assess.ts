/**
 * From folded states to what assessing takes. Its type is told here in full, because the record may not know
 * assessing; tests/property holds the two together. Where people differ, everything that stands goes along.
 */
import type { CarLimit, PlaceChange } from "../sheet/car.js";
import { type Audience, fail, ok, problem, type ReplyKey, type ReplyValue, type Result } from "../terms/index.js";
import type { CarState, FactValue, ReplySlot, VisitState } from "./contract.js";
import { byCode } from "./identity.js";
import { figureOf, limitsOf, lookedOn, newest, placesOf, sorted } from "./looked.js";

interface Figure {
  readonly value: number;
  readonly unit: string;
}
interface Reply {
  readonly key: ReplyKey;
  readonly value: ReplyValue;
  readonly id: string;
}
export interface ToAssess {
  readonly at: string;
  readonly odometer?: Figure;
  readonly who: Audience;
  readonly car: {
    readonly firstUsed?: string;
    readonly country?: string;
    readonly seat?: "left" | "right";
    readonly places: readonly PlaceChange[];
    readonly facts: Readonly<Record<string, FactValue>>;
    readonly otherFacts?: Readonly<Record<string, readonly FactValue[]>>;
    readonly limits: readonly CarLimit[];
  };
  readonly sheets: readonly string[];
  readonly complaints: readonly string[];
  readonly replies: readonly Reply[];
  readonly earlier: readonly { readonly at: string; readonly odometer?: Figure; readonly replies: readonly Reply[] }[];
  readonly exposure: -1 | 0 | 1;
  readonly nextVisit?: string;
}

/** Facts that assessing also takes by names of their own. */
export const OWN_FACTS = {
  firstUsed: "first-used",
  country: "country",
  seat: "seat",
  exposure: "exposure",
  nextVisit: "next-visit",
} as const;

/**
 * What assessing takes for one visit. `limits`: the limits in force, read from the visit's frozen blob; without it
 * the figures standing in the car's book now. Code record.not-opened: nothing opened this visit.
 */
export function toAssessInput(
  car: CarState,
  visit: VisitState,
  earlier: readonly VisitState[],
  limits: readonly CarLimit[] = limitsOf(car),
): Result<ToAssess> {
  const { opened } = visit;
  if (!opened) return fail(problem("record.not-opened", {}, { stream: visit.stream }));
  const odometer = odometerOf(visit);
  const exposure = newest(car.facts.get(OWN_FACTS.exposure));
  const nextVisit = newest(car.facts.get(OWN_FACTS.nextVisit));
  return ok({
    at: lookedOn(visit),
    ...(odometer ? { odometer } : {}),
    who: opened.value.who,
    car: carOf(car, limits),
    sheets: visit.sheets.map(({ id }) => id),
    complaints: visit.complaints.map(({ value }) => value.complaint ?? value.text),
    replies: repliesOf(visit),
    earlier: earlier.map(earlierOf).sort((a, b) => byCode(a.at, b.at)),
    exposure: exposure === -1 || exposure === 1 ? exposure : 0,
    ...(typeof nextVisit === "string" ? { nextVisit } : {}),
  });
}

function odometerOf(visit: VisitState): Figure | undefined {
  const stands = newest(visit.odometer);
  const value = stands && figureOf(stands);
  return stands && value !== undefined ? { value, unit: stands.unit } : undefined;
}

function repliesOf(visit: VisitState): readonly Reply[] {
  return sorted(visit.replies).flatMap(([, slot]) => inSlot(slot));
}

const taken = new WeakMap<ReplySlot, readonly Reply[]>();
/** What stands in a slot as assessing takes it: the same objects every time, so that it knows what it has read. */
function inSlot(slot: ReplySlot): readonly Reply[] {
  const before = taken.get(slot);
  if (before) return before;
  const { key, standing } = slot;
  const made = standing.map(({ id, value }) => ({ key, value, id }));
  taken.set(slot, made);
  return made;
}

function earlierOf(visit: VisitState): ToAssess["earlier"][number] {
  const odometer = odometerOf(visit);
  return { at: lookedOn(visit), ...(odometer ? { odometer } : {}), replies: repliesOf(visit) };
}

function carOf(car: CarState, limits: readonly CarLimit[]): ToAssess["car"] {
  const facts: Record<string, FactValue> = {};
  const otherFacts: Record<string, readonly FactValue[]> = {};
  for (const [name, standing] of sorted(car.facts)) {
    const values = [...new Set(standing.map(({ value }) => value))];
    const last = values.at(-1);
    if (last === undefined) continue;
    facts[name] = last;
    if (values.length > 1) otherFacts[name] = values.slice(0, -1);
  }
  const firstUsed = facts[OWN_FACTS.firstUsed];
  const country = facts[OWN_FACTS.country];
  const seat = facts[OWN_FACTS.seat];
  return {
    facts,
    ...(Object.keys(otherFacts).length > 0 ? { otherFacts } : {}),
    limits,
    places: placesOf(car),
    ...(firstUsed === undefined ? {} : { firstUsed: String(firstUsed) }),
    ...(typeof country === "string" ? { country } : {}),
    ...(seat === "left" || seat === "right" ? { seat } : {}),
  };
}
