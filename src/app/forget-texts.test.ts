import { expect, test } from "vitest";
import { forgetTexts } from "./forget-texts.js";

/** What is used of a browser's texts. */
const shelf = (texts: Record<string, string>): Storage =>
  Object.defineProperty({ ...texts }, "removeItem", {
    value(this: Record<string, string>, key: string) {
      delete this[key];
    },
  }) as unknown as Storage;

test("only what names the whole of it is forgotten: a short name is part of nearly every key", () => {
  const texts = shelf({
    "leadlamp.at.a": "1",
    "leadlamp.at.abc": "2",
    "leadlamp.address": "#/visit/a/round",
    theme: "dark",
  });
  forgetTexts(["a"], texts);
  expect(Object.entries(texts)).toEqual([
    ["leadlamp.at.abc", "2"],
    ["theme", "dark"],
  ]);
});

test("a name with signs of its own is taken as it is written", () => {
  const texts = shelf({ "leadlamp.at.b.c": "1", "leadlamp.at.bxc": "2" });
  forgetTexts(["b.c"], texts);
  expect(Object.keys(texts)).toEqual(["leadlamp.at.bxc"]);
});
