/**
 * How a UCUM unit is written, where that differs from its code. Apart from core/units so that the way to the first
 * reply need not carry the whole table; telling.test.ts holds the two together.
 */
const WRITTEN: Readonly<Record<string, string>> = {
  "1": "",
  "[in_i]": "in",
  "[mil_i]": "thou",
  um: "µm",
  "[ft_i]": "ft",
  "[mi_i]": "mi",
  Cel: "°C",
  "[degF]": "°F",
  "N.m": "N·m",
  "[ft_i].[lbf_av]": "lbf·ft",
  "[in_i].[lbf_av]": "lbf·in",
  "kgf.m": "kgf·m",
  "kgf.cm": "kgf·cm",
  "N.cm": "N·cm",
  "[lbf_av]": "lbf",
  "[psi]": "psi",
  att: "at",
  "mm[Hg]": "mmHg",
  "[in_i'Hg]": "inHg",
  "A.h": "A·h",
  "mA.h": "mA·h",
  Ohm: "Ω",
  mOhm: "mΩ",
  kOhm: "kΩ",
  "[HP]": "hp",
  "75.kgf.m/s": "PS",
  "[mi_i]/h": "mph",
  deg: "°",
  "'": "′",
  a: "y",
  "[gal_br]": "imp gal",
  "[gal_us]": "US gal",
  "[pt_br]": "imp pt",
  "[qt_us]": "US qt",
  "[lb_av]": "lb",
  "[oz_av]": "oz",
  "/min": "rpm",
  cm2: "cm²",
  mm2: "mm²",
  m2: "m²",
  cm3: "cm³",
  mm3: "mm³",
  cm4: "cm⁴",
  mm4: "mm⁴",
};

/** Where a letter alone says too little: on a switch, in a list. */
const SPELLED: Readonly<Record<string, string>> = { a: "years", mo: "months", wk: "weeks", d: "days" };

/** A unit as it stands alone, to be chosen: `years`, `mm`. */
export const unitWords = (unit: string): string => SPELLED[unit] ?? unitShown(unit);

/** A UCUM unit as it is written: `°C`, `in`; one that is not listed as its code. */
export const unitShown = (unit: string): string => WRITTEN[unit] ?? unit;
