/** A gauge of this house while it is typed: figures as they stand in the boxes. Pure. */
import type { HouseGauge } from "../../core/record/index.js";
import { convertStep, isQuantity } from "../../core/units/index.js";

/** What a form holds before it is a gauge; figures as typed. */
export interface GaugeForm {
  readonly name: string;
  readonly quantity: string;
  readonly unit: string;
  readonly resolution: string;
  readonly error: string;
  readonly checked: string;
  readonly tool: string;
}
export const formOf = (gauge: HouseGauge): GaugeForm => ({
  name: gauge.name,
  quantity: gauge.quantity,
  unit: gauge.unit,
  resolution: String(gauge.resolution),
  error: String(gauge.error),
  checked: gauge.checked ?? "",
  tool: gauge.tool ?? "",
});

/** A figure above nought as typed, with point or comma. */
export const positive = (text: string): number | undefined => {
  const value = Number(text.trim().replace(",", "."));
  return Number.isFinite(value) && value > 0 ? value : undefined;
};

/** The form in another unit, its figures with it, so that none is ever read as another size. */
export function inUnit(form: GaugeForm, unit: string): GaugeForm {
  const { quantity } = form;
  const moved = (text: string): string => {
    const value = positive(text);
    if (value === undefined || !isQuantity(quantity)) return text;
    return String(Number(convertStep(value, form.unit, unit, quantity).toPrecision(3)));
  };
  return { ...form, unit, resolution: moved(form.resolution), error: moved(form.error) };
}

/** The gauge a form describes; undefined while it lacks a name or a figure. */
export function gaugeFrom(form: GaugeForm, id: string): HouseGauge | undefined {
  const [resolution, error] = [positive(form.resolution), positive(form.error)];
  const name = form.name.trim();
  if (name === "" || resolution === undefined || error === undefined || !isQuantity(form.quantity)) return undefined;
  return {
    id,
    name,
    quantity: form.quantity,
    unit: form.unit,
    resolution,
    error,
    ...(form.checked === "" ? {} : { checked: form.checked }),
    ...(form.tool === "" ? {} : { tool: form.tool }),
  };
}
