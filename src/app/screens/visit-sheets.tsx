/** The sheets over a visit's page: another complaint, the odometer, closing and reopening. */
import { useState } from "preact/hooks";
import { figureOf } from "../../core/record/index.js";
import { NextAction } from "../parts/button.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { worstCaution } from "../state/cautions-view.js";
import { close as closeVisit, complaint, odometer, reopen } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import { cautionPanel } from "./caution-panels.js";
import { ComplaintField } from "./complaint-field.js";
import { lazy, Nothing } from "./lazy.js";
import { OdometerBox } from "./odometer-box.js";
import type { OnDesk } from "./on-visit.js";

const OpenComplaints = lazy(() => import("./complaints.js").then((file) => file.OpenComplaints), Nothing);
const LooseLine = lazy(() => import("./loose-line.js").then((file) => file.LooseLine), Nothing);

interface OverVisit {
  readonly on: OnDesk;
  readonly open: boolean;
  readonly onClose: () => void;
}

export function ComplaintSheet({ on, open, onClose }: OverVisit) {
  const { journal } = useApp();
  const [text, setText] = useState("");
  const [known, setKnown] = useState<string>();
  const keep = (): void => {
    if (text.trim() === "") return;
    void complaint(journal, on.stream, text.trim(), known).then((kept) => kept && setText(""));
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("visit.add-complaint")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={keep} disabled={text.trim() === ""} />}
    >
      <ComplaintField id="another-complaint" text={text} chosen={known} onText={setText} onChoose={setKnown} />
    </Sheet>
  );
}

export function OdometerSheet({ on, open, onClose }: OverVisit) {
  const { journal, settings } = useApp();
  const stands = on.visit.odometer.at(-1)?.value;
  const [value, setValue] = useState(stands?.value ?? "");
  const [unit, setUnit] = useState<string>(stands?.unit ?? settings.value.odometerUnit);
  const odd = value.trim() !== "" && figureOf({ value, unit }) === undefined;
  const keep = (): void => {
    if (value.trim() === "" || odd) return;
    void odometer(journal, on.stream, { value: value.trim(), unit });
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("visit.odometer")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={keep} />}
    >
      <div class="form">
        <OdometerBox
          id="odometer-now"
          label={t("visit.odometer")}
          unitLabel={t("reading.unit")}
          value={value}
          onValue={setValue}
          unit={unit}
          onUnit={setUnit}
          problem={odd ? t("new-visit.odometer.odd") : undefined}
        />
      </div>
    </Sheet>
  );
}

export function CloseSheet({ on, open, onClose }: OverVisit) {
  const { journal, phone } = useApp();
  const left = on.assessment.points.filter((point) => point.is === "not-looked-at").length;
  const caution = worstCaution(on.known, on.assessment.cautions, on.visit.told);
  const close = (): void => {
    void closeVisit(journal, on.stream, on.assessment, on.desk.engineVersion(), phone.hash).then(() =>
      journal.refresh(),
    );
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("visit.close.sure")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("visit.close")} onPress={close} />}
    >
      {caution && <CautionPanel {...cautionPanel(caution, "small")} />}
      <LooseLine visit={on.param} stream={on.stream} />
      <OpenComplaints on={on} />
      <p>{t("visit.close.says")}</p>
      {left > 0 && <p>{t("visit.close.left", { n: left })}</p>}
    </Sheet>
  );
}

export function ReopenSheet({ on, open, onClose }: OverVisit) {
  const { journal } = useApp();
  const [reason, setReason] = useState("");
  const keep = (): void => {
    if (reason.trim() === "") return;
    void reopen(journal, on.stream, reason.trim()).then(() => journal.refresh());
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("visit.reopen")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("visit.reopen")} onPress={keep} disabled={reason.trim() === ""} />}
    >
      <Field id="reopen-reason" kind="area" label={t("visit.reopen.why")} value={reason} onInput={setReason} />
    </Sheet>
  );
}
