/** What the file format says beyond the schema: which keys hold conditions, which lists may be left out. Reads nothing. */
import type { Path } from "./source.js";

/** Keys whose text is a condition wherever they stand outside texts. */
const CONDITION_KEYS: ReadonlySet<string> = new Set(["when", "where", "formula", "applies", "asked-when"]);
const CONDITION_LISTS: ReadonlySet<string> = new Set(["supports", "trips", "clears"]);

/** Whether the text at `path` of a sheet or of the shared files is a condition: in YAML quoted or a block, never plain. */
export function isCondition(path: Path): boolean {
  if (path[0] === "texts") return false;
  const [last, before] = [path.at(-1), path.at(-2)];
  if (typeof last === "number") return typeof before === "string" && CONDITION_LISTS.has(before);
  return last !== undefined && CONDITION_KEYS.has(last);
}

/** Lists of a sheet that may be left out when empty. */
export const SHEET_LISTS = ["points", "limits", "derived", "rules", "jobs", "gates", "nextLooks", "cases"] as const;
/** Lists of the shared files that may be left out when empty. */
export const COMMON_LISTS = [
  "places",
  "states",
  "gauges",
  "cautions",
  "gates",
  "access",
  "facts",
  "complaints",
  "rules",
  "cases",
] as const;

/** The value with the lists that were left out; anything but a mapping is given back as it is. */
export function withEmptyLists(value: unknown, lists: readonly string[]): unknown {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  return { ...Object.fromEntries(lists.map((key) => [key, []])), ...value };
}
