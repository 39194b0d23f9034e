/** Keeping a sheet of one's own in the house, and taking it out. Editions frozen in visits stay as they are. */
import { draftHouseSheet, type KeptBytes } from "../../core/record/index.js";
import { FROZEN_TYPE, type FrozenSheetFile, frozenBytes } from "./frozen.js";
import type { Journal, Phone } from "./journal.js";
import { textsOf } from "./shelf.js";

export async function keepSheet(journal: Journal, phone: Pick<Phone, "hash">, file: FrozenSheetFile): Promise<boolean> {
  const bytes = frozenBytes(file);
  const blob: KeptBytes = { hash: await phone.hash(bytes), type: FROZEN_TYPE, bytes };
  const kept = journal.keptHouse();
  return journal.keep("an-entry", (act) => {
    const house = kept.peek();
    if (house.is !== "open") return { drafts: [] };
    const sheet = { id: file.sheet.id, edition: file.edition, label: textsOf(file).title, blob: blob.hash };
    return { drafts: [draftHouseSheet(act, house.state, file.sheet.id, sheet)], blobs: [blob] };
  });
}

export function dropSheet(journal: Journal, id: string): Promise<boolean> {
  const kept = journal.keptHouse();
  return journal.keep("an-entry", (act) => {
    const house = kept.peek();
    return { drafts: house.is === "open" ? [draftHouseSheet(act, house.state, id, null)] : [] };
  });
}
