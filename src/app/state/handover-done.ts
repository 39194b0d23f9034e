/**
 * Work that is done, as a hand-over takes it: who did it, what its points said before and after, who looked a second
 * time. Pure; what counts as done and as a second look is core/plan's word.
 */
import type { PointAt, WorkTold } from "../../core/plan/index.js";
import { historyOf, lookedOn, replySlot, type Stamp, type VisitState } from "../../core/record/index.js";
import type { DoneTold, SaidOn } from "../../core/report/index.js";
import type { ReplyKey, ReplyValue } from "../../core/terms/index.js";
import { barePoint } from "./complaint-lines.js";
import { whereOf } from "./handover-faults.js";
import type { HandoverGround } from "./handover-ground.js";
import { jobSays } from "./job-words.js";
import { pointName } from "./knowledge.js";
import { lookedAfter } from "./rechecks-in.js";
import { worksIn } from "./release-facts.js";
import { replyText } from "./telling.js";
import { dayOf } from "./today.js";

/** One answer as it stood once, replaced since or not; undone ones were never said. */
interface Answer {
  readonly key: ReplyKey;
  readonly value: ReplyValue;
  readonly at: Stamp;
}

function answersIn(visit: VisitState, { point, place }: PointAt): readonly Answer[] {
  const slots = new Set(
    [...visit.replies.values()]
      .filter(({ key }) => barePoint(key.point) === barePoint(point) && key.place === place)
      .map(({ key }) => replySlot(key)),
  );
  return [...slots].flatMap((slot) =>
    historyOf(visit, slot).flatMap(({ entry, is }): readonly Answer[] => {
      if (entry.kind !== "reply" || is === "undone" || entry.body.value === null) return [];
      const { key, value } = entry.body;
      return value.type === "non-answer" ? [] : [{ key, value, at: entry.at }];
    }),
  );
}

const isAfter = (a: Stamp, b: Stamp): boolean => a.wall > b.wall || (a.wall === b.wall && a.count > b.count);

type Reading = DoneTold["readings"][number];

/** Each thing a point is asked: the last answer before the work, of this visit or an earlier one, and the newest since. */
function readingsAt(ground: HandoverGround, at: PointAt, done: Stamp): readonly Reading[] {
  const { telling, visit, earlier } = ground;
  const known = telling.known.points.get(at.point);
  const here = answersIn(visit, at);
  const told = ({ key, value }: Answer, on: string): SaidOn => ({
    says: replyText(known, key.field, value, telling.who),
    on,
  });
  const before = new Map<string, SaidOn>();
  for (const one of earlier)
    for (const answer of answersIn(one, at)) before.set(answer.key.field, told(answer, lookedOn(one).slice(0, 10)));
  for (const answer of here)
    if (!isAfter(answer.at, done)) before.set(answer.key.field, told(answer, dayOf(answer.at.wall)));
  const after = new Map<string, SaidOn>();
  for (const answer of here)
    if (isAfter(answer.at, done)) after.set(answer.key.field, told(answer, dayOf(answer.at.wall)));
  return [...new Set([...before.keys(), ...after.keys()])].map((field): Reading => {
    const [was, is] = [before.get(field), after.get(field)];
    return {
      title: pointName(telling.known, at.point),
      where: whereOf(ground, at.place),
      ...(was ? { before: was } : {}),
      ...(is ? { after: is } : {}),
    };
  });
}

function doneTold(ground: HandoverGround, work: WorkTold): readonly DoneTold[] {
  const { job, place, doneOn, secondLook, looked, lookers } = work;
  const { telling, said } = ground;
  const id = `${job}@${place}`;
  const step = said.jobSteps.get(id)?.findLast(({ value }) => value.step === "done");
  if (doneOn === undefined || step === undefined) return [];
  const by = nameOf(ground, step.by);
  const handing = { ...ground, known: telling.known };
  // Nobody has looked, whether somebody is asked to here or not.
  const unseen = [...work.unanswered, ...work.forOthers, ...work.unasked].map((at) => placedPoint(ground, at));
  return [
    {
      id,
      title: jobSays(telling.known, job, telling.who).name,
      where: whereOf(ground, place),
      on: doneOn,
      ...(by === "" ? {} : { by }),
      readings: lookedAfter(handing, job, place).flatMap((at) => readingsAt(ground, at, step.at)),
      unseen: [...new Set(unseen)],
      look: { needed: secondLook !== undefined, is: looked, who: [...new Set(lookers)] },
    },
  ];
}

/** As named last in the plan, the visit or the car: people bring their name into any of them. */
function nameOf({ said, visit, car }: HandoverGround, person: string): string {
  const named = [said, visit, car].flatMap(({ people }) => people.get(person)?.at(-1) ?? []);
  return named[0]?.value.name ?? "";
}

function placedPoint(ground: HandoverGround, { point, place }: PointAt): string {
  const where = whereOf(ground, place);
  const name = pointName(ground.telling.known, point);
  return where === "" ? name : `${name}, ${where}`;
}

/** All that stands as done, by the day; what was begun again since is work again. */
export const donesTold = (ground: HandoverGround): readonly DoneTold[] =>
  worksIn({ ...ground, known: ground.telling.known }, [])
    .flatMap((work) => doneTold(ground, work))
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
