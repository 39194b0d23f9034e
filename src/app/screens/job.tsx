/** One job: what is done, why it stands where it stands, what comes apart, which parts, what is measured again. */

import { standFor } from "../../core/terms/index.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { JobRow } from "../parts/job-row.js";
import { ListRow } from "../parts/list-row.js";
import { Band, Pool } from "../parts/pool.js";
import { cautionLine } from "../state/cautions-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { type JobView, jobView } from "../state/work-view.js";
import { t } from "../texts/index.js";
import { cautionPanel } from "./caution-panels.js";
import { Covered } from "./covered.js";
import { MissingScreen, SpokenTitle, Top } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { Sentences } from "./sentences.js";

const OwnersBand = lazy(() => import("./owners-word.js").then((file) => file.OwnersBand), Nothing);
const JobPlan = lazy(() => import("./job-plan.js").then((file) => file.JobPlan), Nothing);

function Details({ on, view }: { readonly on: OnDesk; readonly view: JobView }) {
  return (
    <>
      <Sentences heading={t("work.does")} lines={[view.does].filter((text) => text !== "")} />
      <Sentences
        heading={t("work.why")}
        lines={[...view.why, ...(view.whyAbove === undefined ? [] : [view.whyAbove])]}
      />
      <Band heading={t("work.faults")}>
        {view.faults.map((fault) => (
          <ListRow key={fault.id} title={fault.title} second={fault.second} href={fault.href} />
        ))}
      </Band>
      <Sentences heading={t("work.access")} lines={view.access} />
      <JobPlan on={on} job={view.job} place={view.place} sheetParts={view.parts} />
      <Sentences heading={t("work.consumables")} lines={view.consumables} />
      <Sentences heading={t("work.includes")} lines={view.includes} />
      <Sentences heading={t("work.follows")} lines={view.follows} />
      <Sentences
        heading={t("work.after")}
        lines={[
          ...view.after,
          ...(view.lookToo === undefined ? [] : [view.lookToo]),
          ...(view.recheck === undefined ? [] : [view.recheck]),
        ]}
      />
      {standFor(on.assessment.cautions, view.cautions).map((caution) => (
        <CautionPanel key={caution} {...cautionPanel(cautionLine(on.known, caution, on.visit.told), "small")} />
      ))}
      <p class="remark small">{`${t("work.own")}. ${view.basis}.`}</p>
    </>
  );
}

function JobBody({ on, params }: { readonly on: OnDesk; readonly params: ParamsOf<"job"> }) {
  const view = jobView(on.telling, on.tree, on.desk.jobs.value, params, on.desk.above);
  if (!view) return <MissingScreen />;
  return (
    <>
      <Top back={t("work.title")} href={to("work", { visit: on.param })} />
      <main>
        <SpokenTitle title={t("work.job")} />
        <Pool as="section" label={view.title} bare>
          <JobRow
            open
            number={view.number}
            title={view.title}
            mark={view.mark}
            markWord={t(`mark.${view.mark}`)}
            byWhen={view.byWhen}
            hours={view.hours}
          />
        </Pool>
        <OwnersBand on={on} id={view.id} />
        <Details on={on} view={view} />
      </main>
    </>
  );
}

export const Job = ({ params }: { readonly params: ParamsOf<"job"> }) => (
  <OnVisit param={params.visit}>
    {(on) => (
      <Covered on={on} title={t("work.title")}>
        <JobBody on={on} params={params} />
      </Covered>
    )}
  </OnVisit>
);
