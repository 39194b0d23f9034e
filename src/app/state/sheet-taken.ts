/** Ids that are or were in use, so that none ever means two things: those put in any working copy, taken out or not. Pure. */
import type { HouseState } from "../../core/record/index.js";
import type { DraftList } from "../../core/sheet/work.js";

/** Ids of one list in every working copy this house ever had. */
export function takenIn(house: HouseState, list: DraftList): readonly string[] {
  return [...house.draftItems.keys()].flatMap((name) => {
    const [, of, item] = name.split("|");
    return of === list && item !== undefined ? [item] : [];
  });
}

/** Ids of every sheet this house ever kept or worked on, and of those at hand. */
export function takenSheets(house: HouseState, atHand: readonly { readonly id: string }[]): readonly string[] {
  const worked = [...house.drafts.values()].flatMap((standing) => standing.map(({ value }) => value.id));
  const put = [...house.draftItems.keys()].flatMap((name) => /^[^|]*\|points\|([^.]+)\./.exec(name)?.[1] ?? []);
  return [...atHand.map(({ id }) => id), ...house.sheets.keys(), ...worked, ...put];
}
