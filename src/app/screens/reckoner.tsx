/** The bench reckoner: every trade function by subject, found by a word. */
import { useState } from "preact/hooks";
import { Field } from "../parts/field.js";
import { Fold } from "../parts/fold.js";
import { ListRow } from "../parts/list-row.js";
import { useApp } from "../state/app.js";
import { functionsFound } from "../state/reckoner-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { keepTyped, typedBefore } from "../state/settings.js";
import { t } from "../texts/bench.js";
import { Plain } from "./frame.js";

const TYPED = "reckoner";

function ReckonerBody({ visit }: { readonly visit?: string }) {
  const { remembered } = useApp();
  const [typed, setTyped] = useState(() => typedBefore(remembered, TYPED));
  const found = functionsFound(typed);
  const type = (text: string): void => {
    setTyped(text);
    keepTyped(remembered, TYPED, text);
  };
  const href = (of: string): string =>
    visit === undefined ? to("reckoning", { of }) : to("visit-reckoning", { visit, of });
  return (
    <Plain
      back={visit === undefined ? t("bench.settings") : t("sections.visit")}
      href={visit === undefined ? to("settings") : to("visit", { visit })}
      title={t("bench.title")}
    >
      <p class="remark">{t("bench.says")}</p>
      <div class="form">
        <Field id="reckoner-find" kind="search" label={t("bench.find")} value={typed} onInput={type} />
      </div>
      <p class="remark" role="status">
        {found.length === 0 ? t("bench.none") : ""}
      </p>
      {found.map(({ subject, says, functions }) => (
        <Fold key={subject} title={says} count={functions.length} open={typed.trim() !== ""}>
          {functions.map((fn) => (
            <ListRow key={fn.name} folded title={fn.says} href={href(fn.name)} />
          ))}
        </Fold>
      ))}
    </Plain>
  );
}

export const Reckoner = () => <ReckonerBody />;
export const VisitReckoner = ({ params }: { readonly params: ParamsOf<"visit-reckoner"> }) => (
  <ReckonerBody visit={params.visit} />
);
