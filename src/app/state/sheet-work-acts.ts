/** Keeping what is done to a check sheet under work: begun, an item as it is from now on, the order of a list, thrown away. */
import {
  type Act,
  type Draft,
  draftHouseSheet,
  draftSheetDraft,
  draftSheetItem,
  draftSheetOrder,
  draftUndo,
  type HouseState,
  type KeptBytes,
  type Step,
} from "../../core/record/index.js";
import { editionText, type Sheet } from "../../core/sheet/run.js";
import type { DraftItem, DraftList } from "../../core/sheet/work.js";
import { FROZEN_TYPE, type FrozenSheetFile, frozenBytes } from "./frozen.js";
import type { Journal, Phone } from "./journal.js";
import type { NewItem } from "./sheet-new-item.js";
import { draftsOf } from "./sheet-work.js";
import { textsOf } from "./shelf.js";

type Hashing = Pick<Phone, "hash">;

function houseAct(
  journal: Journal,
  make: (act: Act, house: HouseState) => readonly Draft[],
  blobs: readonly KeptBytes[] = [],
): Promise<boolean> {
  const kept = journal.keptHouse();
  return journal.keep("an-entry", (act) => {
    const house = kept.peek();
    return house.is === "open" ? { drafts: make(act, house.state), blobs } : { drafts: [] };
  });
}

async function blobOf(phone: Hashing, file: FrozenSheetFile): Promise<KeptBytes> {
  const bytes = frozenBytes(file);
  return { hash: await phone.hash(bytes), type: FROZEN_TYPE, bytes };
}

const frozenOf = (file: FrozenSheetFile, blob: string) => ({
  id: file.sheet.id,
  edition: file.edition,
  label: textsOf(file).title,
  blob,
});

/** A sheet as a file, under the hash of its meaning, whatever stands against it. */
export async function fileOf(phone: Hashing, { texts, cases, ...bare }: Sheet): Promise<FrozenSheetFile> {
  const edition = await phone.hash(new TextEncoder().encode(editionText({ ...bare, cases })));
  return { format: "leadlamp-frozen-sheet/1", edition, sheet: bare, texts, cases };
}

/** Begins a working copy of that edition; another one of the same sheet is thrown away with it. */
export async function beginWork(journal: Journal, phone: Hashing, file: FrozenSheetFile): Promise<boolean> {
  const blob = await blobOf(phone, file);
  const others = (house: HouseState) => draftsOf(house).filter(({ base }) => base.id === file.sheet.id);
  return houseAct(
    journal,
    (act, house) => [
      ...others(house).map(({ draft }) => draftSheetDraft(act, house, draft, null)),
      draftSheetDraft(act, house, act.nonce(), frozenOf(file, blob.hash)),
    ],
    [blob],
  );
}

/** Throws a working copy away; its changes stay in the record and come back with it. */
export const dropWork = (journal: Journal, draft: string): Promise<boolean> =>
  houseAct(journal, (act, house) => [draftSheetDraft(act, house, draft, null)]);

/** Takes back an act on a sheet under work. */
export const undoWork = (journal: Journal, { ids }: Pick<Step, "ids">): Promise<boolean> =>
  houseAct(journal, (act, house) => draftUndo(act, house, ids));

/** One item as it is from now on; null takes it out of the sheet. */
export const putItem = (
  journal: Journal,
  draft: string,
  list: DraftList,
  item: string,
  to: DraftItem | null,
): Promise<boolean> => houseAct(journal, (act, house) => [draftSheetItem(act, house, { draft, list, item }, to)]);

/** Several in one act, so that they are taken back together; with the order of their list where it is given. */
export const putItems = (
  journal: Journal,
  draft: string,
  items: readonly NewItem[],
  order?: { readonly list: DraftList; readonly order: readonly string[] },
): Promise<boolean> =>
  houseAct(journal, (act, house) => [
    ...items.map(({ list, item, to }) => draftSheetItem(act, house, { draft, list, item }, to)),
    ...(order ? [draftSheetOrder(act, house, { draft, list: order.list }, order.order)] : []),
  ]);

/** The order the items of a list are wanted in. */
export const orderItems = (
  journal: Journal,
  draft: string,
  list: DraftList,
  order: readonly string[],
): Promise<boolean> => houseAct(journal, (act, house) => [draftSheetOrder(act, house, { draft, list }, order)]);

/** Keeps the working copy as the sheet's edition from now on, and ends it. What visits froze stays as it is. */
export async function keepEdition(
  journal: Journal,
  phone: Hashing,
  draft: string,
  file: FrozenSheetFile,
): Promise<boolean> {
  const blob = await blobOf(phone, file);
  return houseAct(
    journal,
    (act, house) => [
      draftHouseSheet(act, house, file.sheet.id, frozenOf(file, blob.hash)),
      draftSheetDraft(act, house, draft, null),
    ],
    [blob],
  );
}
