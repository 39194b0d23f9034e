/**
 * What the car list shows of the last visit at a glance, remembered so that the list needs no judging: how far the
 * round is, which places are inked, the worst mark per place. Disposable; never part of the record.
 */
import type { Grade } from "../../core/terms/index.js";
import { t } from "../texts/first.js";
import type { TextShelf } from "./settings.js";

export interface GlancePlace {
  readonly id: string;
  readonly look: "not-looked" | "done" | "here";
  readonly at?: readonly [number, number];
  readonly mark?: Grade;
  readonly words: string;
  readonly says: string;
}
export interface Glance {
  readonly done: number;
  readonly all: number;
  /** `Rear left, 5 of 12 points`. */
  readonly spot?: string;
  readonly places: readonly GlancePlace[];
  /** What not to do, where a DANGER or WARNING stands: the worst. */
  readonly caution?: { readonly signal: "danger" | "warning"; readonly not: string };
}

const keyOf = (visit: string): string => `leadlamp.glance.${visit}`;

export const keepGlance = (shelf: TextShelf, visit: string, glance: Glance): void =>
  shelf.put(keyOf(visit), JSON.stringify(glance));

/** What was remembered; undefined when nothing was or it is of another shape. */
export function recallGlance(shelf: TextShelf, visit: string): Glance | undefined {
  try {
    const kept: unknown = JSON.parse(shelf.get(keyOf(visit)) ?? "null");
    if (typeof kept !== "object" || kept === null || !("places" in kept) || !Array.isArray(kept.places))
      return undefined;
    const places = kept.places.every(
      (place: unknown) => typeof place === "object" && place !== null && "id" in place && "look" in place,
    );
    const counted = "done" in kept && typeof kept.done === "number" && "all" in kept && typeof kept.all === "number";
    // Written by keepGlance only; anything else was refused above.
    const caution: unknown = "caution" in kept ? kept.caution : undefined;
    const warned =
      caution === undefined ||
      (typeof caution === "object" &&
        caution !== null &&
        "not" in caution &&
        typeof caution.not === "string" &&
        "signal" in caution &&
        (caution.signal === "danger" || caution.signal === "warning"));
    return places && counted && warned ? (kept as unknown as Glance) : undefined;
  } catch {
    return undefined;
  }
}

/** 'Left at rear left, 5 of 12 points; 12 of 40 in all'; undefined where no place is remembered. */
export const leftAt = (glance: Glance | undefined): string | undefined =>
  glance?.spot && t("cars.left-at", { spot: glance.spot, done: glance.done, all: glance.all });
