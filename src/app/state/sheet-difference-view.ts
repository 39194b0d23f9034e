/** A difference between two editions as lines people can read. Pure; where a word for it is missing the sheet's own name stands. */
import type { Sheet } from "../../core/sheet/run.js";
import {
  type ItemDifference,
  type PartDifference,
  type Path,
  type SheetDifference,
  sheetDifference,
} from "../../core/sheet/work.js";
import { isPartKey, t } from "../texts/sheet-work.js";
import { itemTitle } from "./sheet-items-view.js";

export interface DifferenceLine {
  readonly difference: ItemDifference;
  readonly title: string;
  /** What was done to it, or each part that changed with before and after. */
  readonly parts: readonly string[];
}
export interface DifferenceView {
  readonly lines: readonly DifferenceLine[];
  readonly reordered: SheetDifference["reordered"];
}

const NO_CHANGES = { items: new Map(), orders: new Map() } as const;
/** Longer values are cut: the item itself shows them whole. */
const SHOWN = 160;

export function differenceView(before: Sheet, after: Sheet): DifferenceView {
  const { items, reordered } = sheetDifference(before, after);
  const lines = items.map((difference): DifferenceLine => {
    const is = difference.after ?? difference.before ?? { texts: {} };
    const of = { base: difference.after ? after : before, changes: NO_CHANGES };
    const parts =
      difference.is === "changed" ? difference.parts.map(partLine) : [t(`sheet-difference.${difference.is}`)];
    return { difference, title: itemTitle(of, difference.list, is), parts };
  });
  return { lines, reordered };
}

function partLine({ path, before, after }: PartDifference): string {
  const part = partName(path);
  if (before === undefined) return t("sheet-difference.part.new", { part, after: shown(after) });
  if (after === undefined) return t("sheet-difference.part.gone", { part, before: shown(before) });
  return t("sheet-difference.part", { part, before: shown(before), after: shown(after) });
}

/** `texts › en › name` → `name`: the language is said only where it is another than the first. */
function partName(path: Path): string {
  const own = path[0] === "texts" ? path.slice(2) : path;
  const name = own.map((part) => {
    const key = `sheet-part.${part}`;
    return isPartKey(key) ? t(key) : String(part).replaceAll("-", " ");
  });
  return name.join(", ") || t("sheet-part.words");
}

function shown(value: unknown): string {
  const text = typeof value === "string" ? value : plain(value);
  return text.length > SHOWN ? `${text.slice(0, SHOWN)} …` : text;
}

/** Lists and mappings without the signs a program writes them with. */
function plain(value: unknown): string {
  if (Array.isArray(value)) return value.map(shown).join(", ");
  if (typeof value !== "object" || value === null) return String(value);
  return Object.entries(value)
    .map(([key, one]) => `${key}: ${shown(one)}`)
    .join("; ");
}
