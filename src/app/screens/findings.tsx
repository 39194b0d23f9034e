/** Findings: counts as filters, danger first, the worst open with its because, the rest as rows, what was not seen. */
import { useState } from "preact/hooks";
import type { MarkKind } from "../../core/report/marks.js";
import { BecauseTrace } from "../parts/because-trace.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { CountStrip } from "../parts/count-strip.js";
import { FindingRow } from "../parts/finding-row.js";
import { GradeMark } from "../parts/grade-mark.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { Title } from "../parts/title.js";

import { carTitle } from "../state/car-view.js";
import { cautionLines } from "../state/cautions-view.js";
import { type FindingLine, type FindingsView, findingsView, findingView } from "../state/findings-view.js";
import { type ParamsOf, to, paramOf } from "../state/routes.js";
import { t } from "../texts/index.js";
import { cautionPanel } from "./caution-panels.js";
import { Sections, Top } from "./frame.js";
import { type OnDesk, OnVisit } from "./on-visit.js";

/** Rows drawn before the rest is asked for: a long list is not read on a phone anyway. */
const SHOWN = 40;

function Worst({ on, line }: { readonly on: OnDesk; readonly line: FindingLine }) {
  const view = findingView(on.telling, on.assessment, line.fault, line.place);
  if (!view) return null;
  return (
    <Pool as="section" label={line.title}>
      <FindingRow
        open
        mark={line.mark}
        markWord={t(`mark.${line.mark}`)}
        title={line.title}
        second={line.second}
        href={line.href}
      >
        <BecauseTrace label={t("finding.because")} steps={view.steps} />
        {view.measureAgain !== undefined && (
          <a class="plain-link" href={view.measureAgain}>
            {t("finding.measure-again")}
          </a>
        )}
      </FindingRow>
    </Pool>
  );
}

function Unseen({ view }: { readonly view: FindingsView }) {
  const [all, setAll] = useState(false);
  const shown = all ? view.unseen : view.unseen.slice(0, SHOWN);
  if (view.unseen.length === 0) return null;
  return (
    <Band heading={t("findings.not-looked")} aside={String(view.unseen.length)}>
      {shown.map((one) => (
        <ListRow
          key={one.id}
          lead={<GradeMark mark={one.mark} label={t(`mark.${one.mark}`)} />}
          title={one.title}
          second={one.second}
          href={one.href}
        />
      ))}
      {shown.length < view.unseen.length && (
        <ListRow
          folded
          title={t("findings.more", { n: view.unseen.length - shown.length })}
          onPress={() => setAll(true)}
        />
      )}
    </Band>
  );
}

function Rows({
  on,
  view,
  chosen,
}: {
  readonly on: OnDesk;
  readonly view: FindingsView;
  readonly chosen: MarkKind | undefined;
}) {
  const lines = chosen === undefined ? view.lines : view.lines.filter((line) => line.mark === chosen);
  const [worst, ...rest] = lines;
  const unseen = chosen === undefined || chosen === "not-looked" || chosen === "cannot-reach";
  const filtered = {
    ...view,
    unseen: chosen === undefined ? view.unseen : view.unseen.filter((one) => one.mark === chosen),
  };
  const nothing =
    chosen !== undefined &&
    lines.length === 0 &&
    (chosen === "sound" ? view.sound.length === 0 : filtered.unseen.length === 0);
  return (
    <>
      {worst && <Worst on={on} line={worst} />}
      {rest.map((line) => (
        <FindingRow
          key={line.id}
          mark={line.mark}
          markWord={t(`mark.${line.mark}`)}
          title={line.title}
          second={line.second}
          aside={line.aside}
          href={line.href}
        />
      ))}
      {chosen === "sound" &&
        view.sound.map((one) => (
          <ListRow
            key={one.id}
            lead={<GradeMark mark="sound" label={t("mark.sound")} />}
            title={one.title}
            second={one.second}
            href={one.href}
          />
        ))}
      {chosen === undefined && view.settle.length > 0 && (
        <Band heading={t("findings.settle")}>
          {view.settle.slice(0, SHOWN).map((one) => (
            <ListRow
              key={one.id}
              title={one.title}
              second={one.second}
              {...(one.href === undefined ? {} : { href: one.href })}
            />
          ))}
        </Band>
      )}
      {unseen && <Unseen view={filtered} />}
      {nothing && <p class="remark">{t("findings.nothing-under")}</p>}
    </>
  );
}

function FindingsBody({ on }: { readonly on: OnDesk }) {
  const [chosen, setChosen] = useState<MarkKind>();
  const view = findingsView(on.telling, on.assessment);
  const [danger] = cautionLines(on.known, on.assessment.cautions, on.visit.told).filter(
    (line) => line.signal === "danger",
  );
  return (
    <>
      <Top back={carTitle(on.car)} href={to("car", { car: paramOf(on.car.stream) })} />
      <main>
        <Title title={t("findings.title")} />
        {danger && <CautionPanel {...cautionPanel(danger, "bar")} href={to("cautions", { visit: on.param })} />}
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
            {view.notEnough && <Notice kind="plain" title={t("findings.not-enough")} />}
            {view.lines.length === 0 && chosen === undefined && (
              <EmptyState title={t("findings.none")} says={t("findings.none.says")} />
            )}
            <Rows on={on} view={view} chosen={chosen} />
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
      </main>
      <Sections visit={on.param} here="findings" />
    </>
  );
}

export const Findings = ({ params }: { readonly params: ParamsOf<"findings"> }) => (
  <OnVisit param={params.visit}>{(on) => <FindingsBody on={on} />}</OnVisit>
);
