import { describe, expect, test } from "vitest";
import { MINI_SHEET } from "../../../tests/support/mini-parts.js";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { assess, prepare } from "../../core/assess/index.js";
import type { FrozenCommonFile } from "../state/frozen.js";
import { ready } from "../state/judging.js";
import { planEditions } from "./plan-editions.js";
import { readSheetFile, sheetProblem } from "./sheet-file.js";

const { common, sheet } = miniSheets();
const { texts: commonTexts, ...bareCommon } = common;
/** As they were frozen when complaints were among them. */
const shared: FrozenCommonFile = {
  format: "leadlamp-frozen-common/1",
  edition: "c".repeat(64),
  common: bareCommon,
  texts: commonTexts,
};

/** The small sheet as one YAML file. */
function oneFile(): string {
  const { "texts/en.yaml": texts = "", ...parts } = MINI_SHEET;
  const indented = texts.replaceAll(/^(?=.)/gm, "    ");
  return `${Object.values(parts).join("")}texts:\n  en:\n${indented}`;
}
async function read(text: string, name = "my.yaml") {
  const result = await readSheetFile(name, text, shared);
  return result.ok ? result.value : result.problems.map(sheetProblem);
}
async function good(text: string, name?: string) {
  const result = await read(text, name);
  if (Array.isArray(result) || !("built" in result)) throw new Error(String(result));
  return result;
}

test("one YAML file and the same as JSON give the same edition, sheet and plans", async () => {
  const yaml = await good(oneFile());
  const json = await good(JSON.stringify(sheet, null, "\t"), "my.json");
  expect(yaml.file.sheet).toEqual(json.file.sheet);
  expect(yaml.file.edition).toMatch(/^[0-9a-f]{64}$/);
  expect(json.file.edition).toBe(yaml.file.edition);
  expect(json.built.plans).toEqual(yaml.built.plans);
  expect(yaml.file.texts["en"]?.title).toBe("Hubs");
  expect(yaml.notes).toEqual([]);
});

test("lists without an entry may be left out of the file", async () => {
  const text = oneFile()
    .replace(/nextLooks:\n.*\n/, "")
    .replace(/gates:\n/, "");
  expect((await good(text)).file.sheet.nextLooks).toEqual([]);
});

test("a sheet that was read is assessed", async () => {
  const { file } = await good(oneFile());
  const planned = await planEditions.compile(shared, [file]);
  if (!planned.ok) throw new Error(planned.problems.map(sheetProblem).join("\n"));
  const engine = prepare(planned.value.common, planned.value.sheets);
  const outcome = assess(engine, {
    at: "2026-06-01T10:00:00Z",
    who: "technician",
    car: { facts: {}, limits: [] },
    sheets: ["hub"],
    complaints: [],
    replies: [
      {
        key: { point: "hub.spin", place: "FR", state: "w7-hang", field: "feel" },
        value: { type: "words", words: ["rough"] },
        id: "1",
      },
    ],
    earlier: [],
    exposure: 0,
  });
  expect(outcome.findings.map((f) => [f.rule, f.place, f.grade])).toEqual([["hub.r1", "FR", "minor"]]);
  expect(outcome.gates.map((g) => [g.gate, g.state])).toEqual([["gate.road", "tripped"]]);
});

test("an edition frozen with a call of the trade's functions is planned again and judged with them", async () => {
  const text = oneFile().replace("hub.float - opposite.hub.float", "pad_taper(hub.float, opposite.hub.float)");
  const { file, built } = await good(text);
  const planned = await planEditions.compile(shared, [file]);
  if (!planned.ok) throw new Error(planned.problems.map(sheetProblem).join("\n"));
  expect(planned.value.sheets[0]?.plans).toEqual(built.plans);
  const engine = await ready(planned.value);
  expect(engine.problems).toEqual([]);
  const float = (place: string, value: string) => ({
    key: { point: "hub.float", place, state: "w7-hang", field: "play" },
    value: { type: "reading" as const, values: [value], unit: "mm" },
    id: place,
  });
  const { readings } = assess(engine, {
    at: "2026-06-01T10:00:00Z",
    who: "technician",
    car: { facts: {}, limits: [] },
    sheets: ["hub"],
    complaints: [],
    replies: [float("FL", "0.10"), float("FR", "0.30")],
    earlier: [],
    exposure: 0,
  });
  // |0.10 − 0.30| at either wheel.
  const apart = readings.filter((one) => one.point === "hub.odd").map(({ place, value }) => [place, value]);
  expect(apart).toEqual([
    ["FL", expect.closeTo(0.2, 9)],
    ["FR", expect.closeTo(0.2, 9)],
  ]);
});

test("planning an edition again gives the plans it was read with", async () => {
  const { file, built } = await good(oneFile());
  const planned = await planEditions.compile(shared, [file]);
  expect(planned.ok && planned.value.sheets).toEqual([built]);
});

test("an edition whose conditions name what is no longer there cannot be planned, and says where", async () => {
  const { file } = await good(oneFile());
  const points = file.sheet.points.filter((p) => p.id !== "hub.noise");
  const planned = await planEditions.compile(shared, [{ ...file, sheet: { ...file.sheet, points } }]);
  expect(planned.ok ? [] : planned.problems.map(sheetProblem)).toEqual([
    "rules[0].worse.when unknown name “hub.noise”; nearest: hub.odd, hub.spin, hub.float",
    "rules[0].supports[0] unknown name “hub.noise”; nearest: hub.odd, hub.spin, hub.float",
  ]);
});

describe("a file that cannot be used says why, with its own name, line and column", () => {
  test.each([
    ["a text that is no sheet", "hello", ["my.yaml:1:1 “hello” does not fit; expected a mapping"]],
    ["an empty file", "", ["my.yaml:1:1 nothing is written here"]],
    ["a picture", "\u0089PNG\r\n\u001a\n", ["my.yaml:1:1 “\u0089PNG \u001a” does not fit; expected a mapping"]],
    [
      "half a JSON file",
      '{"format": "leadlamp-sheet/1", "id": ',
      ["my.yaml:1:38 this cannot be read: Flow map must end with a }"],
    ],
    ["more than a megabyte", `# ${"x".repeat(1_048_576)}`, ["my.yaml the text is too large: at most 1048576 bytes"]],
    [
      "forty-one levels",
      `format: ${"[".repeat(41)}${"]".repeat(41)}`,
      ["my.yaml:1:49 lists and mappings lie too deep in one another: at most 40 levels"],
    ],
    [
      "an alias",
      "format: &f leadlamp-sheet/1\nid: *f\n",
      [
        "my.yaml:1:9 “&f”: anchors and aliases are not allowed; write it out, or quote the text",
        "my.yaml:2:5 “*f”: anchors and aliases are not allowed; write it out, or quote the text",
      ],
    ],
    [
      "an unquoted condition",
      "rules:\n  - { when: !x && y }\n",
      [
        "my.yaml:2:13 tag “!x” is not allowed; text that begins with “!” goes in quotes",
        "my.yaml:2:16 “&&”: anchors and aliases are not allowed; write it out, or quote the text",
      ],
    ],
    ["a prototype key", '{"__proto__": {"a": 1}}', ["my.yaml:1:2 “__proto__” may not be a key"]],
  ])("%s", async (_name, text, says) => {
    expect(await read(text)).toEqual(says);
  });

  test("a name of a sheet at hand that is not there is a problem; of one that is not at hand, a remark", async () => {
    const text = oneFile().replace("hub.spin@opposite", "brk.drag");
    const line = text.split("\n").findIndex((l) => l.includes("brk.drag")) + 1;
    const brake = { ...sheet, id: "brk", points: [], rules: [], limits: [], derived: [], jobs: [], cases: [] };
    const { texts, ...bare } = brake;
    const beside = { format: "leadlamp-frozen-sheet/1", edition: "b", sheet: bare, texts } as const;
    const result = await readSheetFile("my.yaml", text, shared, [beside]);
    expect(result.ok ? [] : result.problems.map(sheetProblem)).toEqual([
      `my.yaml:${line}:24 unknown point “brk.drag”; expected hub.spin, hub.float or hub.noise`,
    ]);
    expect((await good(text)).notes.map(sheetProblem)).toEqual([
      `my.yaml:${line}:24 “brk.drag” belongs to sheet “brk”, which is not loaded`,
    ]);
  });

  test("another edition of a sheet at hand stands in its place", async () => {
    const { texts, ...bare } = sheet;
    const old = { format: "leadlamp-frozen-sheet/1", edition: "a", sheet: bare, texts } as const;
    expect((await readSheetFile("my.yaml", oneFile(), shared, [old])).ok).toBe(true);
  });
});
