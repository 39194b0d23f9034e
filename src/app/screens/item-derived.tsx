/** A value worked out from replies: by a formula, or as the first of several that is known. */
import { canonicalUnit, isQuantity } from "../../core/units/index.js";
import { kindChoices, quantityChoices, readingChoices, unitChoices } from "../state/sheet-choices.js";
import { textAt, valueAt, withAt } from "../state/sheet-forms.js";
import { t } from "../texts/sheet-forms.js";
import { Boxes, boxId, ItemForm, SwitchBox, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox } from "./item-choice.js";
import { ConditionField } from "./item-condition.js";
import type { ItemFormProps } from "./item-form.js";

function Derived() {
  const { is, item, words, work, told, change } = useItem();
  const [quantity, unit] = [textAt(is, ["quantity"]), textAt(is, ["unit"])];
  const prefers = valueAt(is, ["prefer"]) !== undefined;
  const at = ["formula"];
  return (
    <>
      <Boxes>
        <TextBox at={words} label={t("item-derived.name")} wanted />
        <ChoiceBox at={["place"]} label={t("item-derived.place")} choices={kindChoices(work)} wanted />
        <ChoiceBox
          at={["quantity"]}
          label={t("item-reply.quantity")}
          choices={quantityChoices()}
          onPut={(next) =>
            isQuantity(next) && change((now) => withAt(withAt(now, ["quantity"], next), ["unit"], canonicalUnit(next)))
          }
          wanted
        />
        <ChoiceBox at={["unit"]} label={t("item-reply.unit")} choices={unitChoices(quantity, unit)} wanted />
      </Boxes>
      <section class="band">
        <SwitchBox
          at={["prefer"]}
          label={t("item-derived.prefers")}
          says={t("item-derived.prefers.says")}
          on={prefers}
          onPut={(on) =>
            change((now) =>
              on
                ? withAt(withAt(now, ["prefer"], []), at, undefined)
                : withAt(withAt(now, ["prefer"], undefined), at, ""),
            )
          }
        />
      </section>
      <Boxes>
        {prefers ? (
          <NamesBox
            at={["prefer"]}
            label={t("item-derived.prefer")}
            help={t("item-derived.prefer.help")}
            choices={readingChoices(work).filter(({ value }) => value !== item)}
            kept
          />
        ) : (
          <ConditionField
            id={boxId(at)}
            label={t("item-derived.formula")}
            value={textAt(is, at)}
            scope={textAt(is, ["place"])}
            work={work}
            told={told.filter(({ about }) => about?.inside[0] === "formula")}
            onChange={(cel) => change((now) => withAt(now, at, cel))}
          />
        )}
      </Boxes>
    </>
  );
}

export const ItemDerived = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <Derived />
  </ItemForm>
);
