/**
 * Entering several replies in one deliberate step: no fault seen for the rest of a place, and the same at all
 * places of a kind. Never answers a safety-critical point, nor one that needs a reading, a picture or a sound.
 */
import type { VisitState } from "../../core/record/contract.js";
import type { Point } from "../../core/sheet/run.js";
import type { ReplyKey, ReplyValue } from "../../core/terms/index.js";
import { fieldKind, requiredFields } from "./knowledge.js";
import type { Looking } from "./round-view.js";
import { isTouched, keyOf, nonAnswerAt, type PointAt, pointText, replyAt } from "./standing.js";
import { isDone, type Stop } from "./stops.js";

export interface SweepReply {
  readonly key: ReplyKey;
  readonly value: ReplyValue;
}

/** Whether one step may answer this point along with others. */
export const mayBeSwept = (point: Point): boolean =>
  point["safety-critical"] !== true && (point.needs ?? []).length === 0;

/** What `unremarkable` means for one field; undefined when it can't be entered without looking closer. */
function unremarkableValue(point: Point, field: string): ReplyValue | undefined {
  const declared = point.fields[field];
  const given = point.unremarkable?.[field];
  if (!declared || given === undefined) return undefined;
  const words = typeof given === "string" ? [given] : given;
  switch (fieldKind(declared)) {
    case "words":
      return { type: "words", words };
    case "yes":
      return { type: "yes", yes: words[0] === "yes" };
    case "count":
      return { type: "count", count: Number(words[0]) };
    default:
      return undefined;
  }
}

export interface RestOfPlace {
  readonly enters: readonly { readonly at: PointAt; readonly replies: readonly SweepReply[] }[];
  /** Points that stay to be answered by themselves. */
  readonly left: readonly PointAt[];
}

/** What 'no fault seen for the rest of this place' would enter at a stop, and what it leaves. */
export function restOfPlace({ known, visit }: Pick<Looking, "known" | "visit">, stop: Stop): RestOfPlace {
  const enters: { at: PointAt; replies: readonly SweepReply[] }[] = [];
  const left: PointAt[] = [];
  for (const at of stop.asked) {
    if (isDone(known, visit.replies, at)) continue;
    const point = known.points.get(at.point)?.point;
    const replies = point && mayBeSwept(point) && !isTouched(visit.replies, point, at) ? unremarkable(point, at) : [];
    if (replies.length > 0) enters.push({ at, replies });
    else left.push(at);
  }
  return { enters, left };
}

function unremarkable(point: Point, at: PointAt): readonly SweepReply[] {
  const replies: SweepReply[] = [];
  for (const field of requiredFields(point)) {
    const value = unremarkableValue(point, field);
    if (!value) return [];
    replies.push({ key: keyOf(at, field), value });
  }
  return replies;
}

/**
 * Where else the reply at `at` may be entered in one step: places of the same kind, still without any reply. What is
 * told or read in papers may hold for the whole car; what is looked at holds within its own corner only.
 */
export function sameElsewhere(
  { known, tree, visit, asked }: Pick<Looking, "known" | "tree" | "visit" | "asked">,
  at: PointAt,
): readonly { readonly at: PointAt; readonly replies: readonly SweepReply[] }[] {
  const point = known.points.get(at.point)?.point;
  if (!point || !mayBeSwept(point)) return [];
  const replies = copyable(point, visit.replies, at);
  if (replies.length === 0) return [];
  const isTold = known.states.get(at.state)?.order === 0;
  const corner = tree.around(at.place, "corner");
  const isNear = (place: string): boolean =>
    isTold || (corner !== undefined && tree.around(place, "corner") === corner);
  const targets = asked.filter(
    (one, index) =>
      one.point === at.point &&
      one.state === at.state &&
      one.place !== at.place &&
      isNear(one.place) &&
      asked.findIndex((other) => pointText(other) === pointText(one)) === index &&
      !isTouched(visit.replies, point, one),
  );
  return targets.map((target) => ({
    at: target,
    replies: replies.map(({ key, value }) => ({ key: keyOf(target, key.field), value })),
  }));
}

/** The replies at a point that may stand elsewhere too: never a reading, and only when all fields are said. */
function copyable(point: Point, replies: VisitState["replies"], at: PointAt): readonly SweepReply[] {
  const nonAnswer = nonAnswerAt(replies, at);
  if (nonAnswer) return [{ key: keyOf(at, "*"), value: nonAnswer }];
  const found: SweepReply[] = [];
  for (const field of requiredFields(point)) {
    const value = replyAt(replies, at, field);
    if (!value || value.type === "reading") return [];
    found.push({ key: keyOf(at, field), value });
  }
  return found;
}
