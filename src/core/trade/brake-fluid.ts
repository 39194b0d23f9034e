/** Brake fluid against the minimum of its grade, dry and wet. Knows no age. */
import { row } from "./contract.js";
import { fromMemory, published } from "./sources.js";

const FMVSS_116 = published(
  "49 CFR 571.116 (FMVSS 116), motor vehicle brake fluids",
  "S5.1.1 (dry), S5.1.2 (wet)",
  "DOT 3 and 4 as quoted from the regulation; DOT 5 and 5.1 from pages citing it",
);
/** Equilibrium reflux boiling point, °C, [dry, wet]; wet is fluid humidified to 3.70 % water by weight (S6.2). */
const BOILING = { "DOT 3": [205, 140], "DOT 4": [230, 155], "DOT 5": [260, 180], "DOT 5.1": [260, 180] } as const;
const GRADES = ["DOT 3", "DOT 4", "DOT 5", "DOT 5.1"] as const;
/** Water by weight at which the wet minimum is defined, per cent. */
const WET_WATER = 3.7;

const grade = { name: "grade", says: "Grade of the fluid", kind: "word", words: GRADES } as const;
const boiling = { name: "boiling", says: "Boiling point measured", kind: "temperature", from: 80, to: 350 } as const;

export const BRAKE_FLUID = [
  row({
    name: "dry_boiling_minimum",
    says: "Least boiling point of new fluid",
    arguments: [grade],
    gives: "temperature",
    formula: "by grade",
    source: FMVSS_116,
    work: (of) => BOILING[of][0],
  }),
  row({
    name: "wet_boiling_minimum",
    says: "Least boiling point of fluid that has taken up water",
    arguments: [grade],
    gives: "temperature",
    formula: "by grade",
    source: FMVSS_116,
    work: (of) => BOILING[of][1],
  }),
  row({
    name: "boiling_reserve",
    says: "Boiling point over the wet minimum; below zero it boils too soon",
    arguments: [grade, boiling],
    gives: "temperature_difference",
    formula: "T(measured) − T(wet minimum)",
    source: FMVSS_116,
    work: (of, measured) => measured - BOILING[of][1],
  }),
  row({
    name: "water_by_boiling",
    says: "Water in the fluid that such a boiling point points to, by weight",
    arguments: [grade, boiling],
    gives: "percent",
    formula: "straight line from the dry minimum (0 %) to the wet minimum (3.7 %)",
    source: fromMemory(
      "a straight line between two published points; real fluids fall faster at first, so it is an upper guess",
    ),
    work: (of, measured) => {
      const [dry, wet] = BOILING[of];
      return Math.max(0, (WET_WATER * (dry - measured)) / (dry - wet));
    },
  }),
];
