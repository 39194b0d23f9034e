/** Tyre sizes: height, diameter, circumference, turns a kilometre, and what another size changes. */
import { row } from "./contract.js";
import { ARITHMETIC, fromMemory } from "./sources.js";

const MM_PER_INCH = 25.4;
const MM_PER_KM = 1_000_000;
/** Rolling circumference per outside diameter. */
const ROLLING = { radial: 3.05, "cross-ply": 2.99 } as const;
const BUILDS = ["radial", "cross-ply"] as const;

const section = { name: "section", says: "Section width", kind: "length", from: 80, to: 500 } as const;
const aspect = { name: "aspect", says: "Height as a share of width", kind: "percent", from: 20, to: 110 } as const;
/** A metric rim of 390 mm is 15.35 inches, never 15: the rim is asked as a length. */
const rim = { name: "rim", says: "Rim diameter", kind: "length", from: 200, to: 700 } as const;
const diameter = { name: "diameter", says: "Outside diameter", kind: "length", from: 300, to: 1500 } as const;

/** Outside diameter of a tyre, mm. */
export const tyreDiameter = (width: number, percent: number, rimDiameter: number): number =>
  rimDiameter + (2 * width * percent) / 100;

export const TYRE_SIZES = [
  row({
    name: "inches",
    says: "Inches as millimetres",
    arguments: [{ name: "inches", says: "Inches", kind: "number", from: 0, to: 1000 }],
    gives: "length",
    formula: "25.4 · inches",
    source: {
      basis: "published",
      document: "International yard and pound agreement, 1959",
      note: "exact by definition",
    },
    work: (inch) => inch * MM_PER_INCH,
  }),
  row({
    name: "tyre_section_height",
    says: "Height of a tyre's section",
    arguments: [section, aspect],
    gives: "length",
    formula: "W · aspect / 100",
    source: ARITHMETIC,
    work: (width, percent) => (width * percent) / 100,
  }),
  row({
    name: "tyre_diameter",
    says: "Outside diameter of a tyre",
    arguments: [section, aspect, rim],
    gives: "length",
    formula: "rim + 2 · W · aspect / 100",
    source: ARITHMETIC,
    work: tyreDiameter,
  }),
  row({
    name: "tyre_circumference",
    says: "Circumference of a tyre by its size",
    arguments: [diameter],
    gives: "length",
    formula: "π · D",
    source: ARITHMETIC,
    work: (d) => Math.PI * d,
  }),
  row({
    name: "tyre_turns_per_km",
    says: "Turns a kilometre by the size",
    arguments: [diameter],
    gives: "number",
    formula: "1 000 000 / (π · D), D in mm; under load it turns about 3 % more often",
    source: ARITHMETIC,
    work: (d) => MM_PER_KM / (Math.PI * d),
  }),
  row({
    name: "rolling_circumference",
    says: "Circumference the tyre really rolls",
    arguments: [diameter, { name: "build", says: "Build of the tyre", kind: "word", words: BUILDS }],
    gives: "length",
    formula: "3.05 · D radial, 2.99 · D cross-ply",
    source: fromMemory("factors unverified"),
    work: (d, build) => ROLLING[build] * d,
  }),
  row({
    name: "tyre_size_change",
    says: "Change of diameter from one size to another; the speedometer shows the opposite",
    arguments: [
      { ...diameter, name: "old", says: "Outside diameter before" },
      { ...diameter, name: "new", says: "Outside diameter after" },
    ],
    gives: "percent",
    formula: "100 · (D(new) / D(old) − 1)",
    source: ARITHMETIC,
    work: (before, after) => 100 * (after / before - 1),
  }),
];
