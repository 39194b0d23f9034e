/** A limit: what it judges, its edges from mild to severe, where they come from. A limit concludes nothing by itself. */
import { GRADES } from "../../core/terms/index.js";
import { capital } from "../state/knowledge.js";
import { basisChoices, kindChoices, measureOf, readingChoices, unitChoices } from "../state/sheet-choices.js";
import { textAt, toldOf, withAt, withoutAt } from "../state/sheet-forms.js";
import {
  AGGREGATES,
  DIRECTIONS,
  edgesAstray,
  limitInUnit,
  overReading,
  WANTS,
  WEARS,
} from "../state/sheet-forms-limit.js";
import { t as shared } from "../texts/reading.js";
import { t } from "../texts/sheet-forms.js";
import { unitWords } from "../texts/units.js";
import { Boxes, boxId, FigureBox, ItemForm, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox } from "./item-choice.js";
import { ConditionField } from "./item-condition.js";
import type { ItemFormProps } from "./item-form.js";

function Judged() {
  const { is, work, change } = useItem();
  const [of, unit, quantity] = [textAt(is, ["of"]), textAt(is, ["unit"]), textAt(is, ["quantity"])];
  const choices = readingChoices(work);
  const spelled = choices.find(({ value }) => value.replaceAll("-", "_") === of.replaceAll("-", "_"))?.value ?? of;
  return (
    <>
      <ChoiceBox
        at={["of"]}
        label={t("item-limit.of")}
        help={t("item-limit.of.help")}
        choices={choices}
        value={spelled}
        onPut={(name) => change((item) => overReading(item, name, measureOf(work, name)))}
        wanted
      />
      {quantity !== "" && (
        <ChoiceBox
          at={["unit"]}
          label={t("item-reply.unit")}
          choices={unitChoices(quantity, unit)}
          onPut={(next) => change((item) => limitInUnit(item, next))}
        />
      )}
      <ChoiceBox
        at={["direction"]}
        label={t("item-limit.direction")}
        choices={DIRECTIONS.map((value) => ({ value, words: t(`item-limit.direction.${value}`) }))}
        wanted
      />
    </>
  );
}

function Edges() {
  const { is, told } = useItem();
  const astray = edgesAstray(is);
  const unit = unitWords(textAt(is, ["unit"]));
  const ofAll = toldOf(told, ["bands"]);
  return (
    <Boxes heading={t("item-limit.bands")}>
      <p class="small">{t("item-limit.bands.says")}</p>
      {GRADES.map((grade) => {
        const milder = astray.get(grade);
        return (
          <FigureBox
            key={grade}
            at={["bands", grade]}
            label={capital(shared(`grade.${grade}`))}
            unit={unit}
            astray={milder && t("item-limit.astray", { milder: shared(`grade.${milder}`) })}
          />
        );
      })}
      {ofAll && <p class="problem">{ofAll}</p>}
    </Boxes>
  );
}

function Limit() {
  const { is, words, work, told, change } = useItem();
  const at = ["applies"];
  return (
    <>
      <Boxes>
        <TextBox at={words} label={t("item-limit.name")} help={t("item-limit.name.help")} wanted />
        <Judged />
      </Boxes>
      <Edges />
      <Boxes heading={t("item-limit.from")}>
        <ChoiceBox at={["basis"]} label={t("sheet-form.basis")} choices={basisChoices()} wanted />
        <TextBox at={["source"]} label={t("item-limit.source")} help={t("item-limit.source.help")} long wanted />
      </Boxes>
      <Boxes heading={t("item-limit.holds")}>
        <ChoiceBox
          at={["aggregate"]}
          label={t("item-limit.aggregate")}
          choices={AGGREGATES.map((value) => ({ value, words: t(`item-limit.aggregate.${value}`) }))}
          wanted
        />
        <ChoiceBox at={["class"]} label={t("item-limit.class")} choices={kindChoices(work)} wanted />
        <ChoiceBox
          at={["wears"]}
          label={t("item-limit.wears")}
          help={t("item-limit.wears.help")}
          choices={WEARS.map((value) => ({ value, words: t(`item-limit.wears.${value}`) }))}
          none={t("item-limit.wears.none")}
        />
        <ChoiceBox
          at={["wants"]}
          label={t("item-limit.wants")}
          choices={WANTS.map((value) => ({ value, words: t(`item-limit.wants.${value}`) }))}
          none={t("item-limit.wants.none")}
        />
        <ConditionField
          id={boxId(at)}
          label={t("item-limit.applies")}
          value={textAt(is, at)}
          scope={textAt(is, ["class"])}
          work={work}
          told={told.filter(({ about }) => about?.inside[0] === "applies")}
          onChange={(cel) => change((now) => (cel.trim() === "" ? withoutAt(now, at) : withAt(now, at, cel)))}
          optional
        />
      </Boxes>
    </>
  );
}

export const ItemLimit = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <Limit />
  </ItemForm>
);
