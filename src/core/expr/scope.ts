/**
 * What a planned condition may ask the world, and what it may hear back.
 * Knows nothing of sheets, visits or rules: assess (or a test) answers the questions.
 */
import type { GradeLevel, Problem } from "../terms/index.js";

/**
 * Not known. `missing` names the replies that would settle it (see `keyText` in core/terms; a reading
 * that must be taken again with more care carries the suffix `!closer`). Empty: nothing is left to ask,
 * e.g. the part is not fitted; a rule that ends so does not apply.
 */
export class Unknown {
  constructor(
    readonly missing: ReadonlySet<string>,
    /** Of the missing, what can still help it to become true, and false. Empty: it cannot become that any more. */
    readonly forTrue: ReadonlySet<string> = missing,
    readonly forFalse: ReadonlySet<string> = missing,
  ) {}

  /** The only yes or no it can still become; undefined: either, or neither. A `when` with false cannot fire. */
  get only(): boolean | undefined {
    return this.forTrue.size > 0 === this.forFalse.size > 0 ? undefined : this.forTrue.size > 0;
  }
}

/** Nothing known and nothing to ask. */
export const NOT_APPLICABLE = new Unknown(new Set());

/** Words chosen, one or several; a several-word point is always a list. */
export type Value = boolean | number | string | readonly string[];

/** Known value or Unknown. Numbers are in the canonical unit of their quantity (core/units). */
export type Outcome<T = Value> = T | Unknown;

/** Which reading or reply: the point id (`whl.float`) and its field, or a derived value (field ""). */
export interface Ref {
  readonly point: string;
  readonly field: string;
  /** Not this visit's reply but the last one before it: known, or nothing to ask. */
  readonly last?: true;
}

/** An aggregated reading and its standard uncertainty, canonical unit. */
export interface Measured {
  readonly value: number;
  readonly u: number;
}

/** The grade at both ends of the uncertainty (equal: clear; else too close), after the rules of planning.md §6. */
export interface BandSpan {
  readonly low: GradeLevel;
  readonly high: GradeLevel;
  /** Reply keys that would make it one grade; empty when low equals high. */
  readonly missing: ReadonlySet<string>;
}

/**
 * The world a condition is evaluated in. `place` is always a concrete place id; a `Ref` whose point
 * belongs to a wider kind (axle, side, car) is answered at that place around it.
 */
export interface Scope {
  read(ref: Ref, place: string): Outcome;
  measured(ref: Ref, place: string): Outcome<Measured>;
  band(ref: Ref, place: string): Outcome<BandSpan>;
  /** For provisional rules only: whether nothing stands for this key (a non-answer counts as nothing). */
  unanswered(ref: Ref, place: string): boolean;
  /** Distance in km since the reply was last given; does not apply without an earlier one or without both odometers. */
  sinceLast(ref: Ref, place: string): Outcome<number>;
  /** A car fact by name; Unknown names `car@car#.NAME`. */
  fact(name: string): Outcome;
  /** A named relation of places.yaml (`opposite`, `axle`, `side`, `corner`, `pickup`, `below` …); undefined without one. */
  related(relation: string, place: string): readonly string[] | undefined;
  /** All places of a kind this car has, minus those where the point in question is not fitted. */
  places(kind: string): readonly string[];
  /** Pass 3 only: whether a fault was concluded at this place. */
  found(fault: string, place: string): boolean;
  /**
   * Told what could not be worked out though every reply was there: `expr.not-finite` (division by zero, a
   * function without an answer), `expr.other-reply` (a reply of another kind than declared). The result is
   * then not known, and its `missing` names the replies it came from with `!closer`: it never clears anything.
   */
  report?(problem: Problem): void;
  /** Keys of the replies behind a value, to be taken again; where absent, point, place and field are named. */
  again?(ref: Ref, place: string): ReadonlySet<string>;
}

/** A planned condition: stateless, free of side effects, never throws for anything a sheet or a person can do. */
export type Evaluate<T = Value> = (scope: Scope, here: string) => Outcome<T>;
