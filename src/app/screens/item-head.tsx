/** Title of a check sheet, what it is about, and the label of the edition being made. */
import { t } from "../texts/sheet-forms.js";
import { Boxes, ItemForm, TextBox, useItem } from "./item-boxes.js";
import type { ItemFormProps } from "./item-form.js";

function Head() {
  const { words } = useItem();
  return (
    <Boxes>
      <TextBox at={[...words, "title"]} label={t("item-head.title")} wanted />
      <TextBox at={[...words, "about"]} label={t("item-head.about")} help={t("item-head.about.help")} long wanted />
      <TextBox at={["label"]} label={t("item-head.label")} help={t("item-head.label.help")} wanted />
    </Boxes>
  );
}

export const ItemHead = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <Head />
  </ItemForm>
);
