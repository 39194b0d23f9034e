/** Places a car once had of its own and that were taken out again: to be brought back as they were. Judges nothing. */
import type { PlaceChange } from "../sheet/car.js";
import type { CarState } from "./contract.js";
import { everIn } from "./fold.js";

type Added = Extract<PlaceChange, { add: unknown }>["add"];

/** Every place ever added to this car about which nothing stands now, as it was added last. */
export function placesOnceAdded(car: CarState): readonly Added[] {
  return [...car.ledger.slots.keys()].flatMap((slot) => {
    if (!slot.startsWith("place|") || car.places.has(slot.slice("place|".length))) return [];
    const added = everIn(car.ledger, slot).flatMap((entry) =>
      entry.kind === "car.place" && entry.body.change && "add" in entry.body.change ? [entry.body.change.add] : [],
    );
    const last = added.at(-1);
    return last ? [last] : [];
  });
}
