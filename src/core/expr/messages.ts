/** Texts for what the condition language refuses, by code. English, for whoever writes sheets. */
import type { Problem } from "../terms/index.js";

type Text = (say: (param: string) => string) => string;

/** What to write instead of a construct that is left out. */
const INSTEAD: Readonly<Record<string, string>> = {
  has: "a reply that is missing is handled by itself: leave `has` out",
  known: "a reply that is missing is handled by itself; `unanswered(x)` is for provisional rules",
  map: "`map` fails on one missing reply: use `exists`, `all` or `at_least`",
  filter: "`filter` fails on one missing reply: use `exists`, `all` or `at_least`",
  exists_one: "`exists_one` flips when a reply is added: use `exists` or `at_least`",
  ".?": "`.?` turns a missing reply into a value: write a plain `.`",
  "[?]": "nothing here is counted by position",
  "[]": "nothing here is counted by position: use `exists` or `all`",
  "%": "`%` is not used",
  map_literal: "`{}` is not used",
  null: "`null` is not used: a reply that is missing is handled by itself",
  literal: "write a plain number or a text in quotes",
  ".": "a name stands in front of a dot",
};

/** Every code of the author and run door with its text. */
export const EXPRESSION_MESSAGES: Readonly<Record<string, Text>> = {
  "expr.too-long": (say) => `the condition is too long: at most ${say("says")} signs`,
  "expr.too-deep": () => "too many brackets or parts inside one another: split the condition",
  "expr.syntax": (say) => `cannot be read from here: ${say("says")}`,
  "expr.refused": (say) => INSTEAD[say("what")] ?? `“${say("what")}” is not used in conditions`,
  "expr.number-range": (say) => `${say("text")} is too large a number`,
  "expr.whole-division": (say) => `${say("text")} divides whole numbers: write the decimal`,
  "expr.zero-below": () => "division by zero",
  "expr.unknown-name": (say) => `unknown name “${say("text")}”; nearest: ${say("expected")}`,
  "expr.unknown-fact": (say) => `the car has no fact “${say("text")}”; nearest: ${say("expected")}`,
  "expr.unknown-word": (say) => `the point has no word “${say("text")}”; it has ${say("expected")}`,
  "expr.unknown-kind": (say) => `no kind of place is called “${say("text")}”; nearest: ${say("expected")}`,
  "expr.unknown-fault": (say) => `no rule names the fault “${say("text")}”; nearest: ${say("expected")}`,
  "expr.unknown-function": (say) => `unknown function “${say("text")}”; nearest: ${say("expected")}`,
  "expr.sheet-not-loaded": (say) => `“${say("text")}” belongs to the sheet “${say("sheet")}”, which is not loaded`,
  "expr.no-relation": (say) =>
    `“${say("text")}” does not lead on from a ${say("kind")}; it does from ${say("expected")}`,
  "expr.list-not-place": (say) =>
    `“${say("text")}” is several places: use ${say("text")}.exists(c, …) or ${say("text")}.all(c, …)`,
  "expr.place-not-around": (say) =>
    `“${say("text")}” belongs to a ${say("of")}, and none is around a ${say("kind")}: use places("${say("of")}") with exists or all`,
  "expr.not-places": (say) => `exists and all go through places, not through ${say("found")}`,
  "expr.not-a-place": (say) => `a place is expected here, not ${say("found")}`,
  "expr.name-taken": (say) => `“${say("text")}” already means something: choose another letter`,
  "expr.too-nested": (say) => `at most ${say("most")} exists or all inside one another`,
  "expr.not-yes-or-no": (say) => `“${say("text")}” is ${say("found")}, not yes or no: compare it`,
  "expr.not-comparable": (say) => `${say("left")} and ${say("right")} cannot be compared`,
  "expr.not-a-list": (say) =>
    `after “in” comes a list of words in square brackets or a point of several words, not ${say("found")}`,
  "expr.empty-list": () => "nothing stands between the brackets",
  "expr.words-apart": () => "these two share no word: they are never equal",
  "expr.several-words": (say) => `“${say("text")}” may hold several words: write "word" in ${say("text")}`,
  "expr.no-order": (say) => `${say("found")} has no more or less: use == or !=`,
  "expr.yes-equal": () => "equality of conditions: write (a && b) || (!a && !b)",
  "expr.reading-equal": () => "two readings are never exactly equal: use >=, <= or clearly_more",
  "expr.bare-number": () =>
    "a reading meets a bare number: compare through a limit, band(reading) >= minor, or with another reading",
  "expr.other-quantity": (say) => `${say("left")} ${say("sign")} ${say("right")}: two kinds of quantity do not meet`,
  "expr.no-such-quantity": (say) => `${say("left")} ${say("sign")} ${say("right")} gives no quantity known here`,
  "expr.temperature-scaled": () => "a temperature has no true zero: multiply or divide a temperature difference",
  "expr.temperatures-added": () => "two temperatures have no sum; their difference is a temperature difference",
  "expr.not-a-figure": (say) => `calculating takes numbers and readings, not ${say("found")}`,
  "expr.choice-apart": (say) => `both ways of ? : must be alike, not ${say("left")} and ${say("right")}`,
  "expr.grade-with-other": (say) =>
    `a grade compares with a grade (advisory, minor, major, dangerous), not with ${say("found")}`,
  "expr.band-of": (say) => `band() takes one reading or derived value by name, not ${say("found")}`,
  "expr.median-of": (say) =>
    `median() takes one reading or derived value of this visit by its bare name, not ${say("found")}`,
  "expr.not-scaled": (say) => `clearly_more takes readings, or a fixed factor times a reading, not ${say("found")}`,
  "expr.only-provisional": () => "unanswered() is for provisional rules: mark the rule or leave it out",
  "expr.only-findings": () => "found() is for rules that work on findings (raise, lower-sure, order …)",
  "expr.fault-text": () => 'the fault goes in quotes: found("whl.race")',
  "expr.unanswered-of": (say) => `unanswered() takes the name of a reply, not ${say("found")}`,
  "expr.last-of": (say) =>
    `${say("of")}() takes the name of a reply, as in ${say("of")}(whl.float), not ${say("found")}: only replies are kept from visit to visit`,
  "expr.last-band": () =>
    "limits judge this visit's readings; the last one is compared, as in clearly_more(whl.float, last(whl.float))",
  "expr.last-call": (say) => `an earlier visit is asked with last(…), the place inside: last(${say("says")})`,
  "expr.arguments": (say) => `${say("text")} takes ${say("expected")} argument(s)`,
  "expr.argument": (say) => `${say("of")}: “${say("argument")}” is ${say("expected")}, not ${say("found")}`,
  "expr.argument-range": (say) =>
    `${say("of")}: “${say("argument")}” is ${say("text")} here; it must be ${say("expected")}`,
  "expr.argument-few": (say) => `${say("of")}: “${say("argument")}” needs at least ${say("expected")} figures`,
  "expr.argument-word": (say) =>
    `${say("of")}: “${say("argument")}” has no word “${say("found")}”; it has ${say("expected")}`,
  "expr.amount": (say) => `amount takes a plain number and a unit in quotes, amount(12.0, "mm"), not ${say("found")}`,
  "expr.unknown-unit": (say) => `“${say("text")}” is no unit known here`,
  "expr.at-least-count": (say) => `at_least begins with a whole number from 1 to ${say("most")}`,
  "expr.gives": (say) => `this gives ${say("found")}; ${say("expected")} is expected`,
  "expr.plan-version": (say) => `made by another version (${say("found")}): make it again from its text`,
  "expr.plan-broken": (say) => `the stored condition is damaged (${say("found")}): make it again from its text`,
  "expr.no-function": (say) => `this edition of the app has no function “${say("found")}”`,
  "expr.not-finite": () => "could not be worked out: a division by zero, or figures the function has no answer for",
  "expr.other-reply": () => "the reply is of another kind than the point declares",
};

/** A problem in words; undefined when it is none of this folder's. */
export function tellExpression({ code, params }: Problem): string | undefined {
  return EXPRESSION_MESSAGES[code]?.((param) => {
    const value = params[param];
    return Array.isArray(value) ? value.join(", ") || "none" : String(value ?? "");
  });
}
