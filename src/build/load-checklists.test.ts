import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, expect, test } from "vitest";
import { MINI_COMMON, MINI_SHEET } from "../../tests/support/mini-parts.js";
import { tell } from "../core/sheet/author.js";
import { loadChecklists } from "./load-checklists.js";

let dir = "";
afterEach(() => rm(dir, { recursive: true, force: true }));

async function folder(files: Readonly<Record<string, string>>): Promise<string> {
  dir = await mkdtemp(join(tmpdir(), "lists-"));
  for (const [name, text] of Object.entries(files)) {
    await mkdir(dirname(join(dir, name)), { recursive: true });
    await writeFile(join(dir, name), text);
  }
  return dir;
}
const inFolder = (name: string, parts: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(parts).map(([part, text]) => [`${name}/${part}`, text]));
const both = { ...inFolder("common", MINI_COMMON), ...inFolder("hub", MINI_SHEET) };

async function told(files: Readonly<Record<string, string>>): Promise<readonly string[]> {
  const { result } = await loadChecklists(await folder(files));
  return result.ok ? [] : result.problems.map((p) => tell(p).replaceAll(dir, "DIR"));
}

test("a folder of parts becomes one sheet with plans, texts apart, and an edition", async () => {
  const { result, files } = await loadChecklists(await folder({ ...both, "hub/README.md": "for people" }));
  if (!result.ok) throw new Error(result.problems.map(tell).join("\n"));
  const [hub] = result.value.sheets;
  expect(hub?.built.sheet.points.map((p) => p.id)).toEqual(["hub.spin", "hub.float", "hub.noise"]);
  expect(hub?.built.sheet).not.toHaveProperty("texts");
  expect(hub?.sheet.texts["en"]?.title).toBe("Hubs");
  expect(hub?.built.edition).toMatch(/^[0-9a-f]{64}$/);
  expect(Object.keys(hub?.built.plans ?? {})).toEqual([
    "points/hub.float/asked-when",
    "limits/lim.float/applies",
    "derived/hub.odd/formula",
    "rules/hub.r1/when",
    "rules/hub.r1/worse/when",
    "rules/hub.r1/supports/0",
    "rules/hub.r2/when",
    "rules/hub.r3/when",
  ]);
  expect(Object.keys(result.value.common.plans)).toEqual(["gates/gate.road/trips/0", "gates/gate.road/clears/0"]);
  expect(files).toHaveLength(Object.keys(both).length);
});

test("changed texts leave the edition, a changed figure or field order gives another", async () => {
  const edition = async (part: keyof typeof MINI_SHEET, from: string, to: string) => {
    const text = MINI_SHEET[part] ?? "";
    expect(text).toContain(from);
    const { result } = await loadChecklists(await folder({ ...both, [`hub/${part}`]: text.replace(from, to) }));
    if (!result.ok) throw new Error(result.problems.map(tell).join("\n"));
    await rm(dir, { recursive: true });
    return result.value.sheets[0]?.built.edition;
  };
  const plain = await edition("sheet.yaml", "Hub 1", "Hub 1");
  expect(await edition("texts/en.yaml", "Too much play.", "Much too much play.")).toBe(plain);
  expect(await edition("limits.yaml", "minor: 0.13", "minor: 0.14")).not.toBe(plain);
  const swapped = [
    "age: { count: { from: 0, to: 60 }, optional: true }",
    "air: { quantity: pressure, unit: bar, window: [0, 5], optional: true }",
  ];
  const [age = "", air = ""] = swapped;
  expect(await edition("points.yaml", `${age}\n      ${air}`, `${air}\n      ${age}`)).not.toBe(plain);
});

test("changed complaints leave the edition of the shared files, a changed place gives another", async () => {
  const edition = async (part: keyof typeof MINI_COMMON, from: string, to: string) => {
    const text = MINI_COMMON[part] ?? "";
    expect(text).toContain(from);
    const { result } = await loadChecklists(await folder({ ...both, [`common/${part}`]: text.replace(from, to) }));
    if (!result.ok) throw new Error(result.problems.map(tell).join("\n"));
    await rm(dir, { recursive: true });
    return result.value.common.edition;
  };
  const plain = await edition("complaints.yaml", "weight: 3", "weight: 3");
  expect(await edition("complaints.yaml", "weight: 3", "weight: 2")).toBe(plain);
  expect(await edition("facts.yaml", "[outboard, inboard]", "[inboard, outboard]")).not.toBe(plain);
});

test("a folder that is not there, one without shared files, and a sheet in a folder of another name are told", async () => {
  const { result } = await loadChecklists("/nowhere/at/all");
  expect(result.ok ? [] : result.problems.map(tell)).toEqual([
    "/nowhere/at/all file “/nowhere/at/all” cannot be read: ENOENT: no such file or directory, scandir '/nowhere/at/all'",
  ]);
  expect(await told(inFolder("hub", MINI_SHEET))).toEqual(["DIR file “common” is missing"]);
  expect(await told({ ...inFolder("common", MINI_COMMON), ...inFolder("hubs", MINI_SHEET) })).toContain(
    "DIR/hubs/sheet.yaml:2:5 sheet “hub” stands in folder “DIR/hubs”; the two must be named alike",
  );
});

test("two sheets may bring the same thing, but not two things under one name", async () => {
  const brings = (pitch: string): string => `brings: { gauges: [{ id: thread-gauge, quantity: length, unit: mm,
    resolution: ${pitch}, error: 0.1, basis: practice, source: common practice }], places: [{ id: nut-1, kind: nut, in: car }] }
`;
  const words = "brings: { gauges: { thread-gauge: Thread gauge }, places: { nut-1: nut 1 } }\n";
  const nut = (id: string, pitch: string) =>
    inFolder(id, {
      "sheet.yaml": `format: leadlamp-sheet/1\nid: ${id}\nlabel: "Nuts 1"\n`,
      "brings.yaml": brings(pitch),
      "texts/en.yaml": `language: en\ntitle: Nuts\nabout: Nuts.\npoints: {}\nfaults: {}\njobs: {}\n${words}`,
    });
  const shared = inFolder("common", MINI_COMMON);
  const { result } = await loadChecklists(await folder({ ...shared, ...nut("nut", "0.1"), ...nut("bolt", "0.1") }));
  if (!result.ok) throw new Error(result.problems.map(tell).join("\n"));
  expect(result.value.common.common.places.map(({ id }) => id)).not.toContain("nut-1");
  expect(result.value.whole.common.places.filter(({ id }) => id === "nut-1")).toHaveLength(1);
  expect(result.value.wholeWithTexts.texts["en"]?.gauges["thread-gauge"]).toBe("Thread gauge");
  await rm(dir, { recursive: true });
  expect(await told({ ...shared, ...nut("nut", "0.1"), ...nut("bolt", "0.2") })).toEqual([
    "DIR/bolt/brings.yaml:1:20 “thread-gauge” is brought by sheet nut too, and not the same: one thing, one meaning",
    "DIR/nut/brings.yaml:1:20 “thread-gauge” is brought by sheet bolt too, and not the same: one thing, one meaning",
  ]);
});

test("problems of several files are told together", async () => {
  const broken = {
    ...both,
    "hub/limits.yaml": both["hub/limits.yaml"]?.replace("basis: practice", "basis: hearsay") ?? "",
    "common/states.yaml": both["common/states.yaml"]?.replace("order: 4", "order: four") ?? "",
  };
  expect(await told(broken)).toEqual([
    "DIR/hub/limits.yaml:8:12 “hearsay” does not fit; expected maker, published, practice or unverified",
    "DIR/common/states.yaml:3:27 “four” does not fit; expected a number",
  ]);
});

test("the sheets that come with the app stand", async () => {
  const { result } = await loadChecklists("checklists");
  expect(result.ok ? [] : result.problems.map(tell)).toEqual([]);
});
