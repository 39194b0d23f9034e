/** Another name for a car. The old one stays in the record. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { rename } from "../state/car-edits.js";
import { carTitle } from "../state/car-view.js";
import { t } from "../texts/index.js";

export function RenameCar({ car, onClose }: { readonly car: CarState; readonly onClose: () => void }) {
  const { journal } = useApp();
  const [name, setName] = useState(carTitle(car));
  const keep = (): void => {
    if (name.trim() !== "" && name.trim() !== carTitle(car)) void rename(journal, car.stream, name.trim());
    onClose();
  };
  return (
    <Sheet
      open
      title={t("car.rename")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={keep} />}
    >
      <Field id="new-name" kind="text" label={t("new-car.name")} value={name} onInput={setName} autocomplete="off" />
    </Sheet>
  );
}
