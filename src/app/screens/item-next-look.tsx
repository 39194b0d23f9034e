/** When to look again: after a fault, a grade or a job, so far or so long from now. */
import { useState } from "preact/hooks";
import { GRADES } from "../../core/terms/index.js";
import { capital } from "../state/knowledge.js";
import { faultChoices, jobChoices } from "../state/sheet-choices.js";
import { textAt, withAt } from "../state/sheet-forms.js";
import { t as shared } from "../texts/index.js";
import { t } from "../texts/sheet-forms.js";
import { Boxes, FigureBox, ItemForm, useItem } from "./item-boxes.js";
import { ChoiceBox } from "./item-choice.js";
import type { ItemFormProps } from "./item-form.js";

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
