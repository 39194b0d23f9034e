/** What is words alone: what a fault says, what a part is called, a note. */
import { t } from "../texts/sheet-forms.js";
import { Boxes, ItemForm, TextBox, useItem } from "./item-boxes.js";
import type { ItemFormProps } from "./item-form.js";

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
