/**
 * A new item of each list, as little as has a meaning: what it is called is said, what it looks at first is guessed from
 * the sheet, the rest is left to be mended and told. Pure.
 */
import type { Point, Sheet } from "../../core/sheet/run.js";
import { type DraftItem, type DraftList, freshId, freshNumber, idPrefix } from "../../core/sheet/work.js";
import { t } from "../texts/sheet-work.js";
import { NAMED_BY } from "./sheet-items-view.js";
import { itemsIn, type SheetWork } from "./sheet-work.js";
import { LANGUAGE } from "./shelf.js";

/** One item to be put; a rule brings its fault along. */
export interface NewItem {
  readonly list: DraftList;
  readonly item: string;
  readonly to: DraftItem;
}

const english = (words: unknown): DraftItem["texts"] => ({ [LANGUAGE]: words });

/** Lists a person gives a name for; the others' items are known by what they are about. */
export const isNamed = (list: DraftList): boolean => list !== "nextLooks" && list !== "cases";

const words = ({ fields }: Point): readonly string[] | undefined => {
  const [first] = Object.values(fields);
  return first && "words" in first ? first.words : undefined;
};

/** The condition a new rule begins with: the first point of words at its last, worst word. */
function firstCondition({ points }: Sheet): { readonly scope: string; readonly when: string } | undefined {
  const point = points.find((one) => words(one) !== undefined);
  const word = point && words(point)?.at(-1);
  return point && word
    ? { scope: point.place, when: `${point.id.replaceAll("-", "_")} == ${JSON.stringify(word)}` }
    : undefined;
}

const isReading = ({ fields }: Point): boolean => "quantity" in (Object.values(fields)[0] ?? {});

function newValue(list: DraftList, id: string, { sheet, common }: SheetWork): unknown {
  const place = sheet.points.at(-1)?.place ?? "car";
  const state = sheet.points.at(-1)?.states[0] ?? common.states[0]?.id ?? "";
  switch (list) {
    case "points":
      return newPoint(id, place, state);
    case "limits": {
      const point = sheet.points.find(isReading);
      const [field] = Object.values(point?.fields ?? {});
      const measured = field && "quantity" in field ? field : { quantity: "length", unit: "mm" };
      const of = {
        of: point?.id ?? "",
        quantity: measured.quantity,
        unit: measured.unit,
        class: point?.place ?? place,
      };
      return { id, ...of, direction: "over", bands: {}, basis: "unverified", source: "", aggregate: "max" };
    }
    case "derived":
      return { id, place, quantity: "length", unit: "mm" };
    case "jobs":
      return { id, place, access: [], minutes: [15, 30, 60], minutesBasis: "unverified" };
    case "gates":
      return { id, guards: "drive-away", starts: "cleared", trips: [], cautions: [] };
    case "nextLooks":
      return { grade: "minor", months: 12 };
    case "cases":
      return { fires: sheet.rules[0]?.id ?? "", replies: {}, expect: {} };
    case "places":
      return { id, kind: id, in: "car" };
    case "states":
      return { id, order: Math.max(0, ...common.states.map(({ order }) => order)) + 1, lifted: false, plan: "none" };
    case "gauges":
      return { id, quantity: "length", unit: "mm", resolution: 0.1, error: 0.1, basis: "unverified", source: "" };
    case "aids":
      return id;
    case "cautions":
      return { id, signal: "caution" };
    case "access":
      return { id, place, setUp: [5, 10, 20], putBack: [5, 10, 20], basis: "unverified" };
    case "facts":
      return { id, kind: "yes" };
    default:
      return undefined;
  }
}

/** A point with two words to choose from, so that it can be tried at once. */
export const newPoint = (id: string, place: string, state: string): Point => ({
  id,
  place,
  states: [state],
  fields: { found: { words: ["sound", "faulty"] } },
  unremarkable: { found: "sound" },
  who: ["technician"],
});
export const newPointWords = (name: string) => ({
  name,
  ask: { technician: name },
  leave: t("sheet-new.leave"),
  words: { sound: t("sheet-new.sound"), faulty: t("sheet-new.faulty") },
});

function wordsFor(list: DraftList, name: string): DraftItem["texts"] {
  switch (list) {
    case "points":
      return english(newPointWords(name));
    case "jobs":
      return english({ name, does: name });
    case "gates":
      return english({ name, tripped: name, first: name });
    case "faults":
      return english({ says: name });
    case "states":
      return english({ name, how: "" });
    case "cautions":
      return english({ not: name, why: "", can: "", do: "" });
    case "facts":
      return english({ name });
    case "nextLooks":
    case "cases":
    case "rules":
      return {};
    default:
      return english(name);
  }
}

/** `taken` names every id of this list that is or was in use. The item to open comes first. */
export function newItems(
  work: SheetWork,
  list: DraftList,
  name: string,
  taken: (list: DraftList) => Iterable<string>,
): readonly NewItem[] {
  const own = itemsIn(work, list).keys();
  if (!isNamed(list)) {
    const item = freshNumber([...own, ...taken(list)]);
    return [{ list, item, to: { value: newValue(list, item, work), texts: {} } }];
  }
  const idIn = (of: DraftList) =>
    freshId(idPrefix(work.sheet.id, of), name, [...itemsIn(work, of).keys(), ...taken(of)]);
  const item = idIn(list);
  if (list !== "rules") {
    const value = newValue(list, item, work);
    return [{ list, item, to: { ...(value === undefined ? {} : { value }), texts: wordsFor(list, name) } }];
  }
  const fault = idIn("faults");
  const begins = firstCondition(work.sheet) ?? { scope: "car", when: "" };
  const grading = { fault, grade: "minor", sure: "likely", consequence: 3, likelihood: "C", "must-stand": false };
  return [
    { list, item, to: { value: { id: item, effect: "finding", ...begins, ...grading }, texts: {} } },
    { list: "faults", item: fault, to: { texts: wordsFor("faults", name) } },
  ];
}

/** The item's words with another name in them; of a list whose items are named by their fault or rule, as they stand. */
function renamed(list: DraftList, name: string, texts: DraftItem["texts"]): DraftItem["texts"] {
  const words = texts[LANGUAGE];
  if (typeof words === "string") return { ...texts, [LANGUAGE]: name };
  if (typeof words !== "object" || words === null) return texts;
  return { ...texts, [LANGUAGE]: { ...words, [NAMED_BY[list] ?? "name"]: name } };
}

/** The same item once more under an id and a name of its own, behind the one it was made from. */
export function copyOf(
  work: SheetWork,
  list: DraftList,
  item: string,
  name: string,
  taken: Iterable<string>,
): NewItem | undefined {
  const items = itemsIn(work, list);
  const is = items.get(item);
  if (!is) return undefined;
  const used = [...items.keys(), ...taken];
  if (!isNamed(list)) return { list, item: freshNumber(used), to: is };
  const id = freshId(idPrefix(work.sheet.id, list), name, used);
  const { value } = is;
  const again = typeof value === "string" ? id : value === undefined ? undefined : { ...(value as object), id };
  return {
    list,
    item: id,
    to: { ...(again === undefined ? {} : { value: again }), texts: renamed(list, name, is.texts) },
  };
}

/** The order after one item moved by one place; undefined at the end of the list. */
export function movedBy(order: readonly string[], item: string, by: -1 | 1): readonly string[] | undefined {
  const from = order.indexOf(item);
  const to = from + by;
  const other = order[to];
  if (from < 0 || other === undefined) return undefined;
  return order.map((key, i) => (i === from ? other : i === to ? item : key));
}
