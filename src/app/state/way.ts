/**
 * In which way a visit is looked through on this phone: what decides most or is due first, or the way round the car, with a
 * quiet screen or an open one. A setting of the hand, never part of the record; losing it brings the usual one back.
 */
import { signal } from "@preact/signals";
import type { VisitState } from "../../core/record/contract.js";
import type { TextShelf } from "./settings.js";

export interface Way {
  /** What comes first: the next on the way round the car, what decides most, or what is due again. */
  readonly order: "walk" | "value" | "due";
  /** Nothing on the screen tells one who looks over the shoulder what was made of a reply. */
  readonly quiet: boolean;
}

export const wayKey = (visit: string): string => `leadlamp.way.${visit}`;
/** Told by whoever sets it (set-way.ts). */
export const wayChanges = signal(0);

/** The seller stands beside it: the usual for a viewing, and for whoever looks as a buyer. */
export const isViewing = ({ opened }: Pick<VisitState, "opened">): boolean =>
  opened?.value.purpose === "viewing" || opened?.value.who === "buyer";

/** Reads anew in every component and effect that asked, once it was changed. */
export function wayOf(shelf: TextShelf, visit: Pick<VisitState, "opened" | "stream">): Way {
  wayChanges.value;
  const words = shelf.get(wayKey(visit.stream)) ?? (isViewing(visit) ? "vq" : "");
  return {
    order: words.includes("v") ? "value" : words.includes("d") ? "due" : "walk",
    quiet: words.includes("q"),
  };
}
