/** A place a sheet brings: its kind, what it lies in, where on the plan, how other places are reached from it. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import {
  calledIn,
  kindChoices,
  kindCalled as kindNamed,
  placeChoices,
  relationChoices,
} from "../state/sheet-choices.js";
import { figureFrom, textAt, withAt } from "../state/sheet-forms.js";
import { kindCalled, relationsOf, withRelation, withSpot } from "../state/sheet-forms-brought.js";
import { t } from "../texts/sheet-forms.js";
import { Boxes, FigureBox, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox, Pick } from "./item-choice.js";

/** Kinds there are, or a new one by its name. */
function Kind() {
  const { is, work, change } = useItem();
  const [makes, setMakes] = useState(false);
  const kinds = kindChoices(work);
  const kind = textAt(is, ["kind"]);
  return (
    <>
      <ChoiceBox at={["kind"]} label={t("item-place.kind")} help={t("item-place.kind.help")} choices={kinds} wanted />
      {makes ? (
        <TextBox
          at={["kind", "new"]}
          label={t("item-place.kind.new")}
          value={kinds.some(({ value }) => value === kind) ? "" : kindNamed(kind)}
          onPut={(name) => {
            if (name !== "") change((item) => withAt(item, ["kind"], kindCalled(name, kinds)));
            setMakes(false);
          }}
        />
      ) : (
        <Tool words={t("item-place.kind.make")} onPress={() => setMakes(true)} />
      )}
    </>
  );
}

function Spot() {
  const { change } = useItem();
  return (
    <Boxes heading={t("item-place.spot")}>
      <p class="small">{t("item-place.spot.says")}</p>
      {([0, 1] as const).map((end) => (
        <FigureBox
          key={end}
          at={["at", end]}
          label={t(`item-place.spot.${end}`)}
          onPut={(text) => change((item) => withSpot(item, end, figureFrom(text)))}
        />
      ))}
    </Boxes>
  );
}

function Relations() {
  const { is, item, work, change } = useItem();
  const [adds, setAdds] = useState(false);
  const [begun, setBegun] = useState<string>();
  const places = placeChoices(work).filter(({ value }) => value !== item);
  const all = relationChoices(work);
  const there = relationsOf(is);
  const shown =
    begun === undefined || there.some(([name]) => name === begun) ? there : [...there, [begun, []] as const];
  return (
    <Boxes heading={t("item-place.relations")}>
      <p class="small">{t("item-place.relations.says")}</p>
      {shown.map(([relation, to]) => (
        <NamesBox
          key={relation}
          at={["relations", relation]}
          label={calledIn(all, relation)}
          choices={places}
          value={to}
          onPut={(next) => change((now) => withRelation(now, relation, next))}
        />
      ))}
      <Tool words={t("item-place.relation.add")} onPress={() => setAdds(true)} />
      {adds && (
        <Pick
          title={t("item-place.relation.add")}
          kind="one"
          choices={all.filter(({ value }) => !there.some(([name]) => name === value))}
          chosen={[]}
          onChoose={(relation) => {
            setBegun(relation);
            setAdds(false);
          }}
          onClose={() => setAdds(false)}
        />
      )}
    </Boxes>
  );
}

export function Place() {
  const { item, words, work } = useItem();
  return (
    <>
      <Boxes>
        <TextBox at={words} label={t("item-place.name")} help={t("item-place.name.help")} wanted />
        <Kind />
        <ChoiceBox
          at={["in"]}
          label={t("item-place.in")}
          choices={placeChoices(work).filter(({ value }) => value !== item)}
          none={t("sheet-form.none")}
        />
      </Boxes>
      <Spot />
      <Relations />
    </>
  );
}
