/** The owner's words: which known complaints they are, and which points those put first. Answers no complaint. */
import type { Complaints } from "../sheet/run.js";
import type { Opened } from "./contract.js";
import { spotsOfName } from "./findings.js";
import { eachOnce } from "./keys.js";
import type { Site } from "./site.js";

/**
 * Ids of the complaints whose words occur in what was said, best match first: most words in common, then as the
 * shared files list them. A way of saying it counts when all its words of more than two letters occur.
 */
export function complaintsIn(said: string, texts: Complaints["texts"]): readonly string[] {
  const heard = wordsOf(said);
  return Object.entries(texts)
    .map(([id, told], at) => ({ id, at, best: Math.max(0, ...told.says.map((way) => matched(wordsOf(way), heard))) }))
    .filter((c) => c.best > 0)
    .sort((a, b) => b.best - a.best || a.at - b.at)
    .map((c) => c.id);
}

const SHORTEST = 3;
const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu)
    ?.filter((w) => w.length >= SHORTEST) ?? [];

/** How many words, when all are there; else 0. */
const matched = (way: readonly string[], heard: readonly string[]): number =>
  way.length > 0 && way.every((w) => heard.some((h) => isSameWord(w, h))) ? way.length : 0;

/**
 * Endings differ: drone and droning, noise and noisy; the beginning, all but one letter of the shorter, must be one.
 * A short word must stand whole before a usual ending: hum, hums and humming, but not human.
 */
function isSameWord(a: string, b: string): boolean {
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  if (long.startsWith(short) && isEnding(long.slice(short.length), short.at(-1) ?? "")) return true;
  const begin = short.length - 1;
  return begin >= STEM && short.slice(0, begin) === long.slice(0, begin);
}
const isEnding = (rest: string, last: string): boolean =>
  /^(?:e?s|ed|ing)?$/.test(rest) || rest === `${last}ed` || rest === `${last}ing`;
const STEM = 4;

/** Points the complaints put first, likeliest first, where they are still to be answered. */
export function suggestedBy(
  site: Site,
  complaints: readonly string[],
  isOpen: (o: Opened) => boolean,
): readonly Opened[] {
  const known = new Map(site.model.complaints.map((c) => [c.id, c]));
  const all = complaints.flatMap((id) =>
    (known.get(id)?.points ?? []).flatMap((name) =>
      spotsOfName(site, name, "car").map((s) => ({ point: s.point.id, place: s.place, because: id })),
    ),
  );
  return eachOnce(all.filter(isOpen));
}
