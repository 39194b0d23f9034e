import { describe, expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import type { Sheet } from "../../core/sheet/run.js";
import {
  accessChoices,
  calledIn,
  cautionChoices,
  choicesFound,
  faultChoices,
  jobChoices,
  kindChoices,
  measureOf,
  partChoices,
  placeChoices,
  pointChoices,
  readingChoices,
  relationChoices,
  stateChoices,
  toolChoices,
  unitChoices,
} from "./sheet-choices.js";
import { languageOf } from "./sheet-forms.js";

const { sheet, common } = miniSheets();
const english = sheet.texts["en"];
if (!english) throw new Error("the small sheet speaks English");
const other: Sheet = { ...sheet, id: "brk", texts: { en: { ...english, title: "Brakes" } } };
const work = { sheet, common, others: [other] };

describe("everything is chosen by the name it is spoken of", () => {
  test("no choice shows an id that has a word, and none is nameless", () => {
    const all = [pointChoices, readingChoices, jobChoices, faultChoices, partChoices, stateChoices, cautionChoices];
    for (const choices of [...all, accessChoices, placeChoices, toolChoices, kindChoices, relationChoices]) {
      const found = choices(work);
      for (const { value, words } of found) expect(words.trim(), value).not.toBe("");
      for (const { words } of found) expect(words).not.toMatch(/^[a-z]|_|\w\.\w/);
    }
  });

  test("what another open sheet holds stands behind, with the title of its sheet", () => {
    const points = pointChoices(work);
    expect(points.length).toBe(2 * sheet.points.length);
    expect(points.slice(0, sheet.points.length).map(({ says }) => says)).toEqual(sheet.points.map(() => undefined));
    expect(new Set(points.slice(sheet.points.length).map(({ says }) => says))).toEqual(new Set(["Brakes"]));
  });

  test("a blank name counts for nothing: the id's own words stand there", () => {
    const [point] = sheet.points;
    if (!point) throw new Error("the small sheet has a point");
    const texts = { en: { ...english, points: { [point.id]: { name: " ", ask: {} } } } };
    const [first] = pointChoices({ ...work, sheet: { ...sheet, texts } });
    expect(first?.words).toMatch(/^[A-Z][a-z ]+$/);
  });

  test("a choice is found by its words or its sheet; one that is gone is told by its id's own words", () => {
    const [first] = pointChoices(work);
    expect(choicesFound(pointChoices(work), `brakes ${first?.words.toUpperCase()}`).map(({ says }) => says)).toEqual([
      "Brakes",
    ]);
    expect(choicesFound(pointChoices(work), "")).toEqual(pointChoices(work));
    expect(calledIn(pointChoices(work), first?.value ?? "")).toBe(first?.words);
    expect(calledIn([], "whl.wheel-fixing")).toBe("Wheel fixing");
  });
});

test("only figures can be judged: readings and what is worked out, with what they measure", () => {
  for (const { value } of readingChoices(work)) expect(measureOf(work, value), value).toBeDefined();
  const words = sheet.points.find(({ fields }) => Object.values(fields).every((field) => "words" in field));
  expect(words && measureOf(work, words.id)).toBeUndefined();
  const [reading] = readingChoices(work);
  expect(measureOf(work, reading?.value.replaceAll("_", "-") ?? "")).toEqual(measureOf(work, reading?.value ?? ""));
});

test("car states stand in walking order, units with the one that stands first", () => {
  const order = stateChoices(work).map(({ value }) => common.states.find(({ id }) => id === value)?.order ?? -1);
  expect(order).toEqual(order.toSorted((a, b) => a - b));
  expect(unitChoices("length", "um").map(({ value }) => value)[0]).toBe("um");
  expect(unitChoices("luck", "").length).toBe(0);
});

test("words are changed in the language shown, else in the only one there is", () => {
  expect(languageOf(sheet)).toBe("en");
  expect(languageOf({ texts: { de: english } })).toBe("de");
  expect(languageOf({ texts: {} })).toBe("en");
});
