/** All parts of the plan by what is to be done about them next: ask, order, send back, check; then what is here. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { partGroups } from "../state/plan-parts-view.js";
import { to } from "../state/routes.js";
import { t } from "../texts/plan-parts.js";
import { Plain } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { UndoRow } from "./undo.js";

const AddPart = lazy(() => import("./part-add.js").then((file) => file.AddPart), Nothing);

function Body({ on }: { readonly on: OnPlan }) {
  const [isAdding, setAdding] = useState(false);
  const groups = partGroups(on, on.plan);
  return (
    <>
      {groups.length === 0 && <EmptyState title={t("all-parts.none")} says={t("all-parts.none.says")} />}
      {groups.map(({ id, heading, lines }) => (
        <Band key={id} heading={heading} aside={String(lines.length)}>
          {lines.map((line) => (
            <ListRow
              key={line.id}
              title={line.title}
              second={line.second}
              href={line.href}
              {...(line.aside === undefined ? {} : { aside: line.aside })}
            />
          ))}
        </Band>
      ))}
      {on.who !== "buyer" && on.input.jobs.length > 0 && (
        <div class="acts">
          <Tool words={t("all-parts.add")} onPress={() => setAdding(true)} />
        </div>
      )}
      <Band>
        <ListRow title={t("dates.suppliers")} href={to("settings")} />
        <UndoRow on={on} />
      </Band>
      {isAdding && <AddPart on={on} onClose={() => setAdding(false)} />}
    </>
  );
}

export const PlanParts = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>
    {(on) => (
      <Plain back={t("work.title")} href={to("work", { visit })} title={t("all-parts.title")}>
        <Body on={on} />
      </Plain>
    )}
  </Waiting>
);
