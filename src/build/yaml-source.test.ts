import { describe, expect, test } from "vitest";
import { type Path, pathText, tell } from "../core/sheet/author.js";
import { MOST_BYTES, readYaml } from "./yaml-source.js";

const said = (text: string) => {
  const read = readYaml(text, "x.yaml");
  return read.ok ? read.value.value : read.problems.map(tell);
};
const spot = (text: string, path: Path, at?: number | "key") => {
  const read = readYaml(text, "x.yaml");
  if (!read.ok) throw new Error(read.problems.map(tell).join("\n"));
  const { line, column } = read.value.spotOf(path, at);
  return `${line}:${column}`;
};

test("words stay words: yes, no, on, dates and under_scores are text; numbers are numbers", () => {
  expect(said("[yes, no, on, 2001-01-01, 1_000, 0.10, 1e3]")).toEqual([
    "yes",
    "no",
    "on",
    "2001-01-01",
    "1_000",
    0.1,
    1000,
  ]);
});

test("JSON text is read alike, tabs and escapes included", () => {
  expect(said('{\n\t"a": [1,\n\t2.50, "x\\u0041"], "b": null}')).toEqual({ a: [1, 2.5, "xA"], b: null });
});

test("keys are text whatever they look like; a list is no key", () => {
  expect(said("1: a\ntrue: b\nnull: c")).toEqual({ "1": "a", true: "b", null: "c" });
  expect(said("? [a, b]\n: c")).toEqual(["x.yaml:1:3 this cannot be read: With stringKeys, all keys must be strings"]);
});

describe("hostile text is refused quickly and never throws", () => {
  const deep = "lists and mappings lie too deep in one another: at most 40 levels";
  const signs = "x.yaml the text is too large: at most 150000 signs and words";
  test.each([
    [
      "a megabyte and a letter",
      `a: ${"x".repeat(MOST_BYTES)}`,
      `x.yaml the text is too large: at most ${MOST_BYTES} bytes`,
    ],
    ["half a million open brackets", "[".repeat(500_000), signs],
    ["a hundred thousand open brackets", "[".repeat(100_000), `x.yaml:1:42 ${deep}`],
    ["mappings in mappings", "{a: ".repeat(20_000), `x.yaml:1:162 ${deep}`],
    ["keys of keys", "? ".repeat(50_000), `x.yaml:1:81 ${deep}`],
    ["lists in lists", "- ".repeat(50_000), `x.yaml:1:81 ${deep}`],
    ["nothing but commas", `[${",".repeat(900_000)}]`, signs],
    ["nothing but line ends", "\n".repeat(1_000_000), signs],
    [
      "six thousand keys",
      Array.from({ length: 6_000 }, (_, i) => `k${i}: 1`).join("\n"),
      "x.yaml:1:1 the text is too large: at most 5000 entries",
    ],
    [
      "a key too long to be one",
      `${"x".repeat(1_100)}: 1`,
      "x.yaml:1:1 this cannot be read: The : indicator must be at most 1024 chars after the start of an implicit block mapping key",
    ],
  ])("%s", (_name, text, message) => {
    expect(said(text)).toEqual([message]);
  });
  test("anchors and directives by the thousand are told a hundred times at most", () => {
    expect(said("&a ".repeat(40_000))).toHaveLength(100);
    expect(said("%A\n".repeat(40_000))).toHaveLength(100);
  });
  test("every way to reach into all objects by a key", () => {
    for (const key of ["__proto__", "constructor", "prototype", '"__proto__"', "'constructor'"])
      expect(said(`a: { ${key}: { polluted: 1 } }`)).toEqual([
        `x.yaml:1:6 “${key.replace(/["']/g, "")}” may not be a key`,
      ]);
    expect(Reflect.get({}, "polluted")).toBeUndefined();
  });
});

describe("spots", () => {
  const text = `list:
  - { id: a, when: 'one two' }
  - id: b
    when: >-
      first &&
      second
    or: |
      line one
        indented
    double: "a \\"quoted\\" word"
    single: 'it''s here'
`;
  test("a value at its text, a list or mapping and a key at its key, an item at its start", () => {
    expect(spot(text, ["list", 0, "when"])).toBe("2:20");
    expect(spot(text, ["list", 0, "when"], "key")).toBe("2:14");
    expect(spot(text, ["list"])).toBe("1:1");
    expect(spot(text, ["list", 1])).toBe("3:5");
  });
  test("what is not there is told at the nearest thing around it", () => {
    expect(spot(text, ["list", 1, "missing"])).toBe("3:5");
    expect(spot(text, ["list", 9, "id"])).toBe("1:1");
    expect(spot(text, [])).toBe("1:1");
  });
  test("a letter inside quoted, folded and block text at its own place", () => {
    expect(spot(text, ["list", 0, "when"], 4)).toBe("2:25");
    expect(spot(text, ["list", 1, "when"], "first && ".length)).toBe("6:7");
    expect(spot(text, ["list", 1, "or"], "line one\n  ".length)).toBe("9:9");
    expect(spot(text, ["list", 1, "double"], 'a "quoted" '.length)).toBe("10:27");
    expect(spot(text, ["list", 1, "single"], "it's ".length)).toBe("11:20");
  });
  test("an offset past the end stays inside the value", () => {
    expect(spot("a: 'xy'\nb: 1", ["a"], 99)).toBe("1:7");
  });
  test("line ends of another system count as one", () => {
    expect(spot("a: 1\r\nb:\r\n  - x\r\n", ["b", 0])).toBe("3:5");
  });
  test("paths are told as people write them", () => {
    expect(pathText(["rules", 3, "when"])).toBe("rules[3].when");
    expect(pathText(["texts", "en", "points", "whl.spin", "name"])).toBe('texts.en.points["whl.spin"].name');
  });
});
