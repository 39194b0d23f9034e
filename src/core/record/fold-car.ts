/** What a car is after all its entries: who it is, its facts, places and limits book. Refuses to judge. */
import type { CarState, FactValue, Logged } from "./contract.js";
import { fold, type Parts, setOrDrop } from "./fold.js";
import { noteOf, pictureOf } from "./fold-visit.js";
import { KINDS } from "./kinds.js";
import { standsIn } from "./standing.js";

const FILL: Parts<CarState>["fill"] = {
  name: (car, ledger, slot) => {
    car.names = standsIn(ledger, slot, (e) => (e.kind === "car.begun" || e.kind === "car.named" ? e.body.name : null));
  },
  fact: (car, ledger, slot, fact) =>
    setOrDrop(
      car.facts,
      fact,
      standsIn<FactValue>(ledger, slot, (e) => (e.kind === "car.fact" ? e.body.value : null)),
    ),
  place: (car, ledger, slot, place) =>
    setOrDrop(
      car.places,
      place,
      standsIn(ledger, slot, (e) => (e.kind === "car.place" ? e.body.change : null)),
    ),
  "place-name": (car, ledger, slot, place) =>
    setOrDrop(
      car.placeNames,
      place,
      standsIn(ledger, slot, (e) => (e.kind === "car.place-named" ? e.body.name : null)),
    ),
  limit: (car, ledger, slot, key) =>
    setOrDrop(
      car.limits,
      key,
      standsIn(ledger, slot, (e) => (e.kind === "car.limit" ? e.body.limit : null)),
    ),
  note: (car, ledger, slot) => {
    car.notes = standsIn(ledger, slot, noteOf);
  },
  picture: (car, ledger, slot) => {
    car.pictures = standsIn(ledger, slot, pictureOf);
  },
  "same-occasion": (car, ledger, slot) => {
    car.sameOccasions = standsIn(ledger, slot, (e) => (e.kind === "car.same-occasion" ? e.body.visits : null));
  },
  "same-car": (car, ledger, slot) => {
    car.sameCars = standsIn(ledger, slot, (e) => (e.kind === "car.same" ? e.body.other : null));
  },
};

const CAR: Parts<CarState> = {
  of: "car",
  kinds: KINDS,
  begins: "name|",
  empty: () => ({
    of: "car",
    names: [],
    facts: new Map(),
    places: new Map(),
    placeNames: new Map(),
    limits: new Map(),
    notes: [],
    pictures: [],
    sameOccasions: [],
    sameCars: [],
  }),
  copy: (car) => ({
    ...car,
    facts: new Map(car.facts),
    places: new Map(car.places),
    placeNames: new Map(car.placeNames),
    limits: new Map(car.limits),
  }),
  fill: FILL,
  join: (own, folded) => ({ ...own, ...folded }),
};

/** The car these entries tell of, in whatever order, however often. Several streams: one car begun twice. */
export const foldCar = (entries: Iterable<Logged>): CarState => fold(CAR, entries);
