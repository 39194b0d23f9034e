import { describe, expect, test } from "vitest";
import type { AboutItem, DraftItem } from "../../core/sheet/draft.js";
import {
  entriesAt,
  figureFrom,
  freshSlug,
  isOnAt,
  listAt,
  moved,
  namesAt,
  slug,
  textAt,
  toldAt,
  toldOf,
  valueAt,
  withAt,
  withoutAt,
} from "./sheet-forms.js";

const limit: DraftItem = {
  value: { id: "lim.float", bands: { minor: 0.1, major: 0.25 }, states: ["w1-cold"], last: true },
  texts: { en: "End float", de: "Axialspiel" },
};

describe("a box stands at a path inside its item", () => {
  test("what stands there is read: figures as text, words of one language, nothing where nothing is", () => {
    expect(textAt(limit, ["bands", "major"])).toBe("0.25");
    expect(textAt(limit, ["texts", "en"])).toBe("End float");
    expect(textAt(limit, ["bands", "dangerous"])).toBe("");
    expect(valueAt(limit, ["bands", "toString"])).toBeUndefined();
    expect(namesAt(limit, ["states"])).toEqual(["w1-cold"]);
    expect([isOnAt(limit, ["last"]), isOnAt(limit, ["id"])]).toEqual([true, false]);
    expect(entriesAt(limit, ["bands"]).map(([grade]) => grade)).toEqual(["minor", "major"]);
    expect([listAt(limit, ["bands"]), entriesAt(limit, ["states"])]).toEqual([[], []]);
  });

  test("something else is put there and all else stays, also the words in another language", () => {
    const named = withAt(limit, ["texts", "en"], "Float");
    expect(named.texts).toEqual({ en: "Float", de: "Axialspiel" });
    expect(named.value).toBe(limit.value);
    expect(withAt(limit, ["bands", "dangerous"], 0.8).value).toEqual({
      ...(limit.value as object),
      bands: { minor: 0.1, major: 0.25, dangerous: 0.8 },
    });
    expect(namesAt(withAt(limit, ["states", 1], "w8-off"), ["states"])).toEqual(["w1-cold", "w8-off"]);
    expect(namesAt(withAt(limit, ["states", 0], "w8-off"), ["states"])).toEqual(["w8-off"]);
    expect(withAt(limit, [], "torch")).toEqual({ value: "torch", texts: limit.texts });
  });

  test("with nothing put there it is not there; what must be there stays though empty, what may be missing goes", () => {
    const bare = withAt(withAt(limit, ["bands", "minor"], undefined), ["bands", "major"], undefined);
    expect(valueAt(bare, ["bands"])).toEqual({});
    expect(valueAt(withAt(limit, ["states", 0], undefined), ["states"])).toEqual([]);
    expect(valueAt(withoutAt(limit, ["states", 0]), ["states"])).toBeUndefined();
    expect(valueAt(withoutAt(limit, ["bands", "minor"]), ["bands"])).toEqual({ major: 0.25 });
  });

  test("a path into what is not there yet makes it", () => {
    const fresh = withAt({ texts: {} }, ["texts", "en", "ask", "owner"], "Does it hum?");
    expect(fresh.texts).toEqual({ en: { ask: { owner: "Does it hum?" } } });
  });
});

test("one of a list is moved by a place, and not past the ends", () => {
  expect(moved(["a", "b", "c"], 2, 1)).toEqual(["a", "c", "b"]);
  expect(moved(["a", "b", "c"], 0, 2)).toEqual(["b", "c", "a"]);
  expect(moved(["a", "b"], 0, -1)).toEqual(["a", "b"]);
  expect(moved(["a", "b"], 1, 2)).toEqual(["a", "b"]);
  expect(moved(["a"], 4, 0)).toEqual(["a"]);
});

describe("ids are made from names", () => {
  test("small letters, figures and hyphens, signs on letters dropped", () => {
    expect(slug("Nut at the hub", "nut")).toBe("nut-at-the-hub");
    expect(slug("  Öl/Fett: 2 Tropfen ", "x")).toBe("ol-fett-2-tropfen");
    expect(slug("Ωμέγα", "reply")).toBe("reply");
    expect(slug("", "reply")).toBe("reply");
    expect([slug("2", "reply"), slug("2 turns", "reply"), slug("True", "reply")]).toEqual([
      "n-2",
      "n-2-turns",
      "n-true",
    ]);
  });

  test("one that is or ever was another's is not given again", () => {
    expect(freshSlug("Locked", "reply", [])).toBe("locked");
    expect(freshSlug("Locked", "reply", ["locked"])).toBe("locked-2");
    expect(freshSlug("Locked", "reply", ["locked-2", "locked", "locked-3"])).toBe("locked-4");
  });
});

describe("what is told stands under its box", () => {
  const about = (...inside: readonly (string | number)[]): AboutItem => ({ list: "limits", item: "lim.float", inside });
  const told = [
    { is: "problem", says: "The unit is not known.", about: about("unit") },
    { is: "problem", says: "Major comes before minor.", about: about("bands", "major") },
    { is: "problem", says: "There is no edge.", about: about("bands") },
    { is: "note", says: "No rule uses it.", about: about("id") },
    { is: "note", says: "The sheet has no rule." },
  ] as const;

  test("a box has what is told of it and of all inside it, the thing itself only its own", () => {
    expect(toldAt(told, ["bands"])).toBe("Major comes before minor. There is no edge.");
    expect(toldAt(told, ["bands", "major"])).toBe("Major comes before minor.");
    expect(toldOf(told, ["bands"])).toBe("There is no edge.");
    expect(toldAt(told, ["source"])).toBeUndefined();
  });

  test("a place in a list is the same as figure and as text, and nothing is told twice", () => {
    const twice = [1, 2].map(() => ({ is: "problem", says: "Not known.", about: about("after", "0") }) as const);
    expect(toldAt(twice, ["after", 0])).toBe("Not known.");
  });
});

test("a figure is read with point or comma; nothing, and what is none, is no figure", () => {
  expect([figureFrom("0.25"), figureFrom(" 0,25 "), figureFrom("-3")]).toEqual([0.25, 0.25, -3]);
  expect([figureFrom(""), figureFrom(" "), figureFrom("half"), figureFrom("1,2,3")]).toEqual(Array(4).fill(undefined));
});
