/** Which findings are offered as the answer to a complaint: few at once, the likeliest and worst, all by a word. */
import { expect, test } from "vitest";
import { choicesOffered, type FaultChoice, OFFERED } from "./complaint-answers.js";

const choices: readonly FaultChoice[] = Array.from({ length: 63 }, (_, i) => ({
  id: `f${i}@FR`,
  fault: `f${i}`,
  place: "FR",
  words: i === 50 ? "Seal torn, rear left" : `Joint ${i} worn, front right`,
  isLikely: i < 2,
}));
const none = (): boolean => false;
const ids = (offered: readonly FaultChoice[]): readonly string[] => offered.map(({ id }) => id);

test("of sixty-three findings the first few are offered, and what is chosen always stands", () => {
  expect(ids(choicesOffered(choices, none, " "))).toEqual(["f0@FR", "f1@FR", "f2@FR", "f3@FR", "f4@FR", "f5@FR"]);
  const chosen = ids(choicesOffered(choices, (id) => id === "f40@FR", ""));
  expect(chosen).toHaveLength(OFFERED);
  expect(chosen[0]).toBe("f40@FR");
});

test("every finding is found by words it holds, in any order and case", () => {
  expect(ids(choicesOffered(choices, none, "left SEAL"))).toEqual(["f50@FR"]);
  expect(ids(choicesOffered(choices, none, "gearbox"))).toEqual([]);
  expect(ids(choicesOffered(choices, (id) => id === "f3@FR", "seal"))).toEqual(["f3@FR", "f50@FR"]);
});
