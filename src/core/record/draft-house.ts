/** Drafts of what a house keeps for all its cars, each naming what it replaces. */
import type { Act, Bodies, Draft, FrozenSheet, HouseGauge, HouseState } from "./contract.js";
import { standingIds } from "./draft.js";
import { draftBy } from "./draft-later.js";
import type { HouseCalendar, HouseTerms, Supplier } from "./house-bodies.js";
import { HOUSE_KINDS } from "./house-kinds.js";
import { HOUSE } from "./identity.js";
import type { HouseKind } from "./kinds.js";
import type { DraftedItem } from "./sheet-draft-bodies.js";

const draftHouse = <K extends HouseKind>(act: Act, kind: K, body: Bodies[K]): Draft =>
  draftBy(HOUSE_KINDS, act, HOUSE, kind, body);

/** A sheet of one's own, or null to take it out; editions frozen in visits stay. */
export function draftHouseSheet(act: Act, house: HouseState, id: string, sheet: FrozenSheet | null): Draft {
  return draftHouse(act, "house.sheet", { id, sheet, replaces: standingIds(house, `sheet|${id}`) });
}

/** A sheet to work on from that edition, or null to throw the work away. */
export const draftSheetDraft = (act: Act, house: HouseState, draft: string, base: FrozenSheet | null): Draft =>
  draftHouse(act, "house.draft", { draft, base, replaces: standingIds(house, `draft|${draft}`) });

type OfDraft = { readonly draft: string; readonly list: string };

/** One item of a sheet under work as it is from now on, or null to take it out of the sheet. */
export const draftSheetItem = (
  act: Act,
  house: HouseState,
  { draft, list, item }: OfDraft & { readonly item: string },
  to: DraftedItem | null,
): Draft =>
  draftHouse(act, "house.draft-item", {
    draft,
    list,
    item,
    to,
    replaces: standingIds(house, `item|${draft}|${list}|${item}`),
  });

/** The order the items of a list are wanted in. */
export const draftSheetOrder = (
  act: Act,
  house: HouseState,
  { draft, list }: OfDraft,
  order: readonly string[],
): Draft =>
  draftHouse(act, "house.draft-order", { draft, list, order, replaces: standingIds(house, `order|${draft}|${list}`) });

/** A gauge of this house, or null to take it out; readings taken with it keep its figures. */
export function draftHouseGauge(act: Act, house: HouseState, id: string, gauge: HouseGauge | null): Draft {
  return draftHouse(act, "house.gauge", { id, gauge, replaces: standingIds(house, `gauge|${id}`) });
}

/** Rates and tax of this house, or null to take them back. */
export const draftHouseTerms = (act: Act, house: HouseState, terms: HouseTerms | null): Draft =>
  draftHouse(act, "house.terms", { terms, replaces: standingIds(house, "terms|") });

/** Days this house works, its people and lifts, or null to take them back. */
export const draftHouseCalendar = (act: Act, house: HouseState, calendar: HouseCalendar | null): Draft =>
  draftHouse(act, "house.calendar", { calendar, replaces: standingIds(house, "calendar|") });

/** A supplier of this house, or null to take it out; what was ordered from it keeps its dates. */
export const draftHouseSupplier = (act: Act, house: HouseState, id: string, supplier: Supplier | null): Draft =>
  draftHouse(act, "house.supplier", { id, supplier, replaces: standingIds(house, `supplier|${id}`) });
