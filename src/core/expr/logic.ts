/** Joins linked conditions with three values, whatever their order. Knows no reply and no place. */
import type { At, Run } from "./places-of.js";
import { NOT_APPLICABLE, type Outcome, type Scope, Unknown } from "./scope.js";
import { settle, open as stillOpen, towards, union } from "./settle.js";

export const not =
  (run: Run): Run =>
  (scope, at) => {
    const value = run(scope, at);
    if (!(value instanceof Unknown)) return !value;
    return value.forTrue === value.forFalse ? value : stillOpen(value.forFalse, value.forTrue);
  };

/** `||` stops at true, `&&` at false. */
export const joined =
  (kids: readonly Run[], stop: boolean): Run =>
  (scope, at) => {
    let first: Unknown | undefined;
    let open: Unknown[] | undefined;
    for (const kid of kids) {
      const value = kid(scope, at);
      if (value === stop) return stop;
      if (!(value instanceof Unknown)) continue;
      if (first === undefined) first = value;
      else if (open === undefined) open = [first, value];
      else open.push(value);
    }
    if (open === undefined) return first ?? !stop;
    return stop ? settle(open, 1, open.length) : settle(open, open.length, 1);
  };

export const atLeast =
  (need: number, kids: readonly Run[]): Run =>
  (scope, at) => {
    const values = kids.map((kid) => kid(scope, at));
    const open = values.filter((value) => value instanceof Unknown);
    const yes = values.filter((value) => value === true).length;
    const forFalse = kids.length - need + 1 - (kids.length - open.length - yes);
    return yes >= need || (forFalse > 0 && settle(open, need - yes, forFalse));
  };

/** `exists` stops at true, `all` at false. A place where the body does not apply drops out. */
export const quantified =
  (places: (scope: Scope, at: At) => readonly string[], body: Run, stop: boolean): Run =>
  (scope, at) => {
    const open: Unknown[] = [];
    let known = false;
    for (const place of places(scope, at)) {
      const value = body(scope, [...at, place]);
      if (value === stop) return stop;
      if (!(value instanceof Unknown)) known = true;
      else if (value.missing.size > 0) open.push(value);
    }
    if (open.length === 0) return known ? !stop : NOT_APPLICABLE;
    const stopping = union(open.map((part) => towards(part, stop)));
    // Beside a known place it only matters whether another still stops.
    if (known) return stopping.size > 0 ? new Unknown(stopping) : !stop;
    // An open place may still turn out not fitted and drop out, so one that can tell is enough.
    const tells = open.some((part) => towards(part, !stop).size > 0);
    const otherwise = tells ? union(open.map((part) => part.missing)) : NOT_APPLICABLE.missing;
    return stop ? stillOpen(stopping, otherwise) : stillOpen(otherwise, stopping);
  };

/**
 * The middle one of a figure over places, of an even number the mean of the middle two. Any place still open may move it;
 * one where it does not apply drops out.
 */
export const middle =
  (places: (scope: Scope, at: At) => readonly string[], body: Run): Run =>
  (scope, at) => {
    const open: Unknown[] = [];
    const known: number[] = [];
    for (const place of places(scope, at)) {
      const value = body(scope, [...at, place]);
      if (!(value instanceof Unknown)) known.push(Number(value));
      else if (value.missing.size > 0) open.push(value);
    }
    if (open.length > 0) return new Unknown(union(open.map((part) => part.missing)));
    if (known.length === 0) return NOT_APPLICABLE;
    known.sort((a, b) => a - b);
    const two = known.slice((known.length - 1) >> 1, (known.length >> 1) + 1);
    return two.reduce((sum, one) => sum + one, 0) / two.length;
  };

export const chosen =
  (test: Run, yes: Run, no: Run): Run =>
  (scope, at) => {
    const value = test(scope, at);
    if (!(value instanceof Unknown)) return (value === true ? yes : no)(scope, at);
    return undecided(value, yes(scope, at), no(scope, at));
  };

/** `?:` with a test not known: what both ways agree on holds; else all that could make it known is missing. */
function undecided(test: Unknown, yes: Outcome, no: Outcome): Outcome {
  const settled = !(yes instanceof Unknown || no instanceof Unknown);
  if (settled && yes === no) return yes;
  const reach = (be: boolean) =>
    union([
      // Where the other way is this already, this way need only agree, whatever the test says.
      ...(no === be ? [] : together(helps(test, true), helps(yes, be))),
      ...(yes === be ? [] : together(helps(test, false), helps(no, be))),
      ...(settled ? [] : together(helps(yes, be), helps(no, be))),
    ]);
  return stillOpen(reach(true), reach(false));
}

type Keys = ReadonlySet<string>;

/** What helps a part to become this yes or no (or a figure); undefined where it cannot. */
function helps(part: Outcome, be: boolean): Keys | undefined {
  if (part instanceof Unknown) return towards(part, be).size > 0 ? towards(part, be) : undefined;
  return typeof part !== "boolean" || part === be ? NOT_APPLICABLE.missing : undefined;
}

const together = (a: Keys | undefined, b: Keys | undefined): readonly Keys[] =>
  a === undefined || b === undefined ? [] : [a, b];
