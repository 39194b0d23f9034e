import { describe, expect, test } from "vitest";
import type { DraftItem } from "../../core/sheet/draft.js";
import { valueAt } from "./sheet-forms.js";
import {
  fieldCalled,
  fieldMoved,
  fieldsOf,
  kindAt,
  REPLY_KINDS,
  spokenAt,
  unremarkableAt,
  withAlone,
  withField,
  withoutField,
  withoutWord,
  withQuantity,
  withSeveral,
  withSpoken,
  withUnit,
  withUnremarkable,
  withWord,
  wordMoved,
  wordsAt,
} from "./sheet-forms-point.js";

const language = "en";
const lone: DraftItem = {
  value: {
    id: "whl.lock",
    fields: { fixing: { words: ["locked", "pin-missing"] } },
    unremarkable: { fixing: "locked" },
  },
  texts: {
    en: {
      name: "Lock",
      words: { locked: "All there", "pin-missing": { technician: "Pin missing", owner: "Pin gone" } },
    },
    de: { name: "Sicherung", words: { locked: "Alles da" } },
  },
};
const form = (is: DraftItem, base?: DraftItem) => ({ is, language, base });
const fields = (is: DraftItem) => valueAt(is, ["fields"]);

describe("kinds of reply", () => {
  test("each kind begins as itself, behind those there; from the second on each has a name", () => {
    for (const kind of REPLY_KINDS) {
      const two = withField(form(lone), kind, "Torque kept");
      expect(fieldsOf(two)).toEqual(["fixing", "torque-kept"]);
      expect(kindAt(two, "torque-kept")).toBe(kind);
      expect(valueAt(two, ["texts", "en", "fields"])).toEqual({ fixing: "fixing", "torque-kept": "Torque kept" });
    }
    const first = withField(form({ value: { fields: {} }, texts: {} }), "count", "Count");
    expect(valueAt(first, ["texts", "en", "fields"])).toBeUndefined();
  });

  test("a name that a reply of this point ever had is no other's", () => {
    const base = withField(form(lone), "count", "Torque");
    expect(fieldsOf(withField(form(lone, base), "reading", "Torque"))).toEqual(["fixing", "torque-2"]);
  });

  test("taken out, its words and what ‘no fault seen’ entered go with it, and the one left needs no name", () => {
    const two = withWord(form(withField(form(lone), "words", "Colour")), "colour", "Rusty");
    expect(fieldCalled(form(two), "colour")).toBe("Colour");
    const less = withoutField(form(two), "fixing");
    expect(less.value).toEqual({ id: "whl.lock", fields: { colour: { words: ["rusty"] } } });
    expect(less.texts["en"]).toEqual({ name: "Lock", words: { rusty: "Rusty" } });
    expect(less.texts["de"]).toEqual(lone.texts["de"]);
  });

  test("the order of replies is the order they stand in", () => {
    const two = withField(form(lone), "yes", "Kept");
    expect(fieldsOf(fieldMoved(two, 1, 0))).toEqual(["kept", "fixing"]);
  });
});

describe("reply words", () => {
  test("a word is added at the end under an id made of it, never one of a non-answer or of a word that was there", () => {
    const more = withWord(form(lone), "fixing", "Thread hurt");
    expect(wordsAt(more, "fixing")).toEqual(["locked", "pin-missing", "thread-hurt"]);
    expect(spokenAt({ is: more, language }, "fixing", "thread-hurt")).toEqual({ technician: "Thread hurt", owner: "" });
    expect(wordsAt(withWord(form(lone), "fixing", "Not reached"), "fixing").at(-1)).toBe("not-reached-2");
    const less = withoutWord({ is: lone, language }, "fixing", "locked");
    expect(wordsAt(withWord(form(less, lone), "fixing", "Locked"), "fixing")).toEqual(["pin-missing", "locked-2"]);
  });

  test("the owner's wording stands beside the technician's, and is dropped where both read the same", () => {
    expect(spokenAt({ is: lone, language }, "fixing", "pin-missing")).toEqual({
      technician: "Pin missing",
      owner: "Pin gone",
    });
    const say = (owner: string) =>
      valueAt(withSpoken({ is: lone, language }, "fixing", "locked", { technician: "Locked", owner }), [
        ...["texts", "en", "words", "locked"],
      ]);
    expect(say("All on")).toEqual({ technician: "Locked", owner: "All on" });
    expect([say(""), say(" "), say("Locked")]).toEqual(["Locked", "Locked", "Locked"]);
  });

  test("a word that two replies share is spoken otherwise in one without changing the other, and stays for the other", () => {
    const shared: DraftItem = {
      value: { fields: { left: { words: ["wet", "dry"] }, right: { words: ["wet", "dry"] } } },
      texts: { en: { words: { wet: "Wet", dry: "Dry" } } },
    };
    const said = withSpoken({ is: shared, language }, "right", "wet", { technician: "Damp", owner: "" });
    expect(spokenAt({ is: said, language }, "left", "wet").technician).toBe("Wet");
    expect(spokenAt({ is: said, language }, "right", "wet").technician).toBe("Damp");
    const less = withoutWord({ is: said, language }, "right", "wet");
    expect(valueAt(less, ["texts", "en", "words"])).toEqual({ wet: "Wet", dry: "Dry" });
  });

  test("taken out, a word is named nowhere in its reply any more", () => {
    const several = withAlone(withSeveral(lone, "fixing", true), "fixing", ["locked"]);
    const less = withoutWord({ is: several, language }, "fixing", "locked");
    expect(less.value).toEqual({ id: "whl.lock", fields: { fixing: { words: ["pin-missing"], several: true } } });
    expect(valueAt(less, ["texts", "en", "words", "locked"])).toBeUndefined();
  });

  test("results beside a figure are words too, and none leaves no empty list", () => {
    const reading: DraftItem = { value: { fields: { wall: { quantity: "length", unit: "mm" } } }, texts: {} };
    const more = withWord(form(reading), "wall", "No echo");
    expect(valueAt(more, ["fields", "wall", "results"])).toEqual(["no-echo"]);
    expect(fields(withoutWord({ is: more, language }, "wall", "no-echo"))).toEqual(fields(reading));
  });

  test("words are moved by a place", () => {
    expect(wordsAt(wordMoved(lone, "fixing", 1, 0), "fixing")).toEqual(["pin-missing", "locked"]);
  });
});

describe("several words together, and ‘no fault seen’", () => {
  test("what is entered is a list where several may stand, one word where not", () => {
    const several = withSeveral(lone, "fixing", true);
    expect(valueAt(several, ["unremarkable", "fixing"])).toEqual(["locked"]);
    expect(unremarkableAt(several, "fixing")).toEqual(["locked"]);
    const back = withSeveral(withUnremarkable(several, "fixing", ["locked", "pin-missing"]), "fixing", false);
    expect(valueAt(back, ["unremarkable", "fixing"])).toBe("locked");
    expect(fields(back)).toEqual({ fixing: { words: ["locked", "pin-missing"] } });
  });

  test("nothing entered: the point is answered by itself", () => {
    expect(valueAt(withUnremarkable(lone, "fixing", []), ["unremarkable"])).toBeUndefined();
  });
});

describe("a reading's quantity and unit", () => {
  const dial: DraftItem = {
    value: {
      fields: { play: { quantity: "length", unit: "mm", window: [0, 25.4], stopwatch: true } },
      "set-up-error": 0.254,
    },
    texts: {},
  };
  test("another unit takes window and set-up error along", () => {
    const inches = withUnit(dial, "play", "[in_i]");
    expect(valueAt(inches, ["fields", "play", "window"])).toEqual([0, 1]);
    expect(valueAt(inches, ["set-up-error"])).toBe(0.01);
  });

  test("another quantity begins in its usual unit; only passing time keeps the stopwatch", () => {
    const warm = withQuantity(dial, "play", "temperature");
    expect(fields(warm)).toEqual({ play: { quantity: "temperature", unit: "Cel", window: [0, 25.4] } });
    expect(valueAt(withQuantity(dial, "play", "duration"), ["fields", "play", "stopwatch"])).toBe(true);
    expect(withQuantity(dial, "play", "luck")).toBe(dial);
  });
});
