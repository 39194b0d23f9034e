/** Joins linked conditions with three values, whatever their order. Knows no reply and no place. */
import type { At, Run } from "./places-of.js";
import { NOT_APPLICABLE, type Outcome, type Scope, Unknown } from "./scope.js";
import { can, settle, union } from "./settle.js";

export const not =
  (run: Run): Run =>
  (scope, at) => {
    const value = run(scope, at);
    if (!(value instanceof Unknown)) return !value;
    return value.only === undefined ? value : new Unknown(value.missing, !value.only);
  };

/** `||` stops at true, `&&` at false. */
export const joined =
  (kids: readonly Run[], stop: boolean): Run =>
  (scope, at) => {
    let open: Unknown[] | undefined;
    for (const kid of kids) {
      const value = kid(scope, at);
      if (value === stop) return stop;
      if (value instanceof Unknown) {
        open ??= [];
        open.push(value);
      }
    }
    if (open === undefined) return !stop;
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
    // An open place may still turn out not fitted and drop out, so one other that can tell is enough.
    const canStop = open.some((part) => can(part, stop));
    if (known && !canStop) return !stop;
    const canElse = known || open.some((part) => can(part, !stop));
    return new Unknown(union(open), canStop && canElse ? undefined : canStop === stop);
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
  const open = [test, yes, no].filter((part) => part instanceof Unknown);
  if (open.length === 1 && yes === no) return yes;
  const canBe = (part: Outcome, be: boolean): boolean =>
    part instanceof Unknown ? can(part, be) : typeof part !== "boolean" || part === be;
  const reaches = (be: boolean): boolean =>
    (can(test, true) && canBe(yes, be)) ||
    (can(test, false) && canBe(no, be)) ||
    (open.length > 1 && canBe(yes, be) && canBe(no, be));
  const [canTrue, canFalse] = [reaches(true), reaches(false)];
  if (!canTrue && !canFalse) return NOT_APPLICABLE;
  return new Unknown(union(open), canTrue && canFalse ? undefined : canTrue);
}
