/** What is offered while a condition is written, by where the cursor stands. */
import { describe, expect, it } from "vitest";
import { completions, type Spoken } from "./completions.js";
import type { Declarations } from "./declarations.js";

const declared: Declarations = {
  names: {
    "whl.rock": {
      ref: { point: "whl.rock", field: "is" },
      kind: "corner",
      type: { is: "word", words: ["none", "just-felt", "clear"] },
    },
    "whl.float": {
      ref: { point: "whl.float", field: "is" },
      kind: "corner",
      type: { is: "reading", quantity: "length" },
    },
    "brk.pedal": {
      ref: { point: "brk.pedal", field: "is" },
      kind: "car",
      type: { is: "words", words: ["firm", "spongy"] },
    },
  },
  facts: { brakes: { is: "word", words: ["outboard", "inboard"] } },
  kinds: { corner: ["axle", "car"], car: [] },
  relations: [{ name: "opposite", from: "corner", to: "corner", many: false }],
  faults: ["whl.race"],
  functions: {
    pad_taper: {
      arguments: [
        { name: "lead", kind: "length" },
        { name: "trail", kind: "length" },
      ],
      gives: "length",
    },
  },
  sheets: ["whl", "brk"],
};
const NAMES: Readonly<Record<string, string>> = {
  "whl.rock": "Rock at the wheel",
  "whl.float": "End float",
  "car.brakes": "Where the brakes sit",
};
const WORDS: Readonly<Record<string, string>> = { "just-felt": "just felt" };
const spoken: Spoken = { name: (name) => NAMES[name] ?? name, word: (_name, word) => WORDS[word] ?? word };

/** The offers where `|` stands, as the whole text each would give. */
function chosen(marked: string): readonly string[] {
  const cursor = marked.indexOf("|");
  const text = marked.replace("|", "");
  const { from, to, offers } = completions(text, cursor, declared, spoken);
  return offers.map((offer) => text.slice(0, from) + offer.text + text.slice(to));
}

describe("offers while a condition is written", () => {
  it.each([
    ["a point by its spelling", "whl.ro|", ["whl.rock"]],
    ["a point by a spoken word", "float|", ["whl.float"]],
    ["a point by several spoken words", "at the whe|", ["whl.rock"]],
    ["a fact of the car", "car.|", ["car.brakes"]],
    ["a fact by a spoken word", "sit|", ["car.brakes"]],
    ["a point behind a relation", "opposite.whl.f|", ["opposite.whl.float"]],
    ["a relation", "oppo|", ["opposite."]],
    ["a function of the trade", "pad_|", ["pad_taper("]],
    ["a point behind &&", 'whl.rock == "clear" && ro|', ['whl.rock == "clear" && whl.rock']],
    [
      "the words of a point behind ==",
      "whl.rock == |",
      ['whl.rock == "none"', 'whl.rock == "just-felt"', 'whl.rock == "clear"'],
    ],
    ["a word begun in quotes", 'whl.rock == "cl|', ['whl.rock == "clear"']],
    ["a word begun in closed quotes", 'whl.rock == "cl|"', ['whl.rock == "clear"']],
    ["a word begun without quotes", "whl.rock == j|", ['whl.rock == "just-felt"']],
    [
      "the words within in [",
      'whl.rock in ["none", |',
      ["none", "just-felt", "clear"].map((word) => `whl.rock in ["none", "${word}"`),
    ],
    ["the words of a fact", "car.brakes == |", ['car.brakes == "outboard"', 'car.brakes == "inboard"']],
    ["the words of what it was last time", "last(whl.rock) == c|", ['last(whl.rock) == "clear"']],
    ["the words at the twin", 'opposite.whl.rock == "n|', ['opposite.whl.rock == "none"']],
    ["a word of several", '"sp|" in brk.pedal', ['"spongy" in brk.pedal']],
    ["a grade behind a band", "band(whl.float) >= ma|", ["band(whl.float) >= major"]],
    ["a kind of place", 'places("co|', ['places("corner"']],
    ["a fault", 'found("|', ['found("whl.race"']],
  ])("%s", (_what, marked, wanted) => {
    expect(chosen(marked)).toEqual(wanted);
  });
  it.each([
    ["behind a finished term", 'whl.rock == "clear" |'],
    ["for a word no name has", "gearbox oil|"],
    ["in quotes that belong to nothing known", '"firm|'],
  ])("nothing %s", (_what, marked) => {
    expect(chosen(marked)).toEqual([]);
  });
  it("tells a function with its arguments", () => {
    const { offers } = completions("pad_t", 5, declared, spoken);
    expect(offers.map(({ says }) => says)).toEqual(["pad_taper(lead: length, trail: length)"]);
  });
  it("offers the names on an empty field", () => {
    expect(
      completions("", 0, declared, spoken)
        .offers.slice(0, 3)
        .map(({ says }) => says),
    ).toEqual(["Rock at the wheel", "End float", "brk.pedal"]);
  });
});
