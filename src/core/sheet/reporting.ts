/** Collects what is wrong with a sheet, each with its spot. Knows neither rules nor texts. */
import { type Problem, problem } from "../terms/index.js";
import type { Path, SpotOf } from "./source.js";

/** More than this is not read by anyone; the count of the rest is told. */
const CAP = 100;

export interface Report {
  readonly spotOf: SpotOf;
  /** A fault: the sheet is refused. */
  readonly problem: (code: string, path: Path, params?: Problem["params"], at?: number | "key") => void;
  /** A remark: the sheet stands. */
  readonly note: (code: string, path: Path, params?: Problem["params"]) => void;
  readonly add: (problems: readonly Problem[]) => void;
  readonly addNotes: (notes: readonly Problem[]) => void;
  readonly problems: () => readonly Problem[];
  readonly notes: () => readonly Problem[];
}

export function reporting(spotOf: SpotOf): Report {
  const problems: Problem[] = [];
  const notes: Problem[] = [];
  return {
    spotOf,
    problem: (code, path, params = {}, at) => void problems.push(problem(code, spotOf(path, at), params)),
    note: (code, path, params = {}) => void notes.push(problem(code, spotOf(path), params)),
    add: (more) => void problems.push(...more),
    addNotes: (more) => void notes.push(...more),
    problems: () => capped(problems),
    notes: () => notes,
  };
}

/** At most CAP problems, then how many more there are. */
export function capped(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= CAP) return problems;
  return [...problems.slice(0, CAP), problem("more-problems", {}, { count: problems.length - CAP })];
}
