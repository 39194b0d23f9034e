/** What a person can say about a car that is there: each one act of the journal. Judges nothing. */
import {
  type Act,
  type CarState,
  type Draft,
  draftFact,
  draftName,
  draftPlace,
  draftPlaceName,
  type FactValue,
} from "../../core/record/index.js";
import type { PlaceChange } from "../../core/sheet/run.js";
import type { Journal } from "./journal.js";

/** One act on a car that is open; what `make` drafts is kept together. */
export function carAct(
  journal: Journal,
  stream: string,
  make: (act: Act, car: CarState) => readonly Draft[],
): Promise<boolean> {
  const kept = journal.keptCar(stream);
  return journal.keep("an-entry", (one) => {
    const car = kept.peek();
    return { drafts: car.is === "open" ? make(one, car.state) : [] };
  });
}

export const rename = (journal: Journal, stream: string, name: string): Promise<boolean> =>
  carAct(journal, stream, (one, car) => [draftName(one, car, name)]);
export const fact = (journal: Journal, stream: string, name: string, value: FactValue | null): Promise<boolean> =>
  carAct(journal, stream, (one, car) => [draftFact(one, car, name, value)]);

/** One place of a car: what changes about it, and what it is called; null goes back to the shared files. */
export interface PlaceEntry {
  readonly place: string;
  readonly change?: PlaceChange | null;
  readonly name?: string | null;
}

/** Changes and names of several places as one act. `make` may ask for random texts, for ids never used before. */
export const keepPlaces = (
  journal: Journal,
  stream: string,
  make: (random: () => string, car: CarState) => readonly PlaceEntry[],
): Promise<boolean> =>
  carAct(journal, stream, (one, car) =>
    make(one.nonce, car).flatMap(({ place, change, name }) => [
      ...(change === undefined ? [] : [draftPlace(one, car, place, change)]),
      ...(name === undefined ? [] : [draftPlaceName(one, car, place, name)]),
    ]),
  );
