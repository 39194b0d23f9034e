import { expect, test } from "vitest";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { sheetFrozen } from "../../../tests/support/app-bench.js";
import {
  type Act,
  draftCar,
  draftFigure,
  draftFigureLooked,
  draftLimit,
  draftOutOfBook,
  draftPerson,
  type FigureTold,
} from "../../core/record/index.js";
import type { CarLimit } from "../../core/sheet/run.js";
import { isSafetyFigure, placeLines } from "./limit-book.js";
import { limitsCsv } from "./limits-table.js";
import { bookView, findLimits, limitLines, unitChoices } from "./limits-view.js";

const FLOAT = sheetFrozen.sheet.limits.find(({ id }) => id === "lim.float");
if (!FLOAT) throw new Error("the small sheet has a limit of the float");
const WANTS = { ...sheetFrozen, sheet: { ...sheetFrozen.sheet, limits: [{ ...FLOAT, wants: "maker" as const }] } };

let given = 0;
const act = (by = "anna"): Act => {
  given += 1;
  const id = `act${given}`;
  let made = 0;
  return {
    id,
    by,
    at: { wall: Date.parse("2026-03-03T10:00Z") + given, count: 0 },
    nonce: () => {
      made += 1;
      return `${id}-${made}`;
    },
  };
};
const figure = (value: string, more: Partial<CarLimit> = {}): CarLimit => ({
  ...{ limit: "lim.float", value, unit: "[mil_i]", grade: "major", basis: "maker" },
  ...more,
});
const TOLD: FigureTold = {
  condition: "cold",
  source: { trust: "supplier", way: "letter", who: "the bearing's maker" },
  odd: { low: 1, high: 50, unit: "[mil_i]" },
};
function begun(): SampleLog {
  const log = new SampleLog("car:c");
  log.add(draftCar(act(), "car:c", "the blue one"));
  log.add(draftPerson(act(), log.car, { id: "anna", name: "Anna" }));
  return log;
}

test("a figure of the book is told with its other unit, its source, its place in the order of trust, and who entered it", () => {
  const log = begun();
  log.add(draftFigure(act(), log.car, figure("4"), TOLD, "theirs is newer"));
  const [line] = placeLines(log.car, FLOAT, true);
  const [stands] = line?.standing ?? [];
  expect(stands?.converted).toBe("0.1016 mm");
  expect(stands?.says).toEqual([
    "in a letter or message, from the bearing's maker, maker or supplier of the part; cold",
    "the maker's or supplier's of the part: 3 of 5 in order of trust",
    "outside the usual 1 to 50 thou, checked twice",
    "Because: theirs is newer",
  ]);
  expect(stands?.by).toEqual(["Entered by Anna, 3 Mar 2026"]);
});

test("a safety figure is told as one person's until somebody else has looked; another figure asks anew", () => {
  const log = begun();
  const id = log.add(draftFigure(act(), log.car, figure("4"), TOLD));
  const unread = () => placeLines(log.car, FLOAT, true)[0]?.standing.map(({ isUnread }) => isUnread);
  expect(unread()).toEqual([true]);
  log.add(draftFigureLooked(act("jo"), log.car, { key: "lim.float", id }, "Jo", "letter seen"));
  expect(unread()).toEqual([false]);
  expect(placeLines(log.car, FLOAT, true)[0]?.standing[0]?.by[1]).toMatch(/by Jo, 3 Mar 2026: letter seen$/);
  log.add(draftFigure(act(), log.car, figure("4"), TOLD));
  expect(unread()).toEqual([true]);
  expect(placeLines(log.car, FLOAT, false)[0]?.standing[0]?.isUnread).toBe(false);
});

test("brakes, steering, wheels and fuel are safety figures by their sheet, others by the work their rules lead to", () => {
  const { rules, jobs } = sheetFrozen.sheet;
  expect(isSafetyFigure({ id: "brk", rules: [], jobs: [] }, FLOAT)).toBe(true);
  expect(isSafetyFigure({ id: "corr", rules, jobs }, FLOAT)).toBe(false);
  const [job] = jobs;
  const looked = jobs.map((one) => ({ ...one, "second-look": "wheels" as const }));
  const byFloat = rules.map((rule) => ({ ...rule, grade: { "limit-of": FLOAT.of }, jobs: job ? [job.id] : [] }));
  expect(isSafetyFigure({ id: "corr", rules: byFloat, jobs: looked }, FLOAT)).toBe(true);
  expect(isSafetyFigure({ id: "corr", rules: byFloat, jobs }, FLOAT)).toBe(false);
  expect(isSafetyFigure({ id: "corr", rules, jobs: looked }, FLOAT)).toBe(false);
});

test("what stood before stays under what stands, the newest first, place by place; a figure from before is told by its basis", () => {
  const log = begun();
  log.add(draftLimit(act(), log.car, figure("3", { source: "an old sheet" })));
  log.add(draftFigure(act(), log.car, figure("4"), TOLD, "newer"));
  log.add(draftOutOfBook(act(), log.car, "lim.float", "another hub"));
  log.add(draftFigure(act(), log.car, figure("5", { place: "FR" }), TOLD));
  const [all, right] = placeLines(log.car, FLOAT, false);
  expect(all?.standing).toEqual([]);
  expect(all?.before.map(({ title, says }) => [title, says.at(-1)])).toEqual([
    ["taken out", "Because: another hub"],
    [expect.stringContaining("4 thou"), "Because: newer"],
    [expect.stringContaining("3 thou"), "maker's figure, an old sheet"],
  ]);
  expect([right?.place, right?.standing.length, right?.before.length]).toEqual(["FR", 1, 0]);
});

test("the book begins with what an open visit wants of the maker, then the car's own, then what judges there", () => {
  const log = begun();
  const lines = () => limitLines(log.car, [WANTS]);
  const none = { sheets: new Set<string>(), judging: new Set<string>() };
  const open = { sheets: new Set([sheetFrozen.sheet.id]), judging: new Set(["lim.float"]) };
  expect(bookView(lines(), none).wanted).toEqual([]);
  const wanted = bookView(lines(), open);
  expect([wanted.wanted.length, wanted.own.length, wanted.used.length, wanted.sheets.length]).toEqual([1, 0, 0, 1]);
  log.add(draftFigure(act(), log.car, figure("4"), TOLD));
  const own = bookView(lines(), open);
  expect([own.wanted.length, own.own.length, own.used.length]).toEqual([0, 1, 0]);
  expect(bookView(limitLines(begun().car, [sheetFrozen]), open).used.map(({ id }) => id)).toEqual(["lim.float"]);
});

test("limits are found by the beginnings of words of their name, sheet and source", () => {
  const lines = limitLines(begun().car, [sheetFrozen]);
  expect(findLimits(lines, "")).toEqual([]);
  expect(findLimits(lines, "END flo").map(({ id }) => id)).toContain("lim.float");
  expect(findLimits(lines, "nd float")).toEqual([]);
  const fitted = { ...sheetFrozen.sheet, limits: [{ ...FLOAT, source: "run-out of the fitted disc" }] };
  const [one] = limitLines(begun().car, [{ ...sheetFrozen, sheet: fitted }]);
  for (const typed of ["runout", "run-out", "out run"])
    expect(findLimits(one ? [one] : [], typed), typed).toHaveLength(1);
  expect(findLimits(lines, "float nowhere")).toEqual([]);
});

test("a figure may be written in any unit of its quantity, the sheet's first", () => {
  const codes = unitChoices({ ...FLOAT, unit: "[in_i]" }).map(({ value }) => value);
  expect(codes.slice(0, 3)).toEqual(["[in_i]", "mm", "[mil_i]"]);
  expect(codes).toEqual(expect.arrayContaining(["um", "cm", "m", "[ft_i]"]));
  expect(new Set(codes).size).toBe(codes.length);
});

test("the table holds a row for every default edge and every figure there ever was, with who and why", () => {
  const log = begun();
  log.add(draftFigure(act(), log.car, figure("4"), TOLD));
  const id = log.add(
    draftFigure(
      act(),
      log.car,
      { limit: "lim.float", bands: { minor: "0.1", major: "0.2" }, unit: "mm", basis: "maker" },
      { ...TOLD, holdsFor: { engine: "six" } },
      "=their letter",
    ),
  );
  log.add(draftFigureLooked(act(), log.car, { key: "lim.float", id }, "Jo"));
  log.add(draftOutOfBook(act(), log.car, "lim.float", "another hub"));
  const [head, ...rows] = limitsCsv(log.car, [WANTS]).replace(/\r\n$/, "").split("\r\n");
  expect(head).toMatch(/^\ufeffSheet,Limit,Name,Place,Stands/);
  const defaults = Object.keys(FLOAT.bands).length;
  expect(rows).toHaveLength(defaults + 4);
  expect(rows[defaults]).toContain("replaced,over,major,4,[mil_i],0.1016,mm,maker");
  expect(rows[defaults + 1]).toContain("minor,0.1,mm,0.1,mm");
  expect(rows[defaults + 2]).toContain("engine six,Anna,2026-03-03,'=their letter,Jo,1 / 50 [mil_i]");
  expect(rows[defaults + 3]).toContain("taken out: stands");
  expect(rows[defaults + 3]).toContain("another hub");
});
