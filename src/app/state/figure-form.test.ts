import { expect, test } from "vitest";
import type { Limit, Point } from "../../core/sheet/run.js";
import {
  asTyped,
  basisOf,
  emptyFigure,
  type FigureForm,
  type FigureRead,
  readFigure,
  waysOf,
  withEdge,
  withTrust,
} from "./figure-form.js";
import { convertedText, slipTexts, sourceText, trustText } from "./figure-words.js";

const FLOAT: Limit = {
  id: "lim.float",
  of: "whl.float",
  quantity: "length",
  unit: "mm",
  direction: "over",
  bands: { minor: 0.13, major: 0.25, dangerous: 0.8 },
  basis: "practice",
  source: "common practice, no source",
  aggregate: "max",
  class: "corner",
};
const POINTS: readonly Point[] = [
  {
    id: "whl.float",
    place: "corner",
    states: ["w8-off"],
    fields: { play: { quantity: "length", unit: "mm", window: [0, 5] } },
    who: ["technician"],
  },
];
const BOOK = { trust: "maker-this", way: "book", title: "Workshop manual" } as const;
const form = (part: Partial<FigureForm> = {}): FigureForm => ({
  ...emptyFigure(FLOAT, ["mm", "[in_i]", "[mil_i]"]),
  edges: [{ grade: "major", value: "0.2" }],
  unit: "mm",
  ...BOOK,
  ...part,
});
const read = (part: Partial<FigureForm> = {}, replaces = false, limit = FLOAT): FigureRead =>
  readFigure(form(part), { limit, points: POINTS, decimalComma: false, replaces });
const wrong = (part: Partial<FigureForm>, replaces = false): readonly string[] =>
  Object.keys(read(part, replaces).problems);

test("a figure with its unit and its book is kept as it was typed, and its source told in one line", () => {
  const { keep } = read({
    edges: [{ grade: "major", value: "8 thou" }],
    condition: " cold ",
    edition: "2nd",
    page: "5-12",
    from: "1201",
  });
  expect(keep?.limit).toEqual({
    limit: "lim.float",
    value: "8",
    unit: "[mil_i]",
    grade: "major",
    basis: "maker",
    source: "Workshop manual, edition 2nd, page 5-12; cold; from number 1201",
  });
  expect(keep?.told).toEqual({
    condition: "cold",
    holdsFor: { from: "1201" },
    source: { ...BOOK, edition: "2nd", page: "5-12" },
  });
});

test("no unit is guessed: it is chosen or typed, and where there is only one it is that", () => {
  expect(emptyFigure(FLOAT, ["mm", "[in_i]"]).unit).toBe("");
  expect(emptyFigure(FLOAT, ["1"]).unit).toBe("1");
  expect(wrong({ unit: "" })).toEqual(["unit"]);
  expect(wrong({ unit: "", edges: [{ grade: "major", value: "5/64" }] })).not.toContain("unit");
  expect(read({ unit: "", edges: [{ grade: "major", value: '0.008"' }] }).keep?.limit.unit).toBe("[in_i]");
});

test("each box tells what is wrong with it: no number, no source, no book, nobody, no day, too long", () => {
  expect(wrong({ edges: [{ grade: "major", value: "about so" }] })).toEqual(["value-0"]);
  expect(wrong({ trust: "" })).toContain("trust");
  expect(wrong({ way: "" })).toEqual(["way"]);
  expect(wrong({ title: " " })).toEqual(["title"]);
  expect(wrong({ way: "letter" })).toEqual(["who"]);
  expect(wrong({ way: "word", who: "Jo", on: "2026-02-31x" })).toEqual(["on"]);
  expect(wrong({ engine: "x".repeat(201) })).toEqual(["engine"]);
  expect(wrong({}, true)).toEqual(["why"]);
  expect(read({ why: "a later edition" }, true).keep?.why).toBe("a later edition");
});

test("figures for several grades lie one beyond the other, in one unit, each grade once", () => {
  const two = (a: string, b: string) =>
    ({
      edges: [
        { grade: "dangerous", value: b },
        { grade: "minor", value: a },
      ],
    }) as const;
  expect(read(two("0.1", "0.5")).keep?.limit).toMatchObject({ bands: { minor: "0.1", dangerous: "0.5" } });
  expect(wrong(two("0.5", "0.1"))).toEqual(["value-0"]);
  expect(wrong(two("0.1", "20 thou"))).toEqual(["value-1"]);
  expect(
    wrong({
      edges: [
        { grade: "minor", value: "0.1" },
        { grade: "minor", value: "0.2" },
      ],
    }),
  ).toEqual(["grade-1"]);
  const under: Limit = { ...FLOAT, direction: "under" };
  expect(read(two("0.5", "0.2"), false, under).problems).toEqual({});
  expect(Object.keys(read(two("0.2", "0.5"), false, under).problems)).toEqual(["value-0"]);
  expect(withEdge(form()).edges.map(({ grade }) => grade)).toEqual(["major", "dangerous"]);
  expect(withEdge(withEdge(form())).edges.map(({ grade }) => grade)).toEqual(["major", "dangerous", "minor"]);
});

test("outside what is usual it asks, names the slip, and keeps what was said to be right; a change asks anew", () => {
  const inches = { edges: [{ grade: "major", value: "0.008" }] } as const;
  const asked = read(inches);
  expect([Object.keys(asked.problems), asked.keep, asked.isSure]).toEqual([["value-0"], undefined, false]);
  const [one] = asked.odd;
  expect(one && slipTexts(one.odd, one.reading)).toContain("Was 0.008 in written down as 0.008 mm?");
  const sure = read({ ...inches, sureOf: asTyped(form(inches)) });
  expect([sure.isSure, sure.keep?.told.odd]).toEqual([true, { low: 0.026, high: 4, unit: "mm" }]);
  const changed = read({ edges: [{ grade: "major", value: "0.009" }], sureOf: asTyped(form(inches)) });
  expect([changed.isSure, changed.keep]).toEqual([false, undefined]);
});

test("whose figure it is decides how it can have come, and how far it is believed", () => {
  expect(waysOf("measured")).toEqual(["measured"]);
  expect(withTrust(form(), "practice")).toMatchObject({ trust: "practice", way: "practice" });
  expect(withTrust(form(), "supplier")).toMatchObject({ trust: "supplier", way: "book" });
  expect(withTrust(form({ way: "measured" }), "maker-sister").way).toBe("");
  expect(withTrust(form(), "hearsay").trust).toBe("");
  expect(basisOf({ trust: "maker-this", way: "word" })).toBe("unverified");
  expect(basisOf({ trust: "supplier", way: "stamped" })).toBe("maker");
  expect(basisOf({ trust: "measured", way: "measured" })).toBe("practice");
  expect(trustText({ trust: "supplier", way: "book" })).toMatch(/^the maker.*: 3 of 5/);
  expect(trustText({ trust: "measured", way: "measured" })).toBe("4 of 5 in order of trust");
});

test("what was typed into the boxes of another way is no part of the source", () => {
  expect(read({ way: "stamped", title: "the disc", page: "12", who: "Jo" }).keep?.told.source).toEqual({
    trust: "maker-this",
    way: "stamped",
    title: "the disc",
  });
});

test.each([
  [
    { trust: "supplier", way: "letter", who: "the joint's maker", on: "2026-03-02" },
    /letter.*from the joint's maker, 2 Mar 2026, maker or supplier/,
  ],
  [{ trust: "maker-sister", way: "word", who: "Ines" }, /^said by Ines, for a sister build$/],
  [{ trust: "maker-sister", way: "word" }, /^by word of mouth/],
  [{ trust: "maker-this", way: "stamped" }, /^stamped on the car or part$/],
  [{ trust: "measured", way: "measured", title: "the spare hub", who: "Jo" }, /^measured on the spare hub, by Jo$/],
  [{ trust: "practice", way: "practice" }, /^practice of this house$/],
] as const)("the source in words: %o", (source, says) => {
  expect(sourceText({ source })).toMatch(says);
});

test("a figure is shown in the sheet's unit, or in the next one where it is in the sheet's already", () => {
  const own = { limit: "lim.float", unit: "[mil_i]", value: "4", basis: "maker" } as const;
  expect(convertedText(FLOAT, own)).toBe("0.1016 mm");
  expect(convertedText(FLOAT, { ...own, unit: "mm", value: "0.2" })).toBe("7.874 thou");
  const { value: _value, ...rest } = own;
  expect(convertedText(FLOAT, { ...rest, bands: { minor: "4", major: "8" } })).toBe("0.1016 mm · 0.2032 mm");
  expect(convertedText(FLOAT, { ...own, value: "many" })).toBe("");
});
