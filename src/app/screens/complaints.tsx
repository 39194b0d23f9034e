/** The complaints of a visit with their answers, those carried on from earlier visits too; each can be answered. */
import { useState } from "preact/hooks";
import { openComplaints } from "../../core/plan/index.js";
import { ListRow } from "../parts/list-row.js";
import { useApp } from "../state/app.js";
import { type HeardLine, heardLine } from "../state/complaint-answers.js";
import { complaintLines } from "../state/complaint-lines.js";
import { earlierUnread, heardIn } from "../state/heard.js";
import { t } from "../texts/release.js";
import { ComplaintRows } from "./complaint-rows.js";
import { lazy, Nothing } from "./lazy.js";
import type { OnDesk } from "./on-visit.js";

const AnswerSheet = lazy(() => import("./complaint-answer.js").then((file) => file.AnswerSheet), Nothing);

function AnswerRow({ line, onPress }: { readonly line: HeardLine; readonly onPress: () => void }) {
  return (
    <ListRow
      title={line.answer}
      {...(line.second === undefined ? {} : { second: line.second })}
      aside={t(line.isOpen ? "heard.answer" : "heard.change")}
      onPress={onPress}
    />
  );
}

export function Complaints({ on }: { readonly on: OnDesk }) {
  const { journal } = useApp();
  const [answering, setAnswering] = useState<string>();
  const heard = heardIn(journal, on.visit, on.desk.earlier.value);
  const rows = complaintLines(on.telling, on.visit, on.assessment.suggested);
  const lines = (heard ?? []).map((one) => heardLine(on.telling, on.assessment, one, on.quiet));
  const asked = heard?.find(({ id }) => id === answering);
  return (
    <>
      {rows.length === 0 && lines.length === 0 && <p class="remark">{t("visit.no-complaint")}</p>}
      <ComplaintRows
        lines={rows}
        visit={on.param}
        after={(id) => {
          const line = lines.find((one) => one.id === id);
          return line && <AnswerRow line={line} onPress={() => setAnswering(id)} />;
        }}
      />
      {lines
        .filter(({ isCarried }) => isCarried)
        .map((line) => (
          <div key={line.id}>
            <ListRow title={line.text} second={line.from} />
            <AnswerRow line={line} onPress={() => setAnswering(line.id)} />
          </div>
        ))}
      <Unread on={on} />
      {asked && <AnswerSheet on={on} heard={asked} onClose={() => setAnswering(undefined)} />}
    </>
  );
}

function Unread({ on }: { readonly on: OnDesk }) {
  const n = earlierUnread(useApp().journal, on.visit);
  return n === 0 ? null : <p class="remark">{t("heard.unread", { n })}</p>;
}

/** What closing a visit says of complaints nobody has answered; nothing where there are none. */
export function OpenComplaints({ on }: { readonly on: OnDesk }) {
  const heard = heardIn(useApp().journal, on.visit, on.desk.earlier.value);
  if (heard === undefined) return <p role="status">{t("heard.reading")}</p>;
  const n = openComplaints(heard).length;
  return (
    <>
      {n > 0 && (
        <p>
          <strong>{t("heard.closing", { n })}.</strong> {t("heard.closing.says", { n })}
        </p>
      )}
      <Unread on={on} />
    </>
  );
}
