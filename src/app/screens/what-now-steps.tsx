/** The sheets of what an owner does after a look: the message, the file, the days, the copy. */
import { useState } from "preact/hooks";
import type { TextHanded } from "../../core/record/files.js";
import type { CopyWhat } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { carTitle } from "../state/car-view.js";
import type { MadeHandover } from "../state/handover-made.js";
import type { Season } from "../state/season.js";
import type { StepName } from "../state/what-now.js";
import { t as files } from "../texts/files.js";
import { t } from "../texts/season.js";
import { CopyMaker } from "./copy-maker.js";
import type { OnPlan } from "./on-plan.js";
import type { Steps } from "./what-now-body.js";
import { DatesSheet } from "./what-now-dates.js";

export interface StepProps {
  readonly on: OnPlan;
  readonly made: MadeHandover;
  readonly message: string;
  readonly season: Season | undefined;
  readonly steps: Steps;
  readonly onClose: () => void;
}

function MessageSheet({ message, steps, onClose }: StepProps) {
  const { files: door } = useApp();
  const [handed, setHanded] = useState<TextHanded>();
  const after = (how: TextHanded): void => {
    setHanded(how);
    if (how === "shared" || how === "copied") steps.did("message");
  };
  const foot = (
    <div class="acts">
      <Tool words={t("message.copy")} onPress={() => void door.copy(message).then(after)} />
      <NextAction words={t("message.hand")} onPress={() => void door.share(message).then(after)} />
    </div>
  );
  return (
    <Sheet open title={t("what-now.message")} closeWords={t("app.close")} onClose={onClose} foot={foot}>
      <p class="message">{message}</p>
      <p class="remark" role="status">
        {handed && t(`message.${handed}`)}
      </p>
    </Sheet>
  );
}

/** A file of this visit alone, or of everything. The demo goes into none. */
function CopySheet({ step, on, steps, onClose }: StepProps & { readonly step: "file" | "copy" }) {
  const what: CopyWhat =
    step === "file" ? { holds: "visit", car: on.car.stream, visit: on.stream } : { holds: "everything" };
  const way = { id: step, words: files(step === "file" ? "car-file.make" : "files.whole"), what };
  return (
    <Sheet open title={t(`what-now.${step}`)} closeWords={t("app.close")} onClose={onClose}>
      {on.visit.demo ? (
        <p class="remark">{files("hand.demo")}</p>
      ) : (
        <>
          <p class="remark">{files(step === "file" ? "visit-file.hand.says" : "files.says")}</p>
          {step === "file" ? (
            <CopyMaker ways={[way]} of={`visit ${carTitle(on.car)}`} onOut={() => steps.did("file")} />
          ) : (
            <CopyMaker ways={[way]} of="" onHanded={steps.copied} />
          )}
        </>
      )}
    </Sheet>
  );
}

export function StepSheet({ step, ...props }: StepProps & { readonly step: StepName }) {
  if (step === "message") return <MessageSheet {...props} />;
  if (step === "dates") return <DatesSheet {...props} />;
  return <CopySheet {...props} step={step} />;
}
