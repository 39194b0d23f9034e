/** The work list in urgency order; the first job lies in the light with the reason why it stands there. */
import { JobRow } from "../parts/job-row.js";
import { EmptyState } from "../parts/notice.js";
import { Pool } from "../parts/pool.js";
import { Title } from "../parts/title.js";

import { carTitle } from "../state/car-view.js";
import { type ParamsOf, paramOf, to } from "../state/routes.js";
import { type JobLine, jobView, workLines } from "../state/work-view.js";
import { t } from "../texts/index.js";
import { Covered } from "./covered.js";
import { Top } from "./frame.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { Sections } from "./sections.js";
import { WorstCaution } from "./worst-caution.js";

function Row({ line, why }: { readonly line: JobLine; readonly why?: string | undefined }) {
  return (
    <JobRow
      number={line.number}
      title={line.title}
      mark={line.mark}
      markWord={t(`mark.${line.mark}`)}
      byWhen={line.byWhen}
      hours={line.hours}
      href={line.href}
      open={why !== undefined}
      why={why}
    />
  );
}

function WorkBody({ on }: { readonly on: OnDesk }) {
  const jobs = on.desk.jobs.value;
  const [first, ...rest] = workLines(on.telling, jobs);
  const why = first && jobView(on.telling, on.tree, jobs, first, on.desk.above)?.why[0];
  return (
    <>
      <Top back={carTitle(on.car)} href={to("car", { car: paramOf(on.car.stream) })} />
      <main>
        <Title title={t("work.title")} {...(first ? { second: t("work.order") } : {})} />
        <WorstCaution known={on.known} due={on.assessment.cautions} told={on.visit.told} visit={on.param} />
        {first ? (
          <>
            <Pool as="section" label={first.title} bare>
              <Row line={first} why={why ?? ""} />
            </Pool>
            {rest.map((line) => (
              <Row key={line.id} line={line} />
            ))}
            <p class="remark small">{t("work.own")}</p>
          </>
        ) : (
          <EmptyState title={t("work.none")} says={t("work.none.says")} />
        )}
      </main>
      <Sections visit={on.param} here="work" />
    </>
  );
}

export const Work = ({ params }: { readonly params: ParamsOf<"work"> }) => (
  <OnVisit param={params.visit}>
    {(on) => (
      <Covered on={on} title={t("work.title")} section="work">
        <WorkBody on={on} />
      </Covered>
    )}
  </OnVisit>
);
