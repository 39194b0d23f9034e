/** Grading by hand: up freely, down only with a reason. */
import { useState } from "preact/hooks";
import { GRADES, type Grade, levelOf } from "../../core/terms/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { type FindingView, rulesGrade } from "../state/findings-view.js";
import { regrade } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import type { OnDesk } from "./on-visit.js";

export function GradeByHand({
  on,
  view,
  open,
  onClose,
}: {
  readonly on: OnDesk;
  readonly view: FindingView;
  readonly open: boolean;
  readonly onClose: () => void;
}) {
  const { journal } = useApp();
  const ruled = rulesGrade(on.assessment, view);
  const [grade, setGrade] = useState<Grade>(view.grade);
  const [reason, setReason] = useState(view.byHand?.reason ?? "");
  const needsReason = levelOf(grade) < levelOf(ruled);
  const missing = needsReason && reason.trim() === "";
  const keep = (to: Grade | null): void => {
    void regrade(journal, on.stream, view.fault, view.place, to, reason.trim());
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("finding.regrade.title")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("finding.regrade.keep")} onPress={() => keep(grade)} disabled={missing} />}
    >
      <p>{t("finding.regrade.says", { grade: t(`grade.${ruled}`) })}</p>
      <ReplyGrid
        kind="choice"
        columns={1}
        label={t("finding.regrade.grade")}
        replies={[...GRADES].reverse().map((id) => ({ id, words: t(`mark.${id}`), chosen: id === grade }))}
        onChoose={(id) => setGrade(GRADES.find((one) => one === id) ?? grade)}
      />
      <Field
        id="regrade-reason"
        kind="area"
        label={t("finding.regrade.reason")}
        value={reason}
        onInput={setReason}
        required={needsReason}
        {...(missing ? { problem: t("finding.regrade.needed") } : {})}
      />
      {view.byHand && <Tool words={t("finding.regrade.rules")} onPress={() => keep(null)} />}
    </Sheet>
  );
}
