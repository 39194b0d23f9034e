/** What was entered in this visit, newest first; undo and bring back, step by step. */
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { historyView } from "../state/history-view.js";
import { undo } from "../state/reply-acts.js";
import { type ParamsOf, to } from "../state/routes.js";
import { redo } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { type OnDesk, OnVisit } from "./on-visit.js";

/** A long visit's list is cut; undo goes one step at a time anyway. */
const SHOWN = 200;

function HistoryBody({ on }: { readonly on: OnDesk }) {
  const { journal } = useApp();
  const writer = journal.writer.value;
  if (writer === undefined) return <OpeningScreen />;
  const view = historyView(on.known, on.who, on.visit, writer);
  const [last] = view.undo;
  const [back] = view.redo;
  const closed = on.visit.closed !== undefined;
  return (
    <Plain
      back={t("visit.title")}
      href={to("visit", { visit: on.param })}
      title={t("history.title")}
      second={t("history.says")}
    >
      {!closed && (
        <div class="acts">
          {last && (
            <Tool
              words={t("history.undo", { what: last.title })}
              onPress={() => void undo(journal, on.stream, last.step)}
            />
          )}
          {back && (
            <Tool
              words={t("history.redo", { what: back.title })}
              onPress={() => void redo(journal, on.stream, back.step)}
            />
          )}
        </div>
      )}
      {view.undo.length === 0 && <EmptyState title={t("history.none")} says="" />}
      {view.undo.slice(0, SHOWN).map((line) => (
        <ListRow key={line.id} title={line.title} second={line.second} />
      ))}
    </Plain>
  );
}

export const History = ({ params }: { readonly params: ParamsOf<"history"> }) => (
  <OnVisit param={params.visit}>{(on) => <HistoryBody on={on} />}</OnVisit>
);
