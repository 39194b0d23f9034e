/**
 * The reasons of planning in words, by code. Codes and figures come from core/plan; a code that has no words
 * here shows as itself and fails the test that walks all codes.
 */

/** Texts by code; `{name}` is filled from the reason's figures after {@link whyWord} put them into words. */
export const whyTexts: Readonly<Record<string, string>> = {
  "due.must-stand": "It is dangerous and the car must not be moved as it is.",
  "due.dangerous-and-likely": "It is dangerous and likely to happen.",
  "due.dangerous": "It is dangerous.",
  "due.worst-outcome-and-likely": "The worst outcome is catastrophic, and it is likely enough.",
  "due.limit-passed": "A limit that must not be passed is passed already.",
  "due.major": "It is major: put right before normal use.",
  "due.rank": "Outcome and likelihood together put it here.",
  "due.limit-before-next-visit": "The limit is reached before the next visit.",
  grade: "Graded {grade}.",
  rank: "Worst outcome {severity}, {likelihood}: {rank} in the table of 20, {band}.",
  "exposure.hard": "Hard use until the next visit counts it one step likelier.",
  "exposure.laid-up": "The car is laid up, which counts it one step less likely.",
  "measure-again": "The reading is too close to call: measure again first.",
  "look-again-at-grade": "Its outcome is grave: is {grade} enough? Look again.",
  "answers-several": "It answers {faults} findings at once.",
  "brought-along": "Other work on this list cannot do without it, and it is done once for all of it.",
  "above.dangerous": "It stands above the next because a dangerous finding comes before all others.",
  "above.due": "It stands above the next because it is due sooner: {upper}, the next {lower}.",
  "above.rank": "It stands above the next because outcome and likelihood are worse: {upper} against {lower} of 20.",
  "above.grade": "It stands above the next because {upper} comes before {lower}.",
  "above.left": "It stands above the next because its limit, or what is stated for it, is nearer.",
  "above.position": "Nothing else tells them apart: it comes first on the way round the car.",
  "above.id": "Nothing tells them apart: their order is fixed by name.",
};

const SEVERITY: Readonly<Record<string, string>> = {
  1: "catastrophic",
  2: "critical",
  3: "marginal",
  4: "negligible",
};
const LIKELIHOOD: Readonly<Record<string, string>> = {
  A: "frequent",
  B: "probable",
  C: "occasional",
  D: "remote",
  E: "improbable",
};
const DUE: Readonly<Record<string, string>> = {
  0: "before the car is moved",
  1: "before the next drive",
  2: "soon",
  3: "at the next visit",
  4: "to be watched",
};

/** A figure of a reason in words: outcome and likelihood as in MIL-STD-882D, due classes in plain words. */
export function whyWord(code: string, name: string, value: string | number): string | number {
  if (name === "severity") return SEVERITY[value] ?? value;
  if (name === "likelihood") return LIKELIHOOD[value] ?? value;
  if (code === "above.due" && (name === "upper" || name === "lower")) return DUE[value] ?? value;
  return value;
}
