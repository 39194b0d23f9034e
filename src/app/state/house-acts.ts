/** Keeping a sheet or a gauge of one's own in the house, and taking it out. What visits froze or read stays as it is. */
import { draftHouseGauge, draftHouseSheet, type HouseGauge, type KeptBytes } from "../../core/record/index.js";
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

/** A gauge of this house; `make` is given a random text for a new one's id. */
export function keepGauge(journal: Journal, make: (random: string) => HouseGauge): Promise<boolean> {
  const kept = journal.keptHouse();
  return journal.keep("an-entry", (act) => {
    const house = kept.peek();
    if (house.is !== "open") return { drafts: [] };
    const gauge = make(act.nonce());
    return { drafts: [draftHouseGauge(act, house.state, gauge.id, gauge)] };
  });
}

export function dropGauge(journal: Journal, id: string): Promise<boolean> {
  const kept = journal.keptHouse();
  return journal.keep("an-entry", (act) => {
    const house = kept.peek();
    return { drafts: house.is === "open" ? [draftHouseGauge(act, house.state, id, null)] : [] };
  });
}
