/** Marks on a tyre: load index, speed symbol, date code. An ambiguous code is told as such, never guessed. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { published } from "./sources.js";

/** Load in kg by load index, from 60 on; every row in two reprints or more. */
const LOAD_KG = [
  250, 257, 265, 272, 280, 290, 300, 307, 315, 325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450, 462, 475,
  487, 500, 515, 530, 545, 560, 580, 600, 615, 630, 650, 670, 690, 710, 730, 750, 775, 800, 825, 850, 875, 900, 925,
  950, 975, 1000, 1030, 1060,
];
const LOWEST_INDEX = 60;
/** Top speed by symbol, km/h, as reprinted. H lies between U and V. */
const SPEED_KMH = {
  F: 80,
  G: 90,
  J: 100,
  K: 110,
  L: 120,
  M: 130,
  N: 140,
  P: 150,
  Q: 160,
  R: 170,
  S: 180,
  T: 190,
  U: 200,
  H: 210,
  V: 240,
  W: 270,
  Y: 300,
} as const;
const SYMBOLS = ["F", "G", "J", "K", "L", "M", "N", "P", "Q", "R", "S", "T", "U", "H", "V", "W", "Y"] as const;
/** Full load up to `from`, falling in a straight line to `share` per cent at the symbol's own speed. */
const LOAD_AT_SPEED: Readonly<Record<string, { readonly from: number; readonly share: number }>> = {
  V: { from: 210, share: 91 },
  W: { from: 240, share: 85 },
};
const TABLE = published(
  "UN Regulation No. 30, load-capacity index",
  "annex 4",
  "as reprinted in several tables, whose slips differ",
);
const DATE_CODE = published("49 CFR 574.5, tyre identification", "date code", "read in handbook pages");
const LAST_WEEK = 53;
const WEEKS_PER_YEAR = 365.25 / 7;

const index = {
  name: "index",
  says: "Load index",
  kind: "number",
  from: LOWEST_INDEX,
  to: LOWEST_INDEX + LOAD_KG.length - 1,
  whole: true,
} as const;
const symbol = { name: "symbol", says: "Speed symbol", kind: "word", words: SYMBOLS } as const;
const code = { name: "code", says: "Last figures of the date code", kind: "word" } as const;
const today = {
  name: "today",
  says: "Year now, with the part of the year",
  kind: "number",
  from: 1950,
  to: 2200,
} as const;

const loadOf = (of: number): number => LOAD_KG[of - LOWEST_INDEX] ?? Number.NaN;

/** The dates a code may mean, newest first, none after today; or why it is no date. */
function datesOf(text: string, year: number): readonly number[] | string {
  if (!/^\d{3,4}$/.test(text)) return "date-length";
  const week = Number(text.slice(0, 2));
  if (week === 0 || week > LAST_WEEK) return "date-week";
  // Three figures: used until 1999; the last is the year of a decade nobody wrote down.
  const counted = text.length === 4 ? [2000] : [1990, 1980, 1970];
  const made = counted.map((from) => from + Number(text.slice(2)) + (week - 1) / WEEKS_PER_YEAR);
  const dates = made.filter((date) => date <= year);
  return dates.length === 0 ? "date-future" : dates;
}

export const TYRE_MARKS = [
  row({
    name: "tyre_load",
    says: "Load a tyre carries",
    arguments: [index],
    gives: "mass",
    formula: "by table; 45 · 10^(index / 80) only comes near it",
    source: TABLE,
    work: loadOf,
  }),
  row({
    name: "tyre_speed",
    says: "Top speed of a speed symbol",
    arguments: [symbol],
    gives: "speed",
    formula: "by table",
    source: TABLE,
    work: (of) => SPEED_KMH[of],
  }),
  row({
    name: "tyre_load_at_speed",
    says: "Load a tyre carries at a speed",
    arguments: [index, symbol, { name: "speed", says: "Speed", kind: "speed", from: 0, to: 400 }],
    gives: "mass",
    formula: "V: full to 210 km/h, 91 % at 240; W: full to 240, 85 % at 270; a straight line between",
    source: published("Tyre textbook, load at high speed", undefined, "V and W rows seen"),
    work: (of, letter, kmh) => {
      const top = SPEED_KMH[letter];
      if (kmh > top) return refusal("over-argument", { argument: "speed", most: top });
      const falls = LOAD_AT_SPEED[letter];
      if (!falls || kmh <= falls.from) return loadOf(of);
      return (loadOf(of) * (100 - ((100 - falls.share) * (kmh - falls.from)) / (top - falls.from))) / 100;
    },
  }),
  row({
    name: "tyre_carries",
    says: "Whether two tyres carry an axle at a speed",
    arguments: [
      index,
      symbol,
      { name: "axle", says: "Load on the axle", kind: "mass", over: 0, to: 5000 },
      { name: "speed", says: "Top speed of the car", kind: "speed", over: 0, to: 400 },
    ],
    gives: "yes",
    formula: "2 · load ≥ axle load, and the symbol's speed ≥ the car's",
    source: TABLE,
    work: (of, letter, axle, kmh) => SPEED_KMH[letter] >= kmh && 2 * loadOf(of) >= axle,
  }),
  row({
    name: "tyre_age",
    says: "Age of a tyre by its date code",
    arguments: [code, today],
    gives: "age",
    formula: "four figures: week and year from 2000 on; three: no decade, so no age",
    source: DATE_CODE,
    work: (text, year) => {
      const dates = datesOf(text, year);
      if (typeof dates === "string") return refusal(dates, { argument: "code", found: text });
      if (text.length === 3)
        return refusal("date-decade", {
          argument: "code",
          found: text,
          years: dates.map((one) => `${Math.floor(one)}`),
        });
      return year - Math.max(...dates);
    },
  }),
  row({
    name: "tyre_age_at_least",
    says: "Least age of a tyre by its date code",
    arguments: [code, today],
    gives: "age",
    formula: "the newest year the code may mean",
    source: DATE_CODE,
    work: (text, year) => {
      const dates = datesOf(text, year);
      if (typeof dates === "string") return refusal(dates, { argument: "code", found: text });
      return year - Math.max(...dates);
    },
  }),
  row({
    name: "warm_pressure",
    says: "Pressure a tyre would show at another temperature",
    arguments: [
      { name: "pressure", says: "Pressure shown", kind: "pressure", from: 0, to: 10 },
      { name: "at", says: "Temperature then", kind: "temperature", from: -40, to: 120 },
      { name: "wanted", says: "Temperature wanted", kind: "temperature", from: -40, to: 120 },
    ],
    gives: "pressure",
    formula: "(p + 1.013) · (T₂ + 273.15) / (T₁ + 273.15) − 1.013",
    source: { basis: "arithmetic", note: "ideal gas, volume kept" },
    work: (bar, from, to) => ((bar + 1.01325) * (to + 273.15)) / (from + 273.15) - 1.01325,
  }),
];
