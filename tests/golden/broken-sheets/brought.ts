/** Broken sheets and the whole of what is said about each. What a sheet brings beyond the shared files. */
import type { Change } from "../../support/mini-sheet.js";
import type { Broken } from "./broken.js";

const GOOD = `brings:
  places:
    - { id: cyl-1, kind: cylinder, in: car }
    - { id: cyl-2, kind: cylinder, in: car, relations: { opposite: cyl-1 } }
  states:
    - { id: b1-bench, order: 20, lifted: false, plan: none }
  gauges:
    - { id: bore-gauge, quantity: length, unit: mm, resolution: 0.01, error: 0.01, basis: practice, source: common practice }
  aids: [blue]
  cautions:
    - { id: cau.swarf, signal: caution }
  access:
    - { id: head-off, place: car, setUp: [100, 200, 300], putBack: [100, 200, 300], basis: practice }
  facts:
    - { id: liners, kind: word, words: [wet, dry] }
`;
const WORDS = `brings:
  places: { cyl-1: cylinder 1, cyl-2: cylinder 2 }
  states: { b1-bench: { name: Bench, how: Lay it out. } }
  gauges: { bore-gauge: Bore gauge }
  aids: { blue: Marking blue }
  cautions: { cau.swarf: { not: Do not blow., why: Swarf flies., can: It hurts eyes., do: Wear glasses. } }
  access: { head-off: Head off }
  facts: { liners: { name: Liners, words: { wet: wet, dry: dry } } }
`;
const POINT = `  - id: hub.bore
    place: cylinder
    states: [b1-bench]
    fields:
      wear: { quantity: length, unit: mm, window: [0, 2] }
    tool: bore-gauge
    who: [technician]
  - id: hub.noise
`;
const POINT_WORDS = "  hub.bore: { name: Bore, ask: { technician: How far is it worn? }, leave: It is apart. }\n";

/** A sheet whose point, place, state and gauge are all its own. */
export const bringing = (change?: (good: string) => string, words?: (good: string) => string): readonly Change[] => [
  { part: "brings.yaml", to: change?.(GOOD) ?? GOOD },
  { part: "points.yaml", from: "  - id: hub.noise\n", to: POINT },
  { part: "rules.yaml", from: "cautions: [cau.stop]", to: "cautions: [cau.stop, cau.swarf]" },
  { part: "jobs.yaml", from: "[hub-off]", to: "[hub-off, head-off]" },
  { part: "texts/en.yaml", from: "points:\n", to: `${words?.(WORDS) ?? WORDS}points:\n${POINT_WORDS}` },
];
const swap = (from: string, to: string) => (good: string) => {
  if (!good.includes(from)) throw new Error(`“${from}” stands nowhere.`);
  return good.replace(from, to);
};

export const BROUGHT: readonly (Pick<Broken, "name" | "says"> & { readonly changes: readonly Change[] })[] = [
  { name: "all of it in order", changes: bringing(), says: [] },
  {
    name: "a place the shared files have",
    changes: bringing(swap("id: cyl-1, kind", "id: FL, kind"), swap("cyl-1: c", "FL: c")),
    says: ["hub/brings.yaml:3:7 id “FL” is taken already: the shared files have it","hub/brings.yaml:4:68 unknown place “cyl-1”; expected cyl-2, car, axle-F, side-L, side-R, FL or FR"],
  },
  { name: "a place in a place there is not", changes: bringing(swap("cylinder, in: car }", "cylinder, in: block }")), says: ["hub/brings.yaml:3:40 unknown place “block”; expected car, axle-F, FL, FR, cyl-1, cyl-2, side-L or side-R"] },
  { name: "a gauge in a unit of something else", changes: bringing(swap("unit: mm", "unit: bar")), says: ["hub/brings.yaml:8:49 gauge “bore-gauge” is length (mm), but its unit is pressure (bar)"] },
  { name: "a caution by another prefix", changes: bringing(swap("cau.swarf", "swarf"), swap("cau.swarf", "swarf")), says: ["hub/brings.yaml:11:13 id “swarf” must begin with “cau.”","hub/rules.yaml:15:26 unknown caution “cau.swarf”; expected cau.stop or swarf"] },
  { name: "access that takes less than none", changes: bringing(swap("[100, 200, 300]", "[300, 200, 100]")), says: ["hub/brings.yaml:13:35 minutes 300, 200, 100 must run from low over likely to high"] },
  { name: "a thing without words", changes: bringing(undefined, swap("blue: Marking blue", "")), says: ["hub/texts/en.yaml:8:3 text “brings › aids › blue” is missing in language “en”"] },
  { name: "words of nothing", changes: bringing(undefined, swap("head-off: Head off", "head-off: Head off, sump-off: Sump off")), says: ["hub/texts/en.yaml:10:33 text “brings › access › sump-off” belongs to nothing in this sheet"] },
  { name: "a word of a fact without words", changes: bringing(undefined, swap("wet: wet, ", "")), says: ["hub/texts/en.yaml:11:36 text “brings › facts › liners › words › wet” is missing in language “en”"] },
  { name: "a list nobody knows", changes: bringing(swap("  aids:", "  tools:")), says: ["hub/brings.yaml:9:3 unknown key “tools”; expected places, states, gauges, aids, cautions, access or facts"] },
];
