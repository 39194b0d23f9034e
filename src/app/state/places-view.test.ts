import { expect, test } from "vitest";
import { bench, miniKnowledge, until } from "../../../tests/support/app-bench.js";
import type { CarState } from "../../core/record/index.js";
import { newCar } from "./car-acts.js";
import { keepPlaces, type PlaceEntry } from "./car-edits.js";
import { byKind, copied, placesFound, placesOfCar, takenOrBrought } from "./places-view.js";

const { common, words } = miniKnowledge();

/** A car after these acts. */
async function car(...acts: readonly (readonly PlaceEntry[])[]): Promise<CarState> {
  const on = bench();
  const stream = await newCar(on.journal, "Small one");
  if (stream === undefined) throw new Error("the bench keeps what it is given");
  for (const entries of acts) await keepPlaces(on.journal, stream, () => entries);
  const opened = await until(on.journal.keptCar(stream), ({ is }) => is === "open");
  if (opened.is !== "open") throw new Error("the car is there");
  return opened.state;
}
const link: PlaceEntry = {
  place: "joint-x1",
  change: { add: { id: "joint-x1", kind: "joint", in: "FL" } },
  name: "fifth link",
};

test("a car's own place stands with its wheel under its own name, among its kind", async () => {
  const { lines } = placesOfCar(await car([link]), common, words);
  const own = lines.find(({ id }) => id === "joint-x1");
  expect(own).toMatchObject({ name: "Fifth link", kind: "joint", added: true, gone: false });
  expect(byKind(lines).map(({ kind }) => kind)).toEqual(["axle", "side", "corner", "joint"]);
  expect(placesFound(lines, "link fif").map(({ id }) => id)).toEqual(["joint-x1"]);
});

test("what was taken away stays in the list and comes back as it was, the car's own places too", async () => {
  const first = placesOfCar(await car([link]), common, words);
  const away = first.lines.filter(({ id }) => id === "joint-x1" || id === "FR").map(takenOrBrought);
  const second = placesOfCar(await car([link], away), common, words);
  const gone = second.lines.filter((line) => line.gone);
  expect(gone.map(({ id, name }) => `${id} ${name}`)).toEqual(["FR Front right", "joint-x1 Fifth link"]);
  const third = placesOfCar(await car([link], away, gone.map(takenOrBrought)), common, words);
  expect(third.lines.map(({ id, gone: isGone }) => `${id} ${isGone}`)).toEqual(
    first.lines.map(({ id, gone: isGone }) => `${id} ${isGone}`),
  );
});

test("a usual place may be called something else; what the sheets call it stays beside it", async () => {
  const { lines } = placesOfCar(await car([{ place: "FL", name: "left paw" }]), common, words);
  expect(lines.find(({ id }) => id === "FL")).toMatchObject({ name: "Left paw", was: "Front left" });
  expect(placesFound(lines, "front left").map(({ id }) => id)).toContain("FL");
});

test("copying takes over what this car says nothing about, and nothing it said itself", async () => {
  const from = await car([link, { place: "FR", change: { remove: "FR" } }, { place: "FL", name: "left paw" }]);
  const into = await car([{ place: "FL", name: "port side" }]);
  const entries = copied(from, into);
  expect(entries.map(({ place, name, change }) => [place, name, change !== undefined])).toEqual([
    ["FR", undefined, true],
    ["joint-x1", undefined, true],
    ["joint-x1", "fifth link", false],
  ]);
  expect(copied(from, from)).toEqual([]);
});
