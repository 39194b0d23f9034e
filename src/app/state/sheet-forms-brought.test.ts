import { expect, test } from "vitest";
import type { DraftItem } from "../../core/sheet/draft.js";
import {
  factOf,
  factWordMoved,
  gaugeInUnit,
  gaugeOf,
  kindCalled,
  relationsOf,
  withFactWord,
  withoutFactWord,
  withRelation,
  withSpot,
} from "./sheet-forms-brought.js";

const place: DraftItem = { value: { id: "cyl-1", kind: "cylinder", in: "engine" }, texts: { en: "cylinder 1" } };

test("a gauge that shows another unit keeps its step and its error; another quantity begins in its usual unit", () => {
  const gauge: DraftItem = {
    value: { quantity: "temperature", unit: "Cel", resolution: 1, error: 3 },
    texts: { en: "Thermometer" },
  };
  expect(gaugeInUnit(gauge, "[degF]").value).toMatchObject({ unit: "[degF]", resolution: 1.8, error: 5.4 });
  expect(gaugeOf(gauge, "pressure").value).toMatchObject({ quantity: "pressure", unit: "bar", resolution: 1 });
  expect(gaugeOf(gauge, "luck")).toBe(gauge);
});

test("a place on the plan has both figures or neither", () => {
  const spot = (is: DraftItem) => (is.value as { readonly at?: unknown }).at;
  expect(spot(withSpot(place, 0, 62))).toEqual([62, 50]);
  expect(spot(withSpot(withSpot(place, 0, 62), 1, 20))).toEqual([62, 20]);
  expect(spot(withSpot(withSpot(place, 1, 20), 0, undefined))).toBeUndefined();
});

test("a kind of place that is there is meant by its name, any other is a new one", () => {
  const kinds = [{ value: "corner", words: "Wheels" }];
  expect([kindCalled(" wheels ", kinds), kindCalled("Fuel rail", kinds)]).toEqual(["corner", "fuel-rail"]);
});

test("a relation leads to one place or to several; to none it is none, a list of one stays a list", () => {
  const twin = withRelation(place, "opposite", ["cyl-2"]);
  expect(twin.value).toMatchObject({ relations: { opposite: "cyl-2" } });
  const more = withRelation(twin, "opposite", ["cyl-2", "cyl-4"]);
  expect(relationsOf(more)).toEqual([["opposite", ["cyl-2", "cyl-4"]]]);
  expect(withRelation(more, "opposite", ["cyl-4"]).value).toMatchObject({ relations: { opposite: ["cyl-4"] } });
  expect(withRelation(twin, "opposite", []).value).toEqual(place.value);
  expect(relationsOf(twin)).toEqual([["opposite", ["cyl-2"]]]);
});

test("a car fact answered by words has words, another kind none, and its words no text", () => {
  const fact: DraftItem = { value: { id: "feed", kind: "yes" }, texts: { en: { name: "Fuel feed" } } };
  const worded = withFactWord({ is: factOf(fact, "word", "en"), language: "en", base: undefined }, "Carburettor");
  expect(worded.value).toEqual({ id: "feed", kind: "word", words: ["carburettor"] });
  expect(worded.texts["en"]).toEqual({ name: "Fuel feed", words: { carburettor: "Carburettor" } });
  const two = withFactWord({ is: worded, language: "en", base: undefined }, "Injection");
  expect(factWordMoved(two, 1, 0).value).toMatchObject({ words: ["injection", "carburettor"] });
  expect(withoutFactWord(worded, "en", "carburettor")).toEqual(factOf(fact, "word", "en"));
  expect(withFactWord({ is: factOf(fact, "word", "en"), language: "en", base: worded }, "Carburettor").value).toEqual({
    ...{ id: "feed", kind: "word", words: ["carburettor-2"] },
  });
  expect(factOf(worded, "yes", "en")).toEqual(fact);
});
