/** What each problem of assessing and of a visit file says, keyed by code. Knows texts only. */
import type { Problem } from "../terms/index.js";

type Params = Problem["params"];

const text = (params: Params, key: string): string => {
  const value = params[key];
  return Array.isArray(value) ? value.join(", ") : String(value ?? "");
};
const expected = (params: Params): string => {
  const all = text(params, "expected");
  return all === "" ? "" : `; expected ${all}`;
};

const MESSAGES: Readonly<Record<string, (params: Params) => string>> = {
  "assess.reply-nowhere": (p) => `the reply to ${text(p, "key")} has no such ${text(p, "what")} on this car`,
  "assess.reply-kind": (p) => `the reply to ${text(p, "key")} is of another kind${expected(p)}`,
  "assess.unit-unknown": (p) => `“${text(p, "unit")}” is no unit of ${text(p, "quantity")} (${text(p, "key")})`,
  "assess.reading-not-read": (p) => `“${text(p, "typed")}” (${text(p, "key")}) cannot be read as a number`,
  "assess.not-finite": (p) => `the value of ${text(p, "key")} is no finite number`,
  "assess.no-values": (p) => `the reading of ${text(p, "key")} has no value`,
  "assess.fact-kind": (p) => `“${text(p, "value")}” does not fit the car fact ${text(p, "fact")}`,
  "assess.limit-unknown": (p) => `the limits book names ${text(p, "limit")}, which no loaded sheet has`,
  "assess.figure-not-read": (p) =>
    `the figure “${text(p, "typed")} ${text(p, "unit")}” for ${text(p, "limit")} cannot be read`,
  "assess.figure-empty": (p) => `the limits book has no figure for ${text(p, "limit")}`,
  "assess.regrade-no-fault": (p) =>
    `a grade given by hand names ${text(p, "fault")} at ${text(p, "place")}, which is not found`,
  "assess.regrade-no-reason": (p) =>
    `${text(p, "fault")} at ${text(p, "place")} may be lowered to ${text(p, "grade")} only with a reason`,
  "visit.format": (p) => `this is no visit file: format is ${text(p, "found")}${expected(p)}`,
  "visit.not-a-list": () => "a list must stand here",
  "visit.text": (p) => `${text(p, "found")} is no text`,
  "visit.date": (p) => `${text(p, "found")} is no date; expected YYYY-MM-DD`,
  "visit.odometer": (p) => `${text(p, "found")} is no odometer figure; expected {"value": 48210, "unit": "km"}`,
  "visit.exposure": (p) => `${text(p, "found")} is no exposure${expected(p)}`,
  "visit.no-sheets": (p) => `no sheets are named, so no rule runs${expected(p)}`,
  "visit.unknown-sheet": (p) => `unknown sheet ${text(p, "found")}${expected(p)}`,
  "visit.car-shape": (p) => `${text(p, "found")} is no description of a car`,
  "visit.facts-shape": (p) => `${text(p, "found")} holds no car facts`,
  "visit.unknown-fact": (p) => `unknown car fact “${text(p, "found")}”${expected(p)}`,
  "visit.fact-value": (p) => `“${text(p, "found")}” does not fit this fact${expected(p)}`,
  "visit.place-shape": (p) => `${text(p, "found")} neither adds nor removes a place`,
  "visit.unknown-limit": (p) => `unknown limit “${text(p, "found")}”${expected(p)}`,
  "visit.reply-shape": (p) => `${text(p, "found")} is no reply`,
  "visit.unknown-point": (p) => `unknown point “${text(p, "found")}”: no loaded sheet has it`,
  "visit.unknown-place": (p) => `unknown place “${text(p, "found")}” for ${text(p, "point")}${expected(p)}`,
  "visit.place-kind": (p) =>
    `${text(p, "point")} is looked at per ${text(p, "kind")} and one by one, not at “${text(p, "place")}”${expected(p)}`,
  "visit.state-missing": (p) => `${text(p, "point")} is looked at in several car states; say which${expected(p)}`,
  "visit.unknown-state": (p) => `“${text(p, "found")}” is no car state of ${text(p, "point")}${expected(p)}`,
  "visit.non-answer": (p) => `unknown non-answer “${text(p, "found")}”${expected(p)}`,
  "visit.one-answer": (p) => `a reply to ${text(p, "point")} holds exactly one answer${expected(p)}`,
  "visit.unknown-field": (p) => `${text(p, "point")} has no field “${text(p, "found")}”${expected(p)}`,
  "visit.field-missing": (p) => `the reply fits several fields of ${text(p, "point")}; say which${expected(p)}`,
  "visit.fits-no-field": (p) => `${text(p, "found")} fits no field of ${text(p, "point")}${expected(p)}`,
  "visit.unknown-word": (p) => `unknown word ${text(p, "found")}${expected(p)}`,
  "visit.words-together": (p) => `these words cannot stand together: ${text(p, "found")}`,
  "visit.count": (p) => `${text(p, "found")} is no such count${expected(p)}`,
  "visit.reading": (p) => `${text(p, "found")} cannot be read as a number`,
  "visit.unit": (p) => `${text(p, "found")} is no unit of ${text(p, "quantity")}${expected(p)}`,
  "visit.units-mixed": (p) => `one reading, two units: ${text(p, "found")}`,
  "visit.gauge": (p) => `${text(p, "found")} is no gauge; expected {"resolution": 0.01, "error": 0.01}`,
  "place-id-used": (p) => `the place id ${text(p, "place")} is or was in use`,
  "unknown-place": (p) => `unknown place ${text(p, "place")}`,
};

/** A problem in words, with where it stands in front. */
export function tellProblem(problem: Problem): string {
  const words = MESSAGES[problem.code]?.(problem.params) ?? problem.code;
  const { path } = problem.where;
  return path === undefined ? words : `${path}: ${words}`;
}
