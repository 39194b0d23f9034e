// The hand-over of a visit file on the terminal: forms, readers, exit codes. What it says is held in core/report/handover.
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { main } from "./main.js";

/** Each run loads and checks every sheet; on a busy machine that takes seconds. */
vi.setConfig({ testTimeout: 120_000 });

let scratch = "";
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), "report-"));
});
afterAll(() => rm(scratch, { recursive: true }));

async function run(...args: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const exit = await main(["report", ...args], { out: (text) => out.push(text), err: (text) => err.push(text) });
  return { exit, out: out.join("\n"), err: err.join("\n") };
}
async function visit(name: string, more: object): Promise<string> {
  const path = join(scratch, name);
  const whole = { format: "leadlamp-visit/1", at: "2026-05-04", who: "technician", sheets: ["whl"], car: {}, ...more };
  await writeFile(path, JSON.stringify(whole));
  return path;
}

test("wrong use is told and ends with 2", async () => {
  const file = await visit("any.json", { replies: [] });
  for (const args of [
    [],
    [file],
    [file, "--as"],
    [file, "--as", "pdf"],
    [file, file, "--as", "text"],
    [file, "--as", "text", "--for", "seller"],
    [file, "--as", "text", "--csv", "work"],
    [file, "--as", "csv", "--csv", "findings"],
    [file, "--as", "text", "--as", "html"],
  ])
    expect([args, await run(...args)]).toMatchObject([
      args,
      { exit: 2, out: "", err: expect.stringContaining("use:") },
    ]);
  expect(await run(join(scratch, "nowhere.json"), "--as", "text")).toMatchObject({ exit: 2, out: "" });
});

test("what is no JSON or no visit ends with 1 and prints nothing", async () => {
  const broken = join(scratch, "broken.json");
  await writeFile(broken, "{");
  expect(await run(broken, "--as", "text")).toMatchObject({ exit: 1, out: "" });
  expect(await run(await visit("none.json", { format: "else" }), "--as", "text")).toMatchObject({ exit: 1, out: "" });
});

test("a faulty reply is told and set aside, the rest is written, and it ends with 1", async () => {
  const replies = [{ point: "whl.nosuch", word: "none" }];
  const { exit, out, err } = await run(await visit("faulty.json", { replies }), "--as", "text");
  expect([exit, err.includes("whl.nosuch")]).toEqual([1, true]);
  expect(out).toContain("It is not shown that it may be driven.");
});

test("[HO45] what stays as it is says when it is looked at again, by distance and by day", async () => {
  const replies = [
    { point: "whl.drone", word: "faint" },
    { point: "whl.drive", words: ["gone-in-neutral"] },
  ];
  const more = { odometer: { value: 61_000, unit: "km" }, replies };
  const { out } = await run(await visit("again.json", more), "--as", "text");
  expect(out).toContain(
    "Look again: The noise belongs to the gearbox: at 64\u202f000 km on the odometer, by 4 Nov 2026",
  );
});

test("a worn car in every form: what was found, not looked at and complained of stands there in words", async () => {
  const golden: { readonly visit: object } = JSON.parse(await readFile("tests/golden/inboard-rear.json", "utf8"));
  const file = await visit("worn.json", { ...golden.visit, complaints: ["It drones above 90"] });
  const text = await run(file, "--as", "text", "--for", "owner");
  expect(text).toMatchObject({ exit: 0, err: "" });
  expect(text.out).toContain("“It drones above 90” Not answered yet.");
  expect(text.out).toMatch(/^a\. (Dangerous|Major|Minor): /m);
  expect(text.out).not.toMatch(/\b(whl|brk|corr|susp|drn|job|lim)\.[a-z]/);
  const html = await run(file, "--as", "html");
  expect(html.out).toMatch(/^<!doctype html>[\s\S]*<\/html>$/);
  expect((await run(file, "--as", "csv", "--csv", "readings")).out).toMatch(/^place,point,reading/);
  expect((await run(file, "--as", "csv", "--csv", "unseen")).out).toMatch(
    /^place,point,sheet,what[\s\S]*\r\n[^\r\n]*,not-looked,/,
  );
  expect((await run(file, "--as", "csv")).out).toMatch(/^number,job,work[\s\S]*\r\n1,job\./);
  expect((await run(file, "--as", "ics")).out).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*END:VCALENDAR$/);
});
