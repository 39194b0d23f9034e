/** Which units of a quantity are offered at a car: what its gauges and books are marked in. Knows no reading. */
import { type Quantity, unitsOf } from "../../core/units/index.js";

/** Side by side on a switch there is room for three. */
const OFFERED: Readonly<Partial<Record<Quantity, readonly string[]>>> = {
  length: ["mm", "[in_i]", "[mil_i]"],
  distance: ["km", "[mi_i]"],
  temperature: ["Cel", "[degF]"],
  temperature_difference: ["K", "[degF]"],
  torque: ["N.m", "[ft_i].[lbf_av]", "kgf.m"],
  force: ["N", "kgf", "[lbf_av]"],
  pressure: ["bar", "[psi]", "kPa"],
  speed: ["km/h", "[mi_i]/h"],
  duration: ["s", "min"],
  age: ["a", "mo"],
  volume: ["L", "mL", "[gal_br]"],
  mass: ["kg", "g", "[lb_av]"],
};
const MOST = 3;

/** UCUM codes, the usual one first. */
export const tradeUnits = (quantity: Quantity): readonly string[] =>
  OFFERED[quantity] ??
  unitsOf(quantity)
    .map(({ code }) => code)
    .slice(0, MOST);
