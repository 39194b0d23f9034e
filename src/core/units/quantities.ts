/** The kinds of quantity the trade measures, and the unit each is calculated in. Knows no spelling and no factor. */

/** Quantity → canonical unit (UCUM), chosen so that the trade's usual decimals need no conversion. */
const CANONICAL = {
  length: "mm",
  distance: "km",
  temperature: "Cel",
  temperature_difference: "K",
  torque: "N.m",
  force: "N",
  pressure: "bar",
  voltage: "V",
  current: "A",
  charge: "A.h",
  resistance: "Ohm",
  power: "kW",
  speed: "km/h",
  angle: "deg",
  duration: "s",
  age: "a",
  volume: "L",
  mass: "kg",
  percent: "%",
  ratio: "1",
  frequency: "Hz",
  area: "cm2",
  section_modulus: "cm3",
  second_moment: "cm4",
} as const;

/** A kind of quantity. Thickness, play and run-out are lengths; an odometer figure is a distance. */
export type Quantity = keyof typeof CANONICAL;

// Object.keys loses the key type; the table above is the only source of keys.
export const QUANTITIES = Object.keys(CANONICAL) as readonly Quantity[];

/** Whether a text names a quantity. */
export const isQuantity = (text: string): text is Quantity => Object.hasOwn(CANONICAL, text);

/** The UCUM code numbers of this quantity are calculated in. */
export const canonicalUnit = (quantity: Quantity): string => CANONICAL[quantity];
