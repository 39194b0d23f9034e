/**
 * What has been looked at: the points asked of this person, the state of each, coverage per sheet. A point is sound
 * only when really answered, with every limit and rule over it known and none fired.
 */
import { type Audience, type GradeLevel, gradeOf, type NonAnswer } from "../terms/index.js";
import { askedIn } from "./asked.js";
import type { Asked, Coverage, Opened, PointState } from "./contract.js";
import type { Given } from "./given.js";
import type { SlotNode, Spot } from "./nodes.js";
import type { Site } from "./site.js";
import type { Standing } from "./understand.js";

/** Not enough seen when more than this many tenths of what is asked were not looked at (common practice, no source). */
const UNSEEN_TENTHS = 3;

/** What rules and limits say about a point at a place, by index of the spot. */
export interface Verdicts {
  /** Worst grade that rests on it; 0 none. */
  readonly grades: readonly (GradeLevel | undefined)[];
  /** A rule or limit over it that is not known, or an effect that fired on it. */
  readonly open: readonly (boolean | undefined)[];
  readonly notChecked: ReadonlySet<number>;
}

export interface LookedInput {
  readonly site: Site;
  readonly given: Given;
  /** By index of the spot. */
  readonly answers: readonly Answer[];
  readonly who: Audience;
  readonly verdicts: Verdicts;
  /** Whether a point hidden until felt or asked for is to be asked. */
  readonly isShown: (spot: Spot) => boolean;
  /** What opens points: rules, complaints, gates. */
  readonly opened: readonly Opened[];
  /** Nothing is sound when a condition could not be linked. */
  readonly broken: boolean;
}

export interface Looked {
  readonly points: readonly PointState[];
  readonly asked: readonly Asked[];
  readonly coverage: readonly Coverage[];
}

/** `partly`: some field is wanting, or the reply could not be understood. */
export type Answer = "answered" | "partly" | "non-answer" | "not-fitted" | "none";

/** How far every spot is answered, by index. */
export const answersOf = (site: Site, given: Given): readonly Answer[] =>
  site.spots.map((spot) => answerOf(given, spot));

/** Every field that is not optional answered; at least one where all are. */
function answerOf(given: Given, spot: Spot): Answer {
  let answered = false;
  let tried = false;
  let wanting = false;
  let nonAnswer: NonAnswer | undefined;
  for (const slot of spot.slots) {
    let real = false;
    for (const s of given.replies[slot.id] ?? NONE) {
      if (s.nonAnswer !== undefined) nonAnswer ??= s.nonAnswer;
      else if (s.problems.length === 0) real = true;
      else tried = true;
    }
    if (real) answered = true;
    else if (slot.field.field.optional !== true) wanting = true;
  }
  if (answered) return wanting ? "partly" : "answered";
  if (tried) return "partly";
  if (nonAnswer === undefined) return "none";
  return nonAnswer === "not-fitted" ? "not-fitted" : "non-answer";
}
const NONE: readonly Standing[] = [];

export function lookedAt(input: LookedInput): Looked {
  const { site } = input;
  const asked = askedIn(site, input.who, input.answers, input.opened, input.isShown);
  const points: PointState[] = [];
  const counts = new Map<string, Count>();
  for (const sheet of site.model.sheets) if (site.open.has(sheet)) counts.set(sheet, newCount());
  for (const spot of site.walk) {
    const answer = input.answers[spot.index] ?? "none";
    const isAsked = asked.spots[spot.index] === true;
    if (answer !== "none") pushStates(input, spot, answer, points);
    else if (isAsked)
      points.push({ point: spot.point.id, place: spot.place, state: spot.point.states[0] ?? "", is: "not-looked-at" });
    const count = counts.get(spot.point.sheet);
    if (count !== undefined) tally(count, input, spot, answer, isAsked);
  }
  return { points, asked: asked.list, coverage: [...counts].map(([sheet, c]) => coverageOf(sheet, c)) };
}

/** One entry per car state with replies. */
function pushStates(input: LookedInput, spot: Spot, answer: Answer, out: PointState[]): void {
  const [only] = spot.point.states;
  if (only !== undefined && spot.point.states.length === 1) {
    pushState(input, spot, answer, only, out);
    return;
  }
  for (const state of spot.point.states)
    if (spot.slots.some((slot) => standsIn(input.given, slot, state))) pushState(input, spot, answer, state, out);
}

function standsIn(given: Given, slot: SlotNode, state: string): boolean {
  for (const s of given.replies[slot.id] ?? NONE) if (s.key.state === state) return true;
  return false;
}

function pushState(input: LookedInput, spot: Spot, answer: Answer, state: string, out: PointState[]): void {
  let real = false;
  let fitted = false;
  let differ = false;
  let reason: PointState["reason"];
  const only = spot.point.states.length === 1;
  for (const slot of spot.slots) {
    const standing = input.given.replies[slot.id];
    if (standing === undefined) continue;
    if (standing.length > 1) differ = true;
    for (const s of standing) {
      if (!only && s.key.state !== state) continue;
      if (s.nonAnswer === undefined) real = true;
      else if (s.nonAnswer !== "not-fitted") fitted = true;
      if (s.value.type === "non-answer") reason ??= s.value.reason;
    }
  }
  const is = real ? verdictOf(input, spot, answer, differ) : fitted ? "cannot-get-at" : "not-fitted";
  const point: PointState = { point: spot.point.id, place: spot.place, state, is };
  out.push(reason === undefined ? point : { ...point, reason });
}

function verdictOf(input: LookedInput, spot: Spot, answer: Answer, differ: boolean): PointState["is"] {
  const { grades, open, notChecked } = input.verdicts;
  const grade = gradeOf(grades[spot.index] ?? 0);
  if (grade !== null) return grade;
  const isSound =
    answer === "answered" && open[spot.index] !== true && !differ && !notChecked.has(spot.index) && !input.broken;
  return isSound ? "sound" : "answered";
}

interface Count {
  answered: number;
  of: number;
  notChecked: number;
  notForThisLook: number;
  readonly nonAnswers: Partial<Record<NonAnswer, number>>;
}
const newCount = (): Count => ({ answered: 0, of: 0, notChecked: 0, notForThisLook: 0, nonAnswers: {} });

function tally(count: Count, input: LookedInput, spot: Spot, answer: Answer, isAsked: boolean): void {
  if (answer === "non-answer" || answer === "not-fitted") {
    const said = nonAnswerOf(input.given, spot);
    if (said !== undefined) count.nonAnswers[said] = (count.nonAnswers[said] ?? 0) + 1;
    if (answer === "not-fitted") return;
  }
  if (!isAsked) {
    if (!spot.point.point.who.includes(input.who)) count.notForThisLook += 1;
    return;
  }
  count.of += 1;
  if (answer !== "answered") return;
  count.answered += 1;
  if (input.verdicts.notChecked.has(spot.index)) count.notChecked += 1;
}

function nonAnswerOf(given: Given, spot: Spot): NonAnswer | undefined {
  for (const slot of spot.slots)
    for (const s of given.replies[slot.id] ?? NONE) if (s.nonAnswer !== undefined) return s.nonAnswer;
  return undefined;
}

function coverageOf(sheet: string, c: Count): Coverage {
  const unseen = c.of - c.answered + c.notChecked;
  return {
    sheet,
    answered: c.answered,
    of: c.of,
    nonAnswers: c.nonAnswers,
    notChecked: c.notChecked,
    notForThisLook: c.notForThisLook,
    enough: c.of > 0 && unseen * 10 <= c.of * UNSEEN_TENTHS,
  };
}
