/** What an item of a sheet under work is called in a list. Pure; an item nobody named is said to have no name. */
import type { Sheet, SheetTexts } from "../../core/sheet/run.js";
import type { DraftItem, DraftList } from "../../core/sheet/work.js";
import { t } from "../texts/sheet-work.js";
import { itemsIn, type SheetWork } from "./sheet-work.js";
import { LANGUAGE } from "./shelf.js";

type Loose = Readonly<Record<string, unknown>>;
const loose = (value: unknown): Loose =>
  typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Loose) : {};
const text = (value: unknown): string | undefined =>
  typeof value === "string" && value.trim() !== "" ? value.trim() : undefined;

/** The item's words in the language shown, else in whichever there is. */
const wordsOf = (is: DraftItem): unknown => is.texts[LANGUAGE] ?? Object.values(is.texts)[0];

/** Where the words are an object, the one of it that names the item. */
export const NAMED_BY: Partial<Readonly<Record<DraftList, string>>> = {
  head: "title",
  rules: "says",
  faults: "says",
  cautions: "not",
};

/** The name of an item: its own, else what it is about, never an id where there is a word for it. */
export function itemTitle(work: Pick<SheetWork, "base" | "changes">, list: DraftList, is: DraftItem): string {
  const words = wordsOf(is);
  const own = text(words) ?? text(loose(words)[NAMED_BY[list] ?? "name"]);
  return own ?? aboutTitle(work, list, loose(is.value)) ?? text(is.value) ?? t("sheet-work.unnamed");
}

/** Of an item without words of its own: by the thing it speaks of. */
function aboutTitle(work: Pick<SheetWork, "base" | "changes">, list: DraftList, value: Loose): string | undefined {
  const named = (of: DraftList, id: unknown): string | undefined => {
    const key = text(id);
    const found = key === undefined ? undefined : itemsIn(work, of).get(key);
    return found && (text(wordsOf(found)) ?? text(loose(wordsOf(found))[NAMED_BY[of] ?? "name"]));
  };
  if (list === "rules") return named("faults", value["fault"]) ?? text(value["when"]);
  if (list === "limits") return named("points", value["of"]) ?? named("derived", value["of"]) ?? text(value["of"]);
  if (list === "nextLooks")
    return named("faults", value["fault"]) ?? named("jobs", value["job"]) ?? text(value["grade"]);
  if (list !== "cases") return text(value["id"]);
  const rule = itemsIn(work, "rules").get(text(value["fires"]) ?? "");
  return (rule && itemTitle(work, "rules", rule)) ?? text(value["fires"]);
}

/** A sheet's words in the language shown, else in whichever there is. */
export const textsIn = ({ texts }: Pick<Sheet, "texts">): SheetTexts | undefined =>
  texts[LANGUAGE] ?? Object.values(texts)[0];
