/** What opens over handing back: handing it back, taking it back, a second look, a check after some way. */

import { useState } from "preact/hooks";
import { figureOf, type HandedBack } from "../../core/record/index.js";
import { DO_NOT_DRIVE } from "../../core/terms/index.js";
import { isSamePerson } from "../../core/terms/run.js";
import { NextAction } from "../parts/button.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { Switch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { cautionLine } from "../state/cautions-view.js";
import { handBack, rechecked, secondLook, takeBack } from "../state/release-acts.js";
import type { DueLine, LookLine, ReleaseView } from "../state/release-view.js";
import { t } from "../texts/release.js";
import { cautionPanel } from "./caution-panels.js";
import { OdometerBox } from "./odometer-box.js";
import type { OnPlan } from "./on-plan.js";

interface Over {
  readonly on: OnPlan;
  readonly onClose: () => void;
}
const SWITCH = { on: t("app.yes"), off: t("app.no") };

export function HandBackSheet({
  on,
  onClose,
  view,
  how,
}: Over & { readonly view: ReleaseView; readonly how: HandedBack }) {
  const { journal, settings } = useApp();
  const stands = on.visit.odometer.at(-1)?.value;
  const [who, setWho] = useState(settings.value.name);
  const [value, setValue] = useState(stands?.value ?? "");
  const [unit, setUnit] = useState<string>(stands?.unit ?? settings.value.odometerUnit);
  const [isWarned, setWarned] = useState(false);
  const isOdd = value.trim() !== "" && figureOf({ value, unit }) === undefined;
  const isWhole = who.trim() !== "" && !isOdd && (how === "driven" ? view.mayBeDriven : view.mayBeMoved && isWarned);
  const keep = (): void => {
    if (!isWhole) return;
    void handBack(journal, on.stream, {
      who: who.trim(),
      on: on.input.today,
      how,
      told: view.against.map(({ title, second }) => `${title}: ${second}`),
      ...(value.trim() === "" ? {} : { odometer: { value: value.trim(), unit } }),
      ...(how === "not-driven" ? { warned: true as const } : {}),
    });
    onClose();
  };
  return (
    <Sheet
      open
      title={t(how === "driven" ? "release.do" : "release.do.not-driven")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("release.keep")} onPress={keep} disabled={!isWhole} />}
    >
      {how === "not-driven" && (
        <>
          <CautionPanel {...cautionPanel(cautionLine(on.known, DO_NOT_DRIVE, []), "full", 3)} />
          <p>{t("release.do.not-driven.says")}</p>
          <Switch
            id="release-warned"
            label={t("release.warned")}
            says={t("release.warned.says")}
            on={isWarned}
            onChange={setWarned}
            words={SWITCH}
          />
        </>
      )}
      {view.against.length > 0 && (
        <>
          <p class="label">{t("release.to-tell")}</p>
          {view.against.map(({ id, title, second }) => (
            <p key={id} class="small">
              {title}: {second}
            </p>
          ))}
        </>
      )}
      <div class="form">
        <Field id="release-who" kind="text" label={t("release.who")} value={who} onInput={setWho} required />
        <OdometerBox
          id="release-odometer"
          label={t("release.odometer")}
          unitLabel={t("reading.unit")}
          value={value}
          onValue={setValue}
          unit={unit}
          onUnit={setUnit}
          problem={isOdd ? t("release.odometer.odd") : undefined}
        />
      </div>
    </Sheet>
  );
}

export function TakeBackSheet({ on, onClose }: Over) {
  const { journal } = useApp();
  const [reason, setReason] = useState("");
  const isWhole = reason.trim() !== "";
  const keep = (): void => {
    if (!isWhole) return;
    void takeBack(journal, on.stream, reason.trim());
    onClose();
  };
  return (
    <Sheet
      open
      title={t("release.back")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("release.back")} onPress={keep} disabled={!isWhole} />}
    >
      <p>{t("release.back.says")}</p>
      <Field id="release-back" kind="area" label={t("release.back.why")} value={reason} onInput={setReason} required />
    </Sheet>
  );
}

/** Who looked is asked anew each time: it has to be somebody else than whoever told the job as done. */
export function LookSheet({ on, onClose, line }: Over & { readonly line: LookLine }) {
  const { journal } = useApp();
  const [who, setWho] = useState("");
  const [words, setWords] = useState("");
  const [isSame, setSame] = useState(false);
  const isSameName = isSamePerson(who, line.doneBy);
  const isWhole = who.trim() !== "" && words.trim() !== "";
  const keep = (): void => {
    if (!isWhole) return;
    void secondLook(journal, on.stream, {
      job: line.job,
      place: line.place,
      who: who.trim(),
      on: on.input.today,
      words: words.trim(),
      same: isSame || isSameName,
    });
    onClose();
  };
  return (
    <Sheet
      open
      title={`${t("release.look")}: ${line.title}`}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={keep} disabled={!isWhole} />}
    >
      <div class="form">
        <Field id="look-who" kind="text" label={t("release.look.who")} value={who} onInput={setWho} required />
        {isSameName && <p class="small">{t("release.look.same-name", { who: line.doneBy })}</p>}
        <Field id="look-words" kind="area" label={t("release.look.words")} value={words} onInput={setWords} required />
        <Switch
          id="look-same"
          label={t("release.look.same-person")}
          says={t("release.look.same-person.says")}
          on={isSame || isSameName}
          onChange={setSame}
          words={SWITCH}
        />
      </div>
    </Sheet>
  );
}

export function DueSheet({ on, onClose, line }: Over & { readonly line: DueLine }) {
  const { journal, settings } = useApp();
  const [who, setWho] = useState(settings.value.name);
  const [words, setWords] = useState("");
  const isWhole = who.trim() !== "" && words.trim() !== "";
  const keep = (): void => {
    if (!isWhole) return;
    void rechecked(journal, on.stream, {
      recheck: line.id,
      who: who.trim(),
      on: on.input.today,
      words: words.trim(),
    });
    onClose();
  };
  return (
    <Sheet
      open
      title={line.title}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={keep} disabled={!isWhole} />}
    >
      <div class="form">
        <Field id="due-who" kind="text" label={t("release.look.who")} value={who} onInput={setWho} required />
        <Field id="due-words" kind="area" label={t("release.due.words")} value={words} onInput={setWords} required />
      </div>
    </Sheet>
  );
}
