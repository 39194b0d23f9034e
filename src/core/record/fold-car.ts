/** What a car is after all its entries: who it is, its facts, places and limits book. Refuses to judge. */
import type { CarState, FactValue, Ledger, Logged } from "./contract.js";
import { fold, type Own, type Parts, setOrDrop, step } from "./fold.js";
import { noteOf, pictureOf } from "./fold-visit.js";
import { standsIn } from "./standing.js";

type Car = Own<CarState>;

const CAR: Parts<CarState> = {
  of: "car",
  begins: "name|",
  empty: () => ({
    of: "car",
    names: [],
    facts: new Map(),
    places: new Map(),
    limits: new Map(),
    notes: [],
    pictures: [],
    sameOccasions: [],
    sameCars: [],
  }),
  copy: (car) => ({ ...car, facts: new Map(car.facts), places: new Map(car.places), limits: new Map(car.limits) }),
  apply: applySlot,
  join: (own, folded) => ({ ...own, ...folded }),
};

/** The car these entries tell of, in whatever order, however often. Several streams: one car begun twice. */
export const foldCar = (entries: Iterable<Logged>): CarState => fold(CAR, entries);

export const stepCar = (state: CarState, logged: Logged): CarState => step(CAR, state, logged);

function applySlot(car: Car, ledger: Ledger, head: string, rest: string): void {
  const slot = `${head}|${rest}`;
  switch (head) {
    case "name":
      car.names = standsIn(ledger, slot, (e) =>
        e.kind === "car.begun" || e.kind === "car.named" ? e.body.name : null,
      );
      return;
    case "fact":
      return setOrDrop(
        car.facts,
        rest,
        standsIn<FactValue>(ledger, slot, (e) => (e.kind === "car.fact" ? e.body.value : null)),
      );
    case "place":
      return setOrDrop(
        car.places,
        rest,
        standsIn(ledger, slot, (e) => (e.kind === "car.place" ? e.body.change : null)),
      );
    case "limit":
      return setOrDrop(
        car.limits,
        rest,
        standsIn(ledger, slot, (e) => (e.kind === "car.limit" ? e.body.limit : null)),
      );
    case "note":
      car.notes = standsIn(ledger, slot, noteOf);
      return;
    case "picture":
      car.pictures = standsIn(ledger, slot, pictureOf);
      return;
    case "same-occasion":
      car.sameOccasions = standsIn(ledger, slot, (e) => (e.kind === "car.same-occasion" ? e.body.visits : null));
      return;
    case "same-car":
      car.sameCars = standsIn(ledger, slot, (e) => (e.kind === "car.same" ? e.body.other : null));
      return;
    default:
      throw new Error(`No part of a car is made of ${slot}`);
  }
}
