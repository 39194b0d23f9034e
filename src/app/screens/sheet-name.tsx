/** Asks what a new item, or a copy, is to be called; its id is made from that and never shown. */
import { useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { t } from "../texts/sheet-work.js";

const LONGEST_NAME = 120;

export function AskName({
  title,
  name: before = "",
  onKeep,
  onClose,
}: {
  readonly title: string;
  readonly name?: string;
  readonly onKeep: (name: string) => void;
  readonly onClose: () => void;
}) {
  const [name, setName] = useState(before);
  const [missing, setMissing] = useState(false);
  const keep = (): void => {
    if (name.trim() === "") setMissing(true);
    else onKeep(name.trim());
  };
  return (
    <Sheet
      open
      title={title}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("sheet-name.keep")} onPress={keep} />}
    >
      <form
        class="form"
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <Field
          id="sheet-name"
          kind="text"
          label={t("sheet-name")}
          help={t("sheet-name.help")}
          value={name}
          onInput={setName}
          maxLength={LONGEST_NAME}
          required
          {...(missing ? { problem: t("sheet-name.wanted") } : {})}
        />
      </form>
    </Sheet>
  );
}
