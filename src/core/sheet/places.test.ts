import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PlaceChange } from "./car.js";
import { tell } from "./messages.js";
import { buildPlaces } from "./places.js";
import type { PlaceDef } from "./schema-types.js";

const DEFS: readonly PlaceDef[] = [
  { id: "car", kind: "car", relations: { left: ["FL", "RL"] }, at: [50, 50] },
  { id: "axle-F", kind: "axle", in: "car" },
  { id: "axle-R", kind: "axle", in: "car" },
  { id: "side-L", kind: "side", in: "car", relations: { opposite: "side-R" } },
  { id: "side-R", kind: "side", in: "car" },
  { id: "FL", kind: "corner", in: "axle-F", relations: { side: "side-L", opposite: "FR" }, at: [18, 12] },
  { id: "FR", kind: "corner", in: "axle-F", relations: { side: "side-R" } },
  { id: "RL", kind: "corner", in: "axle-R", relations: { side: "side-L", opposite: "RR" } },
  { id: "RR", kind: "corner", in: "axle-R", relations: { side: "side-R" } },
  { id: "FL-lower", kind: "joint", in: "FL", relations: { opposite: "FR-lower", pickup: "pickup-FL" } },
  { id: "FR-lower", kind: "joint", in: "FR" },
  { id: "pickup-FL", kind: "pickup", in: "car", relations: { corner: "FL", below: ["sill-L"] } },
  { id: "sill-L", kind: "tube", in: "car", relations: { side: "side-L" } },
];
const tree = buildPlaces(DEFS).tree;

describe("relations", () => {
  test("the twin on the other side holds both ways, stated once", () => {
    expect(tree.related("opposite", "FL")).toEqual(["FR"]);
    expect(tree.related("opposite", "FR")).toEqual(["FL"]);
    expect(tree.related("opposite", "FR-lower")).toEqual(["FL-lower"]);
    expect(tree.related("opposite", "side-R")).toEqual(["side-L"]);
    expect(tree.related("opposite", "axle-F")).toEqual([]);
  });
  test("the axle of a corner is both its corners, of a joint its joints, of the axle itself its corners", () => {
    expect(tree.related("axle", "FR")).toEqual(["FL", "FR"]);
    expect(tree.related("axle", "FL-lower")).toEqual(["FL-lower", "FR-lower"]);
    expect(tree.related("axle", "axle-R")).toEqual(["RL", "RR"]);
    expect(tree.related("side", "RL")).toEqual(["FL", "RL"]);
    expect(tree.related("side", "side-R")).toEqual(["FR", "RR"]);
    expect(tree.related("axle", "car")).toEqual([]);
  });
  test("what places name, and otherwise the place around", () => {
    expect(tree.related("left", "car")).toEqual(["FL", "RL"]);
    expect(tree.related("pickup", "FL-lower")).toEqual(["pickup-FL"]);
    expect(tree.related("below", "pickup-FL")).toEqual(["sill-L"]);
    expect(tree.related("corner", "FL-lower")).toEqual(["FL"]);
    expect(tree.related("car", "FL-lower")).toEqual(["car"]);
    expect(tree.related("here", "FL")).toEqual(["FL"]);
    expect(tree.related("below", "FL")).toEqual([]);
    expect(tree.related("opposite", "nowhere")).toEqual([]);
  });
});

test("the walk goes corner by corner: joints and pick-ups come with their wheel, tubes stay where the list has them", () => {
  expect(tree.all.map(({ id }) => id).slice(5)).toEqual([
    ...["FL", "FL-lower", "pickup-FL", "FR", "FR-lower", "RL", "RR", "sill-L"],
  ]);
  const { tree: more } = buildPlaces(DEFS, [{ add: { id: "RL-toe", kind: "joint", in: "RL" } }]);
  expect(more.ofKind("joint")).toEqual(["FL-lower", "FR-lower", "RL-toe"]);
  expect(more.order("RL-toe")).toBe(more.order("RL") + 1);
});

test("the wider place around: itself, what it lies in, what it names, through both; the car around all", () => {
  expect(tree.around("FL", "corner")).toBe("FL");
  expect(tree.around("FL-lower", "axle")).toBe("axle-F");
  expect(tree.around("FL-lower", "side")).toBe("side-L");
  expect(tree.around("pickup-FL", "axle")).toBe("axle-F");
  expect(tree.around("sill-L", "corner")).toBeUndefined();
  expect(tree.around("sill-L", "car")).toBe("car");
  expect(tree.around("nowhere", "car")).toBeUndefined();
});

test("a place lies in itself, its corner, axle and side, and the car; not in its twin's or where it is bolted", () => {
  for (const outer of ["FL-lower", "FL", "axle-F", "side-L", "car"]) expect(tree.within(outer, "FL-lower")).toBe(true);
  for (const outer of ["FR", "axle-R", "side-R", "pickup-FL", "FR-lower", "nowhere"])
    expect(tree.within(outer, "FL-lower")).toBe(false);
});

test("left and right, middle where there is no side", () => {
  expect([tree.sideOf("FL-lower"), tree.sideOf("RR"), tree.sideOf("axle-F"), tree.sideOf("sill-L")]).toEqual([
    "left",
    "right",
    "middle",
    "left",
  ]);
});

test("where a place is drawn: at its own spot, else at that of what it lies in", () => {
  expect(tree.at("FL-lower")).toEqual([18, 12]);
  expect(tree.at("FR-lower")).toEqual([50, 50]);
  expect(tree.at("nowhere")).toBeUndefined();
});

test("walking order is the order of the list; an added place comes after its neighbours", () => {
  const added: PlaceChange = { add: { id: "FL-upper", kind: "joint", in: "FL" } };
  const { tree: more, problems } = buildPlaces(DEFS, [added, { add: { id: "spare", kind: "corner", in: "car" } }]);
  expect(problems).toEqual([]);
  expect(more.ofKind("joint")).toEqual(["FL-lower", "FL-upper", "FR-lower"]);
  expect(more.ofKind("corner")).toEqual(["FL", "FR", "RL", "RR", "spare"]);
  expect(more.related("axle", "spare")).toEqual([]);
});

test("a place taken away takes with it what lies in it, and leaves nobody opposite", () => {
  const { tree: less } = buildPlaces(DEFS, [{ remove: "FR" }]);
  expect([less.has("FR"), less.has("FR-lower"), less.has("FL")]).toEqual([false, false, true]);
  expect(less.related("opposite", "FL")).toEqual([]);
  expect(less.related("axle", "FL")).toEqual(["FL"]);
});

test("a change that cannot be is told and the rest stands; an id is never used again", () => {
  const { tree: same, problems } = buildPlaces(DEFS, [
    { add: { id: "FL", kind: "corner" } },
    { remove: "sill-L" },
    { add: { id: "sill-L", kind: "tube" } },
    { remove: "nowhere" },
    { remove: "car" },
    { add: { id: "box", kind: "tube", in: "nowhere" } },
    { add: { id: "strut", kind: "joint", in: "RL" } },
  ]);
  expect(problems.map(tell).map((t) => t.split(";")[0])).toEqual([
    "places[0].add place id “FL” is or was in use",
    "places[2].add place id “sill-L” is or was in use",
    "places[3].remove unknown place “nowhere”",
    "places[4].remove unknown place “car”",
    "places[5].add unknown place “nowhere”",
  ]);
  expect([same.has("sill-L"), same.has("strut")]).toEqual([false, true]);
});

test("whatever a car adds and takes away, every place left lies in the car and is its twin's twin", () => {
  const ids = [...DEFS.map((d) => d.id), "x1", "x2", "x3"];
  const change = fc.oneof(
    fc.record({ remove: fc.constantFrom(...ids) }),
    fc.record({
      add: fc.record({
        id: fc.constantFrom(...ids),
        kind: fc.constantFrom("joint", "corner", "tube"),
        in: fc.constantFrom(...ids),
      }),
    }),
  );
  fc.assert(
    fc.property(fc.array(change, { maxLength: 12 }), (changes) => {
      const { tree: any } = buildPlaces(DEFS, changes);
      expect(new Set(any.all.map((p) => p.id)).size).toBe(any.all.length);
      for (const { id } of any.all) {
        expect(any.within("car", id)).toBe(true);
        for (const twin of any.related("opposite", id)) expect(any.related("opposite", twin)).toContain(id);
        expect([...any.related("axle", id), ...any.related("side", id)].every(any.has)).toBe(true);
      }
    }),
    { seed: 20261125, numRuns: 200 },
  );
});
