// An owner is never told a finding more mildly than it is graded: which wording is taken, and what it means for driving.
import { describe, expect, test } from "vitest";
import { done, fault, job, soundVisit, WORDS } from "../../../../tests/support/handover-visit.js";
import { wholeVisit } from "../../../../tests/support/handover-whole.js";
import { type FaultWords, faultWords, worstRules } from "./fault-words.js";
import { handover, handoverPages, toText } from "./index.js";
import type { CautionTold, FaultTold, HandoverInput } from "./input.js";

const RULES: Readonly<Record<string, FaultWords>> = {
  r1: { says: "Rough", owner: "It grumbles" },
  r2: { says: "Rough and loose", owner: "It is about to fail" },
  r3: { says: "Metal in the grease" },
};
const wording = { ofRule: (id: string) => RULES[id], ofFault: { says: "Race", owner: "It breaks up", cause: "age" } };

describe("HO41 the words of a fault", () => {
  test("an owner hears the rule that reached the grade, whatever milder rules named it too", () => {
    expect(faultWords(wording, ["r1", "r2"], ["r2"], "owner")).toEqual({ says: "It is about to fail", cause: "age" });
  });
  test("a rule without words for an owner leaves the fault's own, never the workshop's", () => {
    expect(faultWords(wording, ["r3"], ["r3"], "owner")?.says).toBe("It breaks up");
    expect(faultWords(wording, ["r1", "r3"], ["r3"], "owner")?.says).toBe("It breaks up");
  });
  test("a technician hears the rule where one alone found it, else the fault", () => {
    expect(faultWords(wording, ["r2"], ["r2"], "technician")?.says).toBe("Rough and loose");
    expect(faultWords(wording, ["r1", "r2"], ["r2"], "technician")?.says).toBe("Race");
  });
  test("nobody has words for it", () => {
    expect(faultWords({ ofRule: () => undefined, ofFault: undefined }, [], [], "owner")).toBeUndefined();
  });
  test("the gravest findings of a fault are those that reached its grade", () => {
    expect(
      worstRules([
        { rule: "a", grade: "minor" },
        { rule: "b", grade: "major" },
        { rule: "c", grade: "major" },
      ]),
    ) //
      .toEqual(["b", "c"]);
    expect(worstRules([])).toEqual([]);
  });
});

const CAUTION: CautionTold = {
  caution: "cau.x",
  signal: "danger",
  not: "Don't drive it",
  why: "",
  can: "",
  todo: "",
  places: [],
  forbids: "driving",
  faults: [{ fault: "whl.play", place: "RR" }],
};
const owner = (of: FaultTold, more: Partial<HandoverInput> = {}): string =>
  toText(handoverPages(handover(soundVisit({ for: "owner", faults: [of], ...more })), WORDS), WORDS);

describe("HO42 what a finding means for driving", () => {
  const cases: readonly (readonly [string, Partial<FaultTold>, Partial<HandoverInput>, string])[] = [
    ["dangerous", { grade: "dangerous" }, {}, "Do not drive the car until this is mended."],
    ["must stand", { mustStand: true }, {}, "Do not drive the car until this is mended."],
    ["a caution that forbids driving", {}, { cautions: [CAUTION] }, "Do not drive the car until this is mended."],
    [
      "work before it is moved",
      {},
      { jobs: [job({ byWhen: { class: 0 } })] },
      "Do not drive the car until this is mended.",
    ],
    [
      "work before the next drive",
      {},
      { jobs: [job({ byWhen: { class: 1 } })] },
      "To be mended before the next drive.",
    ],
    [
      "no farther than a workshop",
      { grade: "major" },
      { cautions: [{ ...CAUTION, forbids: "beyond-workshop" }] },
      "No farther than to a workshop until this is mended.",
    ],
    ["major", { grade: "major" }, {}, "To be mended before the car is used as usual."],
    [
      "major and too close to call",
      { grade: "major", close: true },
      {},
      "To be mended, or measured again and found good, before the car is used as usual.",
    ],
    [
      "dangerous and too close to call",
      { grade: "dangerous", close: true },
      {},
      "Do not drive the car until this is mended, or measured again and found good.",
    ],
  ];
  for (const [name, of, more, says] of cases)
    test(`${name}: told with the finding and on the first page`, () => {
      const lines = owner(fault(of), more).split("\n");
      expect(lines.filter((line) => line.includes(says)).length).toBeGreaterThanOrEqual(
        // What can wait by its grade stands with its finding only.
        name.startsWith("a caution") || name === "must stand" ? 1 : 2,
      );
    });

  test.each([
    ["minor", fault()],
    [
      "dangerous, put right and looked at again",
      fault({ grade: "dangerous", mended: { on: "2031-05-04", checked: true } }),
    ],
  ])("nothing is said of one that is %s", (_, of) => {
    expect(owner(of)).not.toMatch(/until this is mended|To be mended/);
  });
  test("done, and nobody has looked again: it still stands", () => {
    const of = fault({ grade: "dangerous", mended: { on: "2031-05-04", checked: false } });
    expect(owner(of, { done: [done()] })).toContain("Do not drive the car until this is mended.");
  });
  test("the workshop's and a buyer's copy speak by grade and check alone", () => {
    for (const reader of ["technician", "buyer"] as const)
      expect(toText(handoverPages(handover(wholeVisit({ for: reader })), WORDS), WORDS)).not.toContain(
        "until this is mended",
      );
  });
});
