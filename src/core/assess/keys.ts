/** Reply keys as text, back to point and place. Knows no sheet. */
import type { Opened } from "./contract.js";

export interface KeyRead {
  /** Point id; `car.NAME` for a car fact. */
  readonly point: string;
  readonly place: string;
  /** Measured again with more care. */
  readonly closer: boolean;
}

const CLOSER = "!closer";

/** What `keyText` wrote (a car fact: `car@car#.NAME`), with or without `!closer`. */
export function readKey(text: string): KeyRead {
  const closer = text.endsWith(CLOSER);
  const key = closer ? text.slice(0, -CLOSER.length) : text;
  const at = key.indexOf("@");
  const hash = key.indexOf("#", at);
  const point = key.slice(0, at);
  const place = key.slice(at + 1, hash < 0 ? undefined : hash);
  if (point === "car" && place === "car") return { point: `car.${key.slice(key.lastIndexOf(".") + 1)}`, place, closer };
  return { point, place, closer };
}

/** Keys as points to look at, each once. */
export function openedOf(keys: Iterable<string>, because: string): readonly Opened[] {
  const out = new Map<string, Opened>();
  for (const key of keys) {
    const { point, place, closer } = readKey(key);
    out.set(`${point}@${place}`, { point, place, because, ...(closer ? { again: true } : {}) });
  }
  return [...out.values()];
}

/** The first of each point and place. */
export function eachOnce<T extends Opened>(all: readonly T[]): readonly T[] {
  const seen = new Set<string>();
  return all.filter((o) => {
    const at = `${o.point}@${o.place}`;
    if (seen.has(at)) return false;
    seen.add(at);
    return true;
  });
}
