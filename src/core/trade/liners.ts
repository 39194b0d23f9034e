/** Wet liners and flat faces: stand-out from spacer and seal, neighbours, flatness, skim. Limits are the maker's. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { ARITHMETIC, published } from "./sources.js";

const LINER_MANUAL = published("Workshop manual, wet liners", "stand-out and base seal");

const height = { kind: "length", from: -2, to: 5 } as const;
const heights = { name: "heights", says: "Stand-out measured round a liner", ...height, atLeast: 1 } as const;
const wanted = { name: "wanted", says: "Stand-out wanted", ...height } as const;
const ordinates = { name: "readings", says: "Gaps or heights over a face", ...height, atLeast: 3 } as const;

export const LINERS = [
  row({
    name: "spacer_needed",
    says: "Spacer or seal under a liner that gives the stand-out wanted",
    arguments: [{ name: "fitted", says: "Spacer fitted now", kind: "length", from: 0, to: 5 }, heights, wanted],
    gives: "length",
    formula: "t = t(fitted) + wanted − max(heights): the highest point rules",
    source: LINER_MANUAL,
    work: (fitted, all, target) => {
      const thickness = fitted + target - Math.max(...all);
      return thickness < 0 ? refusal("stands-too-high", { argument: "heights" }) : thickness;
    },
  }),
  row({
    name: "spacer_to_fit",
    says: "Thickest spacer that can be had and stands no higher than wanted",
    arguments: [
      { name: "needed", says: "Spacer needed", kind: "length", from: 0, to: 5 },
      { name: "sizes", says: "Spacers that can be had", kind: "length", from: 0, to: 5, atLeast: 1 },
    ],
    gives: "length",
    formula: "max of the sizes ≤ needed",
    source: LINER_MANUAL,
    work: (thickness, all) => {
      const fits = all.filter((one) => one <= thickness);
      return fits.length === 0 ? refusal("no-spacer", { argument: "sizes" }) : Math.max(...fits);
    },
  }),
  row({
    name: "stand_out_with_spacer",
    says: "Stand-out another spacer gives",
    arguments: [
      heights,
      { name: "fitted", says: "Spacer fitted now", kind: "length", from: 0, to: 5 },
      { name: "new_spacer", says: "Spacer to be fitted", kind: "length", from: 0, to: 5 },
    ],
    gives: "length",
    formula: "max(heights) + t(new) − t(fitted)",
    source: ARITHMETIC,
    work: (all, fitted, next) => Math.max(...all) + next - fitted,
  }),
  row({
    name: "liner_tilt",
    says: "Tilt of a liner",
    arguments: [{ ...heights, atLeast: 2 }],
    gives: "length",
    formula: "max − min round one liner",
    source: ARITHMETIC,
    work: (all) => Math.max(...all) - Math.min(...all),
  }),
  row({
    name: "neighbour_step",
    says: "Largest step between neighbouring liners",
    arguments: [{ ...heights, says: "Stand-out of each liner along the row", atLeast: 2 }],
    gives: "length",
    formula: "max |hᵢ − hᵢ₊₁|; one manual allows 0.04 mm",
    source: LINER_MANUAL,
    work: (all) => Math.max(...all.slice(1).map((one, index) => Math.abs(one - (all[index] ?? one)))),
  }),
  row({
    name: "flatness",
    says: "How far a face is from flat",
    arguments: [ordinates],
    gives: "length",
    formula: "max − min under a straight edge that rests on two points",
    source: published("Workshop manuals", "head and block faces", "limits 0.05 to 0.15 mm by maker"),
    work: (all) => Math.max(...all) - Math.min(...all),
  }),
  row({
    name: "seal_squeeze",
    says: "Squeeze of a round seal in its groove",
    arguments: [
      { name: "cord", says: "Cord of the seal", kind: "length", over: 0, to: 20 },
      { name: "groove", says: "Depth left for it", kind: "length", over: 0, to: 20 },
    ],
    gives: "percent",
    formula: "100 · (cord − groove) / cord",
    source: ARITHMETIC,
    work: (cord, groove) => (100 * (cord - groove)) / cord,
  }),
];
