/** The note to the owner: made from the record, changed by hand, handed to the share sheet or copied, kept as it was sent. */
import { useState } from "preact/hooks";
import type { TextHanded } from "../../core/record/files.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { carTitle } from "../state/car-view.js";
import { progressNote } from "../state/progress-note.js";
import { progressSent } from "../state/release-acts.js";
import { to } from "../state/routes.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/release.js";
import { Plain } from "./frame.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { PlanUndo } from "./plan-undo.js";

const UNDO = { "progress.sent": t("undo.progress.sent") };

function Sent({ on }: { readonly on: OnPlan }) {
  const sent = on.said.progressSent.toReversed();
  return (
    <Band heading={t("note.sent")}>
      {sent.length === 0 && <p class="remark">{t("note.sent.none")}</p>}
      {sent.map(({ id, value: { text, who, how, on: day } }) => (
        <ListRow key={id} title={t("note.sent.by", { who, how, date: plainDay(day) })} second={text} />
      ))}
    </Band>
  );
}

function Body({ on }: { readonly on: OnPlan }) {
  const { journal, files, settings } = useApp();
  const made = progressNote({ ...on, carName: carTitle(on.car) });
  const [typed, setTyped] = useState<string>();
  const [handed, setHanded] = useState<TextHanded>();
  const [who, setWho] = useState(settings.value.name);
  const [how, setHow] = useState("");
  const text = typed ?? made;
  const hand = (by: "share" | "copy"): void => {
    void files[by](text).then((became) => {
      setHanded(became);
      if (became === "shared" || became === "copied") setHow(t(`note.how.${became}`));
    });
  };
  const isWhole = text.trim() !== "" && who.trim() !== "" && how.trim() !== "";
  const keep = (): void => {
    if (!isWhole) return;
    void progressSent(journal, on.stream, {
      text: text.trim(),
      who: who.trim(),
      how: how.trim(),
      on: on.input.today,
    }).then((kept) => {
      if (!kept) return;
      setTyped(undefined);
      setHanded(undefined);
    });
  };
  return (
    <>
      <div class="form long-text">
        <Field id="note-text" kind="area" label={t("note.text")} value={text} onInput={setTyped} />
      </div>
      <div class="acts">
        <NextAction words={t("note.share")} onPress={() => hand("share")} disabled={text.trim() === ""} />
        <Tool words={t("note.copy")} onPress={() => hand("copy")} />
        {typed !== undefined && <Tool words={t("note.again")} onPress={() => setTyped(undefined)} />}
      </div>
      <p class="remark" role="status">
        {handed && handed !== "stopped" ? t(`note.${handed}`) : ""}
      </p>
      <div class="form">
        <Field id="note-who" kind="text" label={t("note.who")} value={who} onInput={setWho} required />
        <Field id="note-how" kind="text" label={t("note.how")} value={how} onInput={setHow} required />
        <Tool words={t("note.keep")} onPress={keep} disabled={!isWhole} />
      </div>
      <Sent on={on} />
      <PlanUndo on={on} words={UNDO} />
    </>
  );
}

export const PlanNote = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>
    {(on) => (
      <Plain back={t("work.title")} href={to("work", { visit })} title={t("note.title")} second={t("note.says")}>
        <Body on={on} />
      </Plain>
    )}
  </Waiting>
);
