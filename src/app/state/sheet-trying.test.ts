/** Sample replies on the wheel sheet: what fires, what does not and why, and a case made of them that holds. */
import { describe, expect, it } from "vitest";
import { loadChecklists } from "../../build/load-checklists.js";
import { proving, runCase } from "../../core/assess/author.js";
import { prepare, reassess } from "../../core/assess/index.js";
import { NO_CHANGES } from "../../core/sheet/work.js";
import { TRADE_WORK } from "../../core/trade/index.js";
import { nameOfKey, sayExpectKey, sayReplyKey, typedOf, writtenOf } from "./case-lines.js";
import { namesOf } from "./sheet-names.js";
import {
  canBeTried,
  caseOf,
  freshNumber,
  inputFor,
  keyFor,
  readingText,
  takes,
  trialOf,
  whyNot,
  withSaid,
} from "./sheet-trying.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("The sheets do not stand.");
const { sheets, whole, wholeWithTexts } = result.value;
const all = sheets.map(({ sheet }) => sheet);
const [whl] = all.filter(({ id }) => id === "whl");
if (!whl) throw new Error("There is no wheel sheet.");
const engine = prepare(
  whole,
  sheets.map(({ built }) => built),
  TRADE_WORK,
);
const work = { sheet: whl, common: wholeWithTexts, others: all };
const trial = trialOf(work, { engine, sheets: all.map(({ id }) => id) });
const names = namesOf(work);
const rule = (id: string) => {
  const [found] = whl.rules.filter((one) => one.id === id);
  if (!found) throw new Error(`There is no ${id}.`);
  return found;
};
const said = { "whl.nut@FR": "torque-lost" };
const visitWith = (replies: Readonly<Record<string, string>>) => {
  const input = inputFor(trial, replies, {});
  if (!input) throw new Error("It can't be said.");
  return reassess(trial.untouched, input);
};

describe("sample replies", () => {
  it("fire the rules that hold", () => {
    expect(visitWith(said).assessment.findings.map((one) => `${one.rule}@${one.place}`)).toContain("whl.r09b@FR");
  });
  it("are not taken where a point does not ask so", () => {
    expect(inputFor(trial, { "whl.nut@FR": "purple" }, {})).toBeUndefined();
    expect([takes(trial, "whl.float@FR", "0.12 mm"), takes(trial, "whl.float@FR", "loose")]).toEqual([true, false]);
  });
  it("are written as cases write them", () => {
    const [nut] = whl.points.filter(({ id }) => id === "whl.nut");
    expect(nut && keyFor(nut, Object.keys(nut.fields)[0] ?? "", "FR")).toBe("whl.nut@FR");
    const field = { quantity: "length", unit: "mm", window: [0, 2] as [number, number] };
    expect([readingText("0.12", field), readingText("4 thou", field)]).toEqual(["0.12 mm", "4 thou"]);
    expect(withSaid(withSaid({}, "whl.nut@FR", "locked"), "whl.nut@FR", undefined)).toEqual({});
  });
  it("say of a rule where it holds, and what it waits for elsewhere", () => {
    const places = whyNot(trial, visitWith(said), rule("whl.r09b"));
    expect(places[0]).toEqual({ place: "FR", is: "true", waits: [] });
    const waiting = places.find(({ place }) => place === "FL");
    expect(waiting?.is).toBe("unknown");
    expect(waiting?.waits.join()).toContain("whl.nut@FL");
    expect(whyNot(trial, visitWith({ "whl.nut@FL": "locked" }), rule("whl.r09b")).at(-1)).toMatchObject({
      place: "FL",
      is: "false",
    });
  });
  it("make a case that comes out", () => {
    const made = caseOf(rule("whl.r09b"), visitWith(said), said, {});
    expect(made).toEqual({ fires: "whl.r09b", replies: said, expect: { "whl.nut-loose@FR": "major" } });
    const ran = proving(engine, trial.look, trial.sheets);
    expect(runCase(made, ran).failures).toEqual([]);
    expect(runCase({ ...made, "near-miss": { "whl.nut@FR": "locked" } }, ran).failures).toEqual([]);
    expect(runCase({ ...made, "near-miss": { "whl.nut@FR": "could-not-tell" } }, ran).failures).toEqual([
      expect.objectContaining({ is: "near-miss", place: "FR", rule: "unknown" }),
    ]);
    expect(runCase({ ...made, expect: { "whl.nut-loose@FR": "minor" } }, ran).failures).toEqual([
      { is: "expected", key: "whl.nut-loose@FR", wanted: "minor", found: "major" },
    ]);
    expect(runCase({ ...made, replies: { "whl.gone@FR": "x" } }, ran).failures).toEqual([{ is: "not-open" }]);
  });
  it("can be given while a case is still to come, and not while anything else stands against the sheet", () => {
    const told = (code: string, is: "problem" | "note" = "problem") => ({ is, code, says: code });
    expect(canBeTried({ checked: "now", told: [told("no-firing-case"), told("unused-limit", "note")] })).toBe(true);
    expect(canBeTried({ checked: "now", told: [told("unknown-job")] })).toBe(false);
    expect(canBeTried({ checked: "yet", told: [] })).toBe(false);
  });
  it("are given a number no case ever had", () => {
    const last = whl.cases.length;
    expect(freshNumber({ base: whl, changes: NO_CHANGES }, "cases")).toBe(`#${last}`);
    const items = new Map([["cases" as const, new Map([[`#${last}`, null]])]]);
    expect(freshNumber({ base: whl, changes: { ...NO_CHANGES, items } }, "cases")).toBe(`#${last + 1}`);
  });
});

describe("lines of a case", () => {
  it.each([
    ["true", true],
    ["3", 3],
    ["0.10 mm", "0.10 mm"],
    ["firm, spongy", ["firm", "spongy"]],
    ["just-felt", "just-felt"],
  ])("%s is kept as a case keeps it", (text, typed) => {
    expect(typedOf(text)).toEqual(typed);
    expect(writtenOf(typed)).toBe(text);
  });
  it("are told in words", () => {
    expect(nameOfKey("whl.rock-braked@FR#w7-hang")).toBe("whl.rock_braked");
    expect(sayReplyKey(names, "whl.rock@FR")).toBe("Rock at the wheel, front right");
    expect(sayExpectKey(names, "whl.nut-loose@FR")).toBe("The hub nut has lost its torque, front right");
    expect(sayExpectKey(names, "at")).toBe("Place");
  });
});
