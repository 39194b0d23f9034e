/**
 * The words every part of Leadlamp shares: grades, non-answers, who looks, how sure, and
 * how a problem is told. Imports nothing; refuses to know what any of them is used for.
 */

export * from "./forbids.js";

/** Grades from mild to severe. The last three as in Directive 2014/45/EU Art. 7; advisory is national practice. */
export const GRADES = ["advisory", "minor", "major", "dangerous"] as const;
export type Grade = (typeof GRADES)[number];

/** A grade as a number, so that bands compare: 0 = inside every edge, 1 advisory … 4 dangerous. */
export type GradeLevel = 0 | 1 | 2 | 3 | 4;

/** The level of a grade; `null` (no grade) is 0. */
export function levelOf(grade: Grade | null): GradeLevel {
  return grade === null ? 0 : ((GRADES.indexOf(grade) + 1) as GradeLevel);
}

/** The grade of a level; level 0 is `null`, never "sound": soundness also needs every rule known. */
export function gradeOf(level: GradeLevel): Grade | null {
  return level === 0 ? null : (GRADES[level - 1] as Grade);
}

/** The worse of two grades. */
export function worse(a: Grade | null, b: Grade | null): Grade | null {
  return levelOf(a) >= levelOf(b) ? a : b;
}

/** What a person says instead of an observation. Only `not-fitted` leaves the count. */
export const NON_ANSWERS = ["not-fitted", "not-reached", "not-asked-for", "could-not-tell"] as const;
export type NonAnswer = (typeof NON_ANSWERS)[number];

/** Why a point could not be looked at. */
export const REASONS = ["too-hot", "seized", "covered", "no-leave", "no-lift", "no-time", "no-tool", "other"] as const;
export type Reason = (typeof REASONS)[number];

/** Who looks: decides wording, order and which points are asked. */
export const AUDIENCES = ["technician", "buyer", "owner"] as const;
export type Audience = (typeof AUDIENCES)[number];

/** What a visit is for. */
export const PURPOSES = ["workshop", "viewing", "season"] as const;
export type Purpose = (typeof PURPOSES)[number];

/** How sure a conclusion is, from weak to strong. */
export const SURENESS = ["possible", "likely", "certain"] as const;
export type Sure = (typeof SURENESS)[number];

/** Where a limit comes from. A default is always shown as a default. */
export const BASES = ["maker", "published", "practice", "unverified"] as const;
export type Basis = (typeof BASES)[number];

/** A place in a text file, 1-based. */
export interface Spot {
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
  /** Path inside the object, e.g. `rules[3].when`. */
  readonly path?: string;
}

/** Something a person or a file got wrong. `params` fill the text kept for `code` in the folder that raised it. */
export interface Problem {
  readonly code: string;
  readonly where: Spot;
  readonly params: Readonly<Record<string, string | number | readonly string[]>>;
}

/** Outcome of anything a person's input can make fail; thrown errors are our own mistakes only. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
export const fail = (
  ...problems: readonly Problem[]
): { readonly ok: false; readonly problems: readonly Problem[] } => ({ ok: false, problems });
export const problem = (code: string, where: Spot = {}, params: Problem["params"] = {}): Problem => ({
  code,
  where,
  params,
});

/**
 * A reply as it is kept: what was said, never what it means.
 * Readings are kept as typed (decimal or fraction text) with their UCUM unit; numbers are derived.
 */
export type ReplyValue =
  | { readonly type: "words"; readonly words: readonly string[] }
  | { readonly type: "reading"; readonly values: readonly string[]; readonly unit: string; readonly gauge?: GaugeUsed }
  | { readonly type: "count"; readonly count: number }
  | { readonly type: "yes"; readonly yes: boolean }
  | { readonly type: "date-code"; readonly text: string }
  | { readonly type: "non-answer"; readonly nonAnswer: NonAnswer; readonly reason?: Reason; readonly words?: string };

/** The gauge a reading was taken with; resolution (display step) and error (±) in the reading's own unit. */
export interface GaugeUsed {
  readonly id?: string;
  readonly resolution: number;
  readonly error: number;
}

/**
 * What a reply answers. A non-answer has field `*`: it covers all fields of the point there.
 * `state` is the car state's id, e.g. `w7-hang`.
 */
export interface ReplyKey {
  readonly point: string;
  readonly place: string;
  readonly state: string;
  readonly field: string;
}

/** One text per reply key, the form used in sets of missing replies: `point@place#state.field`. */
export const keyText = (k: ReplyKey): string => `${k.point}@${k.place}#${k.state}.${k.field}`;

const OFF_LIST = "own.";
/** Fault, rule and job of a finding off the list, by the name it keeps; and that name, undefined for any other fault. */
export const offListId = (name: string): string => OFF_LIST + name;
export const offListName = (fault: string): string | undefined =>
  fault.startsWith(OFF_LIST) ? fault.slice(OFF_LIST.length) : undefined;

/** Low, likely, high: whole numbers, none above the next. Minutes, or minor units of money. */
export type Three = readonly [low: number, likely: number, high: number];

/** A calendar day, `YYYY-MM-DD`, with no time and no zone. */
export type IsoDate = string;
/** A day in ms, where days are counted and no clock is changed between. */
export const DAY_MS = 86_400_000;
