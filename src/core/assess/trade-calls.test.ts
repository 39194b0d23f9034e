/** Derived values that call the functions of the trade: judged with their uncertainty, or told as not worked out. */
import { expect, test } from "vitest";
import { planned, replies, smallEngine, visit } from "../../../tests/support/small-car.js";
import { HUB_SHEET, SMALL_COMMON } from "../../../tests/support/small-sheets.js";
import type { Limit, Rule } from "../sheet/run.js";
import { assess, prepare } from "./index.js";

const limit: Limit = {
  id: "lim.lost",
  of: "hub.lost",
  quantity: "percent",
  unit: "%",
  direction: "over",
  aggregate: "max",
  class: "corner",
  bands: { minor: 10, major: 25 },
  basis: "practice",
  source: "common practice, no source",
};
const rule: Rule = {
  id: "hub.r90",
  scope: "corner",
  effect: "finding",
  fault: "hub.thinned",
  grade: { "limit-of": "hub.lost" },
  when: "band(hub.lost) >= minor",
  sure: "likely",
  consequence: 2,
  likelihood: "C",
  "must-stand": false,
  jobs: [],
};
const SHEET = {
  ...HUB_SHEET,
  derived: [
    ...HUB_SHEET.derived,
    {
      id: "hub.lost",
      place: "corner",
      quantity: "percent",
      unit: "%",
      formula: 'wall_lost([hub.wall], amount(1.5, "mm"))',
    },
  ],
  limits: [...HUB_SHEET.limits, limit],
  rules: [...HUB_SHEET.rules, rule],
};
const engine = smallEngine([], [SHEET]);
const judged = (said: Readonly<Record<string, string>>) =>
  assess(engine, visit(replies(engine, said), { sheets: ["hub"] }));

test("[AS15] a value worked out by a trade function is judged by its limit and carries the reading's uncertainty", () => {
  const { findings, problems } = judged({ "hub.wall@FR": "1.2 mm" });
  // (1.5 − 1.2) ÷ 1.5 = 20 %.
  const found = findings.find((one) => one.rule === "hub.r90");
  expect(found).toMatchObject({ place: "FR", grade: "minor" });
  const step = found?.because.find((one) => one.kind === "derived");
  expect(step).toMatchObject({ id: "hub.lost", value: expect.closeTo(20, 9), unit: "%" });
  expect(problems).toEqual([]);
});

test("[AS15] a figure out of the function's range: no finding, not sound, and told which value and why", () => {
  const { findings, problems, points, settle } = judged({ "hub.wall@FR": "0 mm" });
  expect(findings.filter((one) => one.rule === "hub.r90")).toEqual([]);
  expect(problems.map(({ code, params }) => [code, params["value"], params["argument"], params["place"]])).toEqual([
    ["trade.range", "hub.lost", "readings", "FR"],
  ]);
  expect(points.find((one) => one.point === "hub.wall" && one.place === "FR")?.is).not.toBe("sound");
  expect(settle.find((one) => one.decides.includes("hub.r90"))).toMatchObject({ point: "hub.wall", place: "FR" });
});

test("[EX36] without the trade's functions the value is never known, and which formula lacks what is told", () => {
  const built = planned(SMALL_COMMON, [SHEET]);
  const lacking = prepare(built.common, built.sheets);
  expect(lacking.problems.map(({ code, where, params }) => [code, where.path, params["found"]])).toEqual([
    ["expr.no-function", "derived/hub.lost/formula", "wall_lost"],
  ]);
  const { findings, points } = assess(
    lacking,
    visit(replies(lacking, { "hub.wall@FR": "1.2 mm" }), { sheets: ["hub"] }),
  );
  expect(findings.filter((one) => one.rule === "hub.r90")).toEqual([]);
  expect(points.find((one) => one.point === "hub.wall" && one.place === "FR")?.is).not.toBe("sound");
});
