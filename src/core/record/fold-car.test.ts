import { expect, test } from "vitest";
import { act, HASH_A, HASH_B } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import type { CarLimit } from "../sheet/car.js";
import { draftCar, draftPerson } from "./draft.js";
import {
  draftFact,
  draftLimit,
  draftName,
  draftNoLimit,
  draftPlace,
  draftSameCar,
  draftSameOccasion,
} from "./draft-car.js";
import { draftHouseSheet } from "./draft-house.js";
import { foldCar } from "./fold-car.js";
import { foldHouse } from "./fold-house.js";
import { draftUndo } from "./undo.js";

const float: CarLimit = {
  limit: "lim.float-unit",
  value: "0.10",
  unit: "mm",
  basis: "maker",
  source: "workshop manual 4.2",
};

function begun(stream = "car:a", name = "Little one"): SampleLog {
  const log = new SampleLog(stream);
  log.add(draftCar(act(), stream, name));
  return log;
}
const names = (log: SampleLog): readonly string[] => log.car.names.map(({ value }) => value);
const values = (log: SampleLog, fact: string): readonly unknown[] =>
  (log.car.facts.get(fact) ?? []).map(({ value }) => value);

test("[RC18] a car has the name it began with until it is named anew, and again once that is undone", () => {
  const log = begun();
  const named = log.add(draftName(act(), log.car, "Blue one"));
  expect(names(log)).toEqual(["Blue one"]);
  log.add(draftUndo(act(), log.car, [named]));
  expect(names(log)).toEqual(["Little one"]);
});

test("[RC14] facts said apart both stand until one who saw both says it again", () => {
  const log = begun();
  const before = log.car;
  log.add(draftFact(act(), before, "brakes", "inboard"), "w1");
  log.add(draftFact(act(), before, "brakes", "outboard"), "w2");
  expect(values(log, "brakes")).toEqual(["inboard", "outboard"]);
  log.add(draftFact(act(), log.car, "brakes", "outboard"));
  expect(values(log, "brakes")).toEqual(["outboard"]);
  log.add(draftFact(act(), log.car, "brakes", null));
  expect(log.car.facts.has("brakes")).toBe(false);
});

test("[RC18] the limits book holds one figure per limit, or per place where it names one", () => {
  const log = begun();
  log.add(draftLimit(act(), log.car, float));
  log.add(draftLimit(act(), log.car, { ...float, place: "FR", value: "0.08" }));
  log.add(draftLimit(act(), log.car, { ...float, value: "0.12" }));
  expect([...log.car.limits].map(([at, list]) => [at, list.map(({ value }) => value.value)])).toEqual([
    ["lim.float-unit", ["0.12"]],
    ["lim.float-unit@FR", ["0.08"]],
  ]);
  log.add(draftNoLimit(act(), log.car, "lim.float-unit@FR"));
  expect([...log.car.limits.keys()]).toEqual(["lim.float-unit"]);
});

test("[RC18] a place is added, taken away or left as it was", () => {
  const log = begun();
  log.add(draftPlace(act(), log.car, "drain-7", { add: { id: "drain-7", kind: "drain", in: "car", at: [60, 50] } }));
  log.add(draftPlace(act(), log.car, "axle-F", { remove: "axle-F" }));
  expect([...log.car.places.keys()].sort()).toEqual(["axle-F", "drain-7"]);
  log.add(draftPlace(act(), log.car, "axle-F", null));
  expect([...log.car.places.keys()]).toEqual(["drain-7"]);
});

test("[RC34] a car begun on two phones is one: both names until settled, the earlier stream goes on", () => {
  const one = begun("car:b", "Little one");
  const other = begun("car:a", "The blue one");
  one.add(draftSameCar(act(), one.car, "car:a"));
  const both = foldCar([...other.entries, ...one.entries]);
  expect(both.stream).toBe("car:b");
  expect(both.names.map(({ value }) => value)).toEqual(["Little one", "The blue one"]);
  expect(both.sameCars.map(({ value }) => value)).toEqual(["car:a"]);
  const named = { ...draftName(act(), both, "Little one"), writer: "w1", seq: 9 };
  expect(foldCar([...other.entries, ...one.entries, named]).names).toHaveLength(1);
});

test("[RC25] 'same occasion' can be taken back", () => {
  const log = begun();
  const said = log.add(draftSameOccasion(act(), log.car, ["visit:a", "visit:b"]));
  expect(log.car.sameOccasions.map(({ value }) => value)).toEqual([["visit:a", "visit:b"]]);
  log.add(draftUndo(act(), log.car, [said]));
  expect(log.car.sameOccasions).toEqual([]);
});

test("[RC5] the demo is told by its stream, and no draft ties it to one's own", () => {
  const demo = begun("car:demo-a");
  expect([demo.car.demo, begun().car.demo]).toEqual([true, false]);
  expect(() => draftSameCar(act(), demo.car, "car:a")).toThrow("never mixes");
  expect(() => draftSameOccasion(act(), begun().car, ["visit:a", "visit:demo-b"])).toThrow("never mixes");
});

test("a stream says who wrote in it, once", () => {
  const log = begun();
  const anna = { id: "anna", name: "Anna" };
  log.add(draftPerson(act(), log.car, anna));
  expect(draftPerson(act(), log.car, anna)).toEqual([]);
  log.add(draftPerson(act(), log.car, { ...anna, name: "Anna B." }));
  expect(log.car.people.get("anna")?.map(({ value }) => value.name)).toEqual(["Anna B."]);
});

test("the house keeps its own sheets, each by its id", () => {
  const sheet = { id: "own", edition: "e1", label: "Ours", blob: HASH_A };
  const first = {
    ...draftHouseSheet(act(), foldHouse([]), "own", sheet),
    writer: "w1",
    seq: 1,
  };
  const house = foldHouse([first]);
  const second = {
    ...draftHouseSheet(act(), house, "own", { ...sheet, edition: "e2", blob: HASH_B }),
    writer: "w1",
    seq: 2,
  };
  expect(
    foldHouse([second, first])
      .sheets.get("own")
      ?.map(({ value }) => value.edition),
  ).toEqual(["e2"]);
  const third = { ...draftHouseSheet(act(), foldHouse([first, second]), "own", null), writer: "w1", seq: 3 };
  expect(foldHouse([third, first, second]).sheets.size).toBe(0);
});
