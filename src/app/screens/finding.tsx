/** One finding: its because in full, what it leads to, and grading it by hand. */
import { useState } from "preact/hooks";
import { offListName, standFor } from "../../core/terms/index.js";
import { BecauseTrace } from "../parts/because-trace.js";
import { NextAction, Tool } from "../parts/button.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { FindingRow } from "../parts/finding-row.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { cautionLine } from "../state/cautions-view.js";
import { type FindingView, findingView } from "../state/findings-view.js";
import { jobSays } from "../state/job-words.js";
import { capital } from "../state/knowledge.js";
import { type ParamsOf, to } from "../state/routes.js";
import { t } from "../texts/index.js";
import { cautionPanel } from "./caution-panels.js";
import { Covered } from "./covered.js";
import { SpokenTitle, Top } from "./frame.js";
import { GradeByHand } from "./grade-by-hand.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { withWorkings } from "./worked-steps.js";

const FindingPictures = lazy(() => import("./finding-pictures.js").then((file) => file.FindingPictures), Nothing);

function LeadsTo({ on, view }: { readonly on: OnDesk; readonly view: FindingView }) {
  const jobs = on.desk.jobs.value.filter((due) =>
    due.faults.some((one) => one.fault === view.fault && one.place === view.place),
  );
  return (
    <>
      {jobs.length > 0 && (
        <Band heading={t("finding.jobs")}>
          {jobs.map((due) => (
            <ListRow
              key={`${due.job}@${due.place}`}
              title={jobSays(on.known, due.job, on.who).name}
              href={to("job", { visit: on.param, job: due.job, place: due.place })}
            />
          ))}
        </Band>
      )}
      {view.cautions.length > 0 && (
        <Band heading={t("finding.cautions")}>
          {standFor(on.assessment.cautions, view.cautions).map((caution) => (
            <CautionPanel
              key={caution}
              {...cautionPanel(cautionLine(on.known, caution, on.visit.told), "small")}
              href={to("cautions", { visit: on.param })}
            />
          ))}
        </Band>
      )}
    </>
  );
}

function FindingBody({ on, params }: { readonly on: OnDesk; readonly params: ParamsOf<"finding"> }) {
  const [grading, setGrading] = useState(false);
  const view = findingView(on.telling, on.assessment, params.fault, params.place);
  const own = offListName(params.fault);
  const back = <Top back={t("finding.back")} href={to("findings", { visit: on.param })} />;
  if (!view) {
    return (
      <>
        {back}
        <main>
          <SpokenTitle title={t("finding.title")} />
          <EmptyState
            title={t("finding.gone")}
            says={t("finding.gone.says")}
            action={{ words: t("finding.back"), href: to("findings", { visit: on.param }) }}
          />
        </main>
      </>
    );
  }
  return (
    <>
      {back}
      <main>
        <SpokenTitle title={t("finding.title")} />
        <Pool as="section" label={view.title}>
          <FindingRow open mark={view.mark} markWord={t(`mark.${view.mark}`)} title={view.title} second={view.second}>
            <BecauseTrace label={t("finding.because")} steps={withWorkings(on, view.steps)} />
            {view.measureAgain !== undefined && (
              <NextAction words={t("finding.measure-again")} href={view.measureAgain} onward />
            )}
          </FindingRow>
        </Pool>
        {view.cause !== undefined && (
          <Band heading={t("finding.cause")}>
            <p class="remark">{view.cause}</p>
          </Band>
        )}
        {view.byHand && (
          <p class="remark">{capital(t("finding.by-hand", { was: view.byHand.was, reason: view.byHand.reason }))}</p>
        )}
        {view.differ && (
          <ListRow title={t("findings.differ")} second={t("finding.differ")} href={to("differ", { visit: on.param })} />
        )}
        <LeadsTo on={on} view={view} />
        <FindingPictures on={on} fault={view.fault} place={view.place} />
        {view.answersTo.map((item) => (
          <p key={item} class="remark small">
            {item}
          </p>
        ))}
        {!on.visit.closed && (
          <div class="acts">
            {own === undefined ? (
              <Tool words={t("finding.regrade")} onPress={() => setGrading(true)} />
            ) : (
              <Tool
                words={t("off-list.mend")}
                href={to("off-list", { visit: on.param, place: view.place, finding: own })}
              />
            )}
          </div>
        )}
      </main>
      <GradeByHand key={view.grade} on={on} view={view} open={grading} onClose={() => setGrading(false)} />
    </>
  );
}

export const Finding = ({ params }: { readonly params: ParamsOf<"finding"> }) => (
  <OnVisit param={params.visit}>
    {(on) => (
      <Covered on={on} title={t("findings.title")}>
        <FindingBody on={on} params={params} />
      </Covered>
    )}
  </OnVisit>
);
