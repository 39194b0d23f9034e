/**
 * What of a sheet under work names one of its items: told before that is taken out. Looks at data and conditions as text,
 * so that it can tell of a sheet whose conditions do not stand. Pure.
 */
import { celName, type Point } from "../../core/sheet/run.js";
import { DRAFT_LISTS, type DraftList } from "../../core/sheet/work.js";
import { itemTitle } from "./sheet-items-view.js";
import { itemsIn, type SheetWork } from "./sheet-work.js";

/** What names it in one list, each once. */
export interface NamedIn {
  readonly list: DraftList;
  readonly count: number;
  readonly titles: readonly string[];
}

type Named = (text: string, key: string) => boolean;

/** Ids of these lists could be words of something else: they count only under such keys. */
const UNDER: Partial<Readonly<Record<DraftList, readonly string[]>>> = {
  parts: ["part", "consumables"],
  states: ["states", "guards"],
  gauges: ["tool"],
  aids: ["tool"],
  access: ["access", "needs"],
  places: ["in", "relations", "at", "else"],
};
/** Before an id these make another one of it: `job.hub.nut` is no `hub.nut`. */
const FAMILIES: ReadonlySet<string> = new Set(["job", "lim", "gate", "cau"]);

/** Ids that differ in `-` and `_` alone are one in conditions. */
const same = (id: string): string => id.replaceAll("-", "_");

function namesOf(list: DraftList, item: string, value: unknown): ReadonlySet<string> {
  const fields = list === "points" ? Object.keys((value as Partial<Point> | undefined)?.fields ?? {}) : [];
  return new Set([item, ...fields.map((field) => celName(value as Point, field))].map(same));
}

/** The names in a text: the text itself without its place and state, or what a condition speaks of. */
function namesIn(text: string): readonly string[] {
  if (/^[\w.@#-]+$/.test(text)) return [text.split(/[@#]/, 1)[0] ?? text];
  const quoted = text.match(/"[^"]*"|'[^']*'/g) ?? [];
  const bare = text.replace(/"[^"]*"|'[^']*'/g, " ");
  return [...quoted.map((one) => one.slice(1, -1)), ...(bare.match(/[A-Za-z_]\w*(?:\.\w+)*/g) ?? [])];
}

/** `opposite.hub.float` names `hub.float`. */
function isNamed(name: string, names: ReadonlySet<string>): boolean {
  const steps = same(name).split(".");
  return steps.some((_, at) => names.has(steps.slice(at).join(".")) && !FAMILIES.has(steps[at - 1] ?? ""));
}

function naming(list: DraftList, item: string, value: unknown): Named {
  if (list === "facts") {
    const names = new Set([`car.${same(item)}`]);
    return (text, key) =>
      key === "facts" || key === "near-miss-facts" ? text === item : namesIn(text).some((one) => isNamed(one, names));
  }
  const keys = UNDER[list];
  if (keys)
    return (text, key) => (keys.includes(key) ? text === item : list === "places" && text.split(/[@#]/)[1] === item);
  const names = namesOf(list, item, value);
  return (text) => namesIn(text).some((one) => isNamed(one, names));
}

/** Whether any text inside, or any key, names it; `key` is the nearest key of the thing above. */
function names(inside: unknown, named: Named, key = ""): boolean {
  if (typeof inside === "string") return named(inside, key);
  if (Array.isArray(inside)) return inside.some((one) => names(one, named, key));
  if (typeof inside !== "object" || inside === null) return false;
  const under = key === "relations" ? key : undefined;
  return Object.entries(inside).some(([name, one]) => named(name, key) || names(one, named, under ?? name));
}

/** Every list of the sheet in which something else names `item`, in the order the lists are shown. */
export function namedIn(work: Pick<SheetWork, "base" | "changes">, list: DraftList, item: string): readonly NamedIn[] {
  const named = naming(list, item, itemsIn(work, list).get(item)?.value);
  return DRAFT_LISTS.flatMap((of): readonly NamedIn[] => {
    const found = [...itemsIn(work, of)].filter(
      ([name, { value }]) => !(of === list && name === item) && names(value, named),
    );
    if (found.length === 0) return [];
    return [{ list: of, count: found.length, titles: [...new Set(found.map(([, is]) => itemTitle(work, of, is)))] }];
  });
}
