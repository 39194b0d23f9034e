/** What stands in an order inside an item: its rows, moving and taking out one, adding another. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { t } from "../texts/sheet-forms.js";

interface StepsProps {
  readonly index: number;
  readonly of: number;
  readonly onMove: (to: number) => void;
  readonly onOut: () => void;
  /** What taking it out is called where it stands alone. */
  readonly outWords?: string;
}

/** Up, down, out: for the one that is open; one alone has nowhere to go. */
export function Steps({ index, of, onMove, onOut, outWords }: StepsProps) {
  if (of <= 1) return <Tool words={outWords ?? t("sheet-form.out")} onPress={onOut} />;
  return (
    <div class="item-steps">
      <Tool words={t("sheet-form.up")} disabled={index === 0} onPress={() => onMove(index - 1)} />
      <Tool words={t("sheet-form.down")} disabled={index === of - 1} onPress={() => onMove(index + 1)} />
      <Tool words={t("sheet-form.out")} onPress={onOut} />
    </div>
  );
}

interface AddLineProps {
  readonly id: string;
  readonly label: string;
  readonly words: string;
  readonly onAdd: (name: string) => void;
}

/** Another one by its name: written, added, and the box is empty for the next. */
export function AddLine({ id, label, words, onAdd }: AddLineProps) {
  const [name, setName] = useState("");
  return (
    <form
      class="add-line"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() === "") return;
        onAdd(name.trim());
        setName("");
      }}
    >
      <Field id={id} kind="text" label={label} value={name} onInput={setName} />
      <Tool type="submit" words={words} disabled={name.trim() === ""} />
    </form>
  );
}
