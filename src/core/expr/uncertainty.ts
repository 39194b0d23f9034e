/** Carries the uncertainty of readings through a formula. Knows no gauge: the scope says each reading's u. */
import type { Problem } from "../terms/index.js";
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

/** A trade function's word that a figure lies outside its range. */
const OUT_OF_RANGE = "trade.range";

/**
 * The value of a formula with its standard uncertainty, every reading's u carried through it:
 * u² = Σ ((f(x+u) − f(x−u)) / 2)², readings taken as independent (JCGM 100:2008, 5.1.3 note 2; from memory).
 * Where both ends lie on the same side of the value (a kink, a turning point) the farther of them counts; where one end
 * leaves the range of a trade function, the other. Not known wherever the formula is, else also a whole u to either
 * side: no width is then claimed.
 */
export function withUncertainty(formula: Evaluate): (scope: Scope, here: string) => Outcome<Measured> {
  return (scope, here) => {
    const asked = new Map<string, Asked>();
    const noting = seenThrough(scope, (ref, place) => {
      const read = scope.measured(ref, place);
      if (!(read instanceof Unknown)) asked.set(keyOf(ref, place), { ref, place, read });
      return read;
    });
    const outcome = formula(noting, here);
    if (outcome instanceof Unknown) return outcome;
    const value = Number(outcome);
    let squares = 0;
    for (const [key, { read }] of asked) {
      if (read.u === 0) continue;
      const ends = [read.u, -read.u].map((by) =>
        endOf(formula, scope, here, (ref, place) =>
          keyOf(ref, place) === key ? { value: read.value + by, u: read.u } : scope.measured(ref, place),
        ),
      );
      const inside = ends.filter((end) => !end.isOutside);
      const told = inside.length > 0 ? inside : ends;
      for (const problem of told.flatMap((end) => end.problems)) scope.report?.(problem);
      const gone = told.find((end) => end.outcome instanceof Unknown);
      if (gone?.outcome instanceof Unknown) return gone.outcome;
      squares += widthOf(told.map((end) => Number(end.outcome) - value)) ** 2;
    }
    return { value, u: Math.sqrt(squares) };
  };
}

interface End {
  readonly outcome: Outcome;
  readonly problems: readonly Problem[];
  /** The figure left the range of a trade function, and nothing else was amiss. */
  readonly isOutside: boolean;
}

function endOf(formula: Evaluate, scope: Scope, here: string, measured: Scope["measured"]): End {
  const problems: Problem[] = [];
  const outcome = formula({ ...seenThrough(scope, measured), report: (one) => void problems.push(one) }, here);
  const isOutside =
    outcome instanceof Unknown && problems.length > 0 && problems.every(({ code }) => code === OUT_OF_RANGE);
  return { outcome, problems, isOutside };
}

/** How far the ends lie from the value: half of what lies between them, or the farther on one side. */
function widthOf([up = 0, down = up]: readonly number[]): number {
  return up * down > 0 ? Math.max(Math.abs(up), Math.abs(down)) : Math.abs(up - down) / 2;
}
