import { expect, test } from "vitest";
import { miniKnowledge } from "../../../tests/support/app-bench.js";
import { buildPlaces, type PlaceChange, type PlaceDef } from "../../core/sheet/run.js";
import type { PlaceEntry } from "./car-edits.js";
import { doesOf, kindsToAdd, type NewPlace, newPlaces, otherSide } from "./new-place.js";

const MORE: readonly PlaceDef[] = [
  { id: "FL-lower", kind: "joint", in: "FL", relations: { locates: ["FL"] } },
  { id: "sill-L", kind: "tube", in: "car", relations: { side: "side-L", opposite: "sill-R", main: "sill-L" } },
  { id: "sill-R", kind: "tube", in: "car", relations: { side: "side-R" } },
  { id: "foot-L", kind: "zone", in: "car", relations: { side: "side-L", opposite: "foot-R" } },
  { id: "foot-R", kind: "zone", in: "car", relations: { side: "side-R" } },
];
const base = miniKnowledge();
const common = { ...base.common, places: [...base.common.places, ...MORE] };
const { tree } = buildPlaces(common.places);
const nameOf = (id: string): string => ({ FL: "front left", FR: "front right", "side-L": "left side" })[id] ?? id;
const chance = (): (() => string) => {
  let n = 0;
  return () => `${"-_"}Ab${n++}xyzQWERTY`;
};
const add = (asked: NewPlace): readonly PlaceEntry[] => newPlaces(tree, nameOf, asked, chance());
const changesOf = (entries: readonly PlaceEntry[]): readonly PlaceChange[] =>
  entries.flatMap(({ change }) => (change ? [change] : []));

test("a joint is added at its wheel with what it does, and its twin on the other side with it", () => {
  const entries = add({ kind: "joint", name: "fifth link", at: "FL", does: "locates", both: true });
  expect(entries.map(({ name }) => name)).toEqual(["fifth link, front left", "fifth link, front right"]);
  const { tree: grown, problems } = buildPlaces(common.places, changesOf(entries));
  const [left, right] = entries.map(({ place }) => place);
  if (!left || !right) throw new Error("both sides were asked for");
  expect(problems).toEqual([]);
  expect(grown.around(left, "corner")).toBe("FL");
  expect(grown.around(right, "side")).toBe("side-R");
  expect([grown.related("opposite", left), grown.related("opposite", right)]).toEqual([[right], [left]]);
  expect(grown.related("locates", right)).toEqual(["FR"]);
});

test("a drain knows the floor it drains and the tube its water lands on, mirrored for its twin", () => {
  const entries = add({ kind: "drain", name: "hole", at: "foot-L", below: "sill-L", both: true });
  const { tree: grown } = buildPlaces(common.places, changesOf(entries));
  const [left = "", right = ""] = entries.map(({ place }) => place);
  expect([grown.around(left, "zone"), grown.related("below", left)]).toEqual(["foot-L", ["sill-L"]]);
  expect([grown.around(right, "zone"), grown.related("below", right)]).toEqual(["foot-R", ["sill-R"]]);
});

test("a tube in the middle of the car has no twin and is called what it is called", () => {
  const asked: NewPlace = { kind: "tube", name: "seat tube", at: "car", does: "main", both: true };
  expect(otherSide(tree, asked)).toBeUndefined();
  const [one, ...others] = add(asked);
  expect(others).toEqual([]);
  expect(one).toMatchObject({ name: "seat tube", change: { add: { kind: "tube", in: "car" } } });
});

test("ids are letters and digits of chance, so that none is ever used again", () => {
  const asked: NewPlace = { kind: "joint", name: "link", at: "FL", both: false };
  expect(add(asked)[0]?.place).toBe("joint-ab0xyzqw");
  expect(
    new Set(["1", "2"].map((seed) => newPlaces(tree, nameOf, asked, () => `${seed}aaaaaaaa`)[0]?.place)).size,
  ).toBe(2);
});

test("joints, tubes and drains are offered first; what the files do not tell apart is not asked", () => {
  expect(kindsToAdd(common).slice(0, 2)).toEqual(["joint", "tube"]);
  expect(kindsToAdd(common)).not.toContain("axle");
  expect(doesOf(common, "joint")).toEqual(["locates"]);
  expect(doesOf(common, "tube")).toEqual(["main"]);
  expect(doesOf(common, "zone")).toEqual([]);
});
