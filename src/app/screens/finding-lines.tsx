/** The findings of a visit as lines: the worst open with its because, the rest as rows, what was not seen, what settles. */
import { useState } from "preact/hooks";
import type { MarkKind } from "../../core/report/marks.js";
import { BecauseTrace } from "../parts/because-trace.js";
import { FindingRow } from "../parts/finding-row.js";
import { GradeMark } from "../parts/grade-mark.js";
import { ListRow } from "../parts/list-row.js";
import { Band, Pool } from "../parts/pool.js";
import { type FindingLine, type FindingsView, findingView } from "../state/findings-view.js";
import { t } from "../texts/index.js";
import type { OnDesk } from "./on-visit.js";
import { withWorkings } from "./worked-steps.js";

/** Rows drawn before the rest is asked for: a long list is not read on a phone anyway. */
const SHOWN = 40;
/** Points that would settle most, before the rest is asked for. */
const SETTLE_SHOWN = 5;

function Worst({ on, line }: { readonly on: OnDesk; readonly line: FindingLine }) {
  const view = findingView(on.telling, on.assessment, line.fault, line.place, true);
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
        <BecauseTrace label={t("finding.because")} steps={withWorkings(on, view.steps)} />
        {view.measureAgain !== undefined && (
          <a class="plain-link" href={view.measureAgain}>
            {t("finding.measure-again")}
          </a>
        )}
      </FindingRow>
    </Pool>
  );
}

function Unseen({ heading, lines }: { readonly heading: string; readonly lines: FindingsView["unseen"] }) {
  const [all, setAll] = useState(false);
  const shown = all ? lines : lines.slice(0, SHOWN);
  if (lines.length === 0) return null;
  return (
    <Band heading={heading} aside={String(lines.length)}>
      {shown.map((one) => (
        <ListRow
          key={one.id}
          lead={<GradeMark mark={one.mark} label={t(`mark.${one.mark}`)} />}
          title={one.title}
          second={one.second}
          href={one.href}
        />
      ))}
      {shown.length < lines.length && (
        <ListRow folded title={t("findings.more", { n: lines.length - shown.length })} onPress={() => setAll(true)} />
      )}
    </Band>
  );
}

function Settle({ view }: { readonly view: FindingsView }) {
  const [all, setAll] = useState(false);
  const shown = all ? view.settle : view.settle.slice(0, SETTLE_SHOWN);
  return (
    <Band heading={t("findings.settle")}>
      {shown.map((one) => (
        <ListRow
          key={one.id}
          title={one.title}
          second={one.second}
          {...(one.href === undefined ? {} : { href: one.href })}
        />
      ))}
      {shown.length < view.settle.length && (
        <ListRow
          folded
          title={t("findings.more", { n: view.settle.length - shown.length })}
          onPress={() => setAll(true)}
        />
      )}
    </Band>
  );
}

export function FindingLines({
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
      {chosen === undefined && view.settle.length > 0 && <Settle view={view} />}
      {unseen && (
        <>
          <Unseen
            heading={t("findings.not-looked")}
            lines={filtered.unseen.filter(({ mark }) => mark === "not-looked")}
          />
          <Unseen
            heading={t("findings.cannot")}
            lines={filtered.unseen.filter(({ mark }) => mark === "cannot-reach")}
          />
        </>
      )}
      {nothing && <p class="remark">{t("findings.nothing-under")}</p>}
    </>
  );
}
