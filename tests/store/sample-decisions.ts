/** One good body of every kind that tells the owner's word, version 1, and words for the four decisions. */
import type { Decision, DecisionBodies } from "../../src/core/record/index.js";

/** Who decides in tests; how and when it was told. */
const BY = { who: "Anna", role: "owner", how: "in-person", on: "2026-03-02" } as const;
export const PRICE = { likely: 41_500, p80: 48_000, high: 56_500, currency: "EUR" } as const;

/** The four words with all that may go with each. */
export const FOUR: { readonly [W in Decision["word"]]: Decision } = {
  "yes-now": { ...BY, word: "yes-now", price: PRICE, estimate: "plan:v/w1/2/e" },
  "yes-by": { ...BY, word: "yes-by", by: "2026-06-01", odometer: { value: 66_000, unit: "km" }, price: PRICE },
  no: {
    ...BY,
    word: "no",
    because: "The car is to be sold",
    price: PRICE,
    warning: {
      shown: [
        { of: "finding", id: "whl.race@RR", words: "Wheel bearing broken up, rear right: dangerous" },
        { of: "caution", id: "cau.dont-drive", words: "DANGER: Do not drive this car." },
      ],
      acknowledged: "2026-03-02T10:15:00.000Z",
    },
  },
  "tell-me-more": { ...BY, word: "tell-me-more", what: "Would a used one do?", role: "for-the-owner" },
};

export const DECISION_BODIES: { readonly [K in keyof DecisionBodies]: DecisionBodies[K] } = {
  decision: { job: "whl.bearing", place: "FR", said: FOUR.no, replaces: [] },
  "decision.answer": {
    question: "plan:v/w1/3/q",
    answer: { words: "A used one has the same hours behind it.", on: "2026-03-03" },
    replaces: [],
  },
  "decision.signed": {
    decisions: ["plan:v/w1/3/q"],
    who: "Anna",
    on: "2026-03-02",
    drawn: {
      width: 320,
      height: 120,
      strokes: [
        [10, 60, 40, 20, 80, 90],
        [120, 60],
      ],
    },
  },
};
