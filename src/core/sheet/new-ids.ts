/**
 * Ids made from names people give. Never shown, never asked for, never used again for something else: `taken` names all
 * that are or were in use.
 */
import type { DraftList } from "./draft.js";

const LONGEST = 32;
/** Of a sheet: every name in its conditions begins with it. */
const LONGEST_SHEET = 16;
/** Words the condition language keeps for itself, so no name in a condition may be one. */
const KEPT_WORDS: ReadonlySet<string> = new Set(
  "in as true false null if else for while loop let var const void function return import package namespace break continue".split(
    " ",
  ),
);

/** No more than `longest`, cut at a word; one that is longer by itself is cut where it must be. */
function cutAtWord(slug: string, longest: number): string {
  if (slug.length <= longest) return slug;
  const whole = slug.slice(0, longest + 1).replace(/-[^-]*$/, "");
  return whole.slice(0, longest);
}

/** `Heat shield, rear` → `heat-shield-rear`: small letters and digits, a letter first. */
export const slugOf = (name: string): string => slugWithin(name, LONGEST);

function slugWithin(name: string, longest: number): string {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");
  const short = cutAtWord(plain, longest);
  if (short === "") return "item";
  return /^[a-z]/.test(short) && !KEPT_WORDS.has(short) ? short : `n-${short}`;
}

/** Ids that differ in `-` and `_` alone are one in conditions. */
const same = (id: string): string => id.replaceAll("-", "_");

/** `prefix` and the name's slug, with a number behind it where that is or was taken. */
export function freshId(prefix: string, name: string, taken: Iterable<string>): string {
  const used = new Set([...taken].map(same));
  const first = `${prefix}${slugOf(name)}`;
  let id = first;
  for (let n = 2; used.has(same(id)); n++) id = `${first}-${n}`;
  return id;
}

/** The id of a whole sheet: letters and digits alone, since conditions begin every name with it. */
export function freshSheetId(name: string, taken: Iterable<string>): string {
  const used = new Set(taken);
  const first = `own${slugWithin(name, LONGEST_SHEET).replaceAll("-", "")}`;
  let id = first;
  for (let n = 2; used.has(id); n++) id = `${first}x${n}`;
  return id;
}

/** What ids of a list begin with in this sheet; items of `nextLooks` and `cases` have numbers instead. */
export function idPrefix(sheet: string, list: DraftList): string {
  if (list === "limits") return `lim.${sheet}.`;
  if (list === "jobs") return `job.${sheet}.`;
  if (list === "gates") return `gate.${sheet}.`;
  if (list === "cautions") return `cau.${sheet}.`;
  const isOfSheet = list === "points" || list === "derived" || list === "rules" || list === "faults";
  return isOfSheet ? `${sheet}.` : `${sheet}-`;
}

/** A number no item of a numbered list has or had. */
export function freshNumber(taken: Iterable<string>): string {
  const numbers = [...taken].map((key) => Number(key.slice(1))).filter(Number.isInteger);
  return `#${Math.max(-1, ...numbers) + 1}`;
}
