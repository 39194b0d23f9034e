/** A check sheet of one's own from nothing: what it is called, what it is about, what it looks at first. */
import { useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { useApp } from "../state/app.js";
import { kindWords } from "../state/places-view.js";
import { to } from "../state/routes.js";
import { beginNew, type NewSheetSaid } from "../state/sheet-begin.js";
import { commonTextsOf } from "../state/shelf.js";
import { t } from "../texts/sheet-work.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { useSheetsAtHand, useWholeCommon } from "./use-sheets.js";

const LONGEST_NAME = 80;
const WANTED = ["title", "about", "first"] as const;

export function NewSheet() {
  const app = useApp();
  const atHand = useSheetsAtHand();
  const common = useWholeCommon();
  const house = app.journal.house().value;
  const [said, setSaid] = useState({ title: "", about: "", first: "", place: "car", state: "" });
  const [isAsked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  if (!common || house.is === "opening") return <OpeningScreen />;
  const { states } = commonTextsOf(common);
  const kinds = [...new Set(common.common.places.map(({ kind }) => kind))];
  const state = said.state || common.common.states[0]?.id || "";
  const lacks = WANTED.filter((key) => said[key].trim() === "");
  const put = (key: keyof NewSheetSaid) => (value: string) => setSaid({ ...said, [key]: value });
  const keep = async (): Promise<void> => {
    setAsked(true);
    if (lacks.length > 0) return document.getElementById(`new-sheet-${lacks[0]}`)?.focus();
    setBusy(true);
    const hence = app.router.fromHere();
    const trimmed = { title: said.title.trim(), about: said.about.trim(), first: said.first.trim() };
    const id = await beginNew(app, { ...said, ...trimmed, state }, atHand);
    setBusy(false);
    if (id !== undefined) hence.swap(to("sheet-work", { sheet: id }));
  };
  const asks = (key: (typeof WANTED)[number], kind: "text" | "area") => (
    <Field
      id={`new-sheet-${key}`}
      kind={kind}
      label={t(`new-sheet.${key}`)}
      help={t(`new-sheet.${key}.help`)}
      value={said[key]}
      onInput={put(key)}
      required
      {...(kind === "text" ? { maxLength: LONGEST_NAME } : {})}
      {...(isAsked && lacks.includes(key) ? { problem: t(`new-sheet.${key}.wanted`) } : {})}
    />
  );
  return (
    <Plain back={t("sheet-work.sheets")} href={to("sheets")} title={t("new-sheet.title-line")}>
      <form
        class="form"
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        {asks("title", "text")}
        {asks("about", "area")}
        {asks("first", "text")}
        <Field
          id="new-sheet-place"
          kind="select"
          label={t("new-sheet.place")}
          value={said.place}
          onInput={put("place")}
          options={kinds.map((kind) => ({ value: kind, words: kindWords(kind) }))}
        />
        <Field
          id="new-sheet-state"
          kind="select"
          label={t("new-sheet.state")}
          value={state}
          onInput={put("state")}
          options={common.common.states.map(({ id }) => ({ value: id, words: states[id]?.name ?? id }))}
        />
        <NextAction type="submit" words={t("new-sheet.begin")} disabled={busy} />
      </form>
    </Plain>
  );
}
