/** How long pictures and notes of other people's papers are kept, and deleting them for good. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { plusDays } from "../state/day-sums.js";
import { dayPapersGo, isDue, personalPapers } from "../state/personal-papers.js";
import { to } from "../state/routes.js";
import { dayOf } from "../state/today.js";
import { papersUntil } from "../state/viewing-acts.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/viewing-page.js";
import { type ErasedNow, ErasedTold, Erasing } from "./erasing.js";
import type { OnPlan } from "./on-plan.js";

/** Days offered; own choice: a purchase is decided within a week, paid and registered within a quarter. */
const DAYS = [7, 30, 90] as const;
const KEPT = "kept";
const AS_SET = "as-set";

export function PapersKept({ on }: { readonly on: OnPlan }) {
  const { journal, phone } = useApp();
  const [asking, setAsking] = useState(false);
  const [erased, setErased] = useState<ErasedNow>();
  const papers = personalPapers(on.visit);
  const today = dayOf(phone.now());
  const until = dayPapersGo(on.said);
  const set = (value: string): void => {
    const days = DAYS.find((one) => String(one) === value);
    if (value !== AS_SET) void papersUntil(journal, on.stream, days === undefined ? null : plusDays(today, days));
  };
  const options = [
    ...(until === undefined ? [] : [{ value: AS_SET, words: t("papers.until", { on: plainDay(until) }) }]),
    ...DAYS.map((n) => ({ value: String(n), words: t("papers.days", { n, on: plainDay(plusDays(today, n)) }) })),
    { value: KEPT, words: t("papers.kept") },
  ];
  return (
    <Band heading={t("papers.title")}>
      <p class="remark n">{papers.length === 0 ? t("papers.none") : t("papers.says", { n: papers.length })}</p>
      {papers.length > 0 && isDue(on.said, today) && <Notice kind="plain" title={t("papers.due")} />}
      {erased && <ErasedTold erased={erased} />}
      <div class="form">
        <Field
          id="papers-until"
          kind="select"
          label={t("papers.ask")}
          help={t("papers.ask.help")}
          value={until === undefined ? KEPT : AS_SET}
          onInput={set}
          options={options}
        />
        {papers.length > 0 && (
          <div class="acts">
            <Tool words={t("papers.now", { n: papers.length })} onPress={() => setAsking(true)} />
          </div>
        )}
      </div>
      <ListRow
        title={t("papers.others")}
        second={t("papers.others.says")}
        href={to("visit-file", { visit: on.param })}
      />
      {asking && (
        <Erasing
          what={{ title: t("papers.sure", { n: papers.length }), ids: papers.flatMap(({ ids }) => ids) }}
          onClose={() => setAsking(false)}
          onErased={(now) => {
            setErased(now);
            setAsking(false);
          }}
        />
      )}
    </Band>
  );
}
