/**
 * Units: UCUM code, how shown, accepted spellings, exact definition. Knows no reply and no screen.
 * Definitions: inch 25.4 mm, pound 0.453 592 37 kg, standard gravity 9.806 65 m/s² (all exact, NIST SP 811
 * app. B), imperial gallon 4.546 09 L and US gallon 231 in³ (exact), mile 5280 ft; year 365.25 d, month a
 * twelfth of it (UCUM a_j, mo_j). Mercury columns are the conventional ones of SP 811 app. B.8, from memory.
 */
import { canonicalUnit, type Quantity } from "./quantities.js";

/** canonical = (number + before) × over ÷ under, kept as a ratio so that exact decimals stay exact. */
export interface Unit {
  /** UCUM code. */
  readonly code: string;
  readonly quantity: Quantity;
  /** How it is shown, e.g. °C. */
  readonly shown: string;
  readonly over: number;
  readonly under: number;
  readonly before: number;
  /** Spellings people type, beside code and shown form. */
  readonly spelled: readonly string[];
}

/** Code, shown, further spellings (space between), over, under, before. */
type Row = readonly [code: string, shown: string, spelled: string, over: number, under?: number, before?: number];

/** One pound-force in newton: 0.453 592 37 × 9.806 65, exact. */
const POUND_FORCE = 4.4482216152605;
const SQUARE_INCH_MM = 645.16;

const ROWS: Readonly<Record<Quantity, readonly Row[]>> = {
  length: [
    ["mm", "mm", "millimetre millimetres millimeter millimeters", 1],
    ["[in_i]", "in", `" '' inch inches`, 25.4],
    ["[mil_i]", "thou", "thous mil mils", 0.0254],
    ["um", "µm", "micron microns my", 1, 1000],
    ["cm", "cm", "centimetre centimeter", 10],
    ["m", "m", "metre metres meter meters", 1000],
    ["[ft_i]", "ft", "' foot feet", 304.8],
  ],
  distance: [
    ["km", "km", "kilometre kilometres kilometer kilometers kms", 1],
    ["[mi_i]", "mi", "mile miles", 1.609344],
    ["m", "m", "metre metres meter meters", 1, 1000],
  ],
  temperature: [
    ["Cel", "°C", "C degC ° deg celsius", 1],
    ["[degF]", "°F", "F degF fahrenheit", 5, 9, -32],
    ["K", "K", "kelvin", 1, 1, -273.15],
  ],
  temperature_difference: [
    ["K", "K", "kelvin Cel °C C degC ° deg", 1],
    ["[degF]", "°F", "F degF", 5, 9],
  ],
  torque: [
    ["N.m", "N·m", "Nm N-m newtonmetre newtonmetres", 1],
    [
      "[ft_i].[lbf_av]",
      "lbf·ft",
      "lbf.ft lbfft ft.lbf ftlbf ft-lbf ft.lb ftlb ft-lb ftlbs ft-lbs ft.lbs lb.ft lbft lb-ft",
      POUND_FORCE * 304.8,
      1000,
    ],
    [
      "[in_i].[lbf_av]",
      "lbf·in",
      "lbf.in lbfin in.lbf inlbf in-lbf in.lb inlb in-lb lb.in lbin lb-in",
      POUND_FORCE * 25.4,
      1000,
    ],
    ["kgf.m", "kgf·m", "kgfm kgm mkg kg.m", 9.80665],
    ["kgf.cm", "kgf·cm", "kgfcm kgcm kg.cm", 9.80665, 100],
    ["N.cm", "N·cm", "Ncm", 1, 100],
  ],
  force: [
    ["N", "N", "newton newtons", 1],
    ["kN", "kN", "kilonewton", 1000],
    ["daN", "daN", "", 10],
    ["kgf", "kgf", "kp", 9.80665],
    ["[lbf_av]", "lbf", "", POUND_FORCE],
  ],
  pressure: [
    ["bar", "bar", "bars", 1],
    ["[psi]", "psi", "lbf/in2 lb/in2 psig", POUND_FORCE * 10, SQUARE_INCH_MM],
    ["kPa", "kPa", "", 1, 100],
    ["mbar", "mbar", "hPa", 1, 1000],
    ["MPa", "MPa", "", 10],
    ["Pa", "Pa", "pascal", 1, 100000],
    ["att", "at", "kgf/cm2 kg/cm2", 0.980665],
    ["atm", "atm", "", 1.01325],
    ["mm[Hg]", "mmHg", "", 0.001333224],
    ["[in_i'Hg]", "inHg", "", 0.03386389],
  ],
  voltage: [
    ["V", "V", "volt volts", 1],
    ["mV", "mV", "millivolt millivolts", 1, 1000],
  ],
  current: [
    ["A", "A", "amp amps ampere amperes", 1],
    ["mA", "mA", "milliamp milliamps", 1, 1000],
  ],
  charge: [
    ["A.h", "A·h", "Ah amphour amphours", 1],
    ["mA.h", "mA·h", "mAh", 1, 1000],
  ],
  resistance: [
    ["Ohm", "Ω", "ohms", 1],
    ["mOhm", "mΩ", "milliohm milliohms", 1, 1000],
    ["kOhm", "kΩ", "", 1000],
  ],
  power: [
    ["kW", "kW", "", 1],
    ["W", "W", "watt watts", 1, 1000],
    ["[HP]", "hp", "bhp", POUND_FORCE * 550 * 304.8, 1e6],
    ["75.kgf.m/s", "PS", "cv ch", 0.73549875],
  ],
  speed: [
    ["km/h", "km/h", "kmh kph", 1],
    ["[mi_i]/h", "mph", "mi/h", 1.609344],
    ["m/s", "m/s", "", 3.6],
  ],
  angle: [
    ["deg", "°", "degree degrees", 1],
    ["'", "′", "min arcmin minute minutes", 1, 60],
  ],
  duration: [
    ["s", "s", "sec secs second seconds", 1],
    ["min", "min", "mins minute minutes", 60],
    ["h", "h", "hr hrs hour hours", 3600],
    ["d", "d", "day days", 86400],
  ],
  age: [
    ["a", "y", "yr yrs year years", 1],
    ["mo", "mo", "month months mth", 1, 12],
    ["wk", "wk", "week weeks", 28, 1461],
    ["d", "d", "day days", 4, 1461],
  ],
  volume: [
    ["L", "L", "l litre litres liter liters", 1],
    ["mL", "mL", "ml cm3 cc ccm", 1, 1000],
    ["[gal_br]", "imp gal", "impgal", 4.54609],
    ["[gal_us]", "US gal", "usgal", 3.785411784],
    ["[pt_br]", "imp pt", "imppt pint pints", 0.56826125],
    ["[qt_us]", "US qt", "usqt", 0.946352946],
  ],
  mass: [
    ["kg", "kg", "kilo kilos kilogram kilograms", 1],
    ["g", "g", "gram grams", 1, 1000],
    ["[lb_av]", "lb", "lbs pound pounds", 0.45359237],
    ["[oz_av]", "oz", "ounce ounces", 0.45359237, 16],
    ["t", "t", "tonne tonnes", 1000],
  ],
  percent: [["%", "%", "percent pct", 1]],
  ratio: [["1", "", "", 1]],
  frequency: [
    ["Hz", "Hz", "hertz", 1],
    ["kHz", "kHz", "", 1000],
    ["/min", "rpm", "1/min r/min rev/min", 1, 60],
  ],
  area: [
    ["cm2", "cm²", "", 1],
    ["mm2", "mm²", "", 1, 100],
    ["m2", "m²", "", 10000],
  ],
  section_modulus: [
    ["cm3", "cm³", "", 1],
    ["mm3", "mm³", "", 1, 1000],
  ],
  second_moment: [
    ["cm4", "cm⁴", "", 1],
    ["mm4", "mm⁴", "", 1, 10000],
  ],
};

const made = new Map<Quantity, readonly Unit[]>();

/** Units of a quantity, canonical first: what a keypad may offer. */
export function unitsOf(quantity: Quantity): readonly Unit[] {
  let units = made.get(quantity);
  if (units === undefined) {
    units = ROWS[quantity].map(([code, shown, spelled, over, under = 1, before = 0]) => ({
      code,
      quantity,
      shown,
      over,
      under,
      before,
      spelled: [code, shown, ...spelled.split(" ")].map(plainSpelling).filter((text) => text !== ""),
    }));
    made.set(quantity, units);
  }
  return units;
}

/** One spelling for the many ways to write the same sign. */
function plainSpelling(text: string): string {
  return text
    .replace(/[\s\u00a0\u2009\u202f]/gu, "")
    .replace(/[·⋅∙•*×]/gu, ".")
    .replace(/[µμ]/gu, "u")
    .replace(/[″“”]/gu, '"')
    .replace(/[′’‘´`]/gu, "'")
    .replace(/º/gu, "°")
    .replace(/Ω/gu, "Ohm")
    .replace(/³/gu, "3")
    .replace(/²/gu, "2");
}

const found = (units: readonly Unit[], spelling: string): Unit | undefined => {
  const exact = units.find((unit) => unit.spelled.includes(spelling));
  if (exact !== undefined) return exact;
  // Capitals tell mPa from MPa; they stop counting only where someone plainly does not use them.
  const lower = spelling.toLowerCase();
  const careless = [lower, spelling.toUpperCase(), `${lower.charAt(0).toUpperCase()}${lower.slice(1)}`];
  if (!careless.includes(spelling)) return undefined;
  const loose = units.filter((unit) => unit.spelled.some((text) => text.toLowerCase() === lower));
  return loose.length === 1 ? loose[0] : undefined;
};

/**
 * The unit a code or accepted spelling names. `within` a quantity where one sign means several units
 * (′ is an inch-foot mark or an arc minute, °C a temperature or a difference); else the first that fits.
 */
export function unitOf(text: string, within?: Quantity): Unit | undefined {
  const spelling = plainSpelling(text);
  if (spelling === "") return within === "ratio" ? unitsOf("ratio")[0] : undefined;
  if (within !== undefined) return found(unitsOf(within), spelling);
  // Object.keys loses the key type; ROWS has exactly the quantities as keys.
  for (const quantity of Object.keys(ROWS) as Quantity[]) {
    const unit = found(unitsOf(quantity), spelling);
    if (unit !== undefined) return unit;
  }
  return undefined;
}

/** The unit numbers of this quantity are calculated in. */
export function canonicalUnitOf(quantity: Quantity): Unit {
  const unit = unitOf(canonicalUnit(quantity), quantity);
  if (unit === undefined) throw new Error(`The table lacks the canonical unit of ${quantity}.`);
  return unit;
}
