/** What was said after the visit a year ago: its complaint answered, the car handed back. Invented. */
import type { ComplaintAnswer, Release } from "../../core/record/index.js";
import { PEOPLE } from "./names.js";

export const knockAnswered = (on: string): ComplaintAnswer => ({
  word: "not-heard",
  findings: [],
  words: "Driven three times over the drain covers in the lane, windows down, and tried by hand on the lift",
  who: PEOPLE.ines.name,
  on,
});

export const handedBack = (on: string): Release => ({
  who: PEOPLE.ines.name,
  on,
  how: "driven",
  odometer: { value: "61249", unit: "km" },
  told: [
    "Rear right wheel bearing: to be ordered, looked at again next autumn at the latest",
    "Front right caliper: to be watched",
  ],
});
