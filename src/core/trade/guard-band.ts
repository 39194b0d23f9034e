/** Readings beside a limit: standard uncertainty, guard band, chance of conforming, difference of two readings. */
import { row } from "./contract.js";
import { published } from "./sources.js";

const JCGM_106 = published(
  "JCGM 106:2012, the role of measurement uncertainty in conformity assessment",
  "7 and 8",
  "rule seen on a laboratory's page",
);
const GUM = published(
  "JCGM 100:2008, guide to the expression of uncertainty in measurement",
  "4.3.7 and 5.1.2",
  "from memory, agreeing with recomputed figures",
);
const SIDES = ["at-least", "at-most"] as const;

const figure = { kind: "number" } as const;
const reading = { name: "reading", says: "Reading", ...figure } as const;
const limit = { name: "limit", says: "Limit", ...figure } as const;
const side = { name: "side", says: "Whether the limit is the least or the most", kind: "word", words: SIDES } as const;
const uncertainty = { name: "uncertainty", says: "Standard uncertainty", kind: "number", over: 0 } as const;
/** Expanded uncertainty covers about 95 of 100. */
const COVERAGE = 2;

/** Standard normal distribution function (Abramowitz and Stegun 7.1.26 by way of erf; error under 1.5·10⁻⁷). */
export function normal(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const erf = 1 - poly * Math.exp(-x * x);
  return z < 0 ? (1 - erf) / 2 : (1 + erf) / 2;
}

export const GUARD_BAND = [
  row({
    name: "uncertainty_of_scale",
    says: "Standard uncertainty of reading a scale",
    arguments: [{ name: "step", says: "Smallest step shown", kind: "number", over: 0 }],
    gives: "number",
    formula: "u = d / (2 √3)",
    source: GUM,
    work: (step) => step / (2 * Math.sqrt(3)),
  }),
  row({
    name: "uncertainty_together",
    says: "Several uncertainties together",
    arguments: [{ ...uncertainty, name: "parts", says: "Standard uncertainties", atLeast: 1 }],
    gives: "number",
    formula: "u = √(u₁² + … + uₙ²)",
    source: GUM,
    work: (parts) => Math.hypot(...parts),
  }),
  row({
    name: "acceptance_limit",
    says: "Where a reading is surely within the limit",
    arguments: [limit, side, uncertainty],
    gives: "number",
    formula: "limit + 2u for a least, limit − 2u for a most",
    source: JCGM_106,
    work: (edge, which, u) => (which === "at-least" ? edge + COVERAGE * u : edge - COVERAGE * u),
  }),
  row({
    name: "chance_of_conforming",
    says: "Chance that the true value is within the limit",
    arguments: [reading, limit, side, uncertainty],
    gives: "percent",
    formula: "100 · Φ((reading − limit) / u) for a least, the other way round for a most",
    source: JCGM_106,
    work: (value, edge, which, u) => 100 * normal((which === "at-least" ? value - edge : edge - value) / u),
  }),
  row({
    name: "clearly_different",
    says: "Whether two readings differ by more than their uncertainty",
    arguments: [
      reading,
      { ...reading, name: "other", says: "Other reading" },
      uncertainty,
      { ...uncertainty, name: "other_uncertainty", says: "Standard uncertainty of the other" },
    ],
    gives: "yes",
    formula: "|a − b| > 2 √(uₐ² + u_b²)",
    source: GUM,
    work: (a, b, ua, ub) => Math.abs(a - b) > COVERAGE * Math.hypot(ua, ub),
  }),
];
