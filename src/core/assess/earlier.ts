/**
 * What stood at the newest earlier visit with an answer, slot by slot, and how far the car had come by then. Looks up
 * only what is asked for. Judges nothing.
 */
import { toCanonical, unitOf } from "../units/index.js";
import { alternatives } from "./alternatives.js";
import { cached1 } from "./cached.js";
import type { AssessInput, EarlierVisit, StandingReply } from "./contract.js";
import { plainId } from "./model.js";
import type { LastNode } from "./nodes.js";
import type { Site } from "./site.js";
import { type Standing, understand } from "./understand.js";

/** The last answer in a slot; several are alternatives. */
export interface LastReply {
  readonly at: string;
  readonly odometer: EarlierVisit["odometer"];
  readonly standing: readonly Standing[];
}

/** The last answer of a slot in a car state; undefined without one. */
export type Earlier = (node: LastNode) => LastReply | undefined;

/** One earlier visit, or several of the same time: two people went round the car together. */
interface Occasion {
  readonly at: string;
  readonly odometer: EarlierVisit["odometer"];
  /** By point id. */
  readonly replies: ReadonlyMap<string, readonly StandingReply[]>;
}

/** Kilometres on a clock; undefined where it was not read, or cannot be. */
export function kilometres(odometer: AssessInput["odometer"]): number | undefined {
  if (odometer === undefined || unitOf(odometer.unit, "distance") === undefined) return undefined;
  const km = toCanonical(odometer.value, odometer.unit, "distance");
  return Number.isFinite(km) ? km : undefined;
}

/** Earlier visits as slots see them. Visits after this one, by mistake or by a wrong clock, are no earlier ones. */
export function layEarlier(site: Site, input: AssessInput): Earlier {
  if (input.earlier.length === 0) return () => undefined;
  let occasions: readonly Occasion[] | undefined;
  return cached1((node: LastNode): LastReply | undefined => {
    occasions ??= occasionsOf(input.earlier, Date.parse(input.at));
    for (const { at, odometer, replies } of occasions) {
      const said = (replies.get(plainId(node.slot.spot.point.id)) ?? []).filter((reply) => isIn(node, reply));
      const all = said.map((reply) => understand(site.model, node.slot, reply));
      const answers = all.filter((s) => s.nonAnswer === undefined && s.problems.length === 0);
      if (answers.length > 0) return { at, odometer, standing: alternatives(answers) };
      // what was there before the part was away was another part
      if (all.some((s) => s.nonAnswer === "not-fitted")) return undefined;
    }
    return undefined;
  });
}

function isIn({ slot, state }: LastNode, { key, value }: StandingReply): boolean {
  if (key.place !== slot.spot.place || key.state !== state) return false;
  return value.type === "non-answer" || key.field === slot.field.name;
}

/** Newest first. */
function occasionsOf(visits: readonly EarlierVisit[], now: number): readonly Occasion[] {
  const byTime = new Map<number, EarlierVisit[]>();
  for (const visit of visits) {
    const time = Date.parse(visit.at);
    if (!Number.isFinite(time) || time > now) continue;
    const same = byTime.get(time);
    if (same === undefined) byTime.set(time, [visit]);
    else same.push(visit);
  }
  return [...byTime].sort(([a], [b]) => b - a).map(([, same]) => occasionOf(same));
}

function occasionOf(visits: readonly EarlierVisit[]): Occasion {
  const replies = new Map<string, StandingReply[]>();
  for (const reply of visits.flatMap((visit) => visit.replies)) {
    const point = plainId(reply.key.point);
    const row = replies.get(point);
    if (row === undefined) replies.set(point, [reply]);
    else row.push(reply);
  }
  const read = visits.flatMap(({ odometer }) => (odometer === undefined ? [] : [odometer]));
  const [first] = visits;
  return { at: first?.at ?? "", odometer: read.reduce(lesser, read[0]), replies };
}

/** Of two clocks read at one time the lesser, so that the order they arrive in changes nothing. */
const lesser = (a: EarlierVisit["odometer"], b: EarlierVisit["odometer"]): EarlierVisit["odometer"] =>
  (kilometres(a) ?? Number.POSITIVE_INFINITY) <= (kilometres(b) ?? Number.POSITIVE_INFINITY) ? a : b;
