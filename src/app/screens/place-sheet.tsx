/** Over one place of a car: what it is called here, and whether this car has it. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { keepPlaces } from "../state/car-edits.js";
import { type PlaceLine, type PlacesOfCar, takenOrBrought } from "../state/places-view.js";
import { t } from "../texts/car.js";

interface PlaceSheetProps {
  readonly car: CarState;
  readonly line: PlaceLine;
  readonly places: PlacesOfCar;
  readonly onClose: () => void;
}

export function PlaceSheet({ car, line, places, onClose }: PlaceSheetProps) {
  const { journal } = useApp();
  const [name, setName] = useState(line.name);
  const inside = line.gone ? 0 : places.tree.all.filter(({ id }) => places.tree.within(line.id, id)).length - 1;
  const typed = name.trim();
  const isTaken = places.lines.some(
    (other) => other.id !== line.id && other.name.toLowerCase() === typed.toLowerCase(),
  );
  const rename = (called: string | null): void => {
    void keepPlaces(journal, car.stream, () => [{ place: line.id, name: called }]);
    onClose();
  };
  const takeOrBring = (): void => {
    void keepPlaces(journal, car.stream, () => [takenOrBrought(line)]);
    onClose();
  };
  return (
    <Sheet
      open
      title={line.name}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={
        <NextAction
          words={t("places.rename")}
          disabled={typed === "" || typed === line.name || isTaken}
          onPress={() => rename(typed)}
        />
      }
    >
      <Field
        id="place-name"
        kind="text"
        label={t("places.name")}
        value={name}
        onInput={setName}
        {...(isTaken ? { problem: t("places.name-taken") } : {})}
      />
      <div class="acts">
        {line.was !== undefined && (
          <Tool words={t("places.name-back", { name: line.was })} onPress={() => rename(null)} />
        )}
        <Tool
          words={t(line.gone ? "places.bring-back" : "places.take-away")}
          {...(inside > 0 ? { says: t("places.take-away.with", { n: inside }) } : {})}
          onPress={takeOrBring}
        />
      </div>
      {!line.gone && <p class="small">{t("places.take-away.says")}</p>}
    </Sheet>
  );
}
