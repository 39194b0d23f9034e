/** Three-valued logic: what several not-known parts leave open, and what would settle them. Knows no plan. */
import { NOT_APPLICABLE, type Outcome, Unknown } from "./scope.js";

type Keys = ReadonlySet<string>;

/** What can still help this part to become true or false; empty where it cannot. */
export const towards = (part: Unknown, become: boolean): Keys => (become ? part.forTrue : part.forFalse);
/** Whether a not-known part can still become this yes or no. */
export const can = (part: Unknown, become: boolean): boolean => towards(part, become).size > 0;

/** All keys of several sets; the set itself where there is but one. */
export function union(sets: readonly Keys[]): Keys {
  const [first = NOT_APPLICABLE.missing, ...rest] = sets.filter(
    (keys, index) => keys.size > 0 && sets.indexOf(keys) === index,
  );
  return rest.length === 0 ? first : new Set([first, ...rest].flatMap((keys) => [...keys]));
}

/** Not known, with what can help it to become true and false; not applicable where it can become neither. */
export function open(forTrue: Keys, forFalse: Keys): Unknown {
  const missing = union([forTrue, forFalse]);
  return missing.size === 0 ? NOT_APPLICABLE : new Unknown(missing, forTrue, forFalse);
}

/** The set of `parts` towards a yes or no, where at least `needed` of them can become it. */
const reach = (parts: readonly Unknown[], become: boolean, needed: number): Keys => {
  const able = parts.filter((part) => can(part, become));
  return able.length >= needed ? union(able.map((part) => towards(part, become))) : NOT_APPLICABLE.missing;
};

/**
 * The outcome of counting: it becomes true with `forTrue` more true parts, false with `forFalse` more false ones.
 * `&&` needs all or one, `||` one or all, `at_least` something between.
 */
export function settle(parts: readonly Unknown[], forTrue: number, forFalse: number): Unknown {
  const [only] = parts;
  if (only !== undefined && parts.length === 1 && forTrue === 1 && forFalse === 1) return only;
  return open(reach(parts, true, forTrue), reach(parts, false, forFalse));
}

/** For what needs all of its parts: not applicable with one that is, else all that is missing; undefined when known. */
export function strict(...parts: readonly Outcome<unknown>[]): Unknown | undefined {
  const unknown = parts.filter((part) => part instanceof Unknown);
  if (unknown.length === 0) return undefined;
  if (unknown.some((part) => part.missing.size === 0)) return NOT_APPLICABLE;
  return new Unknown(union(unknown.map((part) => part.missing)));
}
