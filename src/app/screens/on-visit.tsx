/** Waits until a visit is laid out and judged, then draws what is inside; says plainly when it can't be. */
import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import type { Assessment } from "../../core/assess/contract.js";
import type { CarState, VisitState } from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import type { Audience } from "../../core/terms/index.js";
import { useApp } from "../state/app.js";
import type { Telling } from "../state/because.js";
import { nothingJudged } from "../state/before-judging.js";
import type { Desk } from "../state/desk.js";
import { deskOf } from "../state/desks.js";
import type { Knowledge } from "../state/knowledge.js";
import type { Looking } from "../state/round-view.js";
import { paramOf, visitStreamOf } from "../state/routes.js";
import { wayOf } from "../state/way.js";
import { MissingScreen } from "./frame.js";
import { lazy, OpeningScreen } from "./lazy.js";

const NotOpened = lazy(() => import("./not-opened.js").then((file) => file.NotOpened));

/** A visit ready to be drawn. `visit` shows what is not kept too; the assessment rests on kept replies. */
export interface OnDesk {
  readonly desk: Desk;
  /** The visit in addresses. */
  readonly param: string;
  readonly stream: string;
  readonly visit: VisitState;
  readonly car: CarState;
  readonly known: Knowledge;
  readonly tree: PlaceTree;
  readonly assessment: Assessment;
  readonly who: Audience;
  readonly telling: Telling;
  readonly quiet: boolean;
}

/** What the round is worked out from. */
export const lookingAt = ({ known, tree, who, quiet, assessment, visit }: OnDesk): Looking => ({
  known,
  tree,
  who,
  quiet,
  asked: assessment.asked,
  suggested: assessment.suggested,
  visit,
});

interface OnVisitProps {
  readonly param: string;
  /** What the screen can do with a visit in which nothing is entered yet, without waiting for judging. */
  readonly unjudged?: (empty: Assessment) => boolean;
  readonly children: (on: OnDesk) => ComponentChildren;
}

/** The judgement, or the empty one where that is enough; asks for judging where it is not. */
function useAssessment(desk: Desk, unjudged: OnVisitProps["unjudged"]): Assessment | undefined {
  const { remembered } = useApp();
  const visit = desk.visit.value;
  const [known, tree, judged] = [desk.known.value, desk.tree.value, desk.assessment.value];
  const state = visit.is === "open" ? visit.state : undefined;
  // Any other order is made of the judgement.
  const isEmpty =
    state !== undefined &&
    state.replies.size === 0 &&
    state.complaints.length === 0 &&
    wayOf(remembered, state).order === "walk";
  const empty =
    !judged && isEmpty && unjudged && known && tree
      ? nothingJudged(known, tree, state.opened?.value.who ?? "technician")
      : undefined;
  const enough = empty !== undefined && unjudged?.(empty) === true;
  const needed = state !== undefined && known !== undefined && !judged && !enough;
  useEffect(() => {
    if (needed) desk.judge();
  }, [needed, desk]);
  return judged ?? (enough ? empty : undefined);
}

export function OnVisit({ param, unjudged, children }: OnVisitProps) {
  const app = useApp();
  const stream = visitStreamOf(param);
  const desk = deskOf(app, stream);
  const visit = desk.visit.value;
  const car = desk.car.value;
  const assessment = useAssessment(desk, unjudged);
  const trouble =
    desk.trouble.value ?? (visit.is === "trouble" ? visit.problem : car?.is === "trouble" ? car.problem : undefined);
  if (visit.is === "missing" || car?.is === "missing") return <MissingScreen />;
  if (trouble) return <NotOpened problem={trouble} />;
  const [known, tree] = [desk.known.value, desk.tree.value];
  if (visit.is !== "open" || car?.is !== "open" || !known || !tree || !assessment) return <OpeningScreen />;
  const who = visit.state.opened?.value.who ?? "technician";
  const telling: Telling = { known, who, visit: param, car: paramOf(car.state.stream), pictures: visit.state.pictures };
  const { quiet } = wayOf(app.remembered, visit.state);
  const ready = {
    desk,
    param,
    stream,
    visit: visit.state,
    car: car.state,
    known,
    tree,
    assessment,
    who,
    telling,
    quiet,
  };
  return <>{children(ready)}</>;
}
