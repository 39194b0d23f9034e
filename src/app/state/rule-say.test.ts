/** Conditions and rules of the wheel sheet in spoken sentences, and rows that say what a person chose. */
import { describe, expect, it } from "vitest";
import { loadChecklists } from "../../build/load-checklists.js";
import { readCondition } from "../../core/expr/author.js";
import { type Term, writeCondition } from "../../core/expr/work.js";
import {
  firstTerm,
  hasTwin,
  placesFor,
  type Shape,
  shapeOf,
  shapesOf,
  subjectOf,
  termOf,
  withTerm,
} from "./condition-rows.js";
import { sayCondition } from "./condition-say.js";
import { sayRule } from "./rule-say.js";
import { namesOf } from "./sheet-names.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("The sheets do not stand.");
const all = result.value.sheets.map(({ sheet }) => sheet);
const [whl] = all.filter(({ id }) => id === "whl");
if (!whl) throw new Error("There is no wheel sheet.");
const names = namesOf({ sheet: whl, common: result.value.wholeWithTexts, others: all });

const said = (cel: string): string => {
  const rows = readCondition(cel);
  return rows ? sayCondition(names, rows) : "";
};
const typeOf = (name: string) => {
  const found = names.things.get(name);
  if (!found) throw new Error(`${name} is not named.`);
  return found.type;
};
const ruleSays = (id: string): string =>
  whl.rules.filter((rule) => rule.id === id).map((rule) => sayRule(names, rule, readCondition))[0] ?? "";

describe("a condition is said as a person would say it", () => {
  it.each([
    ['whl.rock == "clear"', "Rock at the wheel is “Plainly felt”"],
    ['whl.rock != "none"', "Rock at the wheel is not “None”"],
    ['opposite.whl.rock in ["none", "clear"]', "Rock at the wheel on the other side is “None” or “Plainly felt”"],
    ['!(whl.rock in ["none", "clear"])', "Rock at the wheel is none of “None” or “Plainly felt”"],
    ['!("same" in whl.drive)', "Drone and the drive does not include “Stays the same”"],
    ["band(whl.float) >= major", "End float is major or worse by its limit"],
    ["band(whl.float) < advisory", "End float is inside every limit"],
    ["clearly_more(whl.float, last(whl.float))", "End float is clearly more than End float at the last visit"],
    [
      'car.brakes == "outboard" && (whl.rock == "none" || whl.rock == "clear")',
      "Where the brakes sit is “In all four wheels” and (Rock at the wheel is “None” or Rock at the wheel is “Plainly felt”)",
    ],
    ['places("corner").all(c, c.whl.rock == "none")', "at every corner: Rock at the wheel there is “None”"],
    [
      '!(whl.rock == "clear" && whl.spin == "tight")',
      "not: Rock at the wheel is “Plainly felt” and Turning by hand is “Tight”",
    ],
  ])("%s", (cel, words) => {
    expect(said(cel)).toBe(words);
  });
});

describe("a rule is said in one sentence", () => {
  it("with its fault, grade and how sure", () => {
    expect(ruleSays("whl.r09b")).toBe(
      "At each corner: when Hub nut and its lock is “Torque lost”, then it finds “The hub nut has lost its torque”," +
        " major, certain; work: Torque and lock the hub nut; next to look at: Rock at the wheel, End float.",
    );
  });
  it("with the limit it is graded by", () => {
    expect(ruleSays("whl.r10")).toContain(
      "“Play in the wheel bearing”, graded by the limit of End float, at least minor, certain; work: Set the end float",
    );
  });
  it("with the effect, where it finds nothing", () => {
    expect(ruleSays("whl.r07")).toContain("then this does not count as looked at: Drone with road speed;");
  });
  it("with where it concludes and what it rests on", () => {
    expect(ruleSays("whl.r01b")).toContain("it concludes at each corner where Rod on the upright is “Grumble” or");
    expect(ruleSays("whl.r01b")).toContain("for now only, it rests on what nobody has said yet.");
  });
  it("as its text, where the condition is of no usual shape", () => {
    const [rule] = whl.rules.filter(({ id }) => id === "whl.r09b");
    expect(rule && sayRule(names, rule, () => undefined)).toContain('when whl.nut == "torque-lost", then');
  });
});

describe("a row of a condition", () => {
  it.each<[string, readonly Shape[]]>([
    ["whl.rock", ["is", "is-not", "one-of", "none-of"]],
    ["whl.drive", ["includes", "lacks"]],
    ["whl.float", ["at-least", "inside", "more-than-last", "more-than-twin"]],
    ["car.brakes", ["is", "is-not", "one-of", "none-of"]],
  ])("of %s asks what fits it", (name, shapes) => {
    expect(shapesOf(typeOf(name), { twin: true, silence: false, fact: name.startsWith("car.") })).toEqual(shapes);
  });
  it("may ask what nobody said in a provisional rule only", () => {
    expect(shapesOf(typeOf("whl.rock"), { twin: true, silence: true, fact: false })).toContain("unanswered");
    expect(shapesOf(typeOf("car.brakes"), { twin: true, silence: true, fact: true })).not.toContain("unanswered");
  });
  it("says what was chosen, and is read back as that", () => {
    for (const name of ["whl.rock", "whl.drive", "whl.float", "car.brakes"])
      for (const shape of shapesOf(typeOf(name), { twin: true, silence: true, fact: false })) {
        const made = termOf({ name, at: "" }, typeOf(name), shape);
        expect([name, shapeOf(made)]).toEqual([name, shape]);
        expect(subjectOf(made)).toEqual({ name, at: "" });
        const back = readCondition(writeCondition({ join: "all", terms: [made] }));
        expect(back?.terms.map(shapeOf)).toEqual([shape]);
      }
  });
  it("keeps its words when only the way of asking changes", () => {
    const before: Term = { is: "word", of: { name: "whl.rock", at: "" }, sign: "==", word: "clear" };
    expect(termOf({ name: "whl.rock", at: "" }, typeOf("whl.rock"), "one-of", before)).toEqual({
      is: "one-of",
      of: { name: "whl.rock", at: "" },
      words: ["clear"],
    });
  });
  it("reads here and where a relation leads", () => {
    expect(placesFor(names, "corner", "corner").map(({ at }) => at)).toEqual(["", "opposite", "steered"]);
    expect(placesFor(names, "car", "corner")).toEqual([]);
    expect(hasTwin(names, "corner", "corner")).toBe(true);
    expect(hasTwin(names, "car", "car")).toBe(false);
  });
  it("begins with the first thing that can be asked there", () => {
    const first = firstTerm(names, "corner", "");
    expect(first && names.at("corner").map(({ name }) => name)).toContain(first && subjectOf(first)?.name);
  });
  it("is changed or taken out among the others", () => {
    const [a, b]: readonly Term[] = [
      { is: "yes", of: { name: "whl.a", at: "" } },
      { is: "yes", of: { name: "whl.b", at: "" } },
    ];
    expect(a && b && withTerm({ join: "any", terms: [a, a] }, 1, b)).toEqual({ join: "any", terms: [a, b] });
    expect(a && b && withTerm({ join: "any", terms: [a, b] }, 0, undefined)).toEqual({ join: "any", terms: [b] });
  });
});
