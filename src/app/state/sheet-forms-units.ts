/** A figure of a form in another unit, so that none is ever read as another size. Pure. */
import { convert, convertStep, isQuantity, unitOf } from "../../core/units/index.js";

interface UnitMove {
  readonly quantity: string;
  readonly from: string;
  readonly to: string;
}
type Convert = typeof convert;

const unitMoved =
  (by: Convert) =>
  (figure: unknown, { quantity, from, to }: UnitMove): unknown => {
    const fits = isQuantity(quantity) && unitOf(from, quantity) && unitOf(to, quantity);
    return typeof figure === "number" && fits ? by(figure, from, to, quantity) : figure;
  };
/** A figure in another unit; as it was where it cannot be converted. */
export const inUnit = unitMoved(convert);
/** The same of a step or an error, where a zero point counts for nothing. */
export const stepInUnit = unitMoved(convertStep);
