/** What only this sheet needs beyond the shared files: car states, gauges, aids, cautions, access; places and facts beside. */
import { engineIn } from "../../core/sheet/run.js";
import {
  accessChoices,
  basisChoices,
  kindChoices,
  partChoices,
  quantityChoices,
  unitChoices,
} from "../state/sheet-choices.js";
import { textAt, withAt } from "../state/sheet-forms.js";
import { ENGINES, gaugeInUnit, gaugeOf, PLANS, SIGNALS } from "../state/sheet-forms-brought.js";
import { t } from "../texts/sheet-forms.js";
import { unitWords } from "../texts/units.js";
import { Boxes, FigureBox, ItemForm, SwitchBox, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox } from "./item-choice.js";
import { Fact } from "./item-fact.js";
import type { ItemFormProps } from "./item-form.js";
import { Minutes } from "./item-minutes.js";
import { Place } from "./item-place.js";

function State() {
  const { words, item } = useItem();
  // Sheets from before it could be said: the id says it.
  const meant = engineIn({ id: item });
  return (
    <>
      <Boxes>
        <TextBox at={[...words, "name"]} label={t("item-state.name")} wanted />
        <TextBox at={[...words, "how"]} label={t("item-state.how")} help={t("item-state.how.help")} long wanted />
        <FigureBox at={["order"]} label={t("item-state.order")} help={t("item-state.order.help")} whole wanted />
        <ChoiceBox
          at={["plan"]}
          label={t("item-state.plan")}
          choices={PLANS.map((value) => ({ value, words: t(`item-state.plan.${value}`) }))}
          wanted
        />
        <ChoiceBox
          at={["engine"]}
          label={t("item-state.engine")}
          help={t("item-state.engine.help")}
          choices={ENGINES.map((value) => ({ value, words: t(`item-state.engine.${value}`) }))}
          none={
            meant
              ? t("item-state.engine.meant", { what: t(`item-state.engine.${meant}`) })
              : t("item-state.engine.none")
          }
        />
        <FigureBox at={["within"]} label={t("item-state.within")} help={t("item-state.within.help")} unit="s" whole />
      </Boxes>
      <Lifted />
    </>
  );
}

/** A car state always says whether the car is off the ground: off stands there too. */
function Lifted() {
  const { change } = useItem();
  const at = ["lifted"];
  return (
    <section class="band">
      <SwitchBox
        at={at}
        label={t("item-state.lifted")}
        says={t("item-state.lifted.says")}
        onPut={(on) => change((item) => withAt(item, at, on))}
      />
    </section>
  );
}

function Gauge() {
  const { is, words, change } = useItem();
  const [quantity, unit] = [textAt(is, ["quantity"]), textAt(is, ["unit"])];
  return (
    <Boxes>
      <TextBox at={words} label={t("item-gauge.name")} wanted />
      <ChoiceBox
        at={["quantity"]}
        label={t("item-reply.quantity")}
        choices={quantityChoices()}
        onPut={(next) => change((item) => gaugeOf(item, next))}
        wanted
      />
      {quantity !== "" && (
        <ChoiceBox
          at={["unit"]}
          label={t("item-reply.unit")}
          choices={unitChoices(quantity, unit)}
          onPut={(next) => change((item) => gaugeInUnit(item, next))}
        />
      )}
      <FigureBox at={["resolution"]} label={t("item-gauge.step")} unit={unitWords(unit)} wanted />
      <FigureBox
        at={["error"]}
        label={t("item-gauge.error")}
        help={t("item-gauge.error.help")}
        unit={unitWords(unit)}
        wanted
      />
      <ChoiceBox at={["basis"]} label={t("sheet-form.basis")} choices={basisChoices()} wanted />
      <TextBox at={["source"]} label={t("item-limit.source")} help={t("item-limit.source.help")} long wanted />
    </Boxes>
  );
}

const SENTENCES = ["not", "why", "can", "do"] as const;

function Caution() {
  const { words } = useItem();
  return (
    <Boxes>
      <ChoiceBox
        at={["signal"]}
        label={t("item-caution.signal")}
        choices={SIGNALS.map((value) => ({ value, words: t(`item-caution.signal.${value}`) }))}
        wanted
      />
      {SENTENCES.map((one) => (
        <TextBox
          key={one}
          at={[...words, one]}
          label={t(`item-caution.${one}`)}
          help={t(`item-caution.${one}.help`)}
          long
          wanted
        />
      ))}
    </Boxes>
  );
}

function Access() {
  const { item, words, work } = useItem();
  return (
    <>
      <Boxes>
        <TextBox at={words} label={t("item-access.name")} wanted />
        <ChoiceBox at={["place"]} label={t("item-access.place")} choices={kindChoices(work)} wanted />
        <NamesBox
          at={["needs"]}
          label={t("item-access.needs")}
          help={t("item-access.needs.help")}
          choices={accessChoices(work).filter(({ value }) => value !== item)}
        />
      </Boxes>
      <Boxes heading={t("item-access.time")}>
        <Minutes at={["setUp"]} label={t("item-access.set-up")} />
        <Minutes at={["putBack"]} label={t("item-access.put-back")} />
        <ChoiceBox at={["basis"]} label={t("sheet-form.basis")} choices={basisChoices()} wanted />
        <NamesBox at={["consumables"]} label={t("item-job.consumables")} choices={partChoices(work)} />
      </Boxes>
    </>
  );
}

function Brought() {
  const { list, words } = useItem();
  if (list === "places") return <Place />;
  if (list === "states") return <State />;
  if (list === "gauges") return <Gauge />;
  if (list === "cautions") return <Caution />;
  if (list === "access") return <Access />;
  if (list === "facts") return <Fact />;
  return (
    <Boxes>
      <TextBox at={words} label={t("item-aid.name")} help={t("item-aid.name.help")} wanted />
    </Boxes>
  );
}

export const ItemBrought = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <Brought />
  </ItemForm>
);
