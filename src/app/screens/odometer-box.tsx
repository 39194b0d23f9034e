/** The odometer as it is typed, with its unit beside it. Words are handed in; refuses to keep anything. */
import { Field } from "../parts/field.js";
import { UnitSwitch } from "../parts/switch.js";

interface OdometerBoxProps {
  readonly id: string;
  readonly label: string;
  readonly unitLabel: string;
  readonly value: string;
  readonly onValue: (text: string) => void;
  /** UCUM. */
  readonly unit: string;
  readonly onUnit: (unit: string) => void;
  /** What is wrong with what was typed. */
  readonly problem?: string | undefined;
}

const UNITS = [
  { id: "km", words: "km" },
  { id: "[mi_i]", words: "mi" },
];

export function OdometerBox({ id, label, unitLabel, value, onValue, unit, onUnit, problem }: OdometerBoxProps) {
  return (
    <>
      <Field id={id} kind="number" label={label} value={value} onInput={onValue} problem={problem} />
      <UnitSwitch label={unitLabel} choices={UNITS} chosen={unit} onChoose={onUnit} />
    </>
  );
}
