import { describe, expect, test } from "vitest";
import { sheetSays } from "../../../../tests/support/mini-sheet.js";

// The dial of the small sheet: step 0.01, error ±0.01, set-up ±0.02 mm.
// u = √(0.01²/12 + (0.01² + 0.02²)/3) = 0.01323, U = 0.02646 mm; for the difference of two readings √2 of it, 0.03742.
const limit = (bands: string, more: Readonly<Record<string, string>> = {}) => {
  const keys = { of: "hub.float", unit: "mm", direction: "over", aggregate: "max", ...more };
  return {
    part: "limits.yaml",
    to: `limits:
  - id: lim.float
    of: ${keys.of}
    quantity: length
    unit: ${JSON.stringify(keys.unit)}
    direction: ${keys.direction}
    bands: ${bands}
    basis: practice
    source: common practice, no source
    aggregate: ${keys.aggregate}
    class: corner
`,
  };
};
/** What is said of these bands, without the file's place. */
const say = (bands: string, more: Readonly<Record<string, string>> = {}) => {
  const rule = {
    part: "rules.yaml",
    from: "{ limit-of: hub.float }",
    to: `{ limit-of: ${more["of"] ?? "hub.float"} }`,
  };
  const asked = { part: "rules.yaml", from: "band(hub.float)", to: `band(${more["of"] ?? "hub.float"})` };
  return sheetSays(limit(bands, more), rule, asked).problems.map((p) => p.replace(/^\S+ band /, ""));
};
const tooNarrow = (band: string, width: string, least: string, u: string, unit = "mm", gauge = "dial") =>
  `${band} of “lim.float” is ${width} ${unit} wide, but “${gauge}” can only tell it when wider than ${least} ${unit} (U = ${u} ${unit})`;

describe("a band beside one guarded edge must be wider than U", () => {
  test("just wide enough, just too narrow", () => {
    expect(say("{ minor: 0.10, major: 0.127, dangerous: 0.8 }")).toEqual([]);
    expect(say("{ minor: 0.10, major: 0.126, dangerous: 0.8 }")).toEqual([
      tooNarrow("minor to major", "0.026", "0.0265", "0.0265"),
    ]);
  });
  test("the band before a first major edge runs from the end of the window", () => {
    expect(say("{ major: 0.027 }")).toEqual([]);
    expect(say("{ major: 0.026 }")).toEqual([tooNarrow("sound to major", "0.026", "0.0265", "0.0265")]);
    expect(say("{ major: 1.97 }", { direction: "under" })).toEqual([]);
    expect(say("{ major: 1.98 }", { direction: "under" })).toEqual([
      tooNarrow("sound to major", "0.02", "0.0265", "0.0265"),
    ]);
  });
});

test("a band between two guarded edges must be wider than twice U", () => {
  expect(say("{ major: 0.10, dangerous: 0.153 }")).toEqual([]);
  expect(say("{ major: 0.10, dangerous: 0.152 }")).toEqual([
    tooNarrow("major to dangerous", "0.052", "0.0529", "0.0265"),
  ]);
});

test("milder edges are judged by the value alone and may lie close", () => {
  expect(say("{ advisory: 0.10, minor: 0.101, major: 0.2 }")).toEqual([]);
});

test("the gauge's step and error are taken over into the limit's unit", () => {
  expect(say("{ minor: 100, major: 127 }", { unit: "um" })).toEqual([]);
  expect(say("{ minor: 100, major: 126 }", { unit: "um" })).toEqual([
    tooNarrow("minor to major", "26", "26.5", "26.5", "um"),
  ]);
});

test("a spread carries the uncertainty of two readings", () => {
  expect(say("{ minor: 0.10, major: 0.138 }", { aggregate: "spread" })).toEqual([]);
  expect(say("{ minor: 0.10, major: 0.137 }", { aggregate: "spread" })).toEqual([
    tooNarrow("minor to major", "0.037", "0.0374", "0.0374"),
  ]);
});

test("a derived value carries the uncertainty of every reading in its formula", () => {
  expect(say("{ minor: 0.10, major: 0.138 }", { of: "hub.odd" })).toEqual([]);
  expect(say("{ minor: 0.10, major: 0.137 }", { of: "hub.odd" })).toEqual([
    tooNarrow("minor to major", "0.037", "0.0374", "0.0374", "mm", "formula of hub.odd"),
  ]);
});

test("without a gauge nothing is claimed", () => {
  const narrow = limit("{ minor: 0.10, major: 0.101 }");
  const torch = { part: "points.yaml", from: "    tool: dial\n    set-up-error: 0.02\n", to: "    tool: torch\n" };
  expect(sheetSays(narrow, torch).problems).toEqual([]);
  expect(sheetSays(limit("{ minor: 0.10, major: 0.101 }", { of: "hub.odd" }), torch).problems).toEqual([
    "hub/rules.yaml:21:24 no limit judges “hub.float”, so it gives no grade",
    "hub/rules.yaml:23:11 no limit judges “hub.float”, so it gives no grade",
  ]);
});
