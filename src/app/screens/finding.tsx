/** One finding: its because in full, what it leads to, and grading it by hand. */
import { useState } from "preact/hooks";
import { GRADES, type Grade, levelOf } from "../../core/terms/index.js";
import { BecauseTrace } from "../parts/because-trace.js";
import { NextAction, Tool } from "../parts/button.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { Field } from "../parts/field.js";
import { FindingRow } from "../parts/finding-row.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { cautionLine } from "../state/cautions-view.js";
import { type FindingView, findingView, rulesGrade } from "../state/findings-view.js";
import { jobSays } from "../state/knowledge.js";
import { type ParamsOf, to } from "../state/routes.js";
import { regrade } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import { cautionPanel } from "./caution-panels.js";
import { Top } from "./frame.js";
import { type OnDesk, OnVisit } from "./on-visit.js";

function ByHand({
  on,
  view,
  open,
  onClose,
}: {
  readonly on: OnDesk;
  readonly view: FindingView;
  readonly open: boolean;
  readonly onClose: () => void;
}) {
  const { journal } = useApp();
  const ruled = rulesGrade(on.assessment, view);
  const [grade, setGrade] = useState<Grade>(view.grade);
  const [reason, setReason] = useState(view.byHand?.reason ?? "");
  const needsReason = levelOf(grade) < levelOf(ruled);
  const missing = needsReason && reason.trim() === "";
  const keep = (to: Grade | null): void => {
    void regrade(journal, on.stream, view.fault, view.place, to, reason.trim());
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("finding.regrade.title")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("finding.regrade.keep")} onPress={() => keep(grade)} disabled={missing} />}
    >
      <p>{t("finding.regrade.says", { grade: t(`grade.${ruled}`) })}</p>
      <ReplyGrid
        kind="one"
        columns={1}
        label={t("finding.regrade.grade")}
        replies={[...GRADES].reverse().map((id) => ({ id, words: t(`mark.${id}`), chosen: id === grade }))}
        onChoose={(id) => setGrade(GRADES.find((one) => one === id) ?? grade)}
      />
      <Field
        id="regrade-reason"
        kind="area"
        label={t("finding.regrade.reason")}
        value={reason}
        onInput={setReason}
        required={needsReason}
        {...(missing ? { problem: t("finding.regrade.needed") } : {})}
      />
      {view.byHand && <Tool words={t("finding.regrade.rules")} onPress={() => keep(null)} />}
    </Sheet>
  );
}

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
          {view.cautions.map((caution) => (
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
  const back = <Top back={t("finding.back")} href={to("findings", { visit: on.param })} />;
  if (!view) {
    return (
      <>
        {back}
        <main>
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
        <h1 class="spoken" tabIndex={-1}>
          {t("finding.title")}
        </h1>
        <Pool as="section" label={view.title}>
          <FindingRow
            open
           
            mark={view.mark}
            markWord={t(`mark.${view.mark}`)}
            title={view.title}
            second={view.second}
          >
            <BecauseTrace label={t("finding.because")} steps={view.steps} />
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
          <p class="remark">{t("finding.by-hand", { was: view.byHand.was, reason: view.byHand.reason })}</p>
        )}
        {view.differ && (
          <ListRow title={t("findings.differ")} second={t("finding.differ")} href={to("differ", { visit: on.param })} />
        )}
        <LeadsTo on={on} view={view} />
        {view.answersTo.map((item) => (
          <p key={item} class="remark small">
            {t("finding.item", { item })}
          </p>
        ))}
        {!on.visit.closed && (
          <div class="acts">
            <Tool words={t("finding.regrade")} onPress={() => setGrading(true)} />
          </div>
        )}
      </main>
      <ByHand key={view.grade} on={on} view={view} open={grading} onClose={() => setGrading(false)} />
    </>
  );
}

export const Finding = ({ params }: { readonly params: ParamsOf<"finding"> }) => (
  <OnVisit param={params.visit}>{(on) => <FindingBody on={on} params={params} />}</OnVisit>
);
