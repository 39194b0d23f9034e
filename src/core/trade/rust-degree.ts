/** Degree of rusting of a coated face from the share of its area. Looks up published bands; grades nothing. */
import { row } from "./contract.js";
import { published } from "./sources.js";

/** Rust grade and the largest share of area it reaches to, per cent; over the last one it is grade 0. */
const ASTM_D610: readonly (readonly [grade: number, to: number])[] = [
  [10, 0.01],
  [9, 0.03],
  [8, 0.1],
  [7, 0.3],
  [6, 1],
  [5, 3],
  [4, 10],
  [3, 16],
  [2, 33],
  [1, 50],
];
/** A share the eye takes for none: shares are compared as ratios, and nothing has no ratio. */
const CLEAN = 0.01;
/** Areas the comparison pictures of ISO 4628-3 show: what one looks most like, not limits of classes. */
const ISO_4628_PICTURES: readonly (readonly [degree: string, area: number])[] = [
  ["Ri 0", CLEAN],
  ["Ri 1", 0.05],
  ["Ri 2", 0.5],
  ["Ri 3", 1],
  ["Ri 4", 8],
  ["Ri 5", 45],
];

const area = { name: "area", says: "Share of the area that is rusty", kind: "percent", from: 0, to: 100 } as const;

/** How far a share looks from a pictured one: the eye compares ratios. */
const apart = (share: number, pictured: number): number => Math.abs(Math.log(Math.max(share, CLEAN) / pictured));

export const RUST_DEGREE = [
  row({
    name: "rust_grade_number",
    says: "Rust grade by area: 10 is clean, 0 more than half",
    arguments: [area],
    gives: "number",
    formula: "the grade whose band holds the share",
    source: published("ASTM D610, degree of rusting on painted steel", "table 1"),
    work: (share) => ASTM_D610.find(([, to]) => share <= to)?.[0] ?? 0,
  }),
  row({
    name: "rust_degree",
    says: "Degree of rusting whose comparison picture is nearest",
    arguments: [area],
    gives: "word",
    words: ISO_4628_PICTURES.map(([degree]) => degree),
    formula: "nearest pictured area, compared as ratios",
    source: published(
      "ISO 4628-3, degree of rusting of coatings",
      "table 1 and annex B",
      "the figures are areas of the pictures, not class limits; taking the nearest is common practice, no source",
    ),
    work: (share) =>
      ISO_4628_PICTURES.reduce((nearest, one) => (apart(share, one[1]) < apart(share, nearest[1]) ? one : nearest))[0],
  }),
];
