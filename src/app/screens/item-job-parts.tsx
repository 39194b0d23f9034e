/** What a job needs: its parts with their sets, and what it uses up. A part this sheet has no word for is named first. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { calledIn, partChoices } from "../state/sheet-choices.js";
import { freshSlug, namesAt, textAt, toldAt, valueAt, withAt } from "../state/sheet-forms.js";
import { partCount, partMoved, withoutPart, withPart } from "../state/sheet-forms-job.js";
import { putItem } from "../state/sheet-work-acts.js";
import { t } from "../texts/sheet-forms.js";
import { Boxes, FigureBox, SwitchBox, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox, Pick } from "./item-choice.js";
import { AddLine, Steps } from "./item-rows.js";

/** A part's id for a new name, its words kept with the sheet's parts. */
function useNaming(): (name: string) => string {
  const { journal } = useApp();
  const { work, language } = useItem();
  return (name) => {
    const known = partChoices(work).find(({ words }) => words.toLowerCase() === name.toLowerCase());
    if (known) return known.value;
    const ever = [work.base, work.sheet].flatMap(({ texts }) =>
      Object.values(texts).flatMap((all) => Object.keys(all.parts ?? {})),
    );
    const taken = [...ever, ...(work.changes.items.get("parts")?.keys() ?? [])];
    const part = freshSlug(name, "part", taken);
    void putItem(journal, work.draft, "parts", part, { texts: { [language]: name } });
    return part;
  };
}

interface AddingProps {
  readonly title: string;
  readonly onPick: (part: string) => void;
  readonly onClose: () => void;
}
/** A part this sheet knows, or a new one by its name. */
function Adding({ title, onPick, onClose }: AddingProps) {
  const { work } = useItem();
  const naming = useNaming();
  const [knows, setKnows] = useState(false);
  const known = partChoices(work);
  if (knows)
    return (
      <Pick title={title} kind="one" choices={known} chosen={[]} onChoose={onPick} onClose={() => setKnows(false)} />
    );
  return (
    <Sheet open title={title} closeWords={t("sheet-form.cancel")} onClose={onClose}>
      <div class="form">
        {known.length > 0 && <Tool words={t("item-part.known")} onPress={() => setKnows(true)} />}
        <AddLine
          id="part-name"
          label={t("item-part.new")}
          words={t("sheet-form.add")}
          onAdd={(name) => onPick(naming(name))}
        />
      </div>
    </Sheet>
  );
}

function PartSheet({ index, onClose }: { readonly index: number; readonly onClose: () => void }) {
  const { is, work, change } = useItem();
  const [namesSet, setNamesSet] = useState(false);
  const known = partChoices(work);
  const at = ["parts", index];
  const put = (key: string, value: unknown): void => change((item) => withAt(item, [...at, key], value));
  if (namesSet)
    return (
      <Adding
        title={t("item-part.set")}
        onPick={(set) => {
          put("set", set);
          setNamesSet(false);
        }}
        onClose={() => setNamesSet(false)}
      />
    );
  const set = textAt(is, [...at, "set"]);
  return (
    <Sheet
      open
      title={calledIn(known, textAt(is, [...at, "part"]))}
      closeWords={t("sheet-form.done")}
      onClose={onClose}
    >
      <div class="form">
        <ChoiceBox at={[...at, "part"]} label={t("item-part.part")} choices={known} />
        <FigureBox at={[...at, "count"]} label={t("item-part.count")} help={t("item-part.count.help")} whole />
        <p class="label">{t("item-part.set")}</p>
        <p class="small">{set === "" ? t("item-part.set.none") : calledIn(known, set)}</p>
        <div class="item-steps">
          <Tool words={t("item-part.set.choose")} onPress={() => setNamesSet(true)} />
          {set !== "" && <Tool words={t("item-part.set.alone")} onPress={() => put("set", undefined)} />}
        </div>
      </div>
      <SwitchBox
        at={[...at, "reuse"]}
        label={t("item-part.new-always")}
        says={t("item-part.new-always.says")}
        on={valueAt(is, [...at, "reuse"]) === "never"}
        onPut={(on) => put("reuse", on ? "never" : undefined)}
      />
      <Steps
        index={index}
        of={partCount(is)}
        onMove={(to) => {
          change((item) => partMoved(item, index, to));
          onClose();
        }}
        onOut={() => {
          change((item) => withoutPart(item, index));
          onClose();
        }}
      />
    </Sheet>
  );
}

export function JobParts() {
  const { is, work, told, change } = useItem();
  const [open, setOpen] = useState<number>();
  const [adds, setAdds] = useState<"parts" | "consumables">();
  const known = partChoices(work);
  const add = (part: string): void => {
    change((item) =>
      adds === "parts"
        ? withPart(item, part)
        : withAt(item, ["consumables"], [...namesAt(item, ["consumables"]), part]),
    );
    setAdds(undefined);
  };
  return (
    <Boxes heading={t("item-job.parts")}>
      <div class="item-rows">
        {Array.from({ length: partCount(is) }, (_, i) => {
          const at = ["parts", i];
          const [set, count] = [textAt(is, [...at, "set"]), textAt(is, [...at, "count"])];
          const again = valueAt(is, [...at, "reuse"]) === "never" ? t("item-part.new-always") : "";
          const says = [toldAt(told, at), set && calledIn(known, set), again].filter(Boolean).join(" · ");
          return (
            <ListRow
              key={i}
              folded
              title={calledIn(known, textAt(is, [...at, "part"]))}
              second={says || undefined}
              aside={count === "" ? undefined : `× ${count}`}
              onPress={() => setOpen(i)}
            />
          );
        })}
      </div>
      <Tool words={t("item-part.add")} onPress={() => setAdds("parts")} />
      <NamesBox at={["consumables"]} label={t("item-job.consumables")} choices={known} />
      <Tool words={t("item-part.add-consumable")} onPress={() => setAdds("consumables")} />
      {open !== undefined && open < partCount(is) && <PartSheet index={open} onClose={() => setOpen(undefined)} />}
      {adds && <Adding title={t("item-part.add")} onPick={add} onClose={() => setAdds(undefined)} />}
    </Boxes>
  );
}
