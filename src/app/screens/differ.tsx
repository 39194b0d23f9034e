/** Replies that differ: who said what, and settling it. Both stand until then. */
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { differLines } from "../state/history-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { settle } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import { Plain } from "./frame.js";
import { type OnDesk, OnVisit } from "./on-visit.js";

function DifferBody({ on }: { readonly on: OnDesk }) {
  const { journal } = useApp();
  const lines = differLines(on.known, on.who, on.visit);
  return (
    <Plain
      back={t("visit.title")}
      href={to("visit", { visit: on.param })}
      title={t("differ.title")}
      second={t("differ.says")}
    >
      {lines.length === 0 && <EmptyState title={t("differ.none")} says="" />}
      {lines.map((line) => (
        <Band key={line.id} heading={line.title}>
          {line.replies.map((one) => (
            <div key={one.id} class="differ-row">
              <ListRow title={one.says} second={one.by} />
              {!on.visit.closed && (
                <Tool
                  words={`${t("differ.settle")}: ${one.says}`}
                  onPress={() => void settle(journal, on.stream, line.key, one.id)}
                />
              )}
            </div>
          ))}
        </Band>
      ))}
    </Plain>
  );
}

export const Differ = ({ params }: { readonly params: ParamsOf<"differ"> }) => (
  <OnVisit param={params.visit}>{(on) => <DifferBody on={on} />}</OnVisit>
);
