/** Three-valued logic: what several not-known parts leave open, and what would settle them. Knows no plan. */
import { NOT_APPLICABLE, type Outcome, Unknown } from "./scope.js";

type Keys = ReadonlySet<string>;

/** What can still help this part to become true or false; empty where it cannot. */
export const towards = (part: Unknown, become: boolean): Keys => (become ? part.forTrue : part.forFalse);
/** Whether a not-known part can still become this yes or no. */
export const can = (part: Unknown, become: boolean): boolean => towards(part, become).size > 0;

/** All keys of several sets; the set itself where there is but one. */
export function union(sets: readonly Keys[]): Keys {
  let all: Keys = NOT_APPLICABLE.missing;
  let own: Set<string> | undefined;
  for (const keys of sets) {
    if (keys.size === 0 || keys === all) continue;
    if (own !== undefined) for (const key of keys) own.add(key);
    else if (all.size === 0) all = keys;
    else {
      own = new Set(all);
      for (const key of keys) own.add(key);
      all = own;
    }
  }
  return all;
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
  // Most parts are plain replies that can turn out either way: then all that is missing in them is missing.
  if (parts.length < forTrue || parts.length < forFalse || !parts.every(isEven))
    return open(reach(parts, true, forTrue), reach(parts, false, forFalse));
  const [first = NOT_APPLICABLE] = parts;
  return parts.length === 1 ? first : even(parts);
}

/** All that is missing in parts that are even. */
function even(parts: readonly Unknown[]): Unknown {
  let all: Unknown | undefined;
  let keys: Set<string> | undefined;
  for (const part of parts) {
    if (all === undefined) all = part;
    else if (part.missing !== all.missing) {
      keys ??= new Set(all.missing);
      for (const key of part.missing) keys.add(key);
    }
  }
  return keys === undefined ? (all ?? NOT_APPLICABLE) : new Unknown(keys);
}

/** Whether all that is missing helps either way. */
const isEven = (part: Unknown): boolean => part.forTrue === part.forFalse && part.missing.size > 0;

/** For what needs both parts, one of them not known: not applicable with one that is, else all that is missing. */
export function strict(a: Outcome<unknown>, b: Outcome<unknown>): Unknown {
  if (!(a instanceof Unknown)) return b instanceof Unknown ? plainly(b) : NOT_APPLICABLE;
  if (!(b instanceof Unknown)) return plainly(a);
  if (a.missing.size === 0 || b.missing.size === 0) return NOT_APPLICABLE;
  return plainly(a.missing === b.missing ? a : new Unknown(union([a.missing, b.missing])));
}

/** All that is missing, whichever way it was meant to help. */
const plainly = (part: Unknown): Unknown => (part.forTrue === part.forFalse ? part : new Unknown(part.missing));
