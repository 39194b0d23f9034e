/** Forms of a few boxes: a sheet's title, what is words alone (faults, parts, notes), when to look again. */
import { useState } from "preact/hooks";
import { GRADES, PURPOSES } from "../../core/terms/index.js";
import { capital } from "../state/knowledge.js";
import { faultChoices, jobChoices } from "../state/sheet-choices.js";
import { namesAt, textAt, valueAt, withAt } from "../state/sheet-forms.js";
import { t as shared } from "../texts/reading.js";
import { t as round } from "../texts/round.js";
import { t } from "../texts/sheet-forms.js";
import { Boxes, FigureBox, ItemForm, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox } from "./item-choice.js";
import type { ItemFormProps } from "./item-form.js";

function Head() {
  const { is, words, change } = useItem();
  // Where nothing is said every visit opens with it.
  const opensFor = valueAt(is, ["opens-for"]) !== undefined ? namesAt(is, ["opens-for"]) : PURPOSES;
  return (
    <Boxes>
      <TextBox at={[...words, "title"]} label={t("item-head.title")} wanted />
      <TextBox at={[...words, "about"]} label={t("item-head.about")} help={t("item-head.about.help")} long wanted />
      <TextBox at={["label"]} label={t("item-head.label")} help={t("item-head.label.help")} wanted />
      <NamesBox
        at={["opens-for"]}
        label={t("item-head.opens-for")}
        help={t("item-head.opens-for.help")}
        choices={PURPOSES.map((value) => ({ value, words: round(`purpose.${value}`) }))}
        value={opensFor}
        onPut={(names) =>
          change((item) => withAt(item, ["opens-for"], names.length === PURPOSES.length ? undefined : names))
        }
      />
    </Boxes>
  );
}

export const ItemHead = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <Head />
  </ItemForm>
);

function Words() {
  const { list, words } = useItem();
  if (list === "faults")
    return (
      <Boxes>
        <TextBox at={[...words, "says"]} label={t("item-words.says")} help={t("item-words.says.help")} wanted />
        <TextBox at={[...words, "owner"]} label={t("item-words.owner")} help={t("item-words.owner.help")} />
        <TextBox at={[...words, "cause"]} label={t("item-words.cause")} />
      </Boxes>
    );
  return (
    <Boxes>
      {list === "parts" ? (
        <TextBox at={words} label={t("item-words.part")} help={t("item-words.part.help")} wanted />
      ) : (
        <TextBox at={words} label={t("item-words.note")} long wanted />
      )}
    </Boxes>
  );
}

export const ItemWords = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <Words />
  </ItemForm>
);

const AFTER = ["fault", "grade", "job"] as const;
type After = (typeof AFTER)[number];

function NextLook() {
  const { is, work, change } = useItem();
  const said = AFTER.find((one) => textAt(is, [one]) !== "");
  const [chosen, choose] = useState<After>();
  const after = chosen ?? said ?? "grade";
  const choices = {
    fault: () => faultChoices(work),
    job: () => jobChoices(work),
    grade: () => GRADES.map((value) => ({ value, words: capital(shared(`grade.${value}`)) })),
  };
  return (
    <Boxes>
      <ChoiceBox
        at={["after"]}
        label={t("item-next.after")}
        choices={AFTER.map((value) => ({ value, words: t(`item-next.after.${value}`) }))}
        value={after}
        onPut={(next) => choose(AFTER.find((one) => one === next))}
      />
      <ChoiceBox
        key={after}
        at={[after]}
        label={t(`item-next.${after}`)}
        choices={choices[after]()}
        onPut={(next) =>
          change((item) => AFTER.reduce((now, one) => withAt(now, [one], one === after ? next : undefined), item))
        }
        wanted
      />
      <FigureBox at={["km"]} label={t("item-next.km")} help={t("item-next.help")} unit="km" whole />
      <FigureBox at={["months"]} label={t("item-next.months")} unit={t("item-next.months.unit")} whole />
    </Boxes>
  );
}

export const ItemNextLook = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <NextLook />
  </ItemForm>
);
