/**
 * A check sheet under work as its screens see it: the edition it was begun from with the house's changes laid over it,
 * and what the checker told. Pure; keeps nothing and loads no checker.
 */
import { compareStamps, differ, type FrozenSheet, type HouseState } from "../../core/record/index.js";
import { type Common, type Sheet, withBrought, withBroughtTexts } from "../../core/sheet/run.js";
import {
  type AboutItem,
  aboutItem,
  changedSheet,
  DRAFT_LISTS,
  type DraftChanges,
  type DraftItem,
  type DraftList,
  draftItems,
} from "../../core/sheet/work.js";
import { t } from "../texts/sheet-work.js";
import type { FrozenCommonFile, FrozenSheetFile } from "./frozen.js";
import type { CheckGround, Told, WorkChecked } from "./sheet-tools.js";

export interface ItemTold {
  readonly is: "problem" | "note";
  readonly code: string;
  readonly says: string;
  /** Absent where it is about the sheet as a whole. */
  readonly about?: AboutItem;
}

export interface SheetWork {
  /** Name of the draft in the house's record. */
  readonly draft: string;
  readonly base: Sheet;
  /** The app's edition it goes back to, where the app has this sheet. */
  readonly begunFrom?: string;
  /** What was changed since; `itemsIn` lays it over one list. */
  readonly changes: DraftChanges;
  readonly sheet: Sheet;
  /** The shared files, whole for this sheet: with what it brings. */
  readonly common: Common;
  /** The other sheets at hand, without their cases. */
  readonly others: readonly Sheet[];
  /** What it is checked and proved beside. */
  readonly on: CheckGround;
  /** As told last; while `checked` is `yet`, of the sheet as it was before. */
  readonly told: readonly ItemTold[];
  readonly checked: "now" | "yet";
  /** The page stands still while it is checked, because nothing would run beside it. */
  readonly inTheWay?: true;
}

/** What a working copy is laid on: fetched once for its base and the sheets at hand. */
export interface WorkGround {
  readonly base: Sheet;
  readonly begunFrom?: string;
  readonly texts: FrozenCommonFile["texts"];
  /** Its edition before is one visits may hold, which this work goes on from; a new sheet and a copy have none. */
  readonly on: CheckGround;
}

/** One working copy, and the edition it was begun from. */
export interface SheetDraft {
  readonly draft: string;
  readonly base: FrozenSheet;
}

/** The working copies that stand, the one begun last behind. */
export function draftsOf(house: HouseState): readonly SheetDraft[] {
  const all = [...house.drafts].flatMap(([draft, standing]) => {
    const last = standing.at(-1);
    return last ? [{ draft, base: last.value, at: last.at }] : [];
  });
  return all.sort((a, b) => compareStamps(a.at, b.at));
}

/** The working copy of a sheet that stands now; where several do, the one begun last. */
export const draftOf = (house: HouseState, sheet: string): SheetDraft | undefined =>
  draftsOf(house).findLast(({ base }) => base.id === sheet);

const isList = (name: string): name is DraftList => (DRAFT_LISTS as readonly string[]).includes(name);

/** What the house changed in one draft; where people differ, what was said last, and `differing` tells it. */
export function changesOf(house: HouseState, draft: string): DraftChanges {
  const items = new Map<DraftList, Map<string, DraftItem | null>>();
  for (const [name, standing] of house.draftItems) {
    const [of, list = "", item = ""] = name.split("|");
    const last = standing.at(-1);
    if (of !== draft || !isList(list) || !last) continue;
    const there = items.get(list) ?? new Map<string, DraftItem | null>();
    items.set(list, there.set(item, last.value.to));
  }
  const orders = [...house.draftOrders].flatMap(([name, standing]) => {
    const [of, list = ""] = name.split("|");
    const last = standing.at(-1);
    return of === draft && isList(list) && last ? [[list, last.value] as const] : [];
  });
  return { items, orders: new Map(orders) };
}

/** Items two people changed differently: the last is shown, and none is kept as an edition until one is put again. */
function differing(house: HouseState, draft: string): readonly ItemTold[] {
  return [...house.draftItems].flatMap(([name, standing]): readonly ItemTold[] => {
    const [of, list = "", item = ""] = name.split("|");
    if (of !== draft || !isList(list) || !differ(standing)) return [];
    return [{ is: "problem", code: "work-differs", says: t("sheet-work.differs"), about: { list, item, inside: [] } }];
  });
}

/** A sheet as it was frozen, with its words and cases in their place. */
export const wholeSheet = ({ sheet, texts, cases = [] }: FrozenSheetFile): Sheet => ({
  ...sheet,
  cases: [...cases],
  texts: { ...texts },
});

/** Items of one list as they stand now, in their order, by the name each is put and ordered by. */
export const itemsIn = ({ base, changes }: Pick<SheetWork, "base" | "changes">, list: DraftList) =>
  draftItems(base, changes, list);

/** What was told of one item. */
export const toldOf = ({ told }: Pick<SheetWork, "told">, list: DraftList, item: string): readonly ItemTold[] =>
  told.filter(({ about }) => about?.list === list && about.item === item);

/** The base with the house's changes laid over it; only what people differ in is told yet. */
export function layWork(ground: WorkGround, house: HouseState, draft: string): SheetWork {
  const changes = changesOf(house, draft);
  const sheet = changedSheet(ground.base, changes);
  const texts = Object.entries(ground.texts).map(([language, words]) => {
    const own = sheet.texts[language];
    return [language, { ...withBroughtTexts(words, own ? [own] : []), complaints: {} }] as const;
  });
  const common = { ...withBrought(ground.on.bare, [sheet]), texts: Object.fromEntries(texts) };
  const from = ground.begunFrom === undefined ? {} : { begunFrom: ground.begunFrom };
  return {
    draft,
    base: ground.base,
    ...from,
    changes,
    sheet,
    common,
    others: ground.on.others,
    on: ground.on,
    told: differing(house, draft),
    checked: "yet",
  };
}

/** The work with what the checker told of it; `stale`: of the sheet as it was before. */
export function withTold(work: SheetWork, { told, inTheWay }: WorkChecked, stale: boolean): SheetWork {
  const about = [...work.told, ...told.map((one) => itemTold(work, one))];
  return { ...work, told: about, checked: stale ? "yet" : "now", ...(inTheWay ? { inTheWay } : {}) };
}

function itemTold(work: SheetWork, { is, code, says, path }: Told): ItemTold {
  const found = path && aboutItem(work.sheet, path);
  if (!found) return { is, code, says };
  return { is, code, says, about: { ...found, item: nameOf(work, found) } };
}

/** Items without an id are told by where they stand now; they are put by the name they stood under at first. */
function nameOf(work: SheetWork, { list, item }: AboutItem): string {
  if (list !== "cases" && list !== "nextLooks") return item;
  return [...itemsIn(work, list).keys()][Number(item.slice(1))] ?? item;
}
