/** Waits until a visit is laid out and judged, then draws what is inside; says plainly when it can't be. */
import type { ComponentChildren } from "preact";
import type { Assessment } from "../../core/assess/contract.js";
import type { CarState, VisitState } from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import type { Audience } from "../../core/terms/index.js";
import { Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { visitStreamOf } from "../state/routes.js";
import type { Telling } from "../state/because.js";
import type { Desk } from "../state/desk.js";
import { deskOf } from "../state/desks.js";
import type { Knowledge } from "../state/knowledge.js";
import type { Looking } from "../state/round-view.js";
import { t } from "../texts/index.js";
import { problemText } from "../texts/problems.js";
import { MissingScreen, SpokenTitle, Top } from "./frame.js";
import { OpeningScreen } from "./lazy.js";

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
}

/** What the round is worked out from. */
export const lookingAt = ({ known, tree, who, assessment, visit }: OnDesk): Looking => ({
  known,
  tree,
  who,
  asked: assessment.asked,
  visit,
});

export function OnVisit({
  param,
  children,
}: {
  readonly param: string;
  readonly children: (on: OnDesk) => ComponentChildren;
}) {
  const app = useApp();
  const stream = visitStreamOf(param);
  const desk = deskOf(app, stream);
  const visit = desk.visit.value;
  const car = desk.car.value;
  const trouble =
    desk.trouble.value ?? (visit.is === "trouble" ? visit.problem : car?.is === "trouble" ? car.problem : undefined);
  if (visit.is === "missing" || car?.is === "missing") return <MissingScreen />;
  if (trouble) {
    return (
      <>
        <Top back={t("cars.title")} href="#/" />
        <main>
          <SpokenTitle title={t("app.not-opened")} />
          <Notice kind="error" title={t("app.not-opened")} says={problemText(trouble)} />
        </main>
      </>
    );
  }
  const [known, tree, assessment] = [desk.known.value, desk.tree.value, desk.assessment.value];
  if (visit.is !== "open" || car?.is !== "open" || !known || !tree || !assessment) return <OpeningScreen />;
  const who = visit.state.opened?.value.who ?? "technician";
  const telling: Telling = { known, who, visit: param, pictures: visit.state.pictures };
  return (
    <>{children({ desk, param, stream, visit: visit.state, car: car.state, known, tree, assessment, who, telling })}</>
  );
}
