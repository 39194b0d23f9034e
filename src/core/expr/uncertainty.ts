/** Carries the uncertainty of readings through a formula. Knows no gauge: the scope says each reading's u. */
import { type Evaluate, type Measured, type Outcome, type Ref, type Scope, Unknown } from "./scope.js";

interface Asked {
  readonly ref: Ref;
  readonly place: string;
  readonly read: Measured;
}

const keyOf = (ref: Ref, place: string): string =>
  `${ref.point} ${ref.field} ${place}${ref.last === true ? " last" : ""}`;

/** The same world with its readings answered by `measured`. */
const seenThrough = (scope: Scope, measured: Scope["measured"]): Scope => ({
  read: (ref, place) => scope.read(ref, place),
  measured,
  band: (ref, place) => scope.band(ref, place),
  unanswered: (ref, place) => scope.unanswered(ref, place),
  sinceLast: (ref, place) => scope.sinceLast(ref, place),
  fact: (name) => scope.fact(name),
  related: (relation, place) => scope.related(relation, place),
  places: (kind) => scope.places(kind),
  found: (fault, place) => scope.found(fault, place),
  report: (problem) => scope.report?.(problem),
  ...(scope.again === undefined ? {} : { again: scope.again.bind(scope) }),
});

/**
 * The value of a formula with its standard uncertainty, every reading's u carried through it:
 * u² = Σ ((f(x+u) − f(x−u)) / 2)², readings taken as independent (JCGM 100:2008, 5.1.3 note 2; from memory).
 * Not known wherever the formula is, also a whole u to either side: no width is then claimed.
 */
export function withUncertainty(formula: Evaluate): (scope: Scope, here: string) => Outcome<Measured> {
  return (scope, here) => {
    const asked = new Map<string, Asked>();
    const noting = seenThrough(scope, (ref, place) => {
      const read = scope.measured(ref, place);
      if (!(read instanceof Unknown)) asked.set(keyOf(ref, place), { ref, place, read });
      return read;
    });
    const value = formula(noting, here);
    if (value instanceof Unknown) return value;
    let squares = 0;
    for (const [key, { read }] of asked) {
      const moved = (by: number): Outcome =>
        formula(
          seenThrough(scope, (ref, place) =>
            keyOf(ref, place) === key ? { value: read.value + by, u: read.u } : scope.measured(ref, place),
          ),
          here,
        );
      const [up, down] = [moved(read.u), moved(-read.u)];
      if (up instanceof Unknown) return up;
      if (down instanceof Unknown) return down;
      squares += ((Number(up) - Number(down)) / 2) ** 2;
    }
    return { value: Number(value), u: Math.sqrt(squares) };
  };
}
