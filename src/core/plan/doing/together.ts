/** Parts that are had together: axle pairs, matched races, hub and nut, a part and its counterpart. Knows no price. */
import { type Problem, problem } from "../../terms/index.js";

/** A part as a job asks for it. */
export interface WantedPart {
  readonly part: string;
  /** What it is had with: parts of one job with the same set are had together. */
  readonly set?: string | undefined;
  /** How many; left out where nobody has said. */
  readonly count?: number | undefined;
  /** The part it runs against or is matched with. */
  readonly counterpart?: string | undefined;
}

/** A job and what it asks for. */
export interface JobParts {
  readonly job: string;
  readonly parts: readonly WantedPart[];
}

/** Parts of one job that are had together or not at all. */
export interface Together {
  readonly job: string;
  /** Absent for a part and its counterpart without a set of their own. */
  readonly set?: string;
  /** In the order the job names them; a counterpart the job does not name stands last, its count not known. */
  readonly parts: readonly { readonly part: string; readonly count?: number }[];
}

/** The sets of each job; a set of one part is one too: its count is had whole. */
export function hadTogether(jobs: readonly JobParts[]): readonly Together[] {
  return jobs.flatMap(({ job, parts }) => {
    const groups: string[][] = [];
    const join = (...names: string[]) => {
      const met = groups.filter((group) => group.some((part) => names.includes(part)));
      for (const group of met) groups.splice(groups.indexOf(group), 1);
      groups.push([...new Set([...met.flat(), ...names])]);
    };
    for (const { part, set, counterpart } of parts) {
      if (set !== undefined) join(...parts.filter((p) => p.set === set).map((p) => p.part));
      if (counterpart !== undefined) join(part, counterpart);
    }
    const named = (part: string) => parts.findIndex((p) => p.part === part);
    const standing = (part: string) => (named(part) < 0 ? parts.length : named(part));
    return groups
      .map((group) => group.sort((a, b) => standing(a) - standing(b)))
      .sort(([a = ""], [b = ""]) => standing(a) - standing(b))
      .map((group): Together => {
        const set = parts.find((p) => group.includes(p.part) && p.set !== undefined)?.set;
        return { job, ...(set === undefined ? {} : { set }), parts: group.map((part) => withCount(parts, part)) };
      });
  });
}

function withCount(parts: readonly WantedPart[], part: string): { readonly part: string; readonly count?: number } {
  const count = parts.find((p) => p.part === part)?.count;
  return { part, ...(count === undefined ? {} : { count }) };
}

/** Part of a set ordered without the rest, for a reason somebody gave. */
export interface Alone {
  readonly job: string;
  readonly part: string;
  readonly without: readonly string[];
  readonly reason: string;
}

/** What is to be ordered for a job, and the reasons given for parts ordered alone. */
export interface Wanted {
  readonly job: string;
  readonly part: string;
  readonly aloneBecause?: string | undefined;
}

/**
 * Holds an order against the sets: a part whose counterpart or set is not ordered with it is refused by name, unless a
 * reason is given; then the reason is kept.
 */
export function orderTogether(
  sets: readonly Together[],
  order: readonly Wanted[],
): { readonly alone: readonly Alone[]; readonly problems: readonly Problem[] } {
  const alone: Alone[] = [];
  const problems: Problem[] = [];
  for (const { job, part, aloneBecause } of order) {
    const reason = aloneBecause?.trim() ?? "";
    for (const set of sets.filter((s) => s.job === job && s.parts.some((p) => p.part === part))) {
      const without = set.parts
        .map((p) => p.part)
        .filter((other) => other !== part && !order.some((o) => o.job === job && o.part === other));
      if (without.length === 0) continue;
      if (reason !== "") alone.push({ job, part, without, reason });
      else problems.push(problem("sets.alone", { path: part }, { job, part, counterpart: without }));
    }
  }
  return { alone, problems };
}
