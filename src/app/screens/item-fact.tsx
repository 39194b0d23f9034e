/** Something about the car that stays true for years and that rules may ask: its name, and what may be said of it. */
import { useState } from "preact/hooks";
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { plainWord } from "../state/knowledge.js";
import { namesAt, textAt, toldOf } from "../state/sheet-forms.js";
import { FACT_KINDS, factOf, factWordMoved, withFactWord, withoutFactWord } from "../state/sheet-forms-brought.js";
import { t } from "../texts/sheet-forms.js";
import { Boxes, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox } from "./item-choice.js";
import { AddLine, Steps } from "./item-rows.js";

function FactWords() {
  const { is, language, base, words, told, change } = useItem();
  const [open, setOpen] = useState<string>();
  const all = namesAt(is, ["words"]);
  const called = (word: string): string => textAt(is, [...words, "words", word]) || plainWord(word);
  const amiss = toldOf(told, ["words"]);
  return (
    <Boxes heading={t("item-fact.words")}>
      <div class="item-rows">
        {all.map((word) => (
          <ListRow key={word} folded title={called(word)} onPress={() => setOpen(word)} />
        ))}
      </div>
      {amiss && <p class="problem">{amiss}</p>}
      <AddLine
        id="fact-word"
        label={t("item-fact.word.more")}
        words={t("sheet-form.add")}
        onAdd={(name) => change((item) => withFactWord({ is: item, language, base }, name))}
      />
      {open !== undefined && all.includes(open) && (
        <Sheet open title={called(open)} closeWords={t("sheet-form.done")} onClose={() => setOpen(undefined)}>
          <TextBox at={[...words, "words", open]} label={t("item-reply.spoken")} wanted />
          <Steps
            index={all.indexOf(open)}
            of={all.length}
            onMove={(to) => change((item) => factWordMoved(item, all.indexOf(open), to))}
            onOut={() => change((item) => withoutFactWord(item, language, open))}
          />
        </Sheet>
      )}
    </Boxes>
  );
}

export function Fact() {
  const { is, language, words, change } = useItem();
  const kind = textAt(is, ["kind"]);
  return (
    <>
      <Boxes>
        <TextBox at={[...words, "name"]} label={t("item-fact.name")} help={t("item-fact.name.help")} wanted />
        <ChoiceBox
          at={["kind"]}
          label={t("item-fact.kind")}
          choices={FACT_KINDS.map((value) => ({ value, words: t(`item-fact.kind.${value}`) }))}
          onPut={(next) => change((item) => factOf(item, next, language))}
          wanted
        />
        {kind === "number" && <TextBox at={["unit"]} label={t("item-fact.unit")} help={t("item-fact.unit.help")} />}
      </Boxes>
      {kind === "word" && <FactWords />}
    </>
  );
}
