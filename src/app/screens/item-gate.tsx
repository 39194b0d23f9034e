/** A gate: what it guards, what shuts it, what must be true to open it, what is looked at first. */
import { Tool } from "../parts/button.js";
import { capital, plainWord } from "../state/knowledge.js";
import { cautionChoices, pointChoices, stateChoices } from "../state/sheet-choices.js";
import { namesAt, toldOf, withAt } from "../state/sheet-forms.js";
import type { SheetWork } from "../state/sheet-work.js";
import { t } from "../texts/sheet-forms.js";
import { Boxes, boxId, ItemForm, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox } from "./item-choice.js";
import { ConditionField } from "./item-condition.js";
import type { ItemFormProps } from "./item-form.js";

const STARTS = ["not-cleared", "cleared"] as const;
const ACTS = ["lift", "drive-away", "touch", "spark"] as const;

/** Car states, and acts that are no state of the car: the usual ones, and those other gates guard. */
function guarded(work: SheetWork) {
  const states = stateChoices(work);
  const all = [
    ...ACTS,
    ...[work.common, work.sheet, ...work.others].flatMap(({ gates }) => gates.map((one) => one.guards)),
  ];
  const acts = [...new Set(all)].filter((one) => !states.some(({ value }) => value === one));
  return [...acts.map((value) => ({ value, words: capital(plainWord(value)), says: t("item-gate.act") })), ...states];
}

/** Any number of conditions, each in its own box. */
function Conditions({ at, heading, says, needed }: ConditionsProps) {
  const { is, work, told, change } = useItem();
  const all = namesAt(is, [at]);
  const ofAll = toldOf(told, [at]);
  const put = (index: number, cel: string): void => {
    const gone = cel.trim() === "";
    change((item) => {
      const now = namesAt(item, [at]);
      const next = gone ? now.toSpliced(index, 1) : now.with(index, cel);
      return withAt(item, [at], next.length === 0 && !needed ? undefined : next);
    });
  };
  return (
    <Boxes heading={heading}>
      <p class="small">{says}</p>
      {all.map((cel, index) => (
        <ConditionField
          key={`${index} ${all.length}`}
          id={boxId([at, index])}
          label={t("item-gate.condition", { n: index + 1 })}
          value={cel}
          scope="car"
          work={work}
          told={told.filter(({ about }) => about?.inside[0] === at && String(about.inside[1]) === String(index))}
          onChange={(next) => put(index, next)}
        />
      ))}
      {ofAll && <p class="problem">{ofAll}</p>}
      <Tool
        words={t("item-gate.add")}
        onPress={() => change((item) => withAt(item, [at], [...namesAt(item, [at]), ""]))}
      />
    </Boxes>
  );
}
interface ConditionsProps {
  readonly at: "trips" | "clears";
  readonly heading: string;
  readonly says: string;
  readonly needed: boolean;
}

function Gate() {
  const { words, work } = useItem();
  return (
    <>
      <Boxes>
        <TextBox at={[...words, "name"]} label={t("item-gate.name")} wanted />
        <TextBox at={[...words, "tripped"]} label={t("item-gate.tripped")} long wanted />
        <TextBox at={[...words, "first"]} label={t("item-gate.first")} help={t("item-gate.first.help")} long wanted />
        <ChoiceBox at={["guards"]} label={t("item-gate.guards")} choices={guarded(work)} wanted />
        <ChoiceBox
          at={["starts"]}
          label={t("item-gate.starts")}
          help={t("item-gate.starts.help")}
          choices={STARTS.map((value) => ({ value, words: t(`item-gate.starts.${value}`) }))}
          wanted
        />
        <NamesBox at={["set"]} label={t("item-gate.set")} help={t("item-gate.set.help")} choices={pointChoices(work)} />
        <NamesBox at={["cautions"]} label={t("item-gate.cautions")} choices={cautionChoices(work)} kept />
      </Boxes>
      <Conditions at="trips" heading={t("item-gate.trips")} says={t("item-gate.trips.says")} needed />
      <Conditions at="clears" heading={t("item-gate.clears")} says={t("item-gate.clears.says")} needed={false} />
    </>
  );
}

export const ItemGate = (props: ItemFormProps) => (
  <ItemForm {...props}>
    <Gate />
  </ItemForm>
);
