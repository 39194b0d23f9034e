/** What each problem of a sheet says, keyed by code. Knows texts only; where it stands is put in front by `tell`. */
import { tellExpression } from "../expr/author.js";
import type { Problem } from "../terms/index.js";

type Params = Problem["params"];
type Text = (params: Params) => string;

const text = (params: Params, key: string): string => {
  const value = params[key];
  return Array.isArray(value) ? value.map((v) => `“${v}”`).join(", ") : String(value ?? "");
};
/** One of these, with “or” before the last; long lists are cut. */
function choices(params: Params, key = "expected"): string {
  const value = params[key];
  const all = Array.isArray(value) ? value.map(String) : value === undefined ? [] : [String(value)];
  if (all.length === 0) return "nothing known";
  const shown = all.slice(0, 8);
  if (all.length > shown.length) return `${shown.join(", ")} … (${all.length} in all)`;
  return shown.length === 1 ? String(shown[0]) : `${shown.slice(0, -1).join(", ")} or ${shown.at(-1)}`;
}
const unknown =
  (what: string): Text =>
  (p) =>
    `unknown ${what} “${text(p, "found")}”; expected ${choices(p)}`;

/** Every code a sheet can be refused or remarked on with, and its words. */
export const MESSAGES: Readonly<Record<string, Text>> = {
  // the text itself
  "yaml-syntax": (p) => `this cannot be read: ${text(p, "message")}`,
  "yaml-too-large": (p) => `the text is too large: at most ${text(p, "most")} ${text(p, "of")}`,
  "yaml-too-deep": (p) => `lists and mappings lie too deep in one another: at most ${text(p, "most")} levels`,
  "yaml-tag": (p) => `tag “${text(p, "found")}” is not allowed; text that begins with “!” goes in quotes`,
  "yaml-alias": (p) => `“${text(p, "found")}”: anchors and aliases are not allowed; write it out, or quote the text`,
  "yaml-directive": (p) => `directive “${text(p, "found")}” is not allowed`,
  "yaml-documents": () => "one text holds one document: “---” may not start another",
  "yaml-duplicate-key": (p) => `key “${text(p, "key")}” stands twice in this mapping`,
  "yaml-key": (p) => `“${text(p, "key")}” may not be a key`,
  "yaml-number": (p) => `“${text(p, "found")}” is no number that can be kept`,
  "yaml-empty": () => "nothing is written here",
  "condition-unquoted": (p) => `condition “${text(p, "found")}” stands without quotes; quote it or write it as a block`,
  "part-mapping": (p) => `this part must be a mapping with ${choices(p)}`,
  "stray-file": (p) => `file “${text(p, "found")}” belongs to no part; expected ${choices(p)}`,
  "folder-name": (p) => `sheet “${text(p, "id")}” stands in folder “${text(p, "folder")}”; the two must be named alike`,
  "missing-file": (p) => `file “${text(p, "found")}” is missing`,
  "unreadable-file": (p) => `file “${text(p, "found")}” cannot be read: ${text(p, "message")}`,
  // shape
  "missing-key": (p) => `“${text(p, "key")}” is missing; expected ${choices(p)}`,
  "unknown-key": (p) => `unknown key “${text(p, "key")}”; expected ${choices(p)}`,
  "wrong-value": (p) => `“${text(p, "found")}” does not fit; expected ${choices(p)}`,
  "null-word": (p) => `nothing (null) stands here; expected ${choices(p)}; the word “null” needs quotes`,
  "bad-form": (p) => `“${text(p, "found")}” has the wrong form; expected ${text(p, "expected")}`,
  "empty-text": (p) => `“${text(p, "key")}” is empty`,
  "too-few": (p) => `“${text(p, "key")}” needs at least ${text(p, "least")}`,
  "too-many": (p) => `“${text(p, "key")}” may hold at most ${text(p, "most")}`,
  // ids and names
  "duplicate-id": (p) => `id “${text(p, "id")}” is taken already: ${text(p, "first")}`,
  "id-prefix": (p) => `id “${text(p, "id")}” must begin with “${text(p, "prefix")}”`,
  "brought-differs": (p) =>
    `“${text(p, "id")}” is brought by ${text(p, "first")} too, and not the same: one thing, one meaning`,
  "reserved-id": (p) => `sheet id “${text(p, "id")}” has a meaning of its own in conditions; choose another`,
  "names-collide": (p) =>
    `“${text(p, "first")}” and “${text(p, "second")}” are both “${text(p, "name")}” in conditions; rename one`,
  "unknown-place": unknown("place"),
  "unknown-place-kind": unknown("kind of place"),
  "unknown-state": unknown("car state"),
  "unknown-point": unknown("point"),
  "unknown-field": unknown("field"),
  "unknown-word": unknown("reply word"),
  "unknown-fault": unknown("fault"),
  "unknown-rule": unknown("rule"),
  "unknown-job": unknown("job"),
  "unknown-caution": unknown("caution"),
  "unknown-gauge": unknown("gauge or aid"),
  "unknown-access": unknown("access"),
  "unknown-relation": unknown("relation or place"),
  "unknown-fact": unknown("car fact"),
  "unknown-quantity": unknown("quantity"),
  "unknown-unit": unknown("unit"),
  "unknown-guard": unknown("car state or act to guard"),
  "name-not-loaded": (p) => `“${text(p, "found")}” belongs to sheet “${text(p, "sheet")}”, which is not loaded`,
  "duplicate-word": (p) => `“${text(p, "word")}” stands twice`,
  "reserved-word": (p) => `“${text(p, "word")}” is a non-answer and may not be a reply word`,
  "place-id-used": (p) => `place id “${text(p, "place")}” is or was in use; ids are never used again`,
  // points
  "no-field": (p) => `point “${text(p, "point")}” has no field to answer`,
  "exclusive-alone": () => "“exclusive” needs “several: true”: one word alone excludes every other anyway",
  "unremarkable-measured": (p) =>
    `field “${text(p, "field")}” is not answered by words; ‘no fault seen’ may not fill it`,
  "unremarkable-several": (p) => `field “${text(p, "field")}” takes one word; ‘no fault seen’ may not enter several`,
  "unremarkable-gap": (p) =>
    `‘no fault seen’ leaves field “${text(p, "field")}” open; give its word or make it optional`,
  "set-up-alone": () => "“set-up-error” needs a reading and a gauge as tool",
  "needs-reading": () => "“needs: reading” on a point without a reading",
  "window-order": (p) => `from ${text(p, "from")} to ${text(p, "to")} is no range: the first must be the smaller`,
  "unit-clash": (p) =>
    `${text(p, "what")} is ${text(p, "quantity")} (${text(p, "unit")}), but ${text(p, "other")} is ${text(p, "otherQuantity")} (${text(p, "otherUnit")})`,
  "gauge-step": (p) => `${text(p, "key")} ${text(p, "found")} is no step a gauge can have`,
  // limits
  "limit-of-words": (p) => `“${text(p, "of")}” is no reading; a limit judges readings and derived values`,
  "bands-empty": (p) => `limit “${text(p, "limit")}” has no band`,
  "bands-order": (p) =>
    `${text(p, "milder")} ${text(p, "milderEdge")} and ${text(p, "worse")} ${text(p, "worseEdge")} do not grow worse going ${text(p, "direction")}`,
  "band-too-narrow": (p) =>
    `band ${text(p, "band")} of “${text(p, "limit")}” is ${text(p, "width")} ${text(p, "unit")} wide, but “${text(p, "gauge")}” can only tell it when wider than ${text(p, "least")} ${text(p, "unit")} (U = ${text(p, "uncertainty")} ${text(p, "unit")})`,
  "class-differs": (p) => `“${text(p, "of")}” is looked at per ${text(p, "kind")}; the limit says ${text(p, "found")}`,
  "source-missing": (p) => `“${text(p, "id")}” does not say where its figure comes from`,
  "unused-limit": (p) =>
    `limit “${text(p, "limit")}” is used by no rule: no grade and no band() looks at “${text(p, "of")}”`,
  // derived values, rules, jobs, gates
  "derived-formula": (p) => `derived value “${text(p, "derived")}” needs either “formula” or “prefer”`,
  "prefer-words": (p) => `“${text(p, "of")}” is no reading and cannot stand for a derived value`,
  "rule-incomplete": (p) => `rule “${text(p, "rule")}” concludes a finding and must state ${text(p, "missing")}`,
  "rule-without-finding": (p) => `rule “${text(p, "rule")}” concludes no finding and may not state ${text(p, "extra")}`,
  "worse-not-worse": (p) => `“worse” must be above the grade ${text(p, "grade")}`,
  "no-limit-over": (p) => `no limit judges “${text(p, "of")}”, so it gives no grade`,
  "never-fires": (p) => `rule “${text(p, "rule")}” can never fire: no reply to ${text(p, "names")} makes it true`,
  "rules-disagree": (p) =>
    `rules “${text(p, "other")}” and “${text(p, "rule")}” hold at the same moment and grade “${text(p, "fault")}” differently: ${text(p, "grades")}`,
  "minutes-order": (p) => `minutes ${text(p, "found")} must run from low over likely to high`,
  cycle: (p) => `this goes in a circle: ${text(p, "chain")}`,
  "next-look-subject": () => "a next look needs one of “fault”, “grade” or “job”",
  "next-look-when": () => "a next look needs “km” or “months”",
  "weight-range": (p) => `weight ${text(p, "found")} must be 1 (faint), 2 (fair) or 3 (strong)`,
  // cases
  "no-firing-case": (p) => `rule “${text(p, "rule")}” has no case that fires it`,
  "no-near-miss": (p) => `no case of rule “${text(p, "rule")}” has a near miss`,
  "near-miss-one": (p) => `a near miss changes one reply or one fact; this changes ${text(p, "count")}`,
  "near-miss-new": (p) => `near miss changes “${text(p, "key")}”, which the case does not reply to`,
  "near-miss-same": (p) => `near miss repeats the reply to “${text(p, "key")}”`,
  "near-miss-unknown": (p) => `near miss must be a known reply; “${text(p, "found")}” is a non-answer`,
  "case-place": (p) => `“${text(p, "point")}” is looked at per ${text(p, "kind")}, not at “${text(p, "place")}”`,
  "case-state": (p) => `“${text(p, "key")}” is asked in several car states; say which: ${choices(p)}`,
  "case-value": (p) => `“${text(p, "found")}” is no reply to “${text(p, "point")}”; expected ${choices(p)}`,
  "case-expects-other": (p) => `the case fires “${text(p, "rule")}” but does not expect ${text(p, "expected")}`,
  "case-failed": (p) => `case of “${text(p, "rule")}”: ${text(p, "message")}`,
  // against the edition before
  "id-other-place": (p) =>
    `“${text(p, "id")}” was looked at per ${text(p, "before")} in the edition before, now per ${text(p, "now")}; that is another thing: take it out and add a new one`,
  "id-other-field": (p) =>
    `“${text(p, "id")}” meant its field “${text(p, "before")}” in the edition before, now “${text(p, "now")}”; put that first again, or add a new one`,
  "id-other-reply": (p) =>
    `“${text(p, "id")}” was answered with ${text(p, "before")} in the edition before, now with ${text(p, "now")}; add a new one for that`,
  "id-other-quantity": (p) =>
    `“${text(p, "id")}” was ${text(p, "before")} in the edition before, now ${text(p, "now")}; add a new one for that`,
  "id-other-subject": (p) =>
    `“${text(p, "id")}” judged “${text(p, "before")}” in the edition before, now “${text(p, "now")}”; add a new one for that`,
  "id-words-gone": (p) =>
    `${text(p, "words")} could be replied to “${text(p, "id")}” in the edition before and may not go: visits hold it`,
  // texts
  "text-missing": (p) => `text “${text(p, "key")}” is missing in language “${text(p, "language")}”`,
  "text-unused": (p) => `text “${text(p, "key")}” belongs to nothing in this sheet`,
  "text-language": (p) => `the texts in “${text(p, "language")}” say they are in “${text(p, "found")}”`,
  "texts-none": () => "the sheet has no texts in any language",
  "more-problems": (p) => `and ${text(p, "count")} more; mend these first`,
};

/** A problem as one line: `file:line:column message`; the path stands in for what has no file. */
export function tell(problem: Problem): string {
  const { file, line, column, path } = problem.where;
  const place = file !== undefined ? [file, line, column].filter((x) => x !== undefined).join(":") : (path ?? "");
  const words = MESSAGES[problem.code]?.(problem.params) ?? tellExpression(problem) ?? problem.code;
  return place === "" ? words : `${place} ${words}`;
}
