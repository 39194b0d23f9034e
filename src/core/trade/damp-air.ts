/** Dew point and the margin to condensation. Constants of the World Meteorological Organization. */
import { row } from "./contract.js";
import { fromMemory, published } from "./sources.js";

const WMO = published(
  "WMO-No. 8, Guide to instruments and methods of observation",
  "annex 4.B: e = 6.112 · exp(17.62 t / (243.12 + t))",
  "constants as quoted in two instrument manuals",
);
const [A, B] = [17.62, 243.12];

const air = { name: "air", says: "Air temperature", kind: "temperature", from: -40, to: 60 } as const;
const humidity = { name: "humidity", says: "Relative humidity", kind: "percent", over: 0, to: 100 } as const;
const surface = {
  name: "surface",
  says: "Temperature of the surface",
  kind: "temperature",
  from: -40,
  to: 100,
} as const;
/** Paint wants the surface this much above the dew point, K. */
const PAINT_MARGIN = 3;

/** Dew point, °C. */
export function dewPoint(celsius: number, percent: number): number {
  const gamma = Math.log(percent / 100) + (A * celsius) / (B + celsius);
  return (B * gamma) / (A - gamma);
}

export const DAMP_AIR = [
  row({
    name: "dew_point",
    says: "Dew point",
    arguments: [air, humidity],
    gives: "temperature",
    formula: "γ = ln(RH / 100) + 17.62 T / (243.12 + T); 243.12 γ / (17.62 − γ)",
    source: WMO,
    work: dewPoint,
  }),
  row({
    name: "condensation_margin",
    says: "How far a surface is above the dew point",
    arguments: [air, humidity, surface],
    gives: "temperature_difference",
    formula: "T(surface) − T(dew)",
    source: WMO,
    work: (celsius, percent, of) => of - dewPoint(celsius, percent),
  }),
  row({
    name: "condenses",
    says: "Whether water settles on a surface",
    arguments: [air, humidity, surface],
    gives: "yes",
    formula: "T(surface) ≤ T(dew)",
    source: WMO,
    work: (celsius, percent, of) => of <= dewPoint(celsius, percent),
  }),
  row({
    name: "dry_enough_to_paint",
    says: "Whether a surface is far enough above the dew point to be painted",
    arguments: [air, humidity, surface],
    gives: "yes",
    formula: "T(surface) ≥ T(dew) + 3 K",
    source: fromMemory("3 K as in ISO 8502-4, unverified"),
    work: (celsius, percent, of) => of >= dewPoint(celsius, percent) + PAINT_MARGIN,
  }),
];
