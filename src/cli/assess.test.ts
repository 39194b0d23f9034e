// What the command line says and with which exit code; what comes out of whole visits is in tests/golden.
import { execFile } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import type { printed } from "./assess-print.js";
import { main } from "./main.js";

/** Each run loads and checks every sheet; on a busy machine that takes seconds. */
vi.setConfig({ testTimeout: 60_000 });

let scratch = "";
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), "visit-"));
});
afterAll(() => rm(scratch, { recursive: true }));

async function run(...args: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const exit = await main(args, { out: (text) => out.push(text), err: (text) => err.push(text) });
  return { exit, out: out.join("\n"), err: err.join("\n") };
}
async function file(name: string, text: string): Promise<string> {
  const path = join(scratch, name);
  await writeFile(path, text);
  return path;
}
const VISIT = {
  format: "leadlamp-visit/1",
  at: "2026-05-04",
  who: "technician",
  sheets: ["whl"],
  car: {},
  replies: [{ point: "whl.drone", word: "none" }],
};

test("wrong use is told and ends with 2", async () => {
  for (const args of [
    [],
    ["judge"],
    ["assess"],
    ["assess", "a.json", "b.json"],
    ["assess", "--checklists"],
    ["assess", "--help"],
  ]) {
    const { exit, out, err } = await run(...args);
    expect([args, exit, out, err.includes("use:")]).toEqual([args, 2, "", true]);
  }
  expect(await run("assess", join(scratch, "nowhere.json"))).toMatchObject({
    exit: 2,
    out: "",
    err: expect.stringContaining("nowhere.json"),
  });
});

test("a file that is no JSON or no visit ends with 1, and nothing is printed", async () => {
  expect(await run("assess", await file("broken.json", "{"))).toMatchObject({
    exit: 1,
    out: "",
    err: expect.stringContaining("broken.json: this is no JSON"),
  });
  expect(await run("assess", await file("other.json", '{"format":"other/1"}'))).toMatchObject({
    exit: 1,
    out: "",
    err: expect.stringContaining("leadlamp-visit/1"),
  });
});

test("sheets that cannot be read end with 1", async () => {
  const visit = await file("visit.json", JSON.stringify(VISIT));
  expect(await run("assess", visit, "--checklists", join(scratch, "none"))).toMatchObject({ exit: 1, out: "" });
});

test("a faulty reply is told on the error side and listed; the rest is printed", async () => {
  const visit = await file(
    "faulty.json",
    JSON.stringify({ ...VISIT, replies: [...VISIT.replies, { point: "whl.rock", place: "FR", word: "wobbly" }] }),
  );
  const { exit, out, err } = await run("assess", visit);
  expect(exit).toBe(1);
  expect(err).toContain("faulty.json: replies[1]: unknown word wobbly");
  const printed: { problems: unknown; coverage: Record<string, { answered: number }> } = JSON.parse(out);
  expect(printed.problems).toMatchObject([{ code: "visit.unknown-word", path: "replies[1]" }]);
  expect(printed.coverage["whl"]?.answered).toBe(1);
});

test("an owner reads the owner's words, and every name the contract gives is printed", async () => {
  const rocks = { ...VISIT, replies: [{ point: "whl.rock", place: "FR", word: "bad" }] };
  const said = async (who: string): Promise<ReturnType<typeof printed>> =>
    JSON.parse((await run("assess", await file(`${who}.json`, JSON.stringify({ ...rocks, who })))).out);
  const [technician, owner] = [await said("technician"), await said("owner")];
  expect(technician.findings[0]?.says).not.toBe("");
  expect(owner.findings[0]?.says).not.toBe("");
  expect(Object.keys(technician)).toEqual(
    expect.arrayContaining([
      "findings",
      "faults",
      "gates",
      "cautions",
      "jobs",
      "settle",
      "open",
      "coverage",
      "problems",
    ]),
  );
  expect(Object.keys(technician.findings[0] ?? {})).toEqual(
    expect.arrayContaining([
      "rule",
      "fault",
      "place",
      "grade",
      "says",
      "sure",
      "provisional",
      "close",
      "because",
      "jobs",
      "cautions",
      "opens",
    ]),
  );
  expect(Object.keys(technician.jobs[0] ?? {})).toEqual(
    expect.arrayContaining(["job", "place", "grade", "why", "byWhen"]),
  );
  expect(technician.findings[0]?.opens).toContainEqual({ point: "whl.rock_braked", place: "FR", because: "whl.r12" });
  expect(technician.jobs[0]?.byWhen).toMatchObject({ class: 0 });
});

test("npm run leadlamp prints data on one side and messages on the other", async () => {
  const visit = await file("whole.json", JSON.stringify(VISIT));
  const { stdout, stderr } = await promisify(execFile)("npm", ["run", "-s", "leadlamp", "--", "assess", visit]);
  const { problems }: ReturnType<typeof printed> = JSON.parse(stdout);
  // What npm or Node itself have to say on a machine is none of ours.
  const ours = stderr.split("\n").filter((line) => line !== "" && !/^(npm |\(node:|\(Use |Warning:)/.test(line));
  expect([problems, ours]).toEqual([[], []]);
});
