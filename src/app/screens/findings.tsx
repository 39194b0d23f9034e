/** Findings: counts as filters, danger first, the worst open with its because, the rest as rows, what was not seen. */
import { useState } from "preact/hooks";
import type { MarkKind } from "../../core/report/marks.js";
import { Tool } from "../parts/button.js";
import { CountStrip } from "../parts/count-strip.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { Title } from "../parts/title.js";

import { carTitle } from "../state/car-view.js";
import { complaintLines } from "../state/complaint-lines.js";
import { findingsView } from "../state/findings-view.js";
import { type ParamsOf, paramOf, to } from "../state/routes.js";
import { t } from "../texts/index.js";
import { ComplaintRows } from "./complaint-rows.js";
import { Covered } from "./covered.js";
import { FindingLines } from "./finding-lines.js";
import { Top } from "./frame.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { Sections } from "./sections.js";
import { WorstCaution } from "./worst-caution.js";

function FindingsBody({ on }: { readonly on: OnDesk }) {
  const [chosen, setChosen] = useState<MarkKind>();
  const view = findingsView(on.telling, on.assessment);
  const complaints = complaintLines(on.telling, on.visit, on.assessment.suggested);
  return (
    <>
      <Top back={carTitle(on.car)} href={to("car", { car: paramOf(on.car.stream) })} />
      <main>
        <Title title={t("findings.title")} />
        {view.anythingSeen ? (
          <>
            <CountStrip
              label={t("findings.counts")}
              counts={view.counts.map(({ mark, count }) => ({
                mark,
                count,
                words: t(`mark.${mark}`),
                chosen: mark === chosen,
              }))}
              onChoose={(mark, isChosen) => setChosen(isChosen ? mark : undefined)}
              sentence={view.sentence}
            />
            <WorstCaution known={on.known} due={on.assessment.cautions} told={on.visit.told} visit={on.param} />
            {view.notEnough && <Notice kind="plain" title={t("findings.not-enough")} />}
            {view.lines.length === 0 && chosen === undefined && (
              <EmptyState title={t("findings.none")} says={t("findings.none.says")} />
            )}
            <FindingLines on={on} view={view} chosen={chosen} />
          </>
        ) : (
          <Pool>
            <EmptyState
              title={t("findings.nothing-yet")}
              says={t("findings.nothing-yet.says")}
              drawing="body"
              action={{ words: t("findings.start"), href: to("round", { visit: on.param }) }}
            />
          </Pool>
        )}
        {chosen === undefined && !on.visit.closed && (
          <div class="acts">
            <Tool words={t("off-list.add")} href={to("off-list", { visit: on.param, place: "car", finding: "new" })} />
          </div>
        )}
        {chosen === undefined && complaints.length > 0 && (
          <Band heading={t("visit.complaints")}>
            <ComplaintRows lines={complaints} visit={on.param} />
          </Band>
        )}
      </main>
      <Sections visit={on.param} here="findings" />
    </>
  );
}

export const Findings = ({ params }: { readonly params: ParamsOf<"findings"> }) => (
  <OnVisit param={params.visit}>
    {(on) => (
      <Covered on={on} title={t("findings.title")} section="findings">
        <FindingsBody on={on} />
      </Covered>
    )}
  </OnVisit>
);
