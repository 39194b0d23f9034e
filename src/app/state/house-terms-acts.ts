/** Keeping a house's terms, days and suppliers, each as one act of the journal. Null takes back. */
import {
  type Act,
  type Draft,
  draftHouseCalendar,
  draftHouseSupplier,
  draftHouseTerms,
  type HouseCalendar,
  type HouseState,
  type HouseTerms,
  type Supplier,
} from "../../core/record/index.js";
import type { Journal } from "./journal.js";

function houseAct(journal: Journal, make: (act: Act, house: HouseState) => Draft): Promise<boolean> {
  const kept = journal.keptHouse();
  return journal.keep("an-entry", (act) => {
    const house = kept.peek();
    return { drafts: house.is === "open" ? [make(act, house.state)] : [] };
  });
}

export const keepTerms = (journal: Journal, terms: HouseTerms | null): Promise<boolean> =>
  houseAct(journal, (act, house) => draftHouseTerms(act, house, terms));

export const keepCalendar = (journal: Journal, calendar: HouseCalendar | null): Promise<boolean> =>
  houseAct(journal, (act, house) => draftHouseCalendar(act, house, calendar));

/** A supplier under its id; a new one takes the random text. */
export const keepSupplier = (
  journal: Journal,
  id: string | undefined,
  supplier: Omit<Supplier, "id">,
): Promise<boolean> =>
  houseAct(journal, (act, house) => {
    const own = id ?? act.nonce();
    return draftHouseSupplier(act, house, own, { ...supplier, id: own });
  });

export const dropSupplier = (journal: Journal, id: string): Promise<boolean> =>
  houseAct(journal, (act, house) => draftHouseSupplier(act, house, id, null));
