import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { MINI_COMMON, MINI_SHEET } from "../../tests/support/mini-parts.js";
import { sheetsVerb } from "./sheets.js";

let dir = "";
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), "sheets-"));
  await write("common", MINI_COMMON);
  await write("hub", MINI_SHEET);
});
afterEach(() => rm(dir, { recursive: true, force: true }));

async function write(folder: string, parts: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(parts)) {
    await mkdir(dirname(join(dir, folder, name)), { recursive: true });
    await writeFile(join(dir, folder, name), text);
  }
}
async function change(file: string, from: string, to: string): Promise<void> {
  const text = await readFile(join(dir, file), "utf8");
  expect(text).toContain(from);
  await writeFile(join(dir, file), text.replace(from, to));
}
async function run(...args: readonly string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const code = await sheetsVerb(args, { out: (t) => out.push(t), err: (t) => err.push(t.replaceAll(dir, "DIR")) });
  return { code, err, report: out.length > 0 ? JSON.parse(out.join("\n")) : undefined };
}

test("a good folder: counts, nothing on the error side, exit 0", async () => {
  const { code, err, report } = await run(dir);
  expect(err).toEqual([]);
  expect(code).toBe(0);
  expect(report).toEqual({
    sheets: [
      {
        id: "hub",
        label: "Hub 1",
        edition: expect.stringMatching(/^[0-9a-f]{64}$/),
        points: 3,
        limits: 1,
        derived: 1,
        rules: 3,
        jobs: 1,
        gates: 0,
        cases: 3,
        languages: ["en"],
      },
    ],
    unused: [],
    notLoaded: {},
    problems: [],
  });
});

test("a broken sheet names file, line and column and ends with 1", async () => {
  await change("hub/rules.yaml", `'hub.spin == "rough"'`, `'hub.spin == "ruff"'`);
  const { code, err, report } = await run(dir);
  expect(code).toBe(1);
  expect(err).toEqual(["DIR/hub/rules.yaml:9:24 the point has no word “ruff”; it has rough, tight, smooth"]);
  expect(report.sheets).toEqual([]);
  expect(report.problems).toMatchObject([{ code: "expr.unknown-word", line: 9, column: 24, path: "rules[0].when" }]);
});

test("a case that does not conclude what it expects is told with what came out", async () => {
  await change("hub/cases.yaml", "{ hub.race@FR: minor }", "{ hub.race@FR: major }");
  await change("hub/cases.yaml", "{ at: FR }", "{ at: FL }");
  const { code, err } = await run(dir);
  expect(code).toBe(1);
  expect(err).toEqual([
    "DIR/hub/cases.yaml:4:5 case of “hub.r1”: expected hub.race@FR: major, found minor",
    "DIR/hub/cases.yaml:13:5 case of “hub.r3”: expected at: FL, found FR",
  ]);
});

test("a near miss that leaves the rule true is told", async () => {
  await change("hub/cases.yaml", "near-miss: { hub.float@FL: 0.05 mm }", "near-miss: { hub.float@FL: 0.22 mm }");
  expect((await run(dir)).err).toEqual([
    "DIR/hub/cases.yaml:10:5 case of “hub.r2”: near miss at FL: the rule is true, not false",
  ]);
});

test("a near miss that leaves the rule unknown is told with the reply it waits for", async () => {
  await change(
    "hub/rules.yaml",
    `'hub.spin == "rough"'`,
    `'hub.spin == "rough" || hub.spin == "tight" && "hum" in hub.noise'`,
  );
  await change("hub/cases.yaml", "near-miss: { hub.spin@FR: smooth }", "near-miss: { hub.spin@FR: tight }");
  expect((await run(dir)).err).toEqual([
    "DIR/hub/cases.yaml:5:5 case of “hub.r1”: near miss at FR: the rule is unknown, waiting for hub.noise@car#w0-talk.heard, not false",
  ]);
});

test("a fault that only another rule concludes does not pass for this rule's own", async () => {
  const twin = `  - id: hub.r4
    scope: corner
    effect: finding
    fault: hub.race
    grade: minor
    sure: possible
    when: 'hub.spin == "tight"'
    consequence: 2
    likelihood: C
    must-stand: false
`;
  const text = await readFile(join(dir, "hub/rules.yaml"), "utf8");
  await writeFile(join(dir, "hub/rules.yaml"), text + twin);
  const cases = await readFile(join(dir, "hub/cases.yaml"), "utf8");
  const one = (spin: string) => `  - fires: hub.r4
    replies: { hub.spin@FR: ${spin}, hub.spin@FL: smooth }
    expect: { hub.race@FR: minor }
    near-miss: { hub.spin@FR: smooth }
`;
  await writeFile(join(dir, "hub/cases.yaml"), cases + one("tight"));
  expect((await run(dir)).err).toEqual([]);
  await writeFile(join(dir, "hub/cases.yaml"), cases + one("rough"));
  expect((await run(dir)).err).toEqual([
    "DIR/hub/cases.yaml:17:5 case of “hub.r4”: others conclude this, the rule itself does not",
  ]);
});

test("gates stand in cases like rules", async () => {
  const gate = (state: string, miss: string) => `cases:
  - fires: gate.road
    replies: { hub.spin@FL: rough, hub.spin@FR: smooth }
    expect: { gate.road: ${state} }
    near-miss: { hub.spin@FL: ${miss} }
`;
  await writeFile(join(dir, "common/cases.yaml"), gate("tripped", "smooth"));
  expect((await run(dir)).err).toEqual([]);
  await writeFile(join(dir, "common/cases.yaml"), gate("cleared", "smooth"));
  expect((await run(dir)).err).toEqual([
    "DIR/common/cases.yaml:4:5 case of “gate.road”: expected gate.road: cleared, found tripped",
  ]);
});

test("called wrongly it prints its use and ends with 2", async () => {
  for (const args of [["a", "b"], ["--all"]]) {
    const { code, err, report } = await run(...args);
    expect({ code, err, report }).toEqual({
      code: 2,
      err: [expect.stringMatching(/^use: sheets \[DIR\] \[--cases-of SHEET\]/)],
      report: undefined,
    });
  }
});

test("a folder that is not there ends with 1", async () => {
  const { code, err } = await run(join(dir, "none"));
  expect(code).toBe(1);
  expect(err).toEqual([
    "DIR/none file “DIR/none” cannot be read: ENOENT: no such file or directory, scandir 'DIR/none'",
  ]);
});

test("with --cases-of that sheet's cases are run; a sheet that is not there, or none named, is told", async () => {
  await change("hub/cases.yaml", "{ at: FR }", "{ at: FL }");
  expect(await run(dir, "--cases-of", "hub")).toMatchObject({
    code: 1,
    err: ["DIR/hub/cases.yaml:13:5 case of “hub.r3”: expected at: FL, found FR"],
  });
  const none = await run(dir, "--cases-of", "boat");
  expect(none).toMatchObject({ code: 2, report: undefined });
  expect(none.err.join()).toMatch(/^There is no sheet boat in DIR/);
  expect((await run(dir, "--cases-of")).code).toBe(2);
});
