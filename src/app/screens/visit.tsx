/** A visit's own page: complaint, what was looked at, sheets as frozen, cautions, what differs, closing it. */
import { useEffect, useState } from "preact/hooks";
import { undoable } from "../../core/record/index.js";
import { toTell } from "../../core/terms/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { Title } from "../parts/title.js";
import { useApp } from "../state/app.js";
import { carTitle } from "../state/car-view.js";
import { movedOn } from "../state/judge-again.js";
import { cameraHref } from "../state/picture-spot.js";
import { unsortedCount } from "../state/pictures-view.js";
import { type ParamsOf, paramOf, to } from "../state/routes.js";
import { visitView } from "../state/visit-view.js";
import { t as onward } from "../texts/hand-over-to.js";
import { day, t } from "../texts/index.js";
import { t as viewing } from "../texts/viewing.js";
import { AddSheet, useMoreSheets } from "./add-sheet.js";
import { Top } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { Sections } from "./sections.js";
import { useSheetsAtHand } from "./use-sheets.js";
import { CloseSheet, ComplaintSheet, OdometerSheet, ReopenSheet } from "./visit-sheets.js";

const Complaints = lazy(() => import("./complaints.js").then((file) => file.Complaints), Nothing);
const VisitLooks = lazy(() => import("./looks-visit.js").then((file) => file.VisitLooks), Nothing);
const LooseLine = lazy(() => import("./loose-line.js").then((file) => file.LooseLine), Nothing);
const ViewingSheet = lazy(() => import("./viewing-sheet.js").then((file) => file.ViewingSheet), Nothing);

type Over = "complaint" | "odometer" | "sheet" | "close" | "reopen" | "way";

function picturesSay({ visit: { pictures } }: OnDesk): string {
  const unsorted = unsortedCount(pictures);
  return unsorted === 0
    ? t("visit.pictures.says", { n: pictures.length })
    : t("visit.pictures.unsorted", { n: pictures.length, unsorted });
}

function Rows({ on, open }: { readonly on: OnDesk; readonly open: (over: Over) => void }) {
  const { journal, shelf } = useApp();
  const frozen = on.desk.laid.value?.frozen;
  const moved = movedOn(frozen, on.car, shelf.common.edition, useSheetsAtHand());
  const view = visitView(on.telling, on.visit, on.assessment);
  const more = useMoreSheets(on);
  const writer = journal.writer.value;
  const loose = on.visit.notes.filter(({ value }) => value.point === undefined && value.place === undefined);
  const steps = writer === undefined ? 0 : undoable(on.visit, writer).length;
  return (
    <>
      <Band heading={t("visit.complaints")}>
        <Complaints on={on} />
        {!view.closed && (
          <div class="acts">
            <Tool words={t("visit.add-complaint")} onPress={() => open("complaint")} />
          </div>
        )}
      </Band>
      {!view.closed && !on.quiet && <VisitLooks on={on} />}
      <Band>
        <ListRow
          title={t("visit.odometer")}
          second={view.odometer}
          {...(view.closed ? {} : { onPress: () => open("odometer") })}
        />
        {!view.closed && (
          <ListRow
            title={t("off-list.add")}
            second={t("off-list.short")}
            href={to("off-list", { visit: on.param, place: "car", finding: "new" })}
          />
        )}
        <ListRow
          title={t("visit.cautions")}
          {...(on.quiet ? {} : { second: t("visit.cautions.says", { n: toTell(on.assessment.cautions).length }) })}
          href={to("cautions", { visit: on.param })}
        />
        {view.differ > 0 && (
          <ListRow
            title={t("visit.differ")}
            second={t("visit.differ.says", { n: view.differ })}
            href={to("differ", { visit: on.param })}
          />
        )}
        {!view.closed && <ListRow title={viewing("viewing.title")} onPress={() => open("way")} />}
        {on.visit.opened?.value.purpose === "viewing" && (
          <ListRow
            title={viewing("viewing.page")}
            second={viewing("viewing.page.says")}
            href={to("viewing", { visit: on.param })}
          />
        )}
        <ListRow title={t("visit.pictures")} second={picturesSay(on)} href={to("pictures", { visit: on.param })} />
        {!view.closed && <ListRow title={t("visit.shoot")} href={cameraHref(on.param, { at: "visit" })} />}
        <ListRow
          title={t("visit.reckoner")}
          second={t("visit.reckoner.says")}
          href={to("visit-reckoner", { visit: on.param })}
        />
        {on.visit.opened?.value.purpose === "season" && (
          <ListRow title={t("round.what-now")} href={to("what-now", { visit: on.param })} />
        )}
        <ListRow title={onward("hand-over.to")} href={to("hand-over", { visit: on.param })} />
        <ListRow
          title={t("visit.history")}
          second={t("visit.history.says", { n: steps })}
          href={to("history", { visit: on.param })}
        />
        <ListRow title={t("visit.file")} second={t("visit.file.says")} href={to("visit-file", { visit: on.param })} />
      </Band>
      {loose.length > 0 && (
        <Band heading={t("visit.notes")}>
          {loose.map(({ id, value }) => (
            <p key={id} class="remark">
              {value.text}
            </p>
          ))}
        </Band>
      )}
      <Band heading={t("visit.sheets")}>
        {view.sheets.map((sheet) => (
          <ListRow key={sheet.id} title={sheet.title} second={sheet.looked} aside={sheet.edition} />
        ))}
        {(moved.limits || moved.sheets) && (
          <ListRow title={t("again.title")} second={t("again.moved")} href={to("judge-again", { visit: on.param })} />
        )}
        {!view.closed && more.length > 0 && (
          <div class="acts">
            <Tool words={t("visit.add-sheet")} onPress={() => open("sheet")} />
          </div>
        )}
      </Band>
      {view.unreadable > 0 && <Notice kind="plain" title={t("visit.trouble", { n: view.unreadable })} />}
    </>
  );
}

function VisitBody({ on }: { readonly on: OnDesk }) {
  const { journal } = useApp();
  const [over, setOver] = useState<Over>();
  useEffect(() => void journal.refresh(), [journal]);
  const opened = on.visit.opened?.value;
  const close = (): void => setOver(undefined);
  const when = on.visit.closed
    ? t("visit.closed", { when: day(on.visit.closed.at.wall) })
    : t("visit.open", { when: day(Date.parse(opened?.on ?? "")) });
  return (
    <>
      <Top back={carTitle(on.car)} href={to("car", { car: paramOf(on.car.stream) })} />
      <main>
        <Title
          title={opened ? t(`purpose.${opened.purpose}`) : t("visit.title")}
          second={`${t(`who.${on.who}`)}, ${when}`}
        />
        <LooseLine visit={on.param} stream={on.stream} />
        <Rows on={on} open={setOver} />
        <div class="acts">
          {on.visit.closed ? (
            <Tool words={t("visit.reopen")} onPress={() => setOver("reopen")} />
          ) : (
            <NextAction words={t("visit.close")} onPress={() => setOver("close")} />
          )}
        </div>
      </main>
      <Sections visit={on.param} here="visit" />
      <ComplaintSheet on={on} open={over === "complaint"} onClose={close} />
      <AddSheet on={on} sheets={useMoreSheets(on)} open={over === "sheet"} onClose={close} />
      <OdometerSheet on={on} open={over === "odometer"} onClose={close} />
      <CloseSheet on={on} open={over === "close"} onClose={close} />
      {over === "way" && <ViewingSheet on={on} onClose={close} />}
      <ReopenSheet on={on} open={over === "reopen"} onClose={close} />
    </>
  );
}

export const Visit = ({ params }: { readonly params: ParamsOf<"visit"> }) => (
  <OnVisit param={params.visit}>{(on) => <VisitBody on={on} />}</OnVisit>
);
