/**
 * What a problem says on a screen, by its code. Codes are raised in core and in the app; one that has no words here is
 * told plainly as unforeseen, with its code, so that nothing goes unsaid.
 */
import type { Problem } from "../../core/terms/index.js";
import { fill } from "./fill.js";

/** Texts by code; `{name}` is filled from the problem's params. */
export const problemTexts: Readonly<Record<string, string>> = {
  "units.empty": "Nothing is typed.",
  "units.too-long": "Too long for a reading.",
  "units.not-a-number": "“{typed}” is no number. Type 0.22, 3/32 or 4 thou.",
  "units.not-finite": "“{typed}” is no reading.",
  "units.two-numbers": "“{typed}” holds more than one number. One reading at a time.",
  "units.ambiguous-mark": "“{typed}” can be read two ways. Leave thousands marks out, or add a decimal.",
  "units.zero-below": "“{typed}” has nought below the line.",
  "units.unknown-unit": "“{unit}” is no unit known here. Known: {expected}.",
  "units.other-quantity": "“{unit}” measures something else. Known here: {expected}.",
  "units.fraction-needs-unit": "Is “{typed}” in {unit} or in inches? Add the unit.",
  "record.store-full": "This phone has no room left.",
  "record.store-refused": "This browser lets nothing be kept.",
  "record.store-lost": "The phone's storage did not answer.",
  "record.store-closed-by-newer": "A newer version is open in another window.",
  "record.store-blocked": "An older window of Leadlamp holds the record.",
  "record.blob-hash": "The bytes do not match their name, so they were not kept.",
  "record.blob-missing": "A picture or sheet this entry names is missing.",
  "record.demo-mixed": "The demo never mixes with your own cars.",
  "record.not-demo": "Only the demo can be removed this way.",
  "app.mistake": "A mistake of ours. Everything kept is safe. Load the page again. ({says})",
  "app.frozen-missing": "The sheet this visit was opened with is not on this phone any more.",
  "app.frozen-unreadable": "The sheet this visit was opened with can't be read.",
};

/** A problem in words. */
export function problemText(problem: Problem): string {
  const text = problemTexts[problem.code];
  if (text === undefined) return `Unforeseen: ${problem.code}.`;
  const words = Object.entries(problem.params).map(
    ([name, value]) => [name, typeof value === "object" ? value.join(", ") : value] as const,
  );
  return fill(text, Object.fromEntries(words));
}
