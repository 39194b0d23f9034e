/**
 * What has been looked at: the points asked of this person, the state of each, coverage per sheet. A point is sound
 * only when really answered, with every limit and rule over it known and none fired.
 */
import { type Audience, type Grade, gradeOf, type GradeLevel, type NonAnswer } from "../terms/index.js";
import type { Asked, Coverage, Opened, PointState } from "./contract.js";
import { plainId } from "./model.js";
import type { Given, Standing } from "./given.js";
import type { Site, Spot } from "./site.js";

/** Not enough seen when more than this share of what is asked was not looked at (common practice, no source). */
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

type Answer = "answered" | "partly" | "non-answer" | "not-fitted" | "none";

/** How far a spot is answered: every field that is not optional, at least one where all are. */
export function answerOf(given: Given, spot: Spot): Answer {
  let answered = 0;
  let required = 0;
  let wanting = 0;
  let tried = 0;
  let nonAnswer: NonAnswer | undefined;
  for (const slot of spot.slots) {
    const standing = given.replies[slot.id];
    const real = standing?.some((s) => s.nonAnswer === undefined && s.problems.length === 0) === true;
    if (real) answered += 1;
    else if (standing?.some((s) => s.nonAnswer === undefined) === true) tried += 1;
    nonAnswer ??= standing?.find((s) => s.nonAnswer !== undefined)?.nonAnswer;
    if (slot.field.field.optional !== true) {
      required += 1;
      if (!real) wanting += 1;
    }
  }
  if (answered > 0) return required > 0 && wanting > 0 ? "partly" : "answered";
  // a reply that cannot be understood is no answer, yet somebody looked
  if (tried > 0) return "partly";
  if (nonAnswer === undefined) return "none";
  return nonAnswer === "not-fitted" ? "not-fitted" : "non-answer";
}

export function lookedAt(input: LookedInput): Looked {
  const { site, given } = input;
  const openedBy = openedByPoint(input.opened);
  const points: PointState[] = [];
  const asked: Asked[] = [];
  const counts = new Map<string, Count>();
  for (const sheet of site.model.sheets) if (site.open.has(sheet)) counts.set(sheet, newCount());
  const inSets = new Set(site.model.gates.flatMap((g) => g.set.map((name) => plainId(name.split("@")[0] ?? ""))));
  for (const spot of inWalkingOrder(site)) {
    const { point } = spot;
    const isOpenSheet = site.open.has(point.sheet);
    if (!isOpenSheet && !inSets.has(plainId(point.id))) continue;
    const answer = answerOf(given, spot);
    const forThem = point.point.who.includes(input.who);
    const by = openedBy.get(`${plainId(point.id)}@${spot.place}`) ?? [];
    const isAsked = forThem && (answer !== "none" || by.length > 0 || input.isShown(spot));
    if (isAsked) for (const state of point.states) asked.push(askedOf(spot, state, by));
    if (isAsked || answer !== "none") points.push(...statesOf(input, spot, answer));
    const count = counts.get(point.sheet);
    if (count !== undefined) tally(count, input, spot, answer, isAsked, forThem);
  }
  return { points, asked: inStateOrder(site, together(asked, site)), coverage: [...counts].map(([sheet, c]) => coverageOf(sheet, c)) };
}

const walks = new WeakMap<Site, readonly Spot[]>();
/** Car state, then place, then safety-critical, then as the sheets list them. */
function inWalkingOrder(site: Site): readonly Spot[] {
  const before = walks.get(site);
  if (before !== undefined) return before;
  const sorted = [...site.spots].sort((a, b) => a.walk - b.walk);
  walks.set(site, sorted);
  return sorted;
}

function openedByPoint(opened: readonly Opened[]): ReadonlyMap<string, readonly string[]> {
  const out = new Map<string, string[]>();
  for (const o of opened) {
    const at = `${plainId(o.point)}@${o.place}`;
    const row = out.get(at);
    if (row === undefined) out.set(at, [o.because]);
    else if (!row.includes(o.because)) row.push(o.because);
  }
  return out;
}

function askedOf(spot: Spot, state: string, openedBy: readonly string[]): Asked {
  return {
    point: spot.point.id,
    place: spot.place,
    state,
    fields: spot.point.fields.map((f) => f.name),
    with: [],
    safetyCritical: spot.point.safetyCritical,
    openedBy,
  };
}

/** Points answered in the same entry as another stand with it, not for themselves. */
function together(asked: readonly Asked[], site: Site): readonly Asked[] {
  const hosts = new Map<string, string[]>();
  const present = new Set(asked.map((a) => `${a.point}@${a.place}`));
  const guests = new Set<string>();
  for (const a of asked) {
    const host = site.model.pointById.get(plainId(a.point))?.point["same-entry"];
    const at = host === undefined ? undefined : `${host}@${a.place}`;
    if (at === undefined || !present.has(at)) continue;
    guests.add(`${a.point}@${a.place}`);
    const row = hosts.get(at) ?? [];
    if (!row.includes(a.point)) row.push(a.point);
    hosts.set(at, row);
  }
  if (guests.size === 0) return asked;
  return asked
    .filter((a) => !guests.has(`${a.point}@${a.place}`))
    .map((a) => {
      const row = hosts.get(`${a.point}@${a.place}`);
      return row === undefined ? a : { ...a, with: row };
    });
}

/** Sorted by state, place, safety-critical first; the sort is stable, so sheets keep their order. */
function inStateOrder(site: Site, asked: readonly Asked[]): readonly Asked[] {
  const state = (a: Asked) => site.model.stateOrder.get(a.state) ?? site.model.stateOrder.size;
  const keyed = asked.map((a) => ({ a, s: state(a), p: site.tree.order(a.place), c: a.safetyCritical ? 0 : 1 }));
  keyed.sort((x, y) => x.s - y.s || x.p - y.p || x.c - y.c);
  return keyed.map((k) => k.a);
}

/** One entry per car state with replies; the first state where there is none. */
function statesOf(input: LookedInput, spot: Spot, answer: Answer): readonly PointState[] {
  const base = { point: spot.point.id, place: spot.place };
  const first = spot.point.states[0] ?? "";
  if (answer === "none") return [{ ...base, state: first, is: "not-looked-at" }];
  const standing = spot.slots.flatMap((s) => input.given.replies[s.id] ?? []);
  const states = [...new Set(standing.map((s) => s.key.state))].sort((a, b) => rank(input.site, a) - rank(input.site, b));
  return states.map((state) => {
    const here = standing.filter((s) => s.key.state === state);
    const reason = reasonOf(here);
    return { ...base, state, is: stateOf(input, spot, answer, here), ...(reason === undefined ? {} : { reason }) };
  });
}
const rank = (site: Site, state: string): number => site.model.stateOrder.get(state) ?? site.model.stateOrder.size;

function reasonOf(standing: readonly Standing[]) {
  for (const { value } of standing) if (value.type === "non-answer" && value.reason !== undefined) return value.reason;
  return undefined;
}

function stateOf(input: LookedInput, spot: Spot, answer: Answer, here: readonly Standing[]): PointState["is"] {
  if (here.every((s) => s.nonAnswer !== undefined)) return here.every((s) => s.nonAnswer === "not-fitted") ? "not-fitted" : "cannot-get-at";
  const { grades, open, notChecked } = input.verdicts;
  const grade: Grade | null = gradeOf(grades[spot.index] ?? 0);
  if (grade !== null) return grade;
  const differ = spot.slots.some((s) => (input.given.replies[s.id]?.length ?? 0) > 1);
  const isSound = answer === "answered" && open[spot.index] !== true && !notChecked.has(spot.index) && !differ && !input.broken;
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

function tally(count: Count, input: LookedInput, spot: Spot, answer: Answer, isAsked: boolean, forThem: boolean): void {
  const nonAnswer = spot.slots.flatMap((s) => input.given.replies[s.id] ?? []).find((s) => s.nonAnswer !== undefined)?.nonAnswer;
  if (answer === "not-fitted" || answer === "non-answer") {
    if (nonAnswer !== undefined) count.nonAnswers[nonAnswer] = (count.nonAnswers[nonAnswer] ?? 0) + 1;
    if (answer === "not-fitted") return;
  }
  if (!isAsked) {
    if (!forThem) count.notForThisLook += 1;
    return;
  }
  count.of += 1;
  if (answer !== "answered") return;
  count.answered += 1;
  if (input.verdicts.notChecked.has(spot.index)) count.notChecked += 1;
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
