/**
 * What was answered anew after a job, and what it was judged to be; whom a point is asked. The newest answer counts, by
 * the judgement of the visit it stands in; where nobody could judge that visit, it proves nothing. Pure.
 */
import type { Assessment, PointState } from "../../core/assess/contract.js";
import type { AnswerTold, AskedOf, PointAt } from "../../core/plan/index.js";
import { compareStamps, type VisitState } from "../../core/record/index.js";
import type { ReplyKey } from "../../core/terms/index.js";
import { barePoint } from "./complaint-lines.js";
import type { Knowledge } from "./knowledge.js";
import type { Handing } from "./release-facts.js";
import { repliedText } from "./round-view.js";
import { differing, isAnswered } from "./standing.js";
import { isAskedHere } from "./stops.js";

/** A visit with its judgement; none while nobody could judge it. */
export interface JudgedVisit {
  readonly visit: VisitState;
  readonly assessment: Assessment | undefined;
}

/** A visit that says nothing of itself was a workshop's. */
export const whoLooks = ({ opened }: VisitState) => opened?.value.who ?? "technician";

const isAt = (one: Pick<ReplyKey, "point" | "place">, { point, place }: PointAt): boolean =>
  barePoint(one.point) === barePoint(point) && one.place === place;

interface Newest {
  readonly on: JudgedVisit;
  readonly key: ReplyKey;
  readonly at: AnswerTold["at"];
  readonly isNotFitted: boolean;
}

/** *Not fitted* is an answer too, because there is nothing to look at; any other non-answer is none. */
function newestAt(visits: readonly JudgedVisit[], point: PointAt): Newest | undefined {
  let newest: Newest | undefined;
  for (const on of visits)
    for (const { key, standing } of on.visit.replies.values()) {
      if (!isAt(key, point)) continue;
      for (const { value, at } of standing) {
        const isNotFitted = value.type === "non-answer" && value.nonAnswer === "not-fitted";
        if (value.type === "non-answer" && !isNotFitted) continue;
        if (!newest || compareStamps(at, newest.at) > 0) newest = { on, key, at, isNotFitted };
      }
    }
  return newest;
}

export function answeredAnew(known: Knowledge, visits: readonly JudgedVisit[], point: PointAt): AnswerTold | undefined {
  const newest = newestAt(visits, point);
  if (!newest) return undefined;
  const { on, key, at, isNotFitted } = newest;
  const says = repliedText({ known, who: whoLooks(on.visit), visit: on.visit }, key) ?? "";
  return { at, says, is: isNotFitted ? "in order" : judgedAs(known, on, key) };
}

function judgedAs(known: Knowledge, { visit, assessment }: JudgedVisit, key: ReplyKey): AnswerTold["is"] {
  if (!assessment) return "unfit";
  const point = known.points.get(key.point)?.point;
  const isHalf = point !== undefined && !isAnswered(visit.replies, point, key);
  const isContradicted = differing(visit.replies).some((one) => isAt(one.key, key) && one.key.state === key.state);
  if (isHalf || isContradicted || isSetAside(known, assessment, key) || mayBeOver(assessment, key)) return "unfit";
  const here = assessment.points.filter((one) => isAt(one, key));
  const state = here.find((one) => one.state === key.state) ?? here[0];
  if (state?.is === "answered" && isWithin(assessment, key)) return "in order";
  return state ? AS_TOLD[state.is] : "unfit";
}

const AS_TOLD: Readonly<Record<PointState["is"], AnswerTold["is"]>> = {
  sound: "in order",
  "not-fitted": "in order",
  answered: "unsettled",
  advisory: "advisory",
  minor: "minor",
  major: "major",
  dangerous: "dangerous",
  "not-looked-at": "unfit",
  "cannot-get-at": "unfit",
};

/** Over a limit of which nobody knows whether it applies to this car. */
const mayBeOver = ({ readings }: Assessment, at: PointAt): boolean =>
  readings.some(
    (one) => isAt(one, at) && one.limits.some((limit) => limit.applies === "not known" && limit.grade !== null),
  );

/** Inside every limit over it, whatever else hangs on it. */
function isWithin({ readings }: Assessment, at: PointAt): boolean {
  const limits = readings.flatMap((one) => (isAt(one, at) ? one.limits : []));
  return limits.length > 0 && limits.every(({ state, applies }) => state === "clear" && applies === "yes");
}

/** A rule says that it cannot count: taken cold, on a wet disc, with the wrong gauge. */
function isSetAside(known: Knowledge, { findings }: Assessment, at: PointAt): boolean {
  return findings.some(({ rule, place }) => {
    const effect = known.rules.get(rule)?.effect;
    if (typeof effect !== "object" || place !== at.place) return false;
    const named =
      "not-checked" in effect ? effect["not-checked"] : "discard-reading" in effect ? [effect["discard-reading"]] : [];
    return named.some((one) => barePoint(one) === barePoint(at.point));
  });
}

/**
 * Whoever makes the visit is asked it, somebody else is (it is a technician's, or done on a lift), or nobody: its sheet
 * is not open, or it fits nowhere at this car.
 */
export function askedOf({ known, tree, assessment, visit }: Handing, at: PointAt): AskedOf {
  const who = whoLooks(visit);
  // What is entered along with a point is asked with it.
  const asked = assessment.asked.filter((one) =>
    [one.point, ...one.with].some((point) => isAt({ point, place: one.place }, at)),
  );
  if (asked.length > 0) return asked.some((one) => isAskedHere(known, who, one)) ? "this person" : "somebody else";
  const point = known.points.get(at.point)?.point;
  const isHere = point !== undefined && tree.ofKind(point.place).includes(at.place);
  return isHere && !point.who.includes(who) ? "somebody else" : "nobody";
}
