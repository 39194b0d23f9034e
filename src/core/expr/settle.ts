/** Three-valued logic: what several not-known parts leave open, and what would settle them. Knows no plan. */
import { NOT_APPLICABLE, type Outcome, Unknown } from "./scope.js";

/** Whether a not-known part can still become this yes or no: one with nothing missing can become neither. */
export const can = (part: Unknown, become: boolean): boolean => part.missing.size > 0 && part.only !== !become;

/** Everything missing in any of the parts. */
export function union(parts: readonly Pick<Unknown, "missing">[]): ReadonlySet<string> {
  const [first, ...rest] = parts;
  if (first === undefined || rest.length === 0) return first?.missing ?? NOT_APPLICABLE.missing;
  const all = new Set(first.missing);
  for (const part of rest) for (const key of part.missing) all.add(key);
  return all;
}

/**
 * The outcome of counting: it becomes true with `forTrue` more true parts, false with `forFalse` more false ones.
 * `&&` needs all or one, `||` one or all, `at_least` something between.
 */
export function settle(open: readonly Unknown[], forTrue: number, forFalse: number): Unknown {
  const yes = open.filter((part) => can(part, true));
  const no = open.filter((part) => can(part, false));
  const canTrue = yes.length >= forTrue;
  const canFalse = no.length >= forFalse;
  if (canTrue && canFalse) return open.length === 1 ? (open[0] ?? NOT_APPLICABLE) : new Unknown(union(open));
  if (canTrue) return new Unknown(union(yes), true);
  return canFalse ? new Unknown(union(no), false) : NOT_APPLICABLE;
}

/** For what needs all of its parts: not applicable with one that is, else all that is missing; undefined when known. */
export function strict(...parts: readonly Outcome<unknown>[]): Unknown | undefined {
  const open = parts.filter((part) => part instanceof Unknown);
  if (open.length === 0) return undefined;
  return open.some((part) => part.missing.size === 0) ? NOT_APPLICABLE : new Unknown(union(open));
}
