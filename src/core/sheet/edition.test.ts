import fc from "fast-check";
import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { canonicalText, editionText } from "./edition.js";

const { common, sheet } = miniSheets();
const { texts: _sheetTexts, ...bare } = sheet;
const { texts: _commonTexts, ...bareCommon } = common;

test("equal values give equal text whatever the order of their keys, and the text reads back as the value", () => {
  const shuffled = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(shuffled);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .reverse()
        .map(([k, v]) => [k, shuffled(v)]),
    );
  };
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 4 }), (value) => {
      const text = canonicalText(value);
      expect(canonicalText(shuffled(value))).toBe(text);
      expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
    }),
    { seed: 20261125, numRuns: 300 },
  );
});

test("keys go by code unit, not by the language of the machine; what is undefined is not there", () => {
  expect(canonicalText({ b: 1, a: undefined, Z: [undefined, "é"], ä: null })).toBe('{"Z":[null,"é"],"b":1,"ä":null}');
});

test("the edition's text is the sheet without shown texts, its fields in their order", () => {
  const text = editionText(bare);
  expect(text).not.toContain("How does it turn?");
  expect(text).toContain('"fields":[["heard",{');
  expect(editionText({ ...bare, ...{ texts: sheet.texts } })).toBe(text);
  expect(editionText({ ...bareCommon, ...{ texts: common.texts } })).toBe(editionText(bareCommon));
  const turned = bare.points.map((p) => ({ ...p, fields: Object.fromEntries(Object.entries(p.fields).reverse()) }));
  expect(editionText({ ...bare, points: turned })).not.toBe(text);
});
