/** Low, likely and high minutes of something. */

import { type Inside, toldOf } from "../state/sheet-forms.js";
import { minutesAstray } from "../state/sheet-forms-job.js";
import { t } from "../texts/sheet-forms.js";
import { FigureBox, useItem } from "./item-boxes.js";

const THREE = ["low", "likely", "high"] as const;

interface MinutesProps {
  readonly at: Inside;
  readonly label: string;
  readonly help?: string;
}

export function Minutes({ at, label, help }: MinutesProps) {
  const { is, told } = useItem();
  const ofAll = toldOf(told, at) ?? (minutesAstray(is, at) ? t("sheet-form.minutes.astray") : undefined);
  return (
    <fieldset class="item-three">
      <legend>{label}</legend>
      {THREE.map((one, i) => (
        <FigureBox key={one} at={[...at, i]} label={t(`sheet-form.${one}`)} whole wanted />
      ))}
      {help && <p class="small">{help}</p>}
      {ofAll && (
        <p class="problem" role="status">
          {ofAll}
        </p>
      )}
    </fieldset>
  );
}
